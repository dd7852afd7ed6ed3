import { describe, expect, it } from 'vitest';

import { figure as bow } from '@lessons/en/figures/bow-and-bed.ts';
import { figure as crossed } from '@lessons/en/figures/crossed-comb.ts';
import { figure as far } from '@lessons/en/figures/how-far.ts';
import { figure as ribs } from '@lessons/en/figures/ribs-and-coat.ts';
import { figure as room } from '@lessons/en/figures/room-to-slide.ts';
import { figure as mixes } from '@lessons/en/figures/three-mixes.ts';
import { runBed } from '@sim/bed/run.ts';
import type { BedResult } from '@sim/bed/types.ts';
import { setupFor, startSettings, type LiveFigure, type Settings } from '@site/lessons/live-figure.ts';

const pull = (figure: LiveFigure, settings: Settings = {}): BedResult =>
  runBed(setupFor(figure, { ...startSettings(figure), ...settings })).result;

/** What each figure's closing words claim must come out of the solver with the figure's own settings. */
describe('live figures show what their words say', () => {
  it('mixing: the stiff mix stays on its ridges, the soft one fills and rises in the joint; moving helps the stiff one', () => {
    const [soft, holds, stiff] = [0, 1, 2].map((mix) => pull(mixes, { mix }));
    expect(stiff!.coverage).toBeLessThan(0.75);
    expect(holds!.coverage).toBeGreaterThan(stiff!.coverage + 0.1);
    expect(soft!.coverage).toBeGreaterThan(holds!.coverage);
    expect(soft!.riseInJoint).toBeGreaterThan(holds!.riseInJoint);
    expect(pull(mixes, { mix: 2, hands: 1 }).coverage).toBeGreaterThan(0.9);
  });

  it('combing: crossed ridges shut air in and pushing harder hardly helps; straight ones fill with the steady hand', () => {
    const both = pull(crossed);
    const harder = pull(crossed, { push: 1 });
    expect(both.trapped).toBeGreaterThan(0.2);
    expect(harder.coverage - both.coverage).toBeLessThan(0.1);
    const straight = pull(crossed, { comb: 1 });
    expect(straight.trapped).toBeLessThan(0.01);
    expect(straight.coverage).toBeGreaterThan(0.97);
    expect(both.coverage).toBeLessThan(0.85);
    expect(pull(crossed, { comb: 2 }).trapped).toBeLessThan(0.01);
  });

  it('setting: pressing a large tile does little; across beats along at every stroke; a longer stroke fills more', () => {
    expect(pull(far).coverage).toBeLessThan(0.6);
    const across = [3, 6, 12].map((stroke) => pull(far, { way: 1, far: stroke }).coverage);
    const along = [3, 6, 12].map((stroke) => pull(far, { way: 2, far: stroke }).coverage);
    // At the longest stroke both are nearly full, so there only the order is claimed.
    across.forEach((one, i) => expect(one).toBeGreaterThan(along[i]! + (i < 2 ? 0.05 : 0)));
    expect(across[1]!).toBeGreaterThan(across[0]! + 0.05);
    // Along, twice the stroke covers what one stroke covers across, while there are lanes left to close.
    expect(Math.abs(along[1]! - across[0]!)).toBeLessThan(0.04);
    expect(across[2]!).toBeGreaterThan(0.95);
    expect(pull(far, { size: 1 }).coverage).toBeGreaterThan(pull(far).coverage + 0.2);
  });

  it('large tile: shaken in the joint closes a part of the lanes; slid in closes them; so does a narrower notch', () => {
    const shaken = pull(room).coverage;
    expect(shaken).toBeGreaterThan(pull(room, { move: 2 }).coverage + 0.1);
    expect(shaken).toBeLessThan(0.8);
    expect(pull(room, { move: 1 }).coverage).toBeGreaterThan(0.9);
    expect(pull(room, { notch: 1 }).coverage).toBeGreaterThan(0.9);
    expect(Math.abs(pull(room, { back: 1 }).coverage - shaken)).toBeLessThan(0.05);
  });

  it('buttering: ribs cost coverage and bed, their filling brings both back', () => {
    const bare = pull(ribs);
    const filled = pull(ribs, { back: 1 });
    const smooth = pull(ribs, { back: 2 });
    expect(filled.coverage).toBeGreaterThan(bare.coverage + 0.02);
    expect(filled.bedMm.mean).toBeGreaterThan(bare.bedMm.mean + 0.3);
    // Filling the ribs makes of a ribbed back a smooth one: by volume the two are one bed.
    expect(filled.coverage).toBeCloseTo(smooth.coverage, 2);
    expect(pull(ribs, { notch: 1 }).coverage).toBeGreaterThan(bare.coverage);
  });

  it('bow: a flat strip covers more than a crowned or a cupped one, and deeper ridges help the crowned one', () => {
    const flat = pull(bow, { bow: 0 }).coverage;
    const crowned = pull(bow);
    const cupped = pull(bow, { bow: -2 });
    expect(crowned.coverage).toBeLessThan(flat - 0.04);
    expect(cupped.coverage).toBeLessThan(flat - 0.04);
    expect(Math.min(...cupped.corners)).toBeLessThan(Math.min(...crowned.corners));
    expect(pull(bow, { notch: 1 }).coverage).toBeGreaterThan(crowned.coverage);
  });
});
