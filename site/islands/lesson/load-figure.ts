import type { LiveFigure } from '@site/lessons/live-figure.ts';

const figures = import.meta.glob<{ figure: LiveFigure }>('/lessons/en/figures/*.ts');

/** Brings a figure of that name. @throws when the lessons folder has none */
export async function loadFigure(name: string): Promise<LiveFigure> {
  const load = figures[`/lessons/en/figures/${name}.ts`];
  if (!load) throw new Error(`No figure "${name}" in lessons/en/figures`);
  return (await load()).figure;
}
