import type { UnitSystem } from '@sim/units/format.ts';
import { type Bank, compose } from '@quiz/engine/compose.ts';
import { markAnswer } from '@quiz/engine/mark.ts';
import { selfAnswers } from '@quiz/engine/self-test.ts';
import type { KeyedItem } from '@quiz/engine/item.ts';

/** What is counted over many seeds of one template. */
export interface Tally {
  items: number;
  /** Faults found, in words, with the seed. */
  faults: string[];
  /** By number of places: how often the key stood in each. */
  places: Map<number, number[]>;
  /** Items with more than one choice text length, and among them how often the key was the strictly longest; the sum of chances. */
  longest: { seen: number; key: number; chance: number };
  ideas: Set<string>;
  keyed: KeyedItem[];
}

/** One of several, a range from a figure to itself, a unit doubled: what a person would never say. */
const clumsy = /\b(?<![./,])1 (bags|tiles|dabs|points|panels|voids)\b|\b(\d+) to \2\b|\bin in[,.;:]/;
const numberedHole = /\{\w+\}|undefined|NaN|Infinity|\[object/;

function allText({ item, key }: KeyedItem): string[] {
  const choices = 'choices' in item.form ? item.form.choices.map(({ text }) => text) : [];
  const verdicts = item.form.kind === 'judge' ? item.form.verdicts.map(({ text }) => text) : [];
  const pictures = [item.picture, key.picture].flatMap((picture) => (picture ? [picture.words] : []));
  return [
    ...item.story,
    item.ask,
    item.credit,
    ...item.facts.flatMap(({ name, value }) => [name, value]),
    ...choices,
    ...verdicts,
    ...key.why,
    key.says,
    ...pictures,
  ];
}

function checkText(keyed: KeyedItem, say: (fault: string) => void): void {
  for (const text of allText(keyed)) {
    if (text.trim() === '' || numberedHole.test(text)) say(`text "${text}"`);
    if (clumsy.test(text)) say(`clumsy: "${text}"`);
    if (/ {2,}| [,.?]|\?\?/.test(text)) say(`spacing in "${text}"`);
    const other = keyed.item.units === 'imperial' ? /\d (mm|kg|L|m²|°C)\b/ : /\d (in|lb|qt|ft²|ft|°F)\b/;
    if (other.test(text)) say(`the other system's unit in "${text}"`);
  }
  if (keyed.key.why.length === 0 || keyed.key.rules.length === 0) say('no reason or no rule');
  if (keyed.item.form.kind === 'number' && keyed.item.form.quantity !== 'count' && keyed.item.form.unit === '')
    say('no unit');
}

/** Each item answers itself: right, every wrong idea, and what can't be read. */
function checkMarks(keyed: KeyedItem, say: (fault: string) => void): void {
  const { right, wrong, unreadable } = selfAnswers(keyed);
  const best = markAnswer(keyed, right);
  if (best.outcome !== 'right' || best.points !== 1) say(`the key "${right}" is marked ${best.outcome}`);
  for (const { answer, idea } of wrong) {
    const mark = markAnswer(keyed, answer);
    if (mark.outcome !== 'wrong' || mark.points >= 1) say(`"${answer}" is marked ${mark.outcome}`);
    if (idea !== null && !mark.ideas.includes(idea as never)) say(`"${answer}" does not show ${idea}`);
  }
  for (const answer of unreadable)
    if (markAnswer(keyed, answer).outcome !== 'unreadable') say(`"${answer}" could be read`);
  if (markAnswer(keyed, '').outcome !== 'blank') say('nothing is not blank');
}

function checkChoices({ item, key }: KeyedItem, say: (fault: string) => void): void {
  const { form } = item;
  if (!('choices' in form)) return;
  const texts = form.choices.map(({ text }) => text.toLowerCase());
  if (new Set(texts).size !== texts.length) say(`two choices alike: ${texts.join(' | ')}`);
  const hits = form.choices.filter(({ letter }) =>
    form.kind === 'one' ? key.right === letter : form.kind === 'judge' ? key.right.endsWith(` ${letter}`) : true,
  );
  if ((form.kind === 'one' || form.kind === 'judge') && hits.length !== 1) say(`${hits.length} right choices`);
  if (form.choices.length < 2) say('nothing to choose from');
}

/** The chosen letter of the part of a form where one of several is picked. */
const pickedLetter = ({ item, key }: KeyedItem): string | null =>
  item.form.kind === 'one' ? key.right : item.form.kind === 'judge' ? (key.right.split(' ')[1] ?? null) : null;

/** Composes and checks `seeds` items of a template, imperial and metric by turns. */
export function tallyTemplate(bank: Bank, template: string, seeds: number): Tally {
  const tally: Tally = {
    items: 0,
    faults: [],
    places: new Map(),
    longest: { seen: 0, key: 0, chance: 0 },
    ideas: new Set(),
    keyed: [],
  };
  for (let seed = 0; seed < seeds; seed++) {
    const units: UnitSystem = seed % 2 === 0 ? 'imperial' : 'metric';
    const keyed = compose(bank, { template, seed, slot: seed % 7 }, units);
    const say = (fault: string): void => {
      if (tally.faults.length < 12) tally.faults.push(`${template} seed ${seed} ${units}: ${fault}`);
    };
    tally.items++;
    tally.keyed.push(keyed);
    checkText(keyed, say);
    checkChoices(keyed, say);
    checkMarks(keyed, say);
    for (const decision of keyed.key.decisions) for (const idea of Object.values(decision.ideas)) tally.ideas.add(idea);
    const right = pickedLetter(keyed);
    if (right === null || !('choices' in keyed.item.form)) continue;
    const { choices } = keyed.item.form;
    const place = choices.findIndex(({ letter }) => letter === right);
    const row = tally.places.get(choices.length) ?? Array<number>(choices.length).fill(0);
    row[place] = (row[place] ?? 0) + 1;
    tally.places.set(choices.length, row);
    const lengths = choices.map(({ text }) => text.length);
    const most = Math.max(...lengths);
    if (lengths.filter((length) => length === most).length === 1) {
      tally.longest.seen++;
      tally.longest.chance += 1 / choices.length;
      if (lengths[place] === most) tally.longest.key++;
    }
  }
  return tally;
}

/** 99.99 % points of chi-square (standard table), by degrees of freedom. */
const CHI_9999: Record<number, number> = { 1: 15.14, 2: 18.42, 3: 21.11, 4: 23.51, 5: 25.74 };

/** Chi-square of a row of counts against evenness, over its 99.99 % point; above one is uneven. */
export function unevenness(counts: readonly number[]): number {
  const sum = counts.reduce((all, one) => all + one, 0);
  const even = sum / counts.length;
  const chi = counts.reduce((all, one) => all + (one - even) ** 2 / even, 0);
  return chi / (CHI_9999[counts.length - 1] ?? Infinity);
}

/** Numbers are blotted out: what is learned is which kind of sentence tends to be right, not a list of answers. */
const blotted = (text: string): string => text.replaceAll(/\d+([.,/]\d+)*( \d+\/\d+)?/g, '#');

/**
 * How often a guesser is right who sees only the choices and knows, from half of the items, which sentences tend to be
 * right, but never reads the job. Between choices that look alike the toss is counted as its chance.
 */
export function blindHits(keyed: readonly KeyedItem[]): number {
  const half = Math.floor(keyed.length / 2);
  const record = new Map<string, [number, number]>();
  const parts = (one: KeyedItem): { choices: { letter: string; text: string }[]; right: string }[] => {
    const { form } = one.item;
    if (form.kind === 'one') return [{ choices: form.choices, right: one.key.right }];
    if (form.kind !== 'judge') return [];
    const [verdict = '', reason = ''] = one.key.right.split(' ');
    return [
      {
        choices: form.verdicts.flatMap((v) =>
          form.choices.map((c) => ({ letter: `${v.letter} ${c.letter}`, text: `${v.text}: ${c.text}` })),
        ),
        right: `${verdict} ${reason}`,
      },
    ];
  };
  for (const one of keyed.slice(0, half))
    for (const { choices, right } of parts(one))
      for (const { letter, text } of choices) {
        const [shown, hit] = record.get(blotted(text)) ?? [0, 0];
        record.set(blotted(text), [shown + 1, hit + (letter === right ? 1 : 0)]);
      }
  let hits = 0;
  let asked = 0;
  for (const one of keyed.slice(half))
    for (const { choices, right } of parts(one)) {
      asked++;
      const rated = choices.map(({ letter, text }) => {
        const [shown, hit] = record.get(blotted(text)) ?? [0, 0];
        return { letter, rate: (hit + 0.25) / (shown + 1) };
      });
      const best = Math.max(...rated.map(({ rate }) => rate));
      const tied = rated.filter(({ rate }) => rate === best);
      if (tied.some(({ letter }) => letter === right)) hits += 1 / tied.length;
    }
  return asked === 0 ? 0 : hits / asked;
}
