import { onePole } from "../../trip/one-pole";

// Cautions that stand under more than one function, said once.

export const magneticCaution =
  "Currents are r.m.s. sine at 50 or 60 Hz. On d.c. the magnetic band lies about √2 higher; a phase-controlled source needs a true-r.m.s. meter.";

export const polesCaution = `The limits are for all poles loaded. One pole alone may need ${onePole.ofTwo} × (two poles) or ${onePole.ofMore} × (three or four poles) the tripping current (from memory).`;

export const verdictCaution =
  "A result on the bench is not a release to service. After a short-circuit near the breaking capacity no bench test proves that a breaker may be used again. Local codes and licensed practice decide.";

export const injectionCaution =
  "Test a breaker out of its board: switched off, locked out, proved dead. The source's voltage is low, its current burns: bolted leads, hands off, let lead and breaker cool.";

/** For what is learnt of one breaker from currents of one meter. */
export const ammeterCaution =
  "Limits and probabilities hold what the trials scatter, not what the ammeter is off: 1 % there moves the pickup and its limits by 1 %.";

/** For shots that may trip magnetically. */
export const wearCaution = "Every magnetic trip burns the contacts a little: no more shots than the test asks for.";

export const dropCaution =
  "The millivolts of a board in service ride on the mains voltage: reading them there is live work, for those licensed to it, with a meter and leads rated for it.";

/** Where a whole table is from memory. */
export const recalledCaution =
  "The numbers of the table are from memory: compare them with the page before you reject anything by them.";

export const hotLeadsCaution =
  "On a bench the voltage is low, but the current burns: bolt the leads, hands off while it flows, let leads and breaker cool before touching.";

export const codeCaution =
  "By the NFPA 70 named here; which edition is in force, with which local changes, and who may do the work, the place decides.";

export const rideThroughCaution =
  "Riding through is not permission: the conductor, the rules for small conductors and for motor circuits, and the local code decide the rating.";
