import { type Fault, faultSentence } from '@sim/input/fault.ts';
import { withoutHidden } from '@sim/input/hidden.ts';

/** The first number in a value that is none, by its path; null when all are sound. */
export function unsound(value: unknown, path = ''): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : path || 'the value';
  if (ArrayBuffer.isView(value) || typeof value !== 'object' || value === null) return null;
  for (const [name, inside] of Object.entries(value)) {
    const found = unsound(inside, `${path}.${name}`);
    if (found) return found;
  }
  return null;
}

/** What is wrong with a refusal's sentences; null when a person could act on each. */
export function poorRefusal(faults: readonly Fault[]): string | null {
  if (faults.length === 0) return 'refused without a reason';
  for (const fault of faults) {
    const sentence = faultSentence(fault);
    if (/^is (undefined|NaN|\[object)/.test(fault.problem) || /undefined|NaN|\[object/.test(fault.accepted))
      return sentence;
    if (withoutHidden(sentence) !== sentence) return `hidden characters: ${sentence}`;
    if (fault.problem.trim() === '' || fault.accepted.trim() === '') return `empty words: ${sentence}`;
    if (sentence.length > 1000) return `too long: ${sentence.slice(0, 120)}`;
  }
  return null;
}
