/**
 * Runs the solver for every kept set-up of the quiz bank and writes `quiz-bank/runs/kept.ts`. To be run when the solver
 * or the set-ups change; a test re-computes some of the runs and says when it was forgotten.
 */
import { writeFileSync } from 'node:fs';

import { recordAll } from '../../quiz-bank/runs/record.ts';

const rows = recordAll().map((run) => `  ${JSON.stringify(run)},`);
const text = `import type { KeptRun } from './record.ts';

/** Written by \`npm run record\`; not to be edited. */
export const keptRuns: readonly KeptRun[] = [
${rows.join('\n')}
];
`;
writeFileSync(new URL('../../quiz-bank/runs/kept.ts', import.meta.url), text);
process.stdout.write(`${rows.length} runs kept.\n`);
