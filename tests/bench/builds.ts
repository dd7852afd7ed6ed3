/** How long the site takes to build, and what `npm test` took the last time it passed here. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { TIMES_FILE } from '../../site/commands/times.mjs';
import type { Section } from './section.ts';

const TEST_BUDGET_S = 720;

function buildSeconds(): number {
  const folder = mkdtempSync(join(tmpdir(), 'bench-build-'));
  const begun = performance.now();
  const done = spawnSync('npx', ['--no-install', 'astro', 'build', '--outDir', folder], { stdio: 'ignore' });
  const seconds = (performance.now() - begun) / 1000;
  rmSync(folder, { recursive: true });
  if (done.status !== 0) throw new Error('The site does not build.');
  return seconds;
}

const tests = (): [string, number][] =>
  existsSync(TIMES_FILE) ? (JSON.parse(readFileSync(TIMES_FILE, 'utf8')) as [string, number][]) : [];

export function buildsSection(): Section {
  const steps = tests();
  const total = steps.reduce((sum, [, seconds]) => sum + seconds, 0);
  return {
    title: 'Build and tests',
    says: `By the clock. The build is run anew; the steps of \`npm test\` are those of the last time it passed on this machine, budget ${TEST_BUDGET_S / 60} min on two cores.`,
    rows: [
      { what: 'site built', seconds: Math.round(buildSeconds()), budgetS: '', holds: '' },
      ...steps.map(([name, seconds]) => ({ what: `npm test: ${name}`, seconds, budgetS: '', holds: '' })),
      ...(steps.length > 0
        ? [{ what: 'npm test, all', seconds: total, budgetS: TEST_BUDGET_S, holds: total <= TEST_BUDGET_S }]
        : []),
    ],
  };
}
