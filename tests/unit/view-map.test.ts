import { CELL_STATE } from '@sim/bed/types.ts';
import { paintPlan } from '@sim/view/map/draw-plan.ts';
import { paintMap } from '@sim/view/map/paint-map.ts';
import { stateTone, stateTones } from '@sim/view/map/state-tones.ts';
import { tileWindow } from '@sim/view/map/tile-window.ts';
import { DARK_PALETTE, LIGHT_PALETTE, lightness, readColour, type Rgb } from '@sim/view/palette.ts';
import { describe, expect, test } from 'vitest';

import { drawnFrame } from './view-frames.ts';

const meanTone = (state: number, palette = LIGHT_PALETTE): Rgb => {
  const tones = stateTones(palette);
  const sum = [0, 0, 0];
  const into: [number, number, number] = [0, 0, 0];
  for (let y = 0; y < 42; y++) {
    for (let x = 0; x < 42; x++) {
      stateTone(state, x, y, 1, tones, into);
      into.forEach((value, channel) => (sum[channel]! += value / 42 ** 2));
    }
  }
  return [sum[0]!, sum[1]!, sum[2]!];
};

describe('coverage map', () => {
  test('bonded and bare are far apart in lightness, so grey print and colour-blind eyes read it', () => {
    // CIE 1976 L*: reference white is 100, and sRGB middle grey 119 is 50 (CIE 15).
    expect(lightness([255, 255, 255])).toBeCloseTo(100, 6);
    expect(lightness([119, 119, 119])).toBeCloseTo(50.03, 1);
    for (const palette of [LIGHT_PALETTE, DARK_PALETTE]) {
      const bonded = lightness(meanTone(CELL_STATE.bonded, palette));
      expect(lightness(meanTone(CELL_STATE.open, palette)) - bonded).toBeGreaterThan(15);
      expect(lightness(meanTone(CELL_STATE.trapped, palette)) - bonded).toBeGreaterThan(15);
      expect(lightness(readColour(palette.air)) - lightness(readColour(palette.chalk))).toBeGreaterThan(40);
      expect(lightness(readColour(palette.skin)) - lightness(readColour(palette.mortarDark))).toBeGreaterThan(20);
    }
  });

  test('the window holds the tile and leaves the rim out', () => {
    const frame = drawnFrame(['......', '.bbo..', '.bbo..', '......']);
    expect(tileWindow(frame)).toEqual({ fromColumn: 1, toColumn: 4, fromRow: 1, toRow: 3 });
  });

  test('turned over its far edge, left stays left and far comes near', () => {
    const frame = drawnFrame(['ooobbb', 'ooobbb', 'oooooo', 'oooooo']);
    const paint = { width: 60, height: 40, palette: LIGHT_PALETTE };
    const dark = (pixels: Uint8ClampedArray, x: number, y: number): boolean => pixels[(y * 60 + x) * 4]! < 170;
    const seenThrough = paintMap(frame, { ...paint, turnedOver: false });
    expect(dark(seenThrough, 50, 5)).toBe(true);
    expect(dark(seenThrough, 50, 35)).toBe(false);
    const turned = paintMap(frame, { ...paint, turnedOver: true });
    expect(dark(turned, 50, 35)).toBe(true);
    expect(dark(turned, 50, 5)).toBe(false);
    expect(dark(turned, 10, 35)).toBe(false);
  });

  test('joints between pieces are clear', () => {
    const pixels = paintMap(drawnFrame(['bbjjbb', 'bbjjbb']), {
      width: 60,
      height: 20,
      palette: LIGHT_PALETTE,
      turnedOver: true,
    });
    expect(pixels[(10 * 60 + 30) * 4 + 3]).toBe(0);
    expect(pixels[(10 * 60 + 5) * 4 + 3]).toBe(255);
  });

  test('from above a tile hides the bed it lies on and shows what stands in its joints', () => {
    const frame = drawnFrame(['......', '.bojb.', '.bojb.', '.bojb.', '......']);
    const paint = { width: 6, height: 5, palette: LIGHT_PALETTE };
    const red = (covered: boolean): number[] => {
      const pixels = paintPlan(frame, { ...paint, covered });
      return [0, 1, 2, 3, 4, 5].map((x) => pixels[(2 * 6 + x) * 4]!);
    };
    const [bare, laid] = [red(false), red(true)];
    expect(laid[1]).toBe(laid[2]);
    expect(laid[1]).toBe(laid[4]);
    expect(bare[1]).not.toBe(bare[2]);
    for (const x of [0, 3, 5]) expect(laid[x]).toBe(bare[x]);
  });

  test('the share of dark pixels is the share of bonded cells', () => {
    const line = 'bbbbbbbbbboooooooooo';
    const frame = drawnFrame(Array.from({ length: 20 }, () => line));
    const pixels = paintMap(frame, { width: 200, height: 200, palette: LIGHT_PALETTE, turnedOver: true });
    let bonded = 0;
    for (let at = 0; at < pixels.length; at += 4) if (pixels[at]! < 170) bonded += 1;
    expect(bonded / (200 * 200)).toBeCloseTo(0.5, 1);
  });
});
