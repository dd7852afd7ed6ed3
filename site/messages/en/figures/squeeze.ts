/** Words of the squeeze-up figure. */
export const squeezeWords = {
  title: 'Squeeze-up in the joint',
  says: 'Section through two pieces, to scale. The bed is flattened, then beaten in to the least bed; what is spare has only the joints to go to. The dashed line leaves room for grout.',
  notch: 'Notch',
  angle: 'Blade to floor',
  piece: 'Piece, square',
  joint: 'Joint',
  thickness: 'Tile thickness',
  combed: 'Mortar spread',
  bed: 'Bed left',
  spare: 'Spare',
  jointPart: 'Joints, of the plan',
  rise: 'Rise in the joint',
  filled: 'Joint filled',
  starved: 'Starved: the notch does not even leave the least bed. The joints stay clean and the backs stay bare.',
  over: 'The mortar comes out of the joints and over the face.',
  full: 'No room for grout: more of the joint is full than should be.',
  clear: 'The bed is whole and the joint keeps room for grout.',
  numbers: 'The numbers',
} as const;
export type SqueezeWords = Record<keyof typeof squeezeWords, string>;
