/** Words of the printed sheets. */
export const paper = {
  title: 'Sheets of a round',
  description: 'Question sheets and keys of a class’s round, for print.',
  lead: 'A sheet for each seat, and its key. Each starts on a page of its own.',
  which: { questions: 'Question sheets', keys: 'Keys', both: 'Both' },
  from: 'From seat',
  to: 'to seat',
  print: 'Print',
  working: 'Preparing the sheets',
  sheet: (code: string, seat: number) => `Round ${code} · seat ${seat}`,
  sheetAll: (code: string) => `Round ${code}`,
  /** A round that a learner drew alone, by its number. */
  sheetOfSeed: (seed: number) => `Round ${seed}`,
  key: (heading: string) => `Key: ${heading}`,
  nameLine: 'Name',
  dateLine: 'Date',
  order: 'In order:',
  square: 'Square:',
  verdict: 'Verdict:',
  why: 'Why',
  points: 'Points',
  ready: (sheets: number) => (sheets === 1 ? 'One sheet is ready.' : `${sheets} sheets are ready.`),
} as const;
