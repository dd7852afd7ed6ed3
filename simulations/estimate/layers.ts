import { valueOf } from '../rules/rulebook.ts';
import type { StandardSet } from '../rules/rule.ts';
import type { Area } from './job-types.ts';
import { bedAt, notchesFor } from './notches.ts';
import type { AreaPlan, Layer, NamedNotch } from './plan-types.ts';

/** A layer as a thickness that hangs on the blade's angle where it is combed. */
export interface LayerRecipe extends Pick<Layer, 'name' | 'notch' | 'rule'> {
  /** Thickness at a blade angle, mm; `part` runs from 0 (least) to 1 (most) where a rule gives a range. */
  thicknessAt: (angleDeg: number, part: number) => number;
}

const combed = (name: Layer['name'], notch: NamedNotch, rule: Layer['rule']): LayerRecipe => ({
  name,
  notch,
  rule,
  thicknessAt: (angle) => bedAt(notch, angle),
});
const between = (low: number, high: number, part: number): number => low + (high - low) * part;

/** The smallest square notch that reaches the least bed with a blade one can keep: for boards, and for a combed back. */
export function plainSquare(standards: StandardSet): NamedNotch {
  const steep = valueOf('trowel.angle', 'steep');
  const least = valueOf('bed.least', 'bed');
  const found = notchesFor(standards, null).find((one) => one.shape === 'square' && bedAt(one, steep) >= least);
  if (!found) throw new Error('No square notch reaches the least bed.');
  return found;
}

/** The notch under a thin bonded sheet when its maker is silent: the fullest within the bounds, V before square. */
export function sheetNotches(standards: StandardSet): NamedNotch[] {
  const usual = valueOf('trowel.angle', 'usual');
  return notchesFor(standards, null)
    .filter((one) => {
      const bed = bedAt(one, usual);
      return bed >= valueOf('membrane.bond', 'least') && bed <= valueOf('membrane.bond', 'most');
    })
    .toSorted((a, b) => Number(b.shape === 'v') - Number(a.shape === 'v') || bedAt(b, usual) - bedAt(a, usual));
}

function under(area: Area, standards: StandardSet): LayerRecipe[] {
  const sheet = sheetNotches(standards)[0];
  switch (area.membrane) {
    case 'backer-board':
      // On a wall the board is fastened to its studs and lies in no bed.
      if (area.surface === 'wall') return [];
      return [combed('under-board', plainSquare(standards), 'board.bed')];
    case 'sheet-waterproofing':
      return sheet ? [combed('under-sheet', sheet, 'membrane.bond')] : [];
    case 'uncoupling-mat':
      return [
        ...(sheet ? [combed('under-mat', sheet, 'membrane.bond')] : []),
        {
          name: 'cavities',
          notch: null,
          rule: 'mat.volume',
          thicknessAt: (_, part) =>
            valueOf('mat.volume', 'depth') *
            between(valueOf('mat.volume', 'least'), valueOf('mat.volume', 'most'), part),
        },
      ];
    case 'heated-mat':
      return [
        ...(sheet ? [combed('under-mat', sheet, 'membrane.bond')] : []),
        {
          name: 'over-cable',
          notch: null,
          rule: 'mat.heated-volume',
          thicknessAt: () => valueOf('mat.heated-volume', 'depth'),
        },
      ];
    default:
      return [];
  }
}

/** Every layer of mortar, from the floor up. */
export function layerRecipes(
  area: Area,
  standards: StandardSet,
  notch: NamedNotch,
  butterHow: AreaPlan['butterHow'],
): LayerRecipe[] {
  const bed = combed('bed', notch, 'bed.need');
  const coat: LayerRecipe[] =
    butterHow === 'none'
      ? []
      : butterHow === 'combed'
        ? [combed('back-coat', plainSquare(standards), 'butter.parallel')]
        : [
            {
              name: 'back-coat',
              notch: null,
              rule: 'butter.extra',
              // The coat fills the back's relief first.
              thicknessAt: (angle, part) =>
                area.tile.reliefMm +
                bedAt(notch, angle) * between(valueOf('butter.extra', 'least'), valueOf('butter.extra', 'most'), part),
            },
          ];
  return [...under(area, standards), bed, ...coat];
}

/** Thickness of all layers together, mm; also litres to a square metre. */
export const litresPerM2 = (recipes: readonly LayerRecipe[], angleDeg: number, part: number): number =>
  recipes.reduce((sum, one) => sum + one.thicknessAt(angleDeg, part), 0);
