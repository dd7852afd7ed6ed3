/** What the lessons' live figures cost: each at every choice it offers and at both ends of each slider. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import { build } from 'vite';

import { runBed } from '../../simulations/bed/run.ts';
import type { BedSetup } from '../../simulations/bed/types.ts';
import { middle, type Section } from './section.ts';

/** Two frames of a screen: a slider then feels live. */
const BUDGET_MS = 33;
const TIMES = 3;
/** The clock of processor time ticks in milliseconds, so several runs are timed as one. */
const RUNS_AT_ONCE = 5;

interface Worked {
  figure: string;
  setups: { settings: string; setup: BedSetup }[];
}

/** The figures as the site has them; bundled, since they stand on aliases that Node does not know. */
async function figures(): Promise<Worked[]> {
  const folder = mkdtempSync(join(tmpdir(), 'figures-'));
  try {
    await build({
      configFile: false,
      publicDir: false,
      logLevel: 'error',
      resolve: { tsconfigPaths: true },
      ssr: { noExternal: true },
      build: {
        outDir: folder,
        ssr: 'tests/bench/figure-setups.ts',
        rollupOptions: { output: { entryFileNames: 'figures.mjs' } },
      },
    });
    const made = (await import(pathToFileURL(join(folder, 'figures.mjs')).href)) as { worked: Worked[] };
    return made.worked;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Processor time of one run, ms: the middle of a few timings. */
function cost(setup: BedSetup): number {
  const times = Array.from({ length: TIMES }, () => {
    const before = process.threadCpuUsage();
    for (let n = 0; n < RUNS_AT_ONCE; n += 1) runBed(setup);
    const { user, system } = process.threadCpuUsage(before);
    return (user + system) / 1000 / RUNS_AT_ONCE;
  });
  return middle(times);
}

export async function figuresSection(): Promise<Section> {
  const all = await figures();
  for (const { setups } of all) for (const { setup } of setups) runBed(setup);
  return {
    title: 'The lessons’ live figures',
    says: `Each at every choice and at both ends of each slider; \`cpuMs\` is the dearest of them, the middle of ${TIMES} timings of ${RUNS_AT_ONCE} runs. Budget: two frames of a screen, so that a slider feels live.`,
    rows: all.map(({ figure, setups }) => {
      const costs = setups.map(({ setup }) => cost(setup));
      const dearest = Math.max(...costs);
      return {
        figure,
        settings: setups.length,
        middleMs: Math.round(middle(costs)),
        cpuMs: Math.round(dearest),
        dearest: setups[costs.indexOf(dearest)]?.settings ?? '',
        budgetMs: BUDGET_MS,
        holds: dearest <= BUDGET_MS,
      };
    }),
  };
}
