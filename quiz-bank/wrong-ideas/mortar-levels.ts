/** "The mortar will take it up": lets the bed do what the patch should have done. */
export const mortarLevels = {
  id: 'mortar-levels',
  /** May a dip be filled with setting mortar? Whatever its depth. */
  fills: (): boolean => true,
  /** Fall the base itself must have, mm: none, the bed is made thicker at one end. */
  fallOfBaseMm: (): number => 0,
  /** The flatness a floor needs first, mm: none that matters. */
  bedAtDipMm: (bedMm: number): number => bedMm,
} as const;
