/**
 * Characters that hide, break or turn text: control characters, zero-width marks, marks that change the reading
 * direction, and half of a character pair.
 */
const HIDDEN = /[\u0000-\u001f\u007f-\u009f\u00ad\u200b-\u200f\u2028-\u202f\u2060-\u206f\ufeff\ufff9-\ufffb]|\p{Cs}/gu;

/** A learner's name for display: one line, nothing hidden in it, at most 60 characters. */
export const cleanName = (name: string): string =>
  [...name.normalize('NFC').replace(HIDDEN, ' ').replace(/\s+/gu, ' ').trim()].slice(0, 60).join('');

/** Whether a name holds more than a name should: something was taken out of it. */
export const nameWasCleaned = (name: string): boolean => cleanName(name) !== name.normalize('NFC');
