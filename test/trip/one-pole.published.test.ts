import { onePole } from "../../src/trip/one-pole";

// The second reader's copy.

test("IEC 60898-1, 8.6.3.2 (from memory): one pole alone within 1.1 × of two poles, 1.2 × of three and four", () => {
  expect(onePole).toEqual({ ofTwo: 1.1, ofMore: 1.2 });
});
