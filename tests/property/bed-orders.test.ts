/**
 * What every setter expects: a deeper notch, a harder push, a softer mix and a filled back never cover less; moving
 * across never less than moving along; a swirl never more than straight ridges; a bowed tile never more than a flat one.
 * Where each holds is said beside it, and why not elsewhere in MODEL.md ("Orders").
 */
import { describe, it } from 'vitest';

import { coverage } from '@sim/bed/contact.ts';
import { ridgeHeightMm } from '@sim/trowel/notch.ts';

import { setupOf } from './bed-draws.ts';
import { check, covered, enlarged, expectOrder, level, pushed } from './bed-order-check.ts';
import { workedBed } from './bed-twins.ts';

/** Coverage by which straight ridges have left their first touch: a swirl's sweeps overlap and touch a little wider. */
const CLOSING = 0.65;

/** A cell meets the tile within a billionth of its gap; the front's part of a cell shows that a few times over. */
const TO_ROUNDING = 1e-8;

/** A press ends within a twentieth of its load; ridges met one by one under a tilting tile show that, if barely. */
const HALF_A_POINT = 0.005;

describe('orders of pressed beds, each over 300', { timeout: 300_000 }, () => {
  it('pressed in its middle, a flat tile covers no less by a third more depth, half more push or a mix half as stiff again', () => {
    check((draw) => {
      const setup = setupOf({ ...enlarged(level(draw), 8), slides: false });
      const { trowel, mortar } = setup;
      const here = covered(setup);
      expectOrder(here, covered({ ...setup, trowel: { ...trowel, depthMm: trowel.depthMm * 1.3 } }), 'deeper');
      expectOrder(here, covered(pushed(setup, 1.5)), 'more force');
      expectOrder(covered({ ...setup, mortar: { ...mortar, yieldPa: mortar.yieldPa * 1.5 } }), here, 'stiffer');
    });
  });

  it('nor, to half a point, by more depth or push does a warped tile pushed off its middle, where the comb leaves the lanes open', () => {
    check((draw) => {
      const pattern = draw.pattern === 'crossed' ? 'straight' : draw.pattern;
      // Laid down with less, a bowed tile rests on a crest or two, and which it meets first is chance.
      const push = Math.max(draw.push, 1);
      const setup = setupOf({ ...enlarged(draw, 8), pattern, push, slides: false });
      const { trowel } = setup;
      const here = covered(setup);
      const deeper = { ...setup, trowel: { ...trowel, depthMm: trowel.depthMm * 1.3 } };
      expectOrder(here, covered(deeper), 'deeper', HALF_A_POINT);
      expectOrder(here, covered(pushed(setup, 1.5)), 'more force', HALF_A_POINT);
    });
  });

  it('a coat that fills the relief of the back covers no less than the bare back', () => {
    check((draw) => {
      const setup = setupOf({ ...enlarged(level(draw), 8), slides: false });
      const reliefMm = 0.3 + 0.05 * draw.strokeMm;
      const bare = { ...setup, tile: { ...setup.tile, reliefMm } };
      expectOrder(covered(bare), covered({ ...bare, butterMm: reliefMm }), 'buttered', TO_ROUNDING);
    });
  });

  it('bowed by half a ridge and more, a tile pressed on straight ridges covers no more than flat under the load it bears', () => {
    check((draw) => {
      const setup = setupOf({ ...enlarged(level(draw), 8), pattern: 'straight', slides: false });
      const bow = ridgeHeightMm(setup.trowel) * (0.5 + 0.05 * draw.strokeMm);
      const bed = workedBed({ ...setup, tile: { ...setup.tile, bowLengthMm: bow } });
      // Ridges under a bow are met a few at a time, so the press ends on one that bears somewhat more than was asked.
      const forceN = Math.max(0, bed.load.forceN - bed.weightN);
      expectOrder(coverage(bed), covered({ ...setup, actions: [{ do: 'press', forceN, atX: 0, atY: 0 }] }), 'bowed');
    });
  });

  it('on a tile of eight pitches and more, pressed until lanes begin to close, a swirl covers no more than straight ridges', () => {
    check((draw) => {
      // Under a smaller one a sweep is nearly straight, and all air finds its way out.
      const notch = 10 + draw.strokeMm / 2;
      const setup = setupOf({ ...enlarged(level(draw), 40), notch, pattern: 'straight', slides: false });
      const straight = covered(setup);
      if (straight < CLOSING) return;
      expectOrder(covered({ ...setup, comb: { ...setup.comb, pattern: 'swirl' } }), straight, 'swirl');
    });
  });
});
