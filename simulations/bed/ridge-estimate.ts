import { slidTransfer, pressedTransfer } from '../mortar/skin.ts';
import { restedYieldPa } from '../mortar/rest.ts';
import { direction } from '../numbers/plain.ts';
import { rootOfRising } from '../numbers/find-root.ts';
import { meanDepthMm } from '../tile/relief.ts';
import { warpOf } from '../tile/warp.ts';
import { meanBedMm, pitchMm, ridgeHeightMm } from '../trowel/notch.ts';
import { GRAVITY } from '../numbers/physics.ts';
import { END_TERM } from './bed.ts';
import { leanOf } from './lean.ts';
import { coverageAtGap, pressedAt, pressureAt, type Ridges } from './ridge-law.ts';
import { slideRate } from './slide-law.ts';
import type { BedAction, BedSetup } from './types.ts';

/** What the ridge law says of a set-up. */
export interface RidgeEstimate {
  /** Share of the back bonded, 0…1. */
  coverage: number;
  /** The least coverage at any place of the back, before skin is counted. */
  leastCoverage: number;
  /** Gap under the tile's mean plane, mm. */
  tileHeightMm: number;
}

/** Places a side at which the gap is looked at. */
const PLACES = 9;
const SLIDE_STEPS = 8;
const MOST_LOAD = 0.97;

/** Gap over the mean plane's height at even places of the tile, mm. */
function unevenness(setup: BedSetup): number[] {
  const { tile, floor } = setup;
  const back = warpOf(tile, tile.lengthMm, tile.widthMm);
  const ground = warpOf(floor, tile.lengthMm, tile.widthMm);
  const at = (n: number, side: number): number => ((n + 0.5) / PLACES - 0.5) * side;
  const list: number[] = [];
  for (let k = 0; k < PLACES; k += 1)
    for (let n = 0; n < PLACES; n += 1) {
      const x = at(n, tile.lengthMm);
      const y = at(k, tile.widthMm);
      list.push(back(x, y) - ground(x, y));
    }
  return list;
}

const meanOf = (values: number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Ridges with the coats and the relief of a set-up: a relief not filled takes from the ridges. */
function ridgesOf(setup: BedSetup): { ridges: Ridges; coatMm: number; topMm: number } {
  const { trowel, comb, tile, butterMm } = setup;
  const coat = comb.keyCoatMm + butterMm - meanDepthMm(tile);
  const even = comb.pattern === 'flat' || comb.flattened;
  const mean = comb.pattern === 'flat' ? trowel.depthMm : meanBedMm(trowel);
  const pitch = pitchMm(trowel);
  return {
    ridges: {
      pitchMm: pitch,
      meanMm: Math.max(1e-3, mean + Math.min(0, coat)),
      touchShare: 0,
      lean: leanOf(setup)?.share ?? 0,
    },
    coatMm: Math.max(0, coat),
    topMm: (even ? mean : ridgeHeightMm(trowel)) + coat,
  };
}

/**
 * Mean pressure, in yield stresses, under which a merged patch gives way to its edges: the sand-heap roof over the
 * patch, with the end term. This is what holds a tile up once its ridges have met.
 */
function mergedPressure(lengthMm: number, widthMm: number, gapMm: number): number {
  const long = Math.max(lengthMm, widthMm);
  const short = Math.min(lengthMm, widthMm);
  return END_TERM + (short * (3 * long - short)) / (6 * long * gapMm);
}

/**
 * Coverage of straight ridges by the ridge law at each place of a warped tile on an uneven floor, the tile sinking as
 * one rigid piece without tilting. Air, edges and joints are left out; a swirl or crossed comb is not straight ridges
 * and needs the solver. Takes well under a millisecond for a press, about one with slides.
 */
export function ridgeEstimate(setup: BedSetup): RidgeEstimate {
  const { tile, mortar, physics } = setup;
  const { ridges, coatMm, topMm } = ridgesOf(setup);
  const uneven = unevenness(setup);
  const areaM2 = tile.lengthMm * tile.widthMm * 1e-6;
  const weightPa = physics.weight ? tile.thicknessMm * 1e-3 * tile.densityKgM3 * GRAVITY : 0;
  const shareAt = (gap: number): number => (gap > topMm ? 0 : coverageAtGap(gap, ridges, coatMm));
  /** Mean pressure the bed bears at a height of the tile, in yield stresses: pressed, or while it is slid. */
  const bears = (height: number, ridgesBear = pressedAt): number => {
    const gaps = uneven.map((more) => height + more);
    const merged = gaps.filter((gap) => shareAt(gap) >= 1).length / gaps.length;
    return meanOf(
      gaps.map((gap) =>
        shareAt(gap) < 1
          ? ridgesBear(shareAt(gap), ridges, coatMm)
          : Math.max(pressureAt(1, ridges, coatMm), mergedPressure(merged * tile.lengthMm, tile.widthMm, gap)),
      ),
    );
  };

  let height = topMm - Math.min(...uneven);
  let slid = 0;
  const least = (ridges.meanMm + coatMm) / 4 - Math.min(...uneven);
  const press = (pressurePa: number, yieldPa: number): void => {
    const wanted = pressurePa / yieldPa;
    if (bears(height) >= wanted) return;
    height = -rootOfRising((down) => bears(-down) - wanted, -height, -least, 40);
  };
  const slide = (pressurePa: number, pathMm: number, across: number, speedMmS: number): void => {
    press(pressurePa, mortar.yieldPa);
    const step = pathMm / SLIDE_STEPS;
    for (let n = 0; n < SLIDE_STEPS; n += 1) {
      const load = Math.min(MOST_LOAD, pressurePa / (mortar.yieldPa * Math.max(1e-9, bears(height, pressureAt))));
      const viscous = physics.viscosity ? (mortar.viscosityPaS * speedMmS) / (mortar.yieldPa * height) : 0;
      const rate = slideRate(load, across, viscous);
      let taken = 0;
      let contact = 0;
      for (const more of uneven) {
        const share = shareAt(height + more);
        contact += share;
        if (share > 0 && share < 1) taken += ((height + more - coatMm) * rate) / ridges.pitchMm;
      }
      if (contact === 0 || taken === 0) break;
      height -= (taken / contact) * step;
    }
    slid += pathMm;
  };

  press(weightPa, mortar.yieldPa);
  for (const action of setup.actions) work(action);

  function work(action: BedAction): void {
    const forceN = 'forceN' in action ? action.forceN : 0;
    const pressure = weightPa + forceN / areaM2;
    switch (action.do) {
      case 'press':
        press(pressure, slid > 0 ? mortar.yieldPa : restedYieldPa(mortar.yieldPa, mortar.ageMin));
        return;
      case 'slide': {
        const across = Math.abs(direction(action.directionDeg - setup.comb.directionDeg)[1]);
        slide(pressure, action.strokeMm * action.strokes, across, action.speedMmS);
        return;
      }
      case 'vibrate': {
        const speed = 2 * Math.PI * action.amplitudeMm * action.frequencyHz;
        slide(pressure, speed * action.seconds, Math.SQRT1_2, speed);
        return;
      }
      case 'twist':
      case 'tap':
        // Neither is one of the law's even movements; a press by the weight stands for them.
        press(pressure, mortar.yieldPa);
        return;
      case 'lift':
    }
  }

  const shares = uneven.map((more) => shareAt(height + more));
  const transfer = slidTransfer(pressedTransfer(mortar.ageMin, mortar.skinMin), slid);
  return { coverage: meanOf(shares) * transfer, leastCoverage: Math.min(...shares), tileHeightMm: height };
}
