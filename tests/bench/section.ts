/** One table of the bench with the sentence that says how to read it. */
export interface Section {
  title: string;
  /** What is measured, how, and against which budget. */
  says: string;
  rows: readonly object[];
}

const shown = (value: unknown): string => {
  if (value === true) return 'yes';
  if (value === false) return '**no**';
  if (typeof value === 'number') return Number.isInteger(value) ? String(value) : String(Number(value.toPrecision(3)));
  return String(value ?? '');
};

function table(rows: readonly object[]): string {
  const names = Object.keys(rows[0] ?? {});
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [
    line(names),
    line(names.map(() => '---')),
    ...rows.map((row) => line(names.map((name) => shown((row as Record<string, unknown>)[name])))),
  ].join('\n');
}

export const asMarkdown = ({ title, says, rows }: Section): string =>
  `## ${title}\n\n${says}\n\n${rows.length === 0 ? 'Not measured.' : table(rows)}\n`;

export function print({ title, says, rows }: Section): void {
  process.stdout.write(`\n${title}\n${says}\n`);
  console.table(rows);
}

/** The middle of several numbers. */
export const middle = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? NaN;
