/** The orders of `bed-orders.test.ts` for beds that are moved after the press. */
import { describe, it } from 'vitest';

import { setupOf } from './bed-draws.ts';
import { check, covered, expectOrder, level, pushed, turned } from './bed-order-check.ts';

describe('orders of moved beds, each over 300', { timeout: 300_000 }, () => {
  it('moved after the press, the same holds where the comb leaves the lanes open', () => {
    check((draw) => {
      const pattern = draw.pattern === 'crossed' ? 'straight' : draw.pattern;
      const setup = setupOf({ ...level(draw), pattern, slides: true });
      const { trowel, mortar } = setup;
      const here = covered(setup);
      expectOrder(here, covered({ ...setup, trowel: { ...trowel, depthMm: trowel.depthMm * 1.3 } }), 'deeper');
      expectOrder(here, covered(pushed(setup, 1.5)), 'more force');
      expectOrder(covered({ ...setup, mortar: { ...mortar, yieldPa: mortar.yieldPa * 1.5 } }), here, 'stiffer');
    });
  });

  it('moving across straight ridges covers no less than moving along them', () => {
    check((draw) => {
      const setup = setupOf({ ...level(draw), pattern: 'straight', slides: true });
      expectOrder(covered(turned(setup, 0)), covered(turned(setup, 90)), 'along');
    });
  });
});
