/**
 * The declared order by which requirements are merged. For each subject: which of two standards' figures is the
 * stricter, and what a maker's written instruction may do to it.
 */
export type Subject = 'coverage' | 'joint' | 'offset' | 'lippage' | 'flatness' | 'movement' | 'notch' | 'mortar';

export interface MergeOrder {
  /** Of two figures that apply, the greater or the lesser stands. */
  strictest: 'greatest' | 'least';
  /** `raises`: may only make it stricter; `governs`: takes the place of our own choice. */
  maker: 'raises' | 'governs';
}

export const mergeOrder: Readonly<Record<Subject, MergeOrder>> = {
  coverage: { strictest: 'greatest', maker: 'raises' },
  joint: { strictest: 'greatest', maker: 'raises' },
  offset: { strictest: 'least', maker: 'raises' },
  lippage: { strictest: 'least', maker: 'raises' },
  flatness: { strictest: 'least', maker: 'raises' },
  movement: { strictest: 'least', maker: 'raises' },
  notch: { strictest: 'least', maker: 'governs' },
  mortar: { strictest: 'greatest', maker: 'governs' },
};
