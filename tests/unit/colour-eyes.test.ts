import { readFileSync } from 'node:fs';

import { describe, expect, test } from 'vitest';

import { CELL_STATE } from '@sim/bed/types.ts';
import { stateTone, stateTones } from '@sim/view/map/state-tones.ts';
import { DARK_PALETTE, LIGHT_PALETTE, readColour, type Rgb, type ViewPalette } from '@sim/view/palette.ts';
import { paintStuff } from '@sim/view/section/textures.ts';

import { ALL_EYES, apart, difference, EYES, seen, type Eye } from './seen-colours.ts';

/** CIEDE2000 from which two flat tones side by side are told apart at a glance, and a pattern from its ground. */
const PLAIN = 10;
const PATTERN = 25;

/** What is drawn: its mean tone and, where it has a pattern, the pattern's two tones. */
interface Drawn {
  mean: Rgb;
  pattern?: [Rgb, Rgb];
}

function mean(pixels: ArrayLike<number>): Rgb {
  const sum = [0, 0, 0];
  for (let at = 0; at < pixels.length; at += 4) for (const n of [0, 1, 2]) sum[n]! += pixels[at + n]!;
  const [red = 0, green = 0, blue = 0] = sum.map((value) => (4 * value) / pixels.length);
  return [red, green, blue];
}

/** A state of the map as it is painted. */
function painted(state: number, palette: ViewPalette): Rgb {
  const pixels: number[] = [];
  const tone: [number, number, number] = [0, 0, 0];
  for (let y = 0; y < 84; y++)
    for (let x = 0; x < 84; x++) {
      stateTone(state, x, y, 1, stateTones(palette), tone);
      pixels.push(...tone, 255);
    }
  return mean(pixels);
}

/** Which of the pairs an eye can't tell: neither their tones differ, nor does one of them carry a pattern it sees. */
function confused(drawn: Record<string, Drawn>, pairs: readonly (readonly [string, string])[], eye: Eye): string[] {
  const patterned = ({ pattern }: Drawn): boolean => pattern !== undefined && apart(...pattern, eye) >= PATTERN;
  return pairs.flatMap(([one, other]) => {
    const [a, b] = [drawn[one]!, drawn[other]!];
    const tones = apart(a.mean, b.mean, eye);
    return tones >= PLAIN || patterned(a) || patterned(b) ? [] : [`${one} and ${other}: ${tones.toFixed(1)}`];
  });
}

