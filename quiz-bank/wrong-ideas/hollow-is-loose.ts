/** "Hollow means loose": judges the bond by the sound. */
export const hollowIsLoose = {
  id: 'hollow-is-loose',
  /** Condemns when enough tiles sound hollow. */
  condemns: (hollow: number): boolean => hollow > 0,
} as const;
