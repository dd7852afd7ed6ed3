/** "Moving is moving": along the ridges does what across them does, and it doesn't matter which way they run. */
export const alongAsGood = {
  id: 'along-as-good',
  /** The other of two directions at right angles, degrees 0…179. */
  turns: (directionDeg: number): number => (directionDeg + 90) % 180,
  /** How many times shorter one way out for the air is than the other: it makes no odds. */
  ratio: (): number => 1,
  /** The other side of a tile. */
  otherSide: ({ lengthMm, widthMm }: { lengthMm: number; widthMm: number }, sideMm: number): number =>
    sideMm === lengthMm ? widthMm : lengthMm,
} as const;
