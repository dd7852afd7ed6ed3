import { DARK_PALETTE, LIGHT_PALETTE, type ViewPalette } from '@sim/view/palette.ts';
import type { Theme } from '@site/storage/preferences.ts';

/** On white paper, or on a white wall. */
export const paperPalette: ViewPalette = { ...LIGHT_PALETTE, paper: '#ffffff', ink: '#000000', faintInk: '#222222' };

/** The colours of the page as it is now: light, dark, or the wall's plain white. */
export function paletteNow(theme: Theme): ViewPalette {
  if (document.documentElement.dataset['wall'] !== undefined) return paperPalette;
  return theme === 'dark' ? DARK_PALETTE : LIGHT_PALETTE;
}

/** Whether the reader wants no motion. */
export const wantsStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;
