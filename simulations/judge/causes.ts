import type { RuleId } from '../rules/rulebook.ts';
import type { Cause, CauseName, Pull } from './pull-types.ts';
import { words } from './words/en.ts';

/** One step of the path: what the signs weigh for a cause, or nothing. */
type Step = (pull: Pull, average: number, required: number) => { name: CauseName; weight: number } | null;

const when = (is: boolean, name: CauseName, weight: number) => (is ? { name, weight } : null);

/**
 * From the signs to the likely causes. Which side the mortar stayed on comes before everything else: mortar on the
 * floor with standing ridges never touched the tile; mortar on the tile never held the floor. Weights only rank.
 */
const path: readonly Step[] = [
  ({ signs }) => when(signs.cutTilesOnly === true, 'wet-back', 100),
  ({ signs }) => when(signs.powder === true, 'powder', 90),
  ({ signs }) => when(signs.ridges === 'dabs', 'dabs', 95),
  ({ signs }) => when(signs.crackOverSeam === true, 'unbedded-board', 95),
  ({ signs }) =>
    when(signs.mortarOn === 'tile' || signs.dropsStand === true, 'sealed-base', signs.dropsStand === true ? 98 : 90),
  // Standing ridges with a clean back: skin if the bed shows one or nobody looked, else it was never worked in.
  ({ signs }) =>
    when(
      signs.skin === true || (signs.skin === null && signs.mortarOn === 'floor' && signs.ridges === 'standing'),
      'skinned',
      signs.skin === true ? 92 : 85,
    ),
  ({ signs }) => when(signs.ridges === 'standing', 'not-embedded', signs.skin === false ? 92 : 80),
  ({ signs }) => when(signs.mortarOn === 'floor' && signs.skin !== false, 'thirsty-base', 40),
  ({ signs }) => when(signs.ridges === 'swirled', 'swirls', 75),
  ({ signs }, average, required) =>
    when(
      (signs.ridges === 'crushed' || signs.ridges === 'flat') && signs.mortarOn !== 'tile' && average < required,
      'too-little-mortar',
      60,
    ),
  ({ signs, pulls }, average, required) =>
    when(
      pulls.length > 0 && average >= required && (signs.mortarOn !== null || signs.crackOverSeam === true),
      'other-causes',
      70,
    ),
];

const ruleOf: Record<CauseName, RuleId> = {
  'wet-back': 'set.wet-back',
  powder: 'set.powder',
  skinned: 'time.no-skin',
  'not-embedded': 'set.across',
  'sealed-base': 'substrate.curing-compound',
  'thirsty-base': 'substrate.dampen',
  dabs: 'set.no-dabs',
  swirls: 'comb.straight',
  'too-little-mortar': 'bed.need',
  'unbedded-board': 'board.bed',
  'other-causes': 'sampling.sound',
};

/** Likely causes, likeliest first; empty when nobody wrote down any sign. */
export function causesOf(pull: Pull, average: number, required: number): Cause[] {
  return path
    .flatMap((step) => step(pull, average, required) ?? [])
    .toSorted((a, b) => b.weight - a.weight)
    .map(({ name, weight }) => {
      const [says, action] = words.causes[name];
      return { name, weight, rule: ruleOf[name], says, action };
    });
}

/** Every cause the path knows, in no order: what it is and what is done about it. */
export const everyCause = (): Pick<Cause, 'name' | 'says' | 'action'>[] =>
  (Object.keys(ruleOf) as CauseName[]).map((name) => {
    const [says, action] = words.causes[name];
    return { name, says, action };
  });
