import { strangeNames, strangePieces, strangeValues } from './strange.ts';

/** Whole number from 0 to `most` − 1. */
export type Draw = (most: number) => number;

const pick = <T>(list: readonly T[], draw: Draw): T => list[draw(list.length)] as T;

/** An object with one more own field of any name, `__proto__` too, as a JSON text could give it. */
function withField(object: object, name: string, value: unknown): object {
  const made = { ...object };
  Object.defineProperty(made, name, { value, enumerable: true, configurable: true, writable: true });
  return made;
}

function strangeNumber(number: number, draw: Draw): number {
  return pick(
    [-number, number * 1e6, number / 1e6, number + 0.1, Math.trunc(number), number + 1, 1e21, 3 - number],
    draw,
  );
}

/** The value with one thing in it changed: a leaf, a field more, fewer or under another name, a list longer or shorter. */
export function mutateValue(value: unknown, draw: Draw): unknown {
  if (draw(12) === 0) return structuredClone(pick(strangeValues, draw));
  if (Array.isArray(value)) {
    const list = [...(value as unknown[])];
    if (list.length === 0) return [structuredClone(pick(strangeValues, draw))];
    const at = draw(list.length);
    const kind = draw(5);
    if (kind === 0) list.splice(at, 1);
    else if (kind === 1) list.splice(at, 0, structuredClone(list[at]));
    else list[at] = mutateValue(list[at], draw);
    return list;
  }
  if (typeof value === 'object' && value !== null) {
    const names = Object.keys(value);
    const kind = draw(6);
    if (names.length === 0 || kind === 0)
      return withField(value, pick(strangeNames, draw), structuredClone(pick(strangeValues, draw)));
    const name = pick(names, draw);
    const inside = (value as Record<string, unknown>)[name];
    if (kind === 1) return Object.fromEntries(Object.entries(value).filter(([one]) => one !== name));
    return withField(value, name, mutateValue(inside, draw));
  }
  if (typeof value === 'number' && draw(2) === 0) return strangeNumber(value, draw);
  if (typeof value === 'string' && draw(2) === 0) return mutateText(value, draw);
  return structuredClone(pick(strangeValues, draw));
}

/** The text cut, doubled in part, with letters changed, or with a strange piece put in. */
export function mutateText(text: string, draw: Draw): string {
  const at = draw(text.length + 1);
  const to = Math.min(text.length, at + draw(20));
  switch (draw(5)) {
    case 0:
      return text.slice(0, at);
    case 1:
      return text.slice(0, at) + text.slice(to);
    case 2:
      return text.slice(0, to) + text.slice(at);
    case 3:
      return text.slice(0, at) + String.fromCharCode(draw(draw(2) === 0 ? 128 : 65_536)) + text.slice(at + 1);
    default:
      return text.slice(0, at) + pick(strangePieces, draw) + text.slice(at);
  }
}

/** Text of no meaning at all. */
export const randomText = (draw: Draw): string =>
  Array.from({ length: draw(200) }, () =>
    draw(6) === 0 ? pick(strangePieces, draw) : String.fromCharCode(draw(draw(3) === 0 ? 65_536 : 128)),
  ).join('');

/**
 * One text for a reader, made from a good one: a JSON text has values in it changed (one to four times), any text is
 * also changed letter by letter, and some are nothing but noise.
 */
export function strangeText(good: string, json: boolean, draw: Draw): string {
  const kind = draw(10);
  if (kind === 0) return randomText(draw);
  if (kind < 3 || !json) {
    let text = good;
    for (let times = 1 + draw(3); times > 0; times -= 1) text = mutateText(text, draw);
    return text;
  }
  let value = JSON.parse(good) as unknown;
  for (let times = 1 + draw(4); times > 0; times -= 1) value = mutateValue(value, draw);
  return JSON.stringify(value) ?? 'null';
}
