import { lippageShare } from '@sim/tile/lippage.ts';
import { bandOf, type Foretelling } from '@site/lessons/foretelling.ts';

/** What a third leaves of the step that a half made. */
const left = lippageShare(1 / 3) / lippageShare(1 / 2);

export const prediction: Foretelling = {
  module: 'bowed-tile',
  ask: 'The planks are crowned, in half bond, and you can feel the steps. You lay the next wall with the same planks in thirds. How much smaller do the steps from the bow get?',
  choices: ['By half or more', 'By about a third', 'By about a tenth'],
  right: bandOf(left, [0.55, 0.8]),
  why: 'Set the offset in the figure from a half to a third and read the step: about a tenth goes, nine tenths stay. A smooth bow has climbed most of its height a third of the way along. (model: geometry of a smooth bow)',
};
