/** The learner's day: on the first page, in reviews and in the record. */
export const today = {
  minutes: 'Today: {n} minutes',
  nothing: 'Nothing is due today',
  reviews: 'Outcomes that come back today: {n}.',
  rest: 'What you have learned comes back when it is about to fade.',
  count: '{done} of {all} modules done.',
  review: 'Review now',
  next: 'Go on',
  goOn: 'Go on with module {n}: {title}',
  record: 'My record',
  begun: 'begun',
  done: 'done',
} as const;
