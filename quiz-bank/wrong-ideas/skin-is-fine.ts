/** "It still looks wet": trusts ridges that have skinned, and takes the pot life for the open time. */
export const skinIsFine = {
  id: 'skin-is-fine',
  /** Minutes one has, as its holder counts them: as long as the batch in the bucket lasts. */
  minutes: (times: { openMin: number; potMin: number }): number => times.potMin,
} as const;
