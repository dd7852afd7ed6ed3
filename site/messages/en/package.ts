/** Words around the course in a learning platform's frame, and of the command that makes the packages. */
export const packageWords = {
  title: 'Ridge to Bed',
  about:
    'The mortar bed under tile: what the notched trowel leaves, how the ridges collapse, and how to know that it is full.',
  /** Titles of the modules that count, where not all of them do. */
  counts: (titles: readonly string[]): string => `Counts here: ${titles.join(', ')}.`,
  done: (done: number, all: number): string => `${done} of ${all} ${all === 1 ? 'module' : 'modules'} done.`,
  passMark: (share: string): string => `Pass mark ${share}.`,
  score: (share: string): string => `Points so far ${share}.`,
  noScore: 'Each module ends in a check that counts.',
  passed: 'Passed.',
  noPlatform: 'No learning platform was found around this page. The course works; nothing is reported.',
  noAnswer:
    'The learning platform did not answer. The course works, but what you do here is not reported. Close it and open it from the platform again.',
  strangeModule: (given: string, known: readonly string[]): string =>
    `--modules: "${given}" is not a module; accepted are ${known.join(', ')}`,
  strangePass: (given: string): string => `--pass: "${given}" is not a percentage; give a number from 0 to 100`,
} as const;
