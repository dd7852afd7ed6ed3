import type { parts } from '@site/components/parts.ts';

/** What each part of the manual is for, in one line; search looks through these. */
export const partLines: Readonly<Record<(typeof parts)[number]['name'], string>> = {
  course: 'Sixteen short modules on the bed under tile: predict, set, pull, see why.',
  bench: 'Comb, set and pull one tile, look through it at the mortar, compare two ways and cut through the bed.',
  job: 'A job goes in, a plan comes out: notch, setting method, coverage, joints, flatness, bags and tiles to lift, with the reason for each line.',
  rounds: 'Graded scenarios, each answer explained by the rule or the solver that decides it.',
  eye: 'Guess the coverage of a pulled tile, see the truth, watch your bias shrink.',
  desk: 'Make a round for a class, print it, take the hand-ins back and see what the class believes.',
  crew: 'Choose the work your shop does and print a card of modules and hands-on checks to sign.',
  sources: 'Every rule, number and model with its source, how sure we are, and what the model leaves out.',
};
