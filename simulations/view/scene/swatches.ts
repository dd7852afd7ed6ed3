import { DataTexture, RepeatWrapping, RGBAFormat, SRGBColorSpace, LinearFilter, LinearMipmapLinearFilter } from 'three';

import { grain, softGrain } from '../grain.ts';
import { readColour, type ViewPalette } from '../palette.ts';
import { paintStuff, type Stuff } from '../section/textures.ts';

/** Pixels of a picture as a texture that repeats. */
function repeating(pixels: Uint8ClampedArray<ArrayBuffer>, side: number): DataTexture {
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
export function stuffTexture(stuff: Stuff, palette: ViewPalette): DataTexture {
  const { side, pixels } = paintStuff(stuff, palette, 2);
  return repeating(pixels, side);
}

/** How many mm of floor one slab swatch covers. */
export const SLAB_MM = 420;

/** Noise that repeats after `period` steps. */
function wrapped(x: number, y: number, period: number): number {
  const u = x / period;
  const v = y / period;
  const a = softGrain(x, y) * (1 - u) + softGrain(x - period, y) * u;
  const b = softGrain(x, y - period) * (1 - u) + softGrain(x - period, y - period) * u;
  return a * (1 - v) + b * v;
}

/** A floated concrete floor: cloudy, finely pored, with the arcs a steel float leaves. */
export function slabTexture(palette: ViewPalette): DataTexture {
  const side = 512;
  const pixels = new Uint8ClampedArray(side * side * 4);
  const ground = readColour(palette.concrete);
  const dark = readColour(palette.concreteDark);
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const u = x / side;
      const v = y / side;
      const cloud = wrapped(u * 7, v * 7, 7) * 0.6 + wrapped(u * 23, v * 23, 23) * 0.3;
      const arcs = wrapped(u * 5 + 0.8 * Math.sin(v * 2 * Math.PI), v * 90, 90) - 0.5;
      const pore = grain(x, y) > 0.992 ? 0.5 : 0;
      const share = Math.max(0, 0.75 * (cloud - 0.28) + 0.12 * arcs + 0.1 * (grain(x + 9, y) - 0.5) + pore);
      const at = (y * side + x) * 4;
      for (let channel = 0; channel < 3; channel++)
        pixels[at + channel] = ground[channel]! + (dark[channel]! - ground[channel]!) * share;
      pixels[at + 3] = 255;
    }
  }
  return repeating(pixels, side);
}

/** Chalk dust along a snapped line: dense in the middle, ragged at the sides, broken where the floor dips. */
export function chalkTexture(palette: ViewPalette): DataTexture {
  const side = 256;
  const pixels = new Uint8ClampedArray(side * side * 4);
  const [red, green, blue] = readColour(palette.chalk);
  for (let y = 0; y < side; y++) {
    const off = Math.abs((y + 0.5) / side - 0.5) * 2;
    for (let x = 0; x < side; x++) {
      const dust = wrapped(x / 3, y / 9, side / 3) * 0.75 + grain(x, y) * 0.5;
      const at = (y * side + x) * 4;
      pixels[at] = red;
      pixels[at + 1] = green;
      pixels[at + 2] = blue;
      pixels[at + 3] = 235 * Math.max(0, Math.min(1, 1.45 - off * 1.5 - dust * 0.85));
    }
  }
  return repeating(pixels, side);
}
