// `npm run bench`: what the solver, the questions and the pages cost, each beside its budget; `--json` for machines.
// Timings are this machine's and need it quiet; nothing here is a test. The pages need a built site (`npm run build`).
import { existsSync } from 'node:fs';

import { marchRows } from './marches.ts';
import { pageRows } from './pages.ts';
import { measureLearners, measureMaking } from './quiz-learners.ts';
import { solverRows } from './solver.ts';

const solver = solverRows();
const marches = marchRows();
const making = measureMaking();
const learners = measureLearners(500);
const pages = existsSync('dist/index.html') ? await pageRows() : [];
if (process.argv.includes('--json'))
  process.stdout.write(`${JSON.stringify({ solver, marches, making, learners, pages })}\n`);
else {
  console.log('Bed solver: press and four strokes, beside its budget');
  console.table(solver);
  console.log('The march of one pressure field beside a binary-heap march of the same');
  console.table(marches);
  console.log('Making one question');
  console.table([making]);
  console.log('Simulated learners: who is named rightly');
  console.table(learners);
  if (pages.length > 0) console.table(pages);
  else console.log('The pages are measured once the site is built: npm run build');
}
