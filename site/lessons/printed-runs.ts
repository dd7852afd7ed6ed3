import { runBed } from '@sim/bed/run.ts';
import type { BedResult } from '@sim/bed/types.ts';

import { setupFor, startSettings, type LiveFigure, type Settings } from './live-figure.ts';

/** A figure as it begins, or with one thing of it changed, and what the bed gave. */
export interface PrintedRun {
  /** What was changed; null for the figure as it begins. */
  changed: { control: string; to: string } | null;
  result: BedResult;
}

const give = (figure: LiveFigure, settings: Settings): BedResult => runBed(setupFor(figure, settings)).result;

/**
 * What a live figure shows, for paper and for browsers without script: as it begins, and with each choice changed by
 * itself. Sliders stay where they begin. Computed when the page is built.
 */
export function printedRuns(figure: LiveFigure): PrintedRun[] {
  const start = startSettings(figure);
  const changes = figure.controls.flatMap((control) =>
    control.kind === 'range'
      ? []
      : control.options.flatMap(({ label }, at) => (at === control.start ? [] : [{ control, to: label, at }])),
  );
  return [
    { changed: null, result: give(figure, start) },
    ...changes.map(({ control, to, at }) => ({
      changed: { control: control.label, to },
      result: give(figure, { ...start, [control.id]: at }),
    })),
  ];
}
