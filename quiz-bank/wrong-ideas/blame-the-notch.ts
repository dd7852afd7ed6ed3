/** "Trowel too small": lays every failure to the notch. */
export const blameTheNotch = {
  id: 'blame-the-notch',
  /** The cause its holder names, whatever the signs. */
  cause: 'notch-too-small',
} as const;
