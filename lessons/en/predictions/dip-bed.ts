import { dipWorked as w } from '@site/lessons/worked/dip.ts';
import { bandOf, inBoth, type Foretelling } from '@site/lessons/foretelling.ts';
import { formatInSum, formatLength } from '@sim/units/format.ts';

export const prediction: Foretelling = {
  module: 'flat-first',
  ask: inBoth(
    (units) =>
      `A hall has a dip of ${formatLength(w.dipMm[units], units)} in the middle. Long tile goes over it, dead flat, with the least bed of ${formatLength(w.leastMm[units], units)} on the high ground. How thick is the mortar at the bottom of the dip?`,
  ),
  choices: [
    'As thick as on the high ground',
    'About twice as thick',
    'More than three times as thick',
    'It depends on the notch',
  ],
  right: bandOf(w.bedMm.imperial / w.leastMm.imperial, [1.5, 3]),
  why: inBoth(
    (units) =>
      `The tile stays flat, so the mortar takes up the whole dip: ${formatInSum(w.leastMm[units], units)} and ${formatInSum(w.dipMm[units], units)} make ${formatInSum(w.bedMm[units], units)}. No notch changes that. Ordinary thin-set stops at ${formatLength(w.thinSetMm[units], units)}.`,
  ),
};
