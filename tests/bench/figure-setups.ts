import { type LiveFigure, setupFor, startSettings } from '@site/lessons/live-figure.ts';

const files = import.meta.glob<{ figure: LiveFigure }>('/lessons/en/figures/*.ts', { eager: true });

/** Every mixture of a figure's choices and of the ends of its sliders. */
function everySetting({ controls }: LiveFigure): Record<string, number>[] {
  return controls.reduce<Record<string, number>[]>(
    (made, control) => {
      const values = control.kind === 'range' ? [control.least, control.most] : control.options.map((__, at) => at);
      return made.flatMap((settings) => values.map((value) => ({ ...settings, [control.id]: value })));
    },
    [{}],
  );
}

/** The set-ups of each live figure; read by the bench from a bundle of this file. @public */
export const worked = Object.entries(files).map(([path, { figure }]) => ({
  figure: path.replace(/^.*\/|\.ts$/g, ''),
  setups: everySetting(figure).map((settings) => ({
    settings: Object.entries(settings)
      .map(([id, value]) => `${id} ${value}`)
      .join(', '),
    setup: setupFor(figure, { ...startSettings(figure), ...settings }),
  })),
}));
