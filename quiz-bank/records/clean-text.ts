import { withoutHidden } from '../../simulations/input/hidden.ts';

/** A learner's name for display: one line, nothing hidden in it, at most 60 characters. */
export const cleanName = (name: string): string =>
  [...withoutHidden(name.normalize('NFC'), ' ').replace(/\s+/gu, ' ').trim()].slice(0, 60).join('');

/** Whether a name holds more than a name should: something was taken out of it. */
export const nameWasCleaned = (name: string): boolean => cleanName(name) !== name.normalize('NFC');
