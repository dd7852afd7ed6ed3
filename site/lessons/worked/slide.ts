import { pitchMm } from '@sim/trowel/notch.ts';
import { valueOf } from '@sim/rules/rulebook.ts';

import { notchById } from './notch.ts';

const notch = '1-2-1-2-in-square';
const { widthMm, toothMm } = notchById(notch);
const pitch = pitchMm(notchById(notch));
const jointMm = valueOf('set.joint-limits', 'joint');

/** Coverage gained by strokes across straight ridges under a light hand: the path over the pitch (our ridge law). */
export const gainFrom = (pathMm: number, pitch: number): number => pathMm / pitch;

const start = widthMm / pitch;
const strokesMm = 2 * jointMm;

/** A wide notch in a thin joint: what the shake in the joint closes, and what one long stroke would. mm, shares 0…1 */
export const slideWorked = {
  notch,
  jointMm,
  pitchMm: pitch,
  laneMm: toothMm,
  start,
  strokesMm,
  gain: gainFrom(strokesMm, pitch),
  end: Math.min(1, start + gainFrom(strokesMm, pitch)),
  gainSlidIn: gainFrom(toothMm, pitch),
};
