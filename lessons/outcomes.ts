import type { ModuleSlug } from './course.ts';

/**
 * What each module promises, by name. Every outcome is examined by the quiz bank and kept in a learner's record under
 * this name; the words stand by language (`lessons/en/outcomes.ts`).
 */
export const outcomes = {
  'what-the-ridges-are-for': ['why-ridges', 'what-coverage-is', 'bed-from-ridge'],
  'reading-a-notch': ['read-a-label', 'mortar-a-notch-leaves', 'angle-and-wear'],
  mixing: ['water-and-rest', 'ridge-that-stands', 'part-bag'],
  combing: ['key-coat-first', 'straight-one-way', 'along-the-short-side'],
  setting: ['press-and-move', 'across-the-ridges', 'where-air-goes'],
  'pulling-a-tile': ['judge-coverage', 'voids-and-corners', 'how-many-to-lift', 'hollow-sound'],
  'buttering-the-back': ['when-to-butter', 'back-relief', 'coat-is-no-contact'],
  'bowed-tile': ['measure-warp', 'lippage-allowed', 'offset-allowed'],
  'flat-first': ['flatness-required', 'patch-before-mortar', 'bed-thickness-limits'],
  'small-tile-and-mosaics': ['flatten-ridges', 'squeeze-up', 'glass-tile'],
  'under-boards-and-membranes': ['whose-instructions', 'bed-under-board', 'membrane-notch'],
  'wet-outdoors-heated': ['coverage-by-place', 'water-in-voids', 'heat-cable'],
  'large-tile-and-panels': ['both-faces', 'room-to-slide', 'panel-embedding'],
  'time-and-weather': ['open-time', 'skin-test', 'spread-ahead'],
  'how-much-to-buy': ['bags-from-bed', 'headline-rate', 'every-layer'],
  'finding-the-cause': ['side-it-stayed-on', 'ridges-as-evidence', 'rule-out-causes'],
} as const satisfies Record<ModuleSlug, readonly string[]>;

export type OutcomeId = (typeof outcomes)[ModuleSlug][number];
