import { exponential } from '../numbers/plain.ts';

/** Minutes after which contact made on a combed bed has lost about two thirds of its hold, still indoor air near 21 °C (model). */
export const SKIN_MIN = 30;

/** Slide that rubs the skin of one contact away, mm (model). */
const RUBBED_OFF_MM = 12;

/**
 * Share of a contact that bonds when the tile is pressed on a bed of some age: exp(−(t/t₀)²) (model; drying tests
 * show no loss for minutes and then a quick one).
 * @param ageMin minutes since combing
 * @param skinMin t₀, minutes
 */
export const pressedTransfer = (ageMin: number, skinMin = SKIN_MIN): number => {
  const part = ageMin / skinMin;
  return exponential(-part * part);
};

/** The same after the tile has slid: sliding rubs the skin into the bed and brings fresh mortar to the back. */
export const slidTransfer = (pressed: number, slidMm: number): number =>
  pressed + (1 - pressed) * Math.min(1, slidMm / RUBBED_OFF_MM);
