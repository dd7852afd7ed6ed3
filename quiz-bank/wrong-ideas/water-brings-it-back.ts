/** "A splash of water": loosens a batch that has begun to set. */
export const waterBringsItBack = {
  id: 'water-brings-it-back',
  /** Does water mend it? Whatever its age. */
  mends: (): boolean => true,
} as const;
