/** Words around a lesson; the lesson's own text stands in its file. */
export const lesson = {
  module: 'Module',
  of: 'of {all}',
  minutes: 'minutes',
  outcomes: 'After this you can',
  sources: 'Sources of this module',
  sourcesSay:
    'Every number above is read from one of these rules. What the text says of the craft beyond them is common practice, with no published source.',
  source: 'Source',
  /** Before the exact figures behind rounded ones. */
  ownUnits: 'In its own units:',
  caution: 'Caution',
  cautionGoverns:
    'The product’s own safety sheet and instructions, local codes and licensed trades come before anything said here.',
  worked: 'Worked example',
  wrongIdea: 'A wrong idea, and why it tempts',
  whereItShows: 'Where this idea shows in the rounds',
  tryIt: 'Try it with real mortar',
  key: 'Keep this',
  before: 'Before',
  next: 'Next',
  teach: 'For the instructor',
  teachTitle: 'For the instructor',
  backToModule: 'Back to the module',
  materials: 'Materials',
  time: 'Time',
  contents: 'All modules',
  also: 'Others say',
  read: 'I have done this module',
  readDone: 'Done. The ridge is pressed on the first page.',
  teachComing: 'This module has no page for the instructor.',
} as const;

/** How sure we are of a rule, in words. */
export const statusWords = {
  published: 'published',
  'common-practice': 'common practice, no published source',
  model: 'model',
  'from-memory': 'from memory',
} as const;
