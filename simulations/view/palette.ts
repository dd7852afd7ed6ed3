/**
 * The colours every picture of a bed is drawn with. Tone carries the meaning first (bonded dark, bare light), pattern
 * second, hue last: each pair that must be told apart differs by at least 15 in CIE lightness (tested).
 */
export interface ViewPalette {
  /** The page the picture lies on. */
  paper: string;
  ink: string;
  /** Rules and quiet lettering. */
  faintInk: string;
  mortar: string;
  /** The same under a lamp, in three dimensions. */
  wetMortar: string;
  mortarDark: string;
  mortarLight: string;
  /** The tile's bare back and body. */
  clay: string;
  clayDark: string;
  glaze: string;
  concrete: string;
  concreteDark: string;
  /** Ground under the dots of shut-in air. */
  air: string;
  /** The chalk line: marks, dots of shut-in air, cut lines. */
  chalk: string;
  skin: string;
  /** The one loud colour. */
  accent: string;
}

export const LIGHT_PALETTE: ViewPalette = {
  paper: '#f4eee1',
  ink: '#211c17',
  faintInk: '#574d43',
  mortar: '#7b766e',
  wetMortar: '#8d8c89',
  mortarDark: '#57534d',
  mortarLight: '#a8a298',
  clay: '#dcab8d',
  clayDark: '#b87a57',
  glaze: '#f4ecdb',
  concrete: '#c6c3bc',
  concreteDark: '#97938b',
  air: '#f8f5ee',
  chalk: '#1c568c',
  skin: '#b9b09f',
  accent: '#9b3d20',
};

export const DARK_PALETTE: ViewPalette = {
  paper: '#1b1815',
  ink: '#f0e8da',
  faintInk: '#beb3a3',
  mortar: '#716d66',
  wetMortar: '#8d8b87',
  mortarDark: '#4d4a45',
  mortarLight: '#9b958b',
  clay: '#d6a384',
  clayDark: '#9a6446',
  glaze: '#ece2cf',
  concrete: '#b0ada6',
  concreteDark: '#827e77',
  air: '#efe9dd',
  chalk: '#2a648f',
  skin: '#a89f8f',
  accent: '#f0976e',
};

/** Red, green, blue 0…255. */
export type Rgb = readonly [number, number, number];

/** `#rrggbb` as three numbers; anything else throws, since a palette is ours. */
export function readColour(hex: string): Rgb {
  const match = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(hex);
  if (!match) throw new Error(`colour must be #rrggbb, got ${hex}`);
  return [parseInt(match[1] ?? '', 16), parseInt(match[2] ?? '', 16), parseInt(match[3] ?? '', 16)];
}

/** CIE 1976 lightness L* (0…100) of an sRGB colour, by IEC 61966-2-1 and CIE 15. */
export function lightness([red, green, blue]: Rgb): number {
  const linear = (channel: number): number => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  const luminance = 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  return luminance <= (6 / 29) ** 3 ? luminance * (29 / 3) ** 3 : 116 * Math.cbrt(luminance) - 16;
}
