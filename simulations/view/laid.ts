import type { BedFrame } from '../bed/types.ts';

/** Whether a tile lies on the bed in this frame; before that there is only the comb. */
export const isLaid = (frame: BedFrame): boolean => !Number.isNaN(frame.tileHeightMm);
