import { availableParallelism } from 'node:os';

import { format, resolveConfig } from 'prettier';

import { asMarkdown, type Section } from './section.ts';

const READING = `
Written by \`npm run bench -- --write\`; \`npm run bench -- --only solver\` measures one part. A row holds when its figure is
within the budget beside it. Figures by the clock rise when anything else runs on the machine, so read a missed one again
on a quiet machine before you look for its cause; what counts is the order of size and what changed against the page
before. Processor time (\`cpuMs\`) and counts (cells, steps, bytes, kilobytes of script) hardly move. Nothing here decides
whether a test passes.
`;

/** Measured once with a trial that was not kept; measure anew before you change the march's language. */
const KERNEL = '';

/** The committed page of results. */
export async function resultsPage(sections: readonly Section[], browser: string): Promise<string> {
  const text = [
    '# What it costs',
    READING,
    `Measured on ${availableParallelism()} cores, Node ${process.versions.node}, Chromium ${browser} without a graphics card.`,
    ...sections.map(asMarkdown),
    KERNEL,
  ].join('\n\n');
  return format(text, { ...(await resolveConfig('tests/bench/RESULTS.md')), parser: 'markdown' });
}
