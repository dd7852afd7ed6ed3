/** Growth of the yield stress at rest, Pa a minute (bulk of a common mortar, from memory). */
const GROWTH_PA_PER_MIN = 18;
/** It grows at most to this many times the worked mortar's (range 1.2–3, from memory). */
const MOST_TIMES = 2;

/** Yield stress of mortar left at rest, Pa; working it (sliding) brings it back to the worked value. */
export const restedYieldPa = (workedPa: number, restMin: number): number =>
  Math.min(MOST_TIMES * workedPa, workedPa + GROWTH_PA_PER_MIN * restMin);
