/** "Half bond always looks right": lays long tile at half. */
export const halfOffsetIsFine = {
  id: 'half-offset-is-fine',
  share: 0.5,
  /** Offset in mm its holder would lay. */
  offsetMm: (sideMm: number): number => sideMm / 2,
} as const;
