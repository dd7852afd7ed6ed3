import type { Foretelling } from '@site/lessons/foretelling.ts';
import { cornerBack, spreadBack } from '@site/components/drawings/two-pulls.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { inches } from '@sim/units/length.ts';

const edge = inches(12);
const near = valueOf('void.near-edge', 'distance');
const sound = (back: ReturnType<typeof cornerBack>): boolean =>
  back.toEdgeMm >= near && back.largestMm2 <= valueOf('void.tile', 'area');
const share = 0.84;
const [spread, corner] = [sound(spreadBack(edge, share, near)), sound(cornerBack(edge, share))];

export const prediction: Foretelling = {
  module: 'pulling-a-tile',
  ask: 'Two lifted tiles from a dry room have the same coverage, a little over the number. One has many small voids, all well inside. The other has a single void, and it lies at a corner. Which would you let stay?',
  choices: ['Both: the number is met', 'Only the one with many small voids', 'Only the one with the single void'],
  right: spread && corner ? 0 : spread ? 1 : 2,
  why: 'The number is met twice. But the tile must be carried at its corners and edges above all, and a corner over air breaks under a heel. Many small voids, each with mortar all round it, do far less harm.',
};
