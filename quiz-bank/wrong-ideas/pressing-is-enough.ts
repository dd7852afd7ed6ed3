/** "A good shove beds it": takes movement for show. */
export const pressingIsEnough = {
  id: 'pressing-is-enough',
  /** Coverage of a tile that was set down and pressed: full. */
  coverage: (): number => 1,
  /** What movement adds to coverage, as its holder sees it. */
  gainFromMoving: (): number => 0,
  /** How far a tile must travel, mm. */
  travelMm: (): number => 0,
} as const;
