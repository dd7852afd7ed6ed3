import { coverageAfterSlide, coverageUnder, type Ridges } from '@sim/bed/ridge-law.ts';
import { yieldFromPatty } from '@sim/mortar/two-plate.ts';
import { rootOfRising } from '@sim/numbers/find-root.ts';
import { GRAVITY } from '@sim/numbers/physics.ts';
import { meanBedMm, pitchMm } from '@sim/trowel/notch.ts';
import type { TrowelSetup } from '@sim/bed/types.ts';

/** The class experiment: a square of glass on combed ridges, three loads, three ways to set it, two mixes. */
export const ways = ['press', 'across', 'along'] as const;
export type Way = (typeof ways)[number];

export interface ExperimentSetup {
  trowel: TrowelSetup;
  /** Edge of the glass, mm. */
  glassMm: number;
  /** The three loads, glass counted in, kg. */
  loadsKg: number[];
  /** One stroke, mm; the glass goes there and back. */
  strokeMm: number;
  /** Width of each mix's patty in the two-plate test, mm. */
  pattiesMm: number[];
}

/** One result: which mix, which load, which way. */
export interface Cell {
  mix: number;
  load: number;
  way: Way;
}

/** The two-plate test the class runs: 50 mL under two kilograms. */
export const plates = { volumeMm3: 50_000, forceN: 2 * GRAVITY };
/** Plastic viscosity of a common mortar, Pa·s, and a slow hand, mm/s (both from memory). */
const VISCOSITY = 10;
const SPEED = 10;

export const yieldOf = (setup: ExperimentSetup, mix: number): number =>
  yieldFromPatty(setup.pattiesMm[mix] ?? 0, plates);

const ridges = (trowel: TrowelSetup): Ridges => ({
  pitchMm: pitchMm(trowel),
  meanMm: meanBedMm(trowel),
  touchShare: trowel.shape === 'v' ? 0 : trowel.widthMm / pitchMm(trowel),
});

/** Coverage that the ridge law foretells for one way of setting, 0…1. @param yieldPa yield stress of the mix */
export function foretell(setup: ExperimentSetup, cell: Cell, yieldPa = yieldOf(setup, cell.mix)): number {
  const areaM2 = (setup.glassMm / 1000) ** 2;
  const pressure = ((setup.loadsKg[cell.load] ?? 0) * GRAVITY) / areaM2 / yieldPa;
  const comb = ridges(setup.trowel);
  const pressed = coverageUnder(pressure, comb);
  if (cell.way === 'press') return pressed;
  const slide = {
    pathMm: 2 * setup.strokeMm,
    across: cell.way === 'across' ? 1 : 0,
    viscousMm: (VISCOSITY * SPEED) / yieldPa,
  };
  return coverageAfterSlide(pressed, pressure, slide, comb);
}

/** The eighteen cells in the order of the form. */
export const cells: readonly Cell[] = [0, 1].flatMap((mix) =>
  [0, 1, 2].flatMap((load) => ways.map((way) => ({ mix, load, way }))),
);
export const cellKey = ({ mix, load, way }: Cell): string => `${mix}.${load}.${way}`;

/** A share as a class writes it: "62", "62 %" or "62,5"; null when the box is empty. @returns NaN for anything else */
export function readShare(text: string): number | null {
  const trimmed = text.trim();
  if (trimmed === '') return null;
  const found = /^(\d{1,3}(?:[.,]\d+)?)\s*%?$/.exec(trimmed);
  const value = found ? Number((found[1] ?? '').replace(',', '.')) : Number.NaN;
  return value <= 100 ? value / 100 : Number.NaN;
}

export interface Comparison {
  count: number;
  /** Mean of measured less foretold, points. */
  bias: number;
  /** Mean distance, points. */
  apart: number;
  furthest: { cell: Cell; by: number } | null;
  /** Pairs of one load and mix where across was measured above along, of those with both. */
  acrossAhead: { ahead: number; of: number };
}

/** Measured against foretold over the results that are in. */
export function compare(setup: ExperimentSetup, measured: ReadonlyMap<string, number>): Comparison {
  const misses = cells.flatMap((cell) => {
    const found = measured.get(cellKey(cell));
    return found === undefined ? [] : [{ cell, by: 100 * (found - foretell(setup, cell)) }];
  });
  const mean = (values: number[]): number =>
    values.length === 0 ? 0 : values.reduce((a, b) => a + b, 0) / values.length;
  const pairs = cells
    .filter((cell) => cell.way === 'across')
    .map((cell) => [measured.get(cellKey(cell)), measured.get(cellKey({ ...cell, way: 'along' }))] as const)
    .filter((pair): pair is readonly [number, number] => pair[0] !== undefined && pair[1] !== undefined);
  return {
    count: misses.length,
    bias: mean(misses.map((one) => one.by)),
    apart: mean(misses.map((one) => Math.abs(one.by))),
    furthest: misses.reduce<Comparison['furthest']>(
      (far, one) => (far === null || Math.abs(one.by) > Math.abs(far.by) ? one : far),
      null,
    ),
    acrossAhead: { ahead: pairs.filter(([across, along]) => across > along).length, of: pairs.length },
  };
}

const LEAST_PA = 10;
const MOST_PA = 20_000;

/** Yield stress at which the ridge law fits a mix's pressed results on the mean, Pa; null with none, or none that fit. */
export function fittedYield(setup: ExperimentSetup, mix: number, measured: ReadonlyMap<string, number>): number | null {
  const pressed = cells.filter((cell) => cell.mix === mix && cell.way === 'press' && measured.has(cellKey(cell)));
  if (pressed.length === 0) return null;
  const over = (yieldPa: number): number =>
    pressed.reduce((sum, cell) => sum + (measured.get(cellKey(cell)) ?? 0) - foretell(setup, cell, yieldPa), 0);
  if (over(LEAST_PA) >= 0 || over(MOST_PA) <= 0) return null;
  return rootOfRising(over, LEAST_PA, MOST_PA, 60);
}
