/** Colours as other eyes see them, and how far apart two colours are. */
import { lightness, type Rgb } from '@sim/view/palette.ts';

type Row = readonly [number, number, number];
type Matrix = readonly [Row, Row, Row];

/**
 * Full loss of one kind of cone, on linear sRGB: Machado, Oliveira & Fernandes 2009, "A physiologically-based model for
 * simulation of color vision deficiency", IEEE Transactions on Visualization and Computer Graphics 15(6), the published
 * matrices at severity 1.0.
 */
export const EYES = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
} as const satisfies Record<string, Matrix>;

export type Eye = 'usual' | keyof typeof EYES | 'grey';
export const ALL_EYES: readonly Eye[] = ['usual', 'protanopia', 'deuteranopia', 'tritanopia', 'grey'];

const linear = (channel: number): number => {
  const share = channel / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
};
const coded = (light: number): number => {
  const share = Math.min(1, Math.max(0, light));
  return 255 * (share <= 0.0031308 ? 12.92 * share : 1.055 * share ** (1 / 2.4) - 0.055);
};
const times = (row: Row, [x, y, z]: Row): number => row[0] * x + row[1] * y + row[2] * z;

/** A colour as an eye sees it: without one kind of cone, or its luminance alone. */
export function seen([red, green, blue]: Rgb, eye: Eye): Rgb {
  if (eye === 'usual') return [red, green, blue];
  const light: Row = [linear(red), linear(green), linear(blue)];
  if (eye === 'grey') {
    const grey = coded(times([0.2126, 0.7152, 0.0722], light));
    return [grey, grey, grey];
  }
  const [r, g, b] = EYES[eye];
  return [coded(times(r, light)), coded(times(g, light)), coded(times(b, light))];
}

export type Lab = readonly [l: number, a: number, b: number];

/** CIE 1976 L*a*b* of an sRGB colour under D65 (IEC 61966-2-1, CIE 15). */
export function labOf(colour: Rgb): Lab {
  const light: Row = [linear(colour[0]), linear(colour[1]), linear(colour[2])];
  const f = (share: number): number =>
    share > (6 / 29) ** 3 ? Math.cbrt(share) : share / (3 * (6 / 29) ** 2) + 4 / 29;
  const x = f(times([0.4124, 0.3576, 0.1805], light) / 0.95047);
  const y = f(times([0.2126, 0.7152, 0.0722], light));
  const z = f(times([0.0193, 0.1192, 0.9505], light) / 1.08883);
  return [lightness(colour), 500 * (x - y), 200 * (y - z)];
}

const DEG = Math.PI / 180;

/** CIEDE2000 difference (ISO/CIE 11664-6), by the formulas of Sharma, Wu & Dalal 2005. */
export function difference([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number {
  const mean = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const g = 0.5 * (1 - Math.sqrt(mean ** 7 / (mean ** 7 + 25 ** 7)));
  const [p1, p2] = [a1 * (1 + g), a2 * (1 + g)];
  const [c1, c2] = [Math.hypot(p1, b1), Math.hypot(p2, b2)];
  const hue = (a: number, b: number): number => (a === 0 && b === 0 ? 0 : (Math.atan2(b, a) / DEG + 360) % 360);
  const [h1, h2] = [hue(p1, b1), hue(p2, b2)];
  const grey = c1 * c2 === 0;
  let turn = grey ? 0 : h2 - h1;
  if (turn > 180) turn -= 360;
  else if (turn < -180) turn += 360;
  const dl = l2 - l1;
  const dc = c2 - c1;
  const dh = 2 * Math.sqrt(c1 * c2) * Math.sin((turn / 2) * DEG);
  const l = (l1 + l2) / 2;
  const c = (c1 + c2) / 2;
  let h = h1 + h2;
  if (!grey) h = Math.abs(h1 - h2) <= 180 ? h / 2 : h < 360 ? (h + 360) / 2 : (h - 360) / 2;
  const t =
    1 -
    0.17 * Math.cos((h - 30) * DEG) +
    0.24 * Math.cos(2 * h * DEG) +
    0.32 * Math.cos((3 * h + 6) * DEG) -
    0.2 * Math.cos((4 * h - 63) * DEG);
  const sl = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const sc = 1 + 0.045 * c;
  const sh = 1 + 0.015 * c * t;
  const rotation =
    -Math.sin(60 * Math.exp(-(((h - 275) / 25) ** 2)) * DEG) * 2 * Math.sqrt(c ** 7 / (c ** 7 + 25 ** 7));
  return Math.sqrt((dl / sl) ** 2 + (dc / sc) ** 2 + (dh / sh) ** 2 + rotation * (dc / sc) * (dh / sh));
}

/** The difference of two colours as an eye sees them. */
export const apart = (one: Rgb, other: Rgb, eye: Eye): number =>
  difference(labOf(seen(one, eye)), labOf(seen(other, eye)));