test('the difference of colours is that of the published pairs', () => {
  // Sharma, Wu & Dalal 2005, "The CIEDE2000 color-difference formula", some of table 1; the third and fourth
  // stand to either side of a turn of the hue.
  const pairs = [
    [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
    [[50, 0, 0], [50, -1, 2], 2.3669],
    [[50, 2.49, -0.001], [50, -2.49, 0.001], 7.1792],
    [[50, 2.49, -0.001], [50, -2.49, 0.0011], 7.2195],
    [[50, 2.5, 0], [50, 0, -2.5], 4.3065],
    [[50, 2.5, 0], [58, 24, 15], 19.4535],
    [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
    [[2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], 0.9082],
  ] as const;
  for (const [one, other, published] of pairs) expect(difference(one, other)).toBeCloseTo(published, 3);
});

test('eyes without a kind of cone see white as white, and the colours they are known to mix up as one', () => {
  for (const eye of ALL_EYES)
    for (const channel of seen([255, 255, 255], eye)) expect(Math.abs(channel - 255)).toBeLessThan(0.5);
  for (const rows of Object.values(EYES)) for (const row of rows) expect(row[0] + row[1] + row[2]).toBeCloseTo(1, 5);
  // A red and a green far apart for most, near for these; a blue and a green for those without the third cone.
  expect(apart([200, 90, 60], [120, 130, 50], 'usual')).toBeGreaterThan(35);
  expect(apart([200, 90, 60], [120, 130, 50], 'deuteranopia')).toBeLessThan(15);
});

describe.each([
  ['light', LIGHT_PALETTE],
  ['dark', DARK_PALETTE],
])('drawn %s', (_, palette) => {
  const tone = (name: keyof ViewPalette): Rgb => readColour(palette[name]);
  const map: Record<string, Drawn> = {
    bonded: { mean: painted(CELL_STATE.bonded, palette) },
    open: { mean: painted(CELL_STATE.open, palette) },
    trapped: { mean: painted(CELL_STATE.trapped, palette), pattern: [tone('air'), tone('chalk')] },
    skinned: { mean: painted(CELL_STATE.skinned, palette), pattern: [tone('skin'), tone('mortarDark')] },
  };
  const names = Object.keys(map);
  const all = names.flatMap((one, n) => names.slice(n + 1).map((other) => [one, other] as const));

  test.each(ALL_EYES)('every two states of the map are told apart: %s', (eye) => {
    expect(confused(map, all, eye)).toEqual([]);
    // The two that matter most are flat, and far apart.
    expect(apart(map['bonded']!.mean, map['open']!.mean, eye)).toBeGreaterThan(18);
  });

  test.each(ALL_EYES)('what meets in a section is told apart: %s', (eye) => {
    const stuff = (name: 'concrete' | 'mortar' | 'clay' | 'air'): Rgb => mean(paintStuff(name, palette, 1).pixels);
    const section: Record<string, Drawn> = {
      concrete: { mean: stuff('concrete') },
      mortar: { mean: stuff('mortar') },
      clay: { mean: stuff('clay') },
      glaze: { mean: tone('glaze') },
      'shut-in air': { mean: stuff('air'), pattern: [tone('air'), tone('chalk')] },
      // Open air is the page.
      'open air': { mean: tone('paper') },
    };
    const meet = [
      ['concrete', 'mortar'],
      ['concrete', 'open air'],
      ['concrete', 'shut-in air'],
      ['mortar', 'clay'],
      ['mortar', 'open air'],
      ['mortar', 'shut-in air'],
      ['clay', 'open air'],
      ['clay', 'shut-in air'],
      ['clay', 'glaze'],
      ['open air', 'shut-in air'],
    ] as const;
    expect(confused(section, meet, eye)).toEqual([]);
  });
});

test('a test of this kind can fail: a map of one grey is found out', () => {
  const grey: Drawn = { mean: [120, 120, 120] };
  expect(confused({ a: grey, b: grey }, [['a', 'b']], 'usual')).toHaveLength(1);
});

describe('bars of what a change would have brought', () => {
  const css = readFileSync('site/styles/tokens.css', 'utf8');
  const [light = '', dark = ''] = [/:root\[data-wall\] \{([^}]*)\}/, /:root\[data-theme='dark'\] \{([^}]*)\}/].map(
    (rule) => rule.exec(css)?.[1] ?? '',
  );
  test.each([
    ['light', light],
    ['dark', dark],
  ])('ground, bed, gain and guess are told apart by every eye: %s', (_, rule) => {
    const tone = (name: string): { mean: Rgb } => ({
      mean: readColour(new RegExp(`--${name}: (#\\w{6})`).exec(rule)![1]!),
    });
    // A gain is striped, and a guess has an edge of the sheet's colour.
    const onSheet = (name: string): Drawn => ({ ...tone(name), pattern: [tone(name).mean, tone('sheet').mean] });
    const bars: Record<string, Drawn> = {
      ground: tone('tile'),
      bed: tone('mortar-wet'),
      gain: onSheet('clay'),
      guess: onSheet('chalk'),
    };
    const meet = [
      ['ground', 'bed'],
      ['bed', 'gain'],
      ['ground', 'gain'],
      ['guess', 'ground'],
      ['guess', 'bed'],
      ['guess', 'gain'],
    ] as const;
    for (const eye of ALL_EYES) expect(confused(bars, meet, eye), eye).toEqual([]);
  });
});
