import type { BedFrame, BedSetup } from '@sim/bed/types.ts';

/** How the tile stands off its place while it is turned or shaken. */
export interface Sway {
  turnDeg: number;
  shiftMm: number;
}

export const AT_REST: Sway = { turnDeg: 0, shiftMm: 0 };

/** A shake of a few tenths of a millimetre cannot be seen: it is drawn this large, and the page says so. */
const SHOWN_SHAKE_MM = 1.5;

/**
 * Turn and shake of the tile in one picture of a run. The solver gives a twist's and a vibration's effect on the bed;
 * where between its ends a stroke stands is drawn here, from the picture's place among those of its act. A slide's
 * place is the solver's own and stands in the frame.
 */
export function swayOf(frames: readonly BedFrame[], at: number, setup: BedSetup): Sway {
  const frame = frames[at];
  const act = frame ? setup.actions[frame.action] : undefined;
  if (!frame || (act?.do !== 'twist' && act?.do !== 'vibrate')) return AT_REST;
  const first = frames.findIndex(({ action }) => action === frame.action);
  const last = frames.findLastIndex(({ action }) => action === frame.action);
  // The last picture of an act has the tile back in its place.
  if (at >= last) return AT_REST;
  const share = (at - first + 1) / (last - first + 1);
  if (act.do === 'twist') return { ...AT_REST, turnDeg: act.angleDeg * Math.sin(Math.PI * act.strokes * share) };
  return { ...AT_REST, shiftMm: (at - first) % 2 === 0 ? SHOWN_SHAKE_MM : -SHOWN_SHAKE_MM };
}
