/** "It was buttered, so it is covered": counts the coat on the back as contact. */
export const backCoatCounts = {
  id: 'back-coat-counts',
  /** Coverage as its holder reads a pulled tile, 0…1. */
  coverage: (pull: { coverage: number; backCoatOnly: boolean }): number => (pull.backCoatOnly ? 1 : pull.coverage),
  /** Mortar that a back coat takes, as a multiple of the bed: it "comes out of the same bed". */
  extra: (): number => 0,
} as const;
