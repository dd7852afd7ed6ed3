import { type core } from 'zod/mini';

import { withoutHidden } from './hidden.ts';

/** One thing wrong with what was given: where, what, and what would be accepted. */
export interface Fault {
  /** The field, as a path: `tile.lengthMm`, `areas[0].jointMm`; empty for the whole. */
  path: string;
  problem: string;
  accepted: string;
}

/** A value read whole, or every fault found in it. */
export type Reading<T> = { ok: true; value: T } | { ok: false; faults: Fault[] };

/** One clear sentence for a person. What is quoted from the input can't hide or turn the rest. */
export const faultSentence = (fault: Fault): string =>
  withoutHidden(`${fault.path === '' ? 'input' : fault.path}: ${fault.problem}; ${fault.accepted}.`, '\uFFFD');

/** No field of ours has a longer name; a stranger's is told by its beginning. */
const MOST_NAME = 40;
const nameText = (key: PropertyKey): string => {
  const name = String(key);
  return name === '' ? '""' : name.length > MOST_NAME ? `${name.slice(0, MOST_NAME)}…` : name;
};

const pathText = (path: PropertyKey[]): string =>
  path.reduce<string>(
    (text, key) =>
      typeof key === 'number' ? `${text}[${key}]` : text === '' ? nameText(key) : `${text}.${nameText(key)}`,
    '',
  );

const kindOf = (value: unknown): string => {
  if (value === undefined) return 'is missing';
  if (value === null) return 'is null';
  if (typeof value === 'number') return Number.isFinite(value) ? `is ${value}` : 'is not a finite number';
  if (typeof value === 'string') return `is the text "${value.slice(0, 40)}"`;
  return Array.isArray(value)
    ? `is a list of ${value.length}`
    : `is ${typeof value === 'object' ? 'an object' : String(value).slice(0, 40)}`;
};

const words: Record<string, string> = {
  number: 'a number',
  string: 'text',
  boolean: 'true or false',
  object: 'an object',
  array: 'a list',
};

/** What the schema library says when the schema gave no words of its own. */
const WORDLESS = 'Invalid input';

function acceptedBy(issue: core.$ZodIssue): string {
  if (issue.message && issue.message !== WORDLESS) return issue.message;
  switch (issue.code) {
    case 'too_small':
      return `give at least ${String(issue.minimum)}${issue.origin === 'array' ? ' of them' : issue.origin === 'string' ? ' characters' : ''}`;
    case 'too_big':
      return `give at most ${String(issue.maximum)}${issue.origin === 'array' ? ' of them' : issue.origin === 'string' ? ' characters' : ''}`;
    case 'invalid_value':
      return `accepted are ${issue.values.map(String).join(', ')}`;
    case 'invalid_type':
      return `give ${words[issue.expected] ?? issue.expected}`;
    default:
      return 'see the example in the documentation';
  }
}

/** Turns a schema's complaints into our sentences, an unknown field each by its own name. */
export function faultsOf(issues: core.$ZodIssue[], input: unknown): Fault[] {
  const valueAt = (path: PropertyKey[]): unknown =>
    path.reduce<unknown>((value, key) => (value as Record<PropertyKey, unknown> | null | undefined)?.[key], input);
  return issues.flatMap((issue): Fault[] => {
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => ({
        path: pathText([...issue.path, key]),
        problem: 'is not a field we know',
        accepted: 'leave it out or check its spelling',
      }));
    return [{ path: pathText(issue.path), problem: kindOf(valueAt(issue.path)), accepted: acceptedBy(issue) }];
  });
}
