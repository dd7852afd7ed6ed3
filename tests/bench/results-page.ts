import { availableParallelism } from 'node:os';

import { format, resolveConfig } from 'prettier';

import { YARDSTICK_MS } from './marches.ts';
import { asMarkdown, type Section } from './section.ts';

const READING = `
Written by \`npm run bench -- --write\`; \`npm run bench -- --only solver\` measures one part. A row holds when its figure is
within the budget beside it. Figures by the clock rise when anything else runs on the machine, so read a missed one again
on a quiet machine before you look for its cause; what counts is the order of size and what changed against the page
before. Counts (cells, steps, bytes, kilobytes of script) do not move. All times move with the machine, and the plain heap
march below is the yardstick for it: \`heapMs\` of 121,024 cells is ${YARDSTICK_MS} on the machine the budgets were held on, so where it
says ${2 * YARDSTICK_MS} a run takes twice its time. Nothing here decides whether a test passes.
`;

/** Measured once with a trial that was not kept; measure anew before the march changes its language. */
const KERNEL = `
## Would a compiled kernel pay?

The march was written once more in AssemblyScript and compiled to WebAssembly, its arrays already in the module's memory
(so nothing is copied), and run beside the TypeScript on the same fields in the same process. Both gave the same pressures
to the last bit.

| field | cells | TypeScript, ms | WebAssembly, ms | ratio |
| --- | --- | --- | --- | --- |
| combed bed in mid-press | 121,024 | 4.0 | 2.3 | 1.7 |
| combed bed in mid-press | 242,190 | 9.1 | 5.1 | 1.8 |
| full flat layer, every cell | 121,024 | 5.7 | 1.6 | 3.5 |

The march is about a third of a run, so a whole run would end 1.2 times as soon, and no more than 1.5 times if the march
cost nothing. That is below the twofold gain that a second language in the house would have to bring: the solver stays
plain TypeScript.
`;

const styled = async (text: string): Promise<string> =>
  format(text, { ...(await resolveConfig('tests/bench/RESULTS.md')), parser: 'markdown' });

/**
 * The page with some sections measured anew, each with the machine it was measured on; the others stand.
 * @param heapMs the yardstick, measured beside them
 */
export function withSections(page: string, sections: readonly Section[], heapMs: number): Promise<string> {
  let text = page;
  for (const section of sections) {
    const from = text.indexOf(`## ${section.title}\n`);
    if (from < 0) throw new Error(`RESULTS.md has no section “${section.title}”: write the whole page first.`);
    const next = text.indexOf('\n## ', from);
    const says = `${section.says} Measured by itself, where the heap march took ${Math.round(heapMs)} ms.`;
    text = `${text.slice(0, from)}${asMarkdown({ ...section, says })}${next < 0 ? '' : text.slice(next)}`;
  }
  return styled(text);
}

/** The committed page of results. */
export async function resultsPage(sections: readonly Section[], browser: string): Promise<string> {
  const text = [
    '# What it costs',
    READING,
    `Measured on ${availableParallelism()} cores, Node ${process.versions.node}, Chromium ${browser} without a graphics card.`,
    ...sections.map(asMarkdown),
    KERNEL,
  ].join('\n\n');
  return styled(text);
}
