/**
 * The computing core without a page: JSON in (a file, or `-` for standard input), JSON out.
 * Exit 0; 2 for bad input (a line per fault on standard error); 1 for our own failure.
 */
import { readInput } from './calc/input.ts';
import { verbs } from './calc/verbs.ts';
import { faultSentence } from './input/fault.ts';

const [, , verb = '', file = ''] = process.argv;

async function main(): Promise<number> {
  const known = Object.keys(verbs);
  const load = verbs[verb];
  if (!load) {
    process.stderr.write(`verb: "${verb.slice(0, 40)}" is not one we know; accepted are ${known.join(', ')}.\n`);
    return 2;
  }
  const input = await readInput(file);
  const answer = input.ok ? (await load())(input.value) : input;
  if (!answer.ok) {
    for (const fault of answer.faults) process.stderr.write(`${faultSentence(fault)}\n`);
    return 2;
  }
  process.stdout.write(`${JSON.stringify(answer.value, null, 2)}\n`);
  return 0;
}

try {
  process.exitCode = await main();
} catch (problem) {
  process.stderr.write(
    `Our own failure, please report it: ${problem instanceof Error ? (problem.stack ?? problem.message) : String(problem)}\n`,
  );
  process.exitCode = 1;
}
