/** Words of a prediction that is made before the truth is shown. */
export const foretellWords = {
  label: 'Predict',
  commit: 'That is my guess',
  first: 'Move the slider to your guess first.',
  unsaid: 'no guess yet',
  said: 'You said {guess}. It is {truth}.',
  close: 'Close: within ten points.',
  high: 'You guessed too high. Read why below.',
  low: 'You guessed too low. Read why below.',
  again: 'Guess again',
  notKept: 'This browser keeps no record here, so the guess is not saved. The lesson goes on.',
} as const;
