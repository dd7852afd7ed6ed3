/** "The standard allows it": puts the most the standard allows where the tile at hand should be measured. */
export const allowedForMeasured = {
  id: 'allowed-for-measured',
  /** The bow its holder reckons with, mm. */
  bowMm: (bow: { measuredMm: number; allowedMm: number }): number => bow.allowedMm,
} as const;
