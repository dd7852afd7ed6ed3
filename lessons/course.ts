/**
 * The sixteen modules in order. A slug is the module's name everywhere: in addresses, in records, in the quiz bank.
 * What each module promises (its outcomes) stands in the module's own file under `lessons/<language>`.
 */
export const course = [
  { number: 1, slug: 'what-the-ridges-are-for', group: 'bed' },
  { number: 2, slug: 'reading-a-notch', group: 'bed' },
  { number: 3, slug: 'mixing', group: 'bed' },
  { number: 4, slug: 'combing', group: 'hands' },
  { number: 5, slug: 'setting', group: 'hands' },
  { number: 6, slug: 'pulling-a-tile', group: 'hands' },
  { number: 7, slug: 'buttering-the-back', group: 'hands' },
  { number: 8, slug: 'bowed-tile', group: 'tile' },
  { number: 9, slug: 'flat-first', group: 'tile' },
  { number: 10, slug: 'small-tile-and-mosaics', group: 'tile' },
  { number: 11, slug: 'under-boards-and-membranes', group: 'place' },
  { number: 12, slug: 'wet-outdoors-heated', group: 'place' },
  { number: 13, slug: 'large-tile-and-panels', group: 'place' },
  { number: 14, slug: 'time-and-weather', group: 'job' },
  { number: 15, slug: 'how-much-to-buy', group: 'job' },
  { number: 16, slug: 'finding-the-cause', group: 'job' },
] as const;

export type ModuleSlug = (typeof course)[number]['slug'];
export type ModuleGroup = (typeof course)[number]['group'];
