import { describe, expect, it } from 'vitest';

import { figure } from '@lessons/en/figures/press-or-slide.ts';
import { layOut } from '@sim/bed/layout.ts';
import { runBed } from '@sim/bed/run.ts';
import { pitchMm } from '@sim/trowel/notch.ts';
import { type LiveFigure, setupFor, startSettings } from '@site/lessons/live-figure.ts';

import { LESSON_CELL_MM, lessonSized } from '../bench/solver.ts';

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

describe('every live figure runs on the cells that the bench measures', () => {
  const figures = import.meta.glob<{ figure: LiveFigure }>('/lessons/en/figures/*.ts', { eager: true });
  it.each(Object.entries(figures))('%s', (_, { figure: shown }) => {
    const measured = layOut(lessonSized('straight').tile, LESSON_CELL_MM);
    const choices = shown.controls.flatMap((control) =>
      control.kind === 'choice' ? control.options.map((__, at) => ({ [control.id]: at })) : [],
    );
    for (const settings of [{}, ...choices]) {
      const setup = setupFor(shown, { ...startSettings(shown), ...settings });
      const { tileColumns, tileRows } = layOut(setup.tile, setup.cellMm);
      expect(pitchMm(setup.trowel) / setup.cellMm).toBeGreaterThanOrEqual(8 - 1e-9);
      expect(tileColumns * tileRows).toBeLessThan(1.1 * measured.tileColumns * measured.tileRows);
    }
  });
});
