import { BOTH, FROM_MEMORY, NORTH_AMERICA, PRACTICE, inch, measure, published, ruleTable } from '../rule.ts';

const twoSquareInches = measure(2 * 25.4 * 25.4, 'mm²');
const fourSquareInches = measure(4 * 25.4 * 25.4, 'mm²');

/** How coverage is checked, and what one void may be. */
export const samplingRules = ruleTable({
  'sampling.tiles': {
    title: 'Tiles to lift',
    says: 'An installation is judged by the average of at least {tiles} lifted tiles.',
    values: { tiles: measure(3, 'count') },
    source: published('ANSI A108.5', '2.2.3'),
    standards: BOTH,
  },
  'sampling.routine': {
    title: 'Lift as you go',
    says: 'A tile is lifted now and then while setting, while the mortar is fresh and the tile can go back.',
    values: {},
    source: published('Contractors’ reference manual', undefined, '2024/25'),
    standards: BOTH,
  },
  'sampling.sound': {
    title: 'Sound alone decides nothing',
    says: 'A hollow sound says where to look; membranes, boards and voided mats sound hollow over a sound bed, so lift before judging.',
    values: {},
    source: PRACTICE,
    standards: BOTH,
  },
  'void.panel': {
    title: 'Largest void under a gauged panel',
    says: 'No single void under a gauged panel is larger than {area}.',
    values: { area: twoSquareInches },
    source: published('ANSI A108.19'),
    standards: BOTH,
  },
  'void.tile': {
    title: 'Largest void under ordinary tile',
    says: 'A void larger than {area} under ordinary tile is poor work, though the standard sets no limit.',
    values: { area: twoSquareInches },
    source: published('Technical column of a tile trade magazine', undefined, '2021'),
    disagreement: 'One consultant reads the standards as barring voids over 2 × 2 in and any void at corners or edges.',
    standards: BOTH,
  },
  'void.near-edge': {
    title: 'Voids by corners and edges',
    says: 'Under ordinary tile no void lies within {distance} of a corner or edge, as good practice.',
    values: { distance: inch(2) },
    source: published('Technical column of a tile trade magazine', undefined, '2021'),
    disagreement: 'One consultant reads it as a rule of the standard; the column calls it good practice.',
    standards: BOTH,
  },
  'void.support': {
    title: 'Where the contact must be',
    says: 'Contact is spread so that the tile is fully supported, every corner and edge above all.',
    values: {},
    source: published('ANSI A108.5', '2.2.3'),
    standards: BOTH,
  },
  'void.stone-thin': {
    title: 'Voids under thin stone',
    says: 'Under stone of about {thickness} no void is larger than {area} and none is within {distance} of a corner.',
    values: { thickness: inch(3 / 8), area: twoSquareInches, distance: inch(2) },
    source: FROM_MEMORY,
    standards: BOTH,
  },
  'void.stone-thick': {
    title: 'Voids under thick stone',
    says: 'Under stone of {thickness} and more no void is larger than {area} and none is within {distance} of a corner.',
    values: { thickness: inch(3 / 4), area: fourSquareInches, distance: inch(2) },
    source: FROM_MEMORY,
    standards: BOTH,
  },
  'pull.back-coat-only': {
    title: 'A back coat that never met the bed',
    says: 'Mortar that sits on the back of the tile and shows no print of the bed is no contact.',
    values: {},
    source: published('UNI 11493-1', 'term 3.50', 'revision of about 2024'),
    standards: BOTH,
  },
  'sampling.count-grid': {
    title: 'Counting on a grid',
    says: 'Coverage is read by laying a grid over the back and counting the squares that are wetted.',
    values: {},
    source: PRACTICE,
    standards: NORTH_AMERICA,
  },
});
