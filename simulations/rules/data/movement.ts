import { BOTH, FOR_COMPARISON, ISO_EN, NORTH_AMERICA, mm, published, ruleTable, span, spanFeet } from '../rule.ts';

const uk = published('UK trade guide to BS 5385');

/** Movement joints. */
export const movementRules = ruleTable({
  'movement.interior': {
    title: 'Movement joints, interior',
    says: 'Indoors movement joints stand every {least} to {most}.',
    values: { least: spanFeet(20), most: spanFeet(25) },
    source: published('TCNA EJ171'),
    disagreement: 'An old engineering handbook gives 24 to 36 ft.',
    standards: NORTH_AMERICA,
  },
  'movement.exterior': {
    title: 'Movement joints, exterior or in sun and moisture',
    says: 'Outdoors, and indoors in sun or moisture, movement joints stand every {least} to {most}.',
    values: { least: spanFeet(8), most: spanFeet(12) },
    source: published('TCNA EJ171'),
    disagreement: 'An old engineering handbook gives 12 to 16 ft.',
    standards: NORTH_AMERICA,
  },
  'movement.where': {
    title: 'Where else movement joints stand',
    says: 'Movement joints stand at the perimeter, at changes of plane, over joints in the base and where the backing changes.',
    values: {},
    source: published('ANSI A108.01 and A108.02', '3.7 and 4.4'),
    standards: BOTH,
  },
  'movement.uk-floor': {
    title: 'Movement joints, British floors',
    says: 'Floors have movement joints every {least} to {most}, at least {width} wide.',
    values: { least: span(8000), most: span(10000), width: mm(6) },
    source: uk,
    standards: ISO_EN,
  },
  'movement.uk-wall': {
    title: 'Movement joints, British walls',
    says: 'Walls have movement joints every {least} to {most}.',
    values: { least: span(3000), most: span(4500) },
    source: uk,
    standards: ISO_EN,
  },
  'movement.uk-exterior': {
    title: 'Movement joints, British exterior floors',
    says: 'Outdoor floors have movement joints every {least} to {most}.',
    values: { least: span(3000), most: span(5000) },
    source: published('BS 5385-3', undefined, '2024'),
    standards: ISO_EN,
  },
  'movement.singapore': {
    title: 'Movement joints, Singapore',
    says: 'Walls have movement joints every {wallLeast} to {wallMost}, floors every {floorLeast} to {floorMost}.',
    values: { wallLeast: span(5000), wallMost: span(6000), floorLeast: span(6000), floorMost: span(7000) },
    source: published('Guide citing BS 5385-1 and SS 665'),
    standards: FOR_COMPARISON,
  },
});
