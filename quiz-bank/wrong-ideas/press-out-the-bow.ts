/** "Lean on it": thinks that weight or force straightens a bowed tile for good. */
export const pressOutTheBow = {
  id: 'press-out-the-bow',
  /** Bow left after pressing, mm. */
  bowLeftMm: (): number => 0,
} as const;
