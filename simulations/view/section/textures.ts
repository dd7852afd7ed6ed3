import { grain } from '../grain.ts';
import { readColour, type Rgb, type ViewPalette } from '../palette.ts';
import type { Pen } from '../pen.ts';

/** What a section is filled with. */
export type Stuff = 'concrete' | 'mortar' | 'clay' | 'air';

/** Side of the repeating swatch, CSS pixels. */
const SIDE = 96;

const mix = (from: Rgb, to: Rgb, share: number): Rgb => [
  from[0] + (to[0] - from[0]) * share,
  from[1] + (to[1] - from[1]) * share,
  from[2] + (to[2] - from[2]) * share,
];

const inside = (distance: number, radius: number): number => Math.min(1, Math.max(0, (radius - distance) * 1.4 + 0.5));

/** A stone: its middle in its cell, 0…1, its radius, how much it is drawn out, and its tone. */
interface Stone {
  x: number;
  y: number;
  size: number;
  flat: number;
  tint: number;
}

/** One jittered stone a cell, for a square of so many cells a side. */
const stonesOf = (count: number, seed: number): Stone[] =>
  Array.from({ length: count * count }, (_, cell) => {
    const [c, r] = [cell % count, Math.floor(cell / count)];
    return {
      x: 0.2 + 0.6 * grain(c + seed, r),
      y: 0.2 + 0.6 * grain(c, r + seed),
      size: 0.12 + 0.36 * grain(c + seed * 3, r + seed) ** 2,
      flat: 0.7 + 0.6 * grain(r, c + seed * 5),
      tint: grain(c + 7, r + seed * 2),
    };
  });

type Nearest = (x: number, y: number) => { near: number; tint: number };

/** Distance to the nearest stone, over that stone's own radius, in cells; repeats after `count` cells. */
function stones(count: number, seed: number): Nearest {
  const all = stonesOf(count, seed);
  return (x, y) => {
    const column = Math.floor(x);
    const row = Math.floor(y);
    let near = Infinity;
    let tint = 0;
    for (let dy = -1; dy <= 1; dy++) {
      const line = ((row + dy + count) % count) * count;
      for (let dx = -1; dx <= 1; dx++) {
        const stone = all[line + ((column + dx + count) % count)]!;
        const across = (x - column - dx - stone.x) * stone.flat;
        const up = (y - row - dy - stone.y) / stone.flat;
        const distance = Math.sqrt(across * across + up * up) - stone.size;
        if (distance < near) {
          near = distance;
          tint = stone.tint;
        }
      }
    }
    return { near, tint };
  };
}

type Shade = (x: number, y: number) => Rgb;

function shadeOf(stuff: Stuff, palette: ViewPalette): Shade {
  const colour = (name: keyof ViewPalette): Rgb => readColour(palette[name]);
  if (stuff === 'concrete') {
    const [ground, dark, pale] = [colour('concrete'), colour('concreteDark'), colour('glaze')];
    const gravel = stones(SIDE / 12, 31);
    return (x, y) => {
      const { near, tint } = gravel(x / 12, y / 12);
      const sand = mix(ground, dark, grain(x, y) * 0.35);
      const stone = mix(dark, tint > 0.72 ? pale : ground, tint > 0.72 ? 0.55 : tint * 0.6);
      return mix(sand, stone, inside(near * 12, 0));
    };
  }
  if (stuff === 'mortar') {
    const [ground, dark, pale] = [colour('mortar'), colour('mortarDark'), colour('mortarLight')];
    const sand = stones(SIDE / 4, 17);
    return (x, y) => {
      const { near, tint } = sand(x / 4, y / 4);
      const paste = mix(ground, dark, grain(x, y) * 0.3);
      return mix(paste, tint > 0.6 ? pale : dark, 0.75 * inside(near * 4, 0.1));
    };
  }
  if (stuff === 'clay') {
    const [ground, dark] = [colour('clay'), colour('clayDark')];
    const grog = stones(SIDE / 6, 53);
    return (x, y) => {
      const { near } = grog(x / 6, y / 6);
      return mix(mix(ground, dark, grain(x, y) * 0.22), dark, 0.6 * inside(near * 6, -0.2));
    };
  }
  const [ground, dot] = [colour('air'), colour('chalk')];
  return (x, y) => {
    const row = Math.round(y / 6);
    const shift = row % 2 === 0 ? 0 : 3;
    const column = Math.round((x - shift) / 6);
    return mix(ground, dot, inside(Math.hypot(x - shift - column * 6, y - row * 6), 1.4));
  };
}

/**
 * A swatch that repeats without a seam, as pixels.
 * @param scale device pixels to a CSS pixel
 * @returns RGBA of a square of `side` device pixels
 */
export function paintStuff(
  stuff: Stuff,
  palette: ViewPalette,
  scale: number,
): { side: number; pixels: Uint8ClampedArray<ArrayBuffer> } {
  const side = Math.round(SIDE * scale);
  const pixels = new Uint8ClampedArray(side * side * 4);
  const shade = shadeOf(stuff, palette);
  for (let row = 0; row < side; row++) {
    for (let column = 0; column < side; column++) {
      const [red, green, blue] = shade((column * SIDE) / side, (row * SIDE) / side);
      const at = (row * side + column) * 4;
      pixels[at] = red;
      pixels[at + 1] = green;
      pixels[at + 2] = blue;
      pixels[at + 3] = 255;
    }
  }
  return { side, pixels };
}

const kept = new Map<string, CanvasPattern>();

/** The swatch as a fill for a pen; made once for each palette and sharpness. */
export function stuffPattern(pen: Pen, stuff: Stuff, palette: ViewPalette, scale: number): CanvasPattern | string {
  const key = `${stuff} ${palette.paper} ${palette.mortar} ${scale}`;
  const known = kept.get(key);
  if (known) return known;
  const { side, pixels } = paintStuff(stuff, palette, scale);
  const sheet = new OffscreenCanvas(side, side);
  sheet.getContext('2d', { willReadFrequently: true })?.putImageData(new ImageData(pixels, side, side), 0, 0);
  const pattern = pen.createPattern(sheet, 'repeat');
  if (!pattern) return palette[stuff];
  kept.set(key, pattern);
  return pattern;
}
