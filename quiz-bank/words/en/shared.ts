import type { Words } from '../../engine/say.ts';

/** Words that many questions use, and those of the engine itself. */
export const shared: Words = {
  'notch-square': '{size} square',
  'notch-v': '{size} V',
  'notch-u': '{size} U',
  'notch-slanted': '{size} slanted',
  'square-bare': '{cell} {bare} bare',
  'way-0-first': 'north and south',
  'way-0-second': 'east and west',
  'way-1-first': 'from the door to the window',
  'way-1-second': 'from the left wall to the right wall',
  'way-2-first': 'along the hall',
  'way-2-second': 'across the hall',
  'verdict-yes': 'Passes',
  'verdict-no': 'Fails',
  'credit-one': 'One point for the right choice.',
  'credit-all': 'Every box counts: one put right earns its part of the point, one put wrong takes as much away.',
  'credit-order': 'Each pair of neighbours in the right order earns its part of the point.',
  point: '{points} point',
  points: '{points} points',
  'credit-number': 'One point within {tolerance} of the answer.',
  'credit-number-exact': 'One point for the exact number.',
  'credit-mark': 'One point for a square that holds it.',
  'credit-judge': 'Half a point for the verdict, half for the reason.',
};
