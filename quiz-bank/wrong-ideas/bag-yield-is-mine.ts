/** "The bag says so": takes the headline area on the bag for the job's own. */
export const bagYieldIsMine = {
  id: 'bag-yield-is-mine',
  /** Area a bag covers, as its holder reckons: what the bag says for one layer. */
  rate: (headlineM2PerBag: number): number => headlineM2PerBag,
  /** Bags bought: the area over the headline, rounded up. */
  bags: (areaM2: number, headlineM2PerBag: number): number => Math.ceil(areaM2 / headlineM2PerBag),
} as const;
