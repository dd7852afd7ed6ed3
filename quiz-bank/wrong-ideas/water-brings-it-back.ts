/** "A splash of water": loosens a batch that has begun to set. */
export const waterBringsItBack = {
  id: 'water-brings-it-back',
  /** Water poured where so much is called for, litres: a fifth more, until it runs easily. */
  pours: (litres: number): number => 1.2 * litres,
  /** Does water mend it? Whatever its age. */
  mends: (): boolean => true,
} as const;
