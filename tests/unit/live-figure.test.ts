import { describe, expect, it } from 'vitest';

import { figure } from '@lessons/en/figures/press-or-slide.ts';
import { runBed } from '@sim/bed/run.ts';
import { setupFor, startSettings } from '@site/lessons/live-figure.ts';

const coverageWith = (settings: Record<string, number>): number =>
  runBed(setupFor(figure, { ...startSettings(figure), ...settings })).result.coverage;

describe('the first lesson’s figure shows what the lesson says', () => {
  it('leaves lanes open when the tile is only pressed, and closes them when it is moved across', () => {
    const pressed = coverageWith({});
    const across = coverageWith({ hands: 1 });
    const along = coverageWith({ hands: 2 });
    const swirl = coverageWith({ hands: 1, comb: 1 });
    expect(pressed).toBeLessThan(0.85);
    expect(across).toBeGreaterThan(pressed + 0.1);
    expect(across).toBeGreaterThan(along);
    expect(swirl).toBeLessThan(across);
  });
});
