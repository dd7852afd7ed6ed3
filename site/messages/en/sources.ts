import type { RuleStatus } from '@sim/rules/rule.ts';

export const sources = {
  title: 'Sources',
  description:
    'Every rule and number of this course with its source, how sure we are of it, where sources disagree, and what the bed model leaves out.',
  lead: 'Every number that decides something here is one of these rules. Each says where it comes from and how sure we are. None of the standards was read in full: most rows rest on trade articles and guides that quote them.',
  statusTitle: 'How sure we are',
  find: 'Find a rule',
  findHint: 'A word, a number or a standard',
  shown: '{n} of {all} rules shown',
  onlyStatus: 'Show',
  all: 'all',
  also: 'Others say',
  decides: 'decides in',
  usedIn: 'read by',
  module: 'module',
  comparison: 'for comparison only, decides nothing',
  modelTitle: 'The model, and what it leaves out',
  modelSays: [
    'The pictures of the bed are computed, not filmed. Mortar is taken as a paste that stands still until it is pushed hard enough, and then flows. The model follows each ridge as it spreads, each lane as it closes, and the air that is caught.',
    'It is built on published mechanics and agrees with the trade’s rules where those can be tested. It has not been checked against pulled tiles with the mortar’s stiffness measured: no such table has been published. Where a page prints a coverage from the model, read it as a likely figure and pull a tile.',
  ],
  leavesOut: 'Left out',
  leavesOutList: [
    'water drawn into a thirsty floor or tile, which stiffens the bed from both faces',
    'sand grains jamming when the gap is only a few grains thick',
    'the spring of mortar, board and mat once the push is taken away',
    'a tile or a floor that bends under the push',
    'what happens after the tile is left alone: shrinking, creep and the growth of the bond itself',
  ],
  experimentTitle: 'An experiment that would test it',
  experiment: [
    'Mix one bag by its instructions. Measure its stiffness: press a known volume between two plates under a known weight and read how wide it spreads.',
    'Comb a flat board with one notch at one angle. Lay a square of thick glass with taped edges on it, load it with a known weight for a set time, and photograph the contact from above. Gloves on: wet mortar burns.',
    'Do it at three weights and three notches, five times each, and set the shares you count against what the bench foretells for the stiffness you measured. Note the misses as well as the hits.',
  ],
} as const;

/** What each status means. */
export const statusMeaning: Record<RuleStatus, string> = {
  published:
    'A publication states it; title, clause and edition stand beside it as that publication or a quotation gives them.',
  'common-practice': 'The trade works by it and we found no publication that sets it.',
  model: 'Our own model or arithmetic gives it.',
  'from-memory': 'Remembered and not found in print. Check it before you rely on it.',
};

/** Names of the sets of standards. */
export const standardWords = { 'north-america': 'North America', 'iso-en': 'ISO and EN' } as const;

/** Subjects of the rules in order, by the beginning of a rule’s id. */
export const subjects: { title: string; begins: string[] }[] = [
  { title: 'Coverage', begins: ['coverage'] },
  { title: 'Lifting tiles and voids', begins: ['sampling', 'void', 'pull'] },
  { title: 'The bed', begins: ['bed'] },
  { title: 'Trowel, combing, setting', begins: ['trowel', 'comb', 'set'] },
  { title: 'Back buttering', begins: ['butter'] },
  { title: 'Mosaics', begins: ['mosaic'] },
  { title: 'Bags and rates', begins: ['bag', 'bags', 'rate', 'waste'] },
  { title: 'Mortar: classes, water, times', begins: ['mortar', 'class', 'time'] },
  { title: 'Tile: size and warp', begins: ['warp', 'size', 'iso', 'tile'] },
  { title: 'Lippage, joints, offset', begins: ['lippage', 'joint', 'offset', 'large'] },
  { title: 'Flatness and what carries the tile', begins: ['flatness', 'substrate'] },
  { title: 'Movement joints', begins: ['movement'] },
  { title: 'Membranes, mats, boards, heat', begins: ['membrane', 'mat', 'board', 'heat'] },
  { title: 'Glass, stone, outdoors', begins: ['glass', 'stone', 'exterior'] },
  { title: 'Panels', begins: ['panel'] },
  { title: 'The model', begins: ['model'] },
  { title: 'Safety', begins: ['safety'] },
];
