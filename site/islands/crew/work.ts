import type { ModuleSlug } from '@lessons/course.ts';
import type { RuleId } from '@sim/rules/rulebook.ts';

/** What a helper is asked to show with the hands before working alone; the words stand in the messages. */
export const CHECKS = [
  'mix',
  'key-in',
  'comb',
  'set-and-pull',
  'count-grid',
  'butter',
  'straightedge',
  'flatten',
  'joint-room',
  'wet-pull',
  'membrane',
  'cable',
  'panel-crew',
  'finger',
  'order-bags',
  'saw',
  'lift',
] as const;
export type CheckId = (typeof CHECKS)[number];

export interface Work {
  readonly modules: readonly ModuleSlug[];
  readonly checks: readonly CheckId[];
  readonly cautions: readonly RuleId[];
}

/** What everyone needs on the first Monday, whatever the shop does. */
export const EVERYONE: Work = {
  modules: ['what-the-ridges-are-for', 'reading-a-notch', 'mixing', 'combing', 'setting', 'pulling-a-tile'],
  checks: ['mix', 'key-in', 'comb', 'set-and-pull', 'count-grid', 'saw', 'lift'],
  cautions: ['safety.mixing-dust', 'safety.silica', 'safety.cement', 'safety.lifting', 'safety.saw', 'safety.knees'],
};

export const WORK_KINDS = [
  'floors',
  'wet',
  'walls',
  'large',
  'panels',
  'mosaic',
  'stone',
  'heated',
  'membranes',
  'outdoors',
  'estimating',
  'repair',
] as const;
export type WorkKind = (typeof WORK_KINDS)[number];

/** What each kind of work adds. */
export const WORK: Readonly<Record<WorkKind, Work>> = {
  floors: { modules: ['flat-first', 'time-and-weather'], checks: ['straightedge', 'finger'], cautions: [] },
  wet: { modules: ['wet-outdoors-heated', 'under-boards-and-membranes'], checks: ['wet-pull'], cautions: [] },
  walls: { modules: ['flat-first'], checks: ['straightedge'], cautions: [] },
  large: {
    modules: ['large-tile-and-panels', 'buttering-the-back', 'bowed-tile', 'flat-first'],
    checks: ['butter', 'straightedge', 'joint-room'],
    cautions: [],
  },
  panels: {
    modules: ['large-tile-and-panels', 'buttering-the-back', 'flat-first'],
    checks: ['panel-crew', 'butter', 'straightedge'],
    cautions: ['safety.panels'],
  },
  mosaic: { modules: ['small-tile-and-mosaics'], checks: ['flatten'], cautions: [] },
  stone: {
    modules: ['buttering-the-back', 'pulling-a-tile'],
    checks: ['butter', 'wet-pull'],
    cautions: ['safety.epoxy'],
  },
  heated: { modules: ['wet-outdoors-heated'], checks: ['cable'], cautions: ['safety.heat'] },
  membranes: { modules: ['under-boards-and-membranes'], checks: ['membrane'], cautions: [] },
  outdoors: {
    modules: ['wet-outdoors-heated', 'time-and-weather'],
    checks: ['wet-pull', 'finger', 'butter'],
    cautions: [],
  },
  estimating: { modules: ['how-much-to-buy'], checks: ['order-bags'], cautions: [] },
  repair: { modules: ['finding-the-cause'], checks: ['count-grid'], cautions: [] },
};

const inOrder = <T>(order: readonly T[], chosen: readonly T[]): T[] => order.filter((one) => chosen.includes(one));

/** The modules, checks and cautions for a helper who does these kinds of work, each once, in their usual order. */
export function workFor(kinds: readonly WorkKind[], moduleOrder: readonly ModuleSlug[]): Work {
  const all = [EVERYONE, ...kinds.map((kind) => WORK[kind])];
  return {
    modules: inOrder(
      moduleOrder,
      all.flatMap((work) => work.modules),
    ),
    checks: inOrder(
      CHECKS,
      all.flatMap((work) => work.checks),
    ),
    cautions: [...new Set(all.flatMap((work) => work.cautions))],
  };
}
