import { BOTH, FOR_COMPARISON, MODEL, PRACTICE, measure, published, ruleTable, share } from '../rule.ts';
import { squareFeet } from '../../units/length.ts';

const perBag = (feet2: number) => measure(squareFeet(feet2), 'm² per bag');
const howTo = published('General how-to articles on bag rates');
const sans = published('Trade article based on SANS 10107');

/** How much mortar: bags, water, density, published rates, waste. */
export const quantityRules = ruleTable({
  'bag.north-america': {
    title: 'The bag, North America',
    says: 'A bag holds {mass}.',
    values: { mass: measure(22.7, 'kg') },
    source: published('Trade glossary'),
    standards: ['north-america'],
  },
  'bag.elsewhere': {
    title: 'The bag, elsewhere',
    says: 'Bags hold {small} or {mass}.',
    values: { small: measure(20, 'kg'), mass: measure(25, 'kg') },
    source: published('Data sheets and a trade article'),
    standards: ['iso-en'],
  },
  'mortar.water': {
    title: 'Mixing water',
    says: 'Powder takes {least} to {most} of water; the sheet of the product gives the figure.',
    values: { least: measure(0.2, 'L/kg'), most: measure(0.3, 'L/kg') },
    source: published('Two data sheets from the European market'),
    disagreement: 'A white one takes up to 0.35; North American bags are said to take 0.21 to 0.27, from memory.',
    standards: BOTH,
  },
  'mortar.density': {
    title: 'Fresh density',
    says: 'Mixed mortar weighs {least} to {most}.',
    values: { least: measure(1400, 'kg/m³'), most: measure(1600, 'kg/m³') },
    source: published('Two data sheets from the European market'),
    disagreement: 'Six commercial adhesives measured 1460 to 1710 (IBRACON Struct. Mater. J. 6(3), 2013).',
    standards: BOTH,
  },
  'rate.quarter-square': {
    title: 'Bag rate, 1/4 × 1/4 in square',
    says: 'A 50 lb bag is said to cover {least} to {most} with a 1/4 × 1/4 in square notch.',
    values: { least: perBag(80), most: perBag(100) },
    source: howTo,
    disagreement: 'One site prints 150 to 200 ft², which is too thin to be a bed.',
    standards: BOTH,
  },
  'rate.quarter-three-eighths': {
    title: 'Bag rate, 1/4 × 3/8 in square',
    says: 'A 50 lb bag is said to cover {least} to {most} with a 1/4 × 3/8 in square notch.',
    values: { least: perBag(60), most: perBag(80) },
    source: howTo,
    standards: BOTH,
  },
  'rate.half-square': {
    title: 'Bag rate, 1/2 × 1/2 in square',
    says: 'A 50 lb bag is said to cover {least} to {most} with a 1/2 × 1/2 in square notch.',
    values: { least: perBag(40), most: perBag(50) },
    source: howTo,
    standards: BOTH,
  },
  'rate.label': {
    title: 'What a bag’s headline reckons with',
    says: 'Headlines come to {least} to {most} of powder for the bed an upright blade would leave once flattened, without waste, back coat or uneven floor.',
    values: { least: measure(0.75, 'kg/m² per mm'), most: measure(0.87, 'kg/m² per mm') },
    source: { title: 'Derived from the published bag rates of three notches', status: 'model' },
    standards: BOTH,
  },
  'rate.dry-per-mm': {
    title: 'Powder for a millimetre of full bed',
    says: 'A full bed takes {rate} of powder.',
    values: { rate: measure(1.2, 'kg/m² per mm') },
    source: sans,
    disagreement: 'Two data sheets give 1.14 to 1.23, a web article 1.67, another up to 1.9.',
    standards: BOTH,
  },
  'rate.sans-wall': {
    title: 'Powder, small wall tile',
    says: 'Walls with small light tile take about {rate}.',
    values: { rate: measure(3, 'kg/m²') },
    source: sans,
    standards: FOR_COMPARISON,
  },
  'rate.sans-floor': {
    title: 'Powder, floors and larger wall tile',
    says: 'Floors and larger wall tile take about {rate}.',
    values: { rate: measure(6, 'kg/m²') },
    source: sans,
    standards: FOR_COMPARISON,
  },
  'rate.sans-large': {
    title: 'Powder, large format',
    says: 'Large tile takes {least} to {most}.',
    values: { least: measure(7, 'kg/m²'), most: measure(8, 'kg/m²') },
    source: sans,
    standards: FOR_COMPARISON,
  },
  'rate.sans-mosaic': {
    title: 'Powder, mosaics',
    says: 'Mosaics, their pre-grouting included, take {least} to {most}.',
    values: { least: measure(4, 'kg/m²'), most: measure(5, 'kg/m²') },
    source: sans,
    standards: FOR_COMPARISON,
  },
  'waste.mortar': {
    title: 'Mortar waste',
    says: 'Bucket, trowel and an uneven floor waste {usual} of the mortar, on a rough or first job {rough}.',
    values: { usual: share(0.1), rough: share(0.15) },
    source: PRACTICE,
    standards: BOTH,
  },
  'waste.tile': {
    title: 'Tile waste',
    says: 'Ordinary layouts waste {least} to {most} of the tile; diagonal and herringbone about {diagonal}.',
    values: { least: share(0.1), most: share(0.15), diagonal: share(0.2) },
    source: {
      title: 'General how-to articles for ordinary layouts, the rest without a published source',
      status: 'common-practice',
    },
    standards: BOTH,
  },
  'bags.round-up': {
    title: 'Bags round up',
    says: 'Bags are rounded up, from one batch number where possible.',
    values: {},
    source: PRACTICE,
    standards: BOTH,
  },
  'mortar.part-bag': {
    title: 'Water for part of a bag',
    says: 'Part of a bag takes that part of the water, by weight: powder and water are weighed or measured, never guessed.',
    values: {},
    source: PRACTICE,
    standards: BOTH,
  },
  'bags.spread': {
    title: 'Why bags are given as a range',
    says: 'The low figure is a {low} blade on a mortar that yields much, the high figure a {high} blade on one that yields little.',
    values: { low: measure(45, '°'), high: measure(60, '°') },
    source: MODEL,
    standards: BOTH,
  },
});
