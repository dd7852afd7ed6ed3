// `npm run bench`: what the solver, the questions, the desk and the pages cost, each beside its budget. `--only word`
// measures the parts whose name holds the word, `--json` prints for machines, `--write` writes RESULTS.md beside this
// file, or just those parts of it. Timings are this machine's and need it quiet; nothing here is a test. The pages need `npm run build`.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';

import type { Browser } from '@playwright/test';

import { benchPageSection } from './bench-page.ts';
import { buildsSection } from './builds.ts';
import { inChromium } from './chromium.ts';
import { deskSection } from './desk.ts';
import { framesSection } from './frames.ts';
import { figuresSection } from './lesson-figures.ts';
import { marchSection, yardstickMs } from './marches.ts';
import { pagesSection } from './pages.ts';
import { learnersSection, makingSection } from './questions.ts';
import { resultsPage, withSections } from './results-page.ts';
import { refinementSection } from './refinement.ts';
import { print, type Section } from './section.ts';
import { cellsSection, solverSection } from './solver.ts';
import { workerSection } from './worker-start.ts';

const RESULTS = 'tests/bench/RESULTS.md';

type Part = (browser: Browser, base: string) => Section | Promise<Section>;
const parts: Record<string, Part> = {
  solver: solverSection,
  figures: figuresSection,
  cells: cellsSection,
  march: marchSection,
  refinement: refinementSection,
  worker: workerSection,
  'bench-page': benchPageSection,
  frames: framesSection,
  pages: pagesSection,
  making: makingSection,
  learners: learnersSection,
  desk: deskSection,
  builds: buildsSection,
};

function stop(says: string): never {
  process.stderr.write(`Nothing was measured: ${says}\n`);
  process.exit(1);
}

function given(): { only?: string; json?: boolean; write?: boolean } {
  try {
    return parseArgs({
      options: { only: { type: 'string' }, json: { type: 'boolean' }, write: { type: 'boolean' } },
    }).values;
  } catch (problem) {
    return stop((problem as Error).message);
  }
}

const values = given();
const wanted = Object.entries(parts).filter(([name]) => name.includes(values.only ?? ''));
if (wanted.length === 0) stop(`no part's name holds '${values.only}'; the parts are ${Object.keys(parts).join(', ')}.`);
if (!existsSync('dist/index.html')) stop('there is no site to measure yet; make it with npm run build.');

const sections = await inChromium(async (browser, base) => {
  const done: Section[] = [];
  for (const [, measure] of wanted) {
    const section = await measure(browser, base);
    if (!values.json) print(section);
    done.push(section);
  }
  if (values.write) {
    const whole = values.only === undefined;
    const page = whole
      ? resultsPage(done, browser.version())
      : withSections(readFileSync(RESULTS, 'utf8'), done, yardstickMs());
    writeFileSync(RESULTS, await page);
  }
  return done;
});
if (values.json) process.stdout.write(`${JSON.stringify(sections)}\n`);
