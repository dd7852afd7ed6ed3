import { describe, expect, it } from 'vitest';

import { mark } from '@sim/calc/mark.ts';
import { round } from '@sim/calc/round.ts';

interface Printed {
  bank: string;
  items: {
    ref: { template: string };
    form: { kind: string; quantity?: string; choices?: { text: string }[] };
    key: { right: string; says: string; wrongIdeas: { idea: string; answer: unknown }[] };
    rules: { rule: string; says: string; source: { title: string; status: string } }[];
  }[];
  assumed: object;
}
interface Marked {
  points: number;
  of: number;
  marks: { outcome: string; ideas: string[]; right: string; sentence?: string }[];
  assumed: object;
}
const printed = (input: object): Printed => {
  const made = round(input);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value as unknown as Printed;
};
const marked = (input: object): Marked => {
  const made = mark(input);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value as unknown as Marked;
};
const faults = (made: ReturnType<typeof round>): string[] =>
  made.ok ? [] : made.faults.map(({ path, problem, accepted }) => `${path} ${problem}; ${accepted}`);

describe('calc round', () => {
  it('prints items with keys, wrong ideas and deciding rules, and says what it assumed', () => {
    const { items, assumed } = printed({ seed: 7, items: 12 });
    expect(items).toHaveLength(12);
    for (const { key, rules } of items) {
      expect(key.says).not.toBe('');
      expect(rules.length).toBeGreaterThan(0);
      for (const { says, source } of rules) expect(`${says}${source.title}${source.status}`).not.toContain('undefined');
    }
    expect(assumed).toEqual({ lessons: [], units: 'imperial' });
    expect(printed({ seed: 7, items: 12, units: 'imperial' }).items).toEqual(items);
  });

  it('keeps to the modules asked for', () => {
    const { items } = printed({ seed: 3, items: 8, lessons: ['mixing', 'setting'] });
    for (const { ref } of items) expect(ref.template).toMatch(/^(mixing|setting)\//);
  });

  it('prints an idea’s number in the unit of the right one: a key marked right, an idea marked as that idea', () => {
    const made = printed({ seed: 11, items: 60 });
    const answers = made.items.map(({ form, key }) =>
      form.kind === 'number' && key.wrongIdeas[0] ? String(key.wrongIdeas[0].answer) : key.right,
    );
    const { marks } = marked({ seed: 11, items: 60, bank: made.bank, answers });
    let ideas = 0;
    made.items.forEach(({ form, key }, at) => {
      const first = key.wrongIdeas[0];
      if (form.kind !== 'number' || !first) return expect(marks[at]?.outcome).toBe('right');
      ideas += 1;
      expect(marks[at]?.ideas).toContain(first.idea);
    });
    expect(ideas).toBeGreaterThan(3);
  });
});

describe('calc mark', () => {
  it('re-makes the items and marks the answers; a score in the file is refused by name', () => {
    const made = printed({ seed: 5, items: 3 });
    const handIn = { seed: 5, items: 3, bank: made.bank, answers: made.items.map(({ key }) => key.right) };
    expect(marked(handIn)).toMatchObject({
      points: 3,
      of: 3,
      assumed: { lessons: [], units: 'imperial', mode: 'mixed' },
    });
    expect(faults(mark({ ...handIn, points: 3 }))[0]).toMatch(/^points is not a field we know/);
    expect(marked({ ...handIn, answers: [] })).toMatchObject({ points: 0, of: 3 });
  });

  it('says so when the bank is another one, or when there are more answers than items', () => {
    const { bank } = printed({ seed: 5, items: 1 });
    expect(faults(mark({ seed: 5, items: 1, bank: 'old', answers: [] }))[0]).toContain('mark it with the bank');
    expect(faults(mark({ seed: 5, items: 1, bank, answers: ['A', 'B'] }))[0]).toContain('give at most 1');
  });
});
