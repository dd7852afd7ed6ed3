/** A wrong idea that people in the trade really hold. Its sentences stand in the word lists under the same id. */
export type IdeaId =
  | 'bigger-is-safer'
  | 'depth-is-the-bed'
  | 'width-for-depth'
  | 'v-like-square'
  | 'swirls-even-out'
  | 'pressing-is-enough'
  | 'along-as-good'
  | 'eighty-anywhere'
  | 'average-hides-it'
  | 'back-coat-counts'
  | 'mortar-levels'
  | 'press-out-the-bow'
  | 'one-chart-for-all'
  | 'skin-is-fine'
  | 'half-offset-is-fine'
  | 'bag-yield-is-mine'
  | 'water-brings-it-back'
  | 'hollow-is-loose'
  | 'blame-the-notch'
  | 'allowed-for-measured';

export const IDEAS: readonly IdeaId[] = [
  'bigger-is-safer',
  'depth-is-the-bed',
  'width-for-depth',
  'v-like-square',
  'swirls-even-out',
  'pressing-is-enough',
  'along-as-good',
  'eighty-anywhere',
  'average-hides-it',
  'back-coat-counts',
  'mortar-levels',
  'press-out-the-bow',
  'one-chart-for-all',
  'skin-is-fine',
  'half-offset-is-fine',
  'bag-yield-is-mine',
  'water-brings-it-back',
  'hollow-is-loose',
  'blame-the-notch',
  'allowed-for-measured',
];
