// `npm run bench`: what the solver and the pages cost, each beside its budget; `--json` for machines. Timings are this
// machine's and need it quiet; nothing here is a test. The pages need a built site (`npm run build`).
import { existsSync } from 'node:fs';

import { pageRows } from './pages.ts';
import { solverRows } from './solver.ts';

const solver = solverRows();
const pages = existsSync('dist/index.html') ? await pageRows() : [];
if (process.argv.includes('--json')) process.stdout.write(`${JSON.stringify({ solver, pages })}\n`);
else {
  console.table(solver);
  if (pages.length > 0) console.table(pages);
  else console.log('The pages are measured once the site is built: npm run build');
}
