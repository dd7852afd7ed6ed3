/** Words around a choice that is asked before its answer is shown. */
export const predict = {
  label: 'Predict',
  commit: 'This is my answer',
  first: 'Choose one first. A guess will do: it costs nothing, and what you expected is what you remember.',
  right: 'As you said.',
  wrong: 'Not so.',
  answer: 'The answer',
  again: 'Choose again',
} as const;
