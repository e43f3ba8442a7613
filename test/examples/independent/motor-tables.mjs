// NFPA 70 (2023), the rows that the machines need, typed here once more: full load, A, of Table 430.248 (single-phase) and 430.250
// (three-phase) in the 230 V column; kVA per hp of Table 430.7(B); the standard ratings of Table 240.6(A).

export const fullLoad = { 1: { 2: 12, 3: 17 }, 3: { 3: 9.6 } };

export const codeLetters = { G: [5.6, 6.29], J: [7.1, 7.99], K: [8, 8.99] };

export const standardRatings = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100];

/** Preferred rated currents of IEC 60898-1, A. */
export const preferredRatings = [6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125];
