/** Words of a prediction that is made before the truth is shown. */
export const foretellWords = {
  label: 'Predict',
  commit: 'That is my guess',
  pick: 'Choose one, then see.',
  none: 'nothing',
  all: 'all of it',
  said: 'You said {guess}. It is {truth}.',
  close: 'Close: within ten points.',
  high: 'You guessed too high. Read why below.',
  low: 'You guessed too low. Read why below.',
  right: 'Right.',
  wrong: 'Not so. It is: {truth}.',
  again: 'Guess again',
  notKept: 'This browser keeps no record here, so the guess is not saved. The lesson goes on.',
} as const;
export type ForetellWords = Record<keyof typeof foretellWords, string>;
