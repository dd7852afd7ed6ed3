/** Words of the figure of a floor under a straightedge. */
export const flatnessWords = {
  title: 'A floor under a straightedge',
  says: 'Section of a floor. Heights are drawn forty times too tall so that you can see them. The bar rests on the high points under it.',
  tile: 'Tile on it',
  large: 'Long edge (large)',
  small: 'Short edge',
  bar: 'Bar',
  long: 'Long bar',
  short: 'Short bar',
  place: 'Slide the bar',
  dip: 'Broad dip',
  mark: 'Trowel mark',
  hump: 'Hump at the door',
  gap: 'Gap under the bar here',
  allowed: 'Allowed under this bar',
  worst: 'Worst place on this floor',
  passes: 'The bar finds nothing to mend here.',
  fails: 'Too deep here: fill it, or grind what the bar rests on.',
  numbers: 'The numbers',
  floorPasses: 'With both bars, anywhere: this floor is flat enough for this tile.',
  floorFails: 'Somewhere on this floor a bar finds too much. Not yet flat enough for this tile.',
} as const;
export type FlatnessWords = Record<keyof typeof flatnessWords, string>;
