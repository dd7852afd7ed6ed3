/** One line for each part that is still being built. */
export const coming = {
  bench: 'Comb, set and pull one tile, and look through it at the mortar: this part is being built.',
  job: 'A job goes in, a plan comes out with the reason for each line: this part is being built.',
  rounds: 'Scored scenarios, each answer explained by the rule that decides it: this part is being built.',
  eye: 'Guess the coverage of a pulled tile, see the truth, watch your bias shrink: this part is being built.',
  desk: 'Make a round for a class, print it, take the hand-ins back and see what the class believes: this part is being built.',
  crew: 'Choose the work your shop does and print a card of modules and hands-on checks to sign: this part is being built.',
} as const;
export type ComingPart = keyof typeof coming;
