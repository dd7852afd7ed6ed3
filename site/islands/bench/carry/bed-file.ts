import type { BedResult, BedSetup } from '@sim/bed/types.ts';

/** Raised when a field of the file changes its meaning. */
export const BED_FILE_VERSION = 1;

/** A bed as a file: what was set, what came of it, and the link that brings it back. */
export const bedFile = (setup: BedSetup, result: BedResult, link: string): string =>
  `${JSON.stringify({ kind: 'ridge-to-bed bed', version: BED_FILE_VERSION, link, setup, result }, null, 2)}\n`;

/** Offers a file for keeping. */
export function offer(blob: Blob, name: string): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers read the address after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
