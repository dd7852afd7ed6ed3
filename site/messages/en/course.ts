import type { ModuleGroup, ModuleSlug } from '@lessons/course.ts';

/** Titles of the modules, shown before a module's own page is written and wherever a module is named. */
export const moduleTitles: Record<ModuleSlug, string> = {
  'what-the-ridges-are-for': 'What the ridges are for',
  'reading-a-notch': 'Reading a notch',
  mixing: 'Mixing',
  combing: 'Combing',
  setting: 'Setting',
  'pulling-a-tile': 'Pulling a tile',
  'buttering-the-back': 'Buttering the back',
  'bowed-tile': 'Bowed, cupped and twisted tile',
  'flat-first': 'Flat first',
  'small-tile-and-mosaics': 'Small tile and mosaics',
  'under-boards-and-membranes': 'Under boards, mats and membranes',
  'wet-outdoors-heated': 'Wet, outdoors, heated and frost',
  'large-tile-and-panels': 'Large tile, planks and thin panels',
  'time-and-weather': 'Time and weather',
  'how-much-to-buy': 'How much to buy',
  'finding-the-cause': 'Finding the cause',
};

export const groupTitles: Record<ModuleGroup, string> = {
  bed: 'The bed',
  hands: 'The hands',
  tile: 'Tile and floor',
  place: 'The place',
  job: 'The job',
};

/** One line each: what the module settles. */
export const moduleLines: Record<ModuleSlug, string> = {
  'what-the-ridges-are-for': 'Air, fill and the bed nobody sees',
  'reading-a-notch': 'Width, depth, tooth: how much mortar it leaves',
  mixing: 'Water, rest, and the ridge that stands',
  combing: 'Key coat, angle, straight lines along the short side',
  setting: 'Press, then move across the ridges',
  'pulling-a-tile': 'Judge coverage, voids, corners and edges',
  'buttering-the-back': 'When a coat on the back helps, and when it only looks good',
  'bowed-tile': 'Lippage and offset follow from the bow',
  'flat-first': 'Mortar is no leveller',
  'small-tile-and-mosaics': 'Squeeze-up and voids at the same time',
  'under-boards-and-membranes': 'Several layers, several makers, whose word counts',
  'wet-outdoors-heated': 'Where the higher figure comes from',
  'large-tile-and-panels': 'Both faces, no sliding room, more hands',
  'time-and-weather': 'Open time, skin, wind, sun and cold',
  'how-much-to-buy': 'Why the bag’s headline is not your number',
  'finding-the-cause': 'Read a failed floor from the side the mortar stayed on',
};
