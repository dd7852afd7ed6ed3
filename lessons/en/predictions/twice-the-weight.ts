import { pattyDiameter } from '@sim/mortar/two-plate.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { bandOf, type Foretelling } from '@site/lessons/foretelling.ts';

/** The lump and the weight that the figure starts with. */
const plates = { volumeMm3: 50_000, forceN: 19.6 };
const holds = valueOf('mortar.stiffness', 'holds');
const growth = pattyDiameter(holds, { ...plates, forceN: 2 * plates.forceN }) / pattyDiameter(holds, plates);

export const prediction: Foretelling = {
  module: 'mixing',
  ask: 'The patty has stopped under its weight. You put a second weight like the first on top. How much wider does it get?',
  choices: ['About a sixth wider', 'Half as wide again', 'Twice as wide'],
  right: bandOf(growth, [1.3, 1.75]),
  why: 'Try it in the table of the figure: twice the weight, and the patty grows by about a sixth. (model)',
};
