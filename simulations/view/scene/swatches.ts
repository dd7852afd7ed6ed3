import { DataTexture, RepeatWrapping, RGBAFormat, SRGBColorSpace, LinearFilter, LinearMipmapLinearFilter } from 'three';

import { grain, softGrainWithin } from '../grain.ts';
import { readColour, type ViewPalette } from '../palette.ts';
import { rest } from '../rest.ts';
import { paintStuff, type Stuff } from '../section/textures.ts';

interface Swatch {
  side: number;
  pixels: Uint8ClampedArray<ArrayBuffer>;
}

const painted = new WeakMap<ViewPalette, Map<string, Swatch>>();

/** A swatch in a palette's colours, painted once: several beds show it, and paper asks for other colours only in passing. */
function once(palette: ViewPalette, name: string, paint: () => Swatch): Swatch {
  const known = painted.get(palette) ?? new Map<string, Swatch>();
  painted.set(palette, known);
  const swatch = known.get(name) ?? paint();
  known.set(name, swatch);
  return swatch;
}

/** Pixels of a picture as a texture that repeats. */
function repeating({ pixels, side }: Swatch): DataTexture {
  const texture = new DataTexture(new Uint8Array(pixels.buffer), side, side, RGBAFormat);
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  texture.anisotropy = 8;
  texture.colorSpace = SRGBColorSpace;
  texture.needsUpdate = true;
  return texture;
}

/** How many mm of a cut face one swatch covers. */
export const SWATCH_MM = 34;

/** The filling of a cut face: the same swatch the two-dimensional section is drawn with. */
export const stuffTexture = (stuff: Stuff, palette: ViewPalette): DataTexture =>
  repeating(once(palette, stuff, () => paintStuff(stuff, palette, 2)));

/** How many mm of floor one slab swatch covers. */
export const SLAB_MM = 420;

/** Noise that repeats after `period` steps, for places up to a step outside one period. */
function wrapped(period: number): (x: number, y: number) => number {
  const soft = softGrainWithin(period + 2);
  return (x, y) => {
    const u = x / period;
    const v = y / period;
    const a = soft(x, y) * (1 - u) + soft(x - period, y) * u;
    const b = soft(x, y - period) * (1 - u) + soft(x - period, y - period) * u;
    return a * (1 - v) + b * v;
  };
}

/** A floated concrete floor: cloudy, finely pored, with the arcs a steel float leaves. */
export const slabTexture = (palette: ViewPalette): DataTexture =>
  repeating(
    once(palette, 'slab', () => {
      const { swatch, paint } = slabPainter(palette);
      paint(0, swatch.side);
      return swatch;
    }),
  );

/** A slab not painted yet, and what paints its rows from one to before another. */
function slabPainter(palette: ViewPalette): { swatch: Swatch; paint: (from: number, to: number) => void } {
  const side = 512;
  const pixels = new Uint8ClampedArray(side * side * 4);
  const [broad, fine, drawn] = [wrapped(7), wrapped(23), wrapped(90)];
  const ground = readColour(palette.concrete);
  const dark = readColour(palette.concreteDark);
  const paintRow = (y: number): void => {
    const v = y / side;
    const sway = 0.8 * Math.sin(v * 2 * Math.PI);
    for (let x = 0; x < side; x++) {
      const u = x / side;
      const cloud = broad(u * 7, v * 7) * 0.6 + fine(u * 23, v * 23) * 0.3;
      const arcs = drawn(u * 5 + sway, v * 90) - 0.5;
      const pore = grain(x, y) > 0.992 ? 0.5 : 0;
      const share = Math.max(0, 0.75 * (cloud - 0.28) + 0.12 * arcs + 0.1 * (grain(x + 9, y) - 0.5) + pore);
      const at = (y * side + x) * 4;
      for (let channel = 0; channel < 3; channel++)
        pixels[at + channel] = ground[channel]! + (dark[channel]! - ground[channel]!) * share;
      pixels[at + 3] = 255;
    }
  };
  return {
    swatch: { pixels, side },
    paint: (from, to) => {
      for (let y = from; y < to; y++) paintRow(y);
    },
  };
}

/** Rows of the slab painted between two rests. */
const ROWS_AT_ONCE = 128;

/** Paints what every bed shows, a little at a time, so that the page can be used meanwhile. */
export async function paintAhead(palette: ViewPalette): Promise<void> {
  const { swatch, paint } = slabPainter(palette);
  for (let row = 0; row < swatch.side; row += ROWS_AT_ONCE) {
    paint(row, row + ROWS_AT_ONCE);
    await rest();
  }
  once(palette, 'slab', () => swatch);
  for (const name of ['chalk', 'concrete'] as const) {
    once(palette, name, () => (name === 'chalk' ? paintChalk(palette) : paintStuff(name, palette, 2)));
    await rest();
  }
}

/** Chalk dust along a snapped line: dense in the middle, ragged at the sides, broken where the floor dips. */
export const chalkTexture = (palette: ViewPalette): DataTexture =>
  repeating(once(palette, 'chalk', () => paintChalk(palette)));

function paintChalk(palette: ViewPalette): Swatch {
  const side = 256;
  const pixels = new Uint8ClampedArray(side * side * 4);
  const [red, green, blue] = readColour(palette.chalk);
  const ragged = wrapped(side / 3);
  for (let y = 0; y < side; y++) {
    const off = Math.abs((y + 0.5) / side - 0.5) * 2;
    for (let x = 0; x < side; x++) {
      const dust = ragged(x / 3, y / 9) * 0.75 + grain(x, y) * 0.5;
      const at = (y * side + x) * 4;
      pixels[at] = red;
      pixels[at + 1] = green;
      pixels[at + 2] = blue;
      pixels[at + 3] = 235 * Math.max(0, Math.min(1, 1.45 - off * 1.5 - dust * 0.85));
    }
  }
  return { pixels, side };
}
