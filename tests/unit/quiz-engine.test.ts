import { describe, expect, test } from 'vitest';

import { bank, BANK_VERSION } from '@quiz/bank.ts';
import { readAnswer } from '@quiz/engine/answer.ts';
import { clashes } from '@quiz/engine/clash.ts';
import { compose } from '@quiz/engine/compose.ts';
import { drawFrom } from '@quiz/engine/draw.ts';
import type { KeyedItem } from '@quiz/engine/item.ts';
import { markAnswer } from '@quiz/engine/mark.ts';
import { readNumber } from '@quiz/engine/read-number.ts';
import { roundRefs } from '@quiz/engine/round.ts';
import { MODULES } from '@quiz/modules.ts';
import { IDEAS } from '@quiz/wrong-ideas/idea.ts';

const ofKind = (kind: string, from = 0): KeyedItem => {
  for (let seed = from; seed < from + 50; seed++)
    for (const { id } of bank.templates) {
      const keyed = compose(bank, { template: id, seed, slot: 0 }, 'imperial');
      if (keyed.item.form.kind === kind) return keyed;
    }
  throw new Error(`The bank asks nothing of kind ${kind}.`);
};

describe('a draw', () => {
  test('is the same for the same name and another for the next', () => {
    const ten = (seed: number) => Array.from({ length: 10 }, () => drawFrom('a', seed).whole(0, 1e6));
    expect(ten(1)).toEqual(ten(1));
    expect(drawFrom('a', 1).whole(0, 1e6)).not.toBe(drawFrom('a', 2).whole(0, 1e6));
  });

  test('falls evenly at its first step over neighbouring seeds', () => {
    // A generator that follows its seed would put the first draw of a thousand rounds in one place.
    const counts = Array<number>(10).fill(0);
    for (let seed = 0; seed < 5000; seed++) counts[drawFrom('x', seed).whole(0, 9)]! += 1;
    const chi = counts.reduce((sum, one) => sum + (one - 500) ** 2 / 500, 0);
    // 99.9 % point of chi-square with nine degrees of freedom.
    expect(chi).toBeLessThan(27.88);
  });
});

test.each([
  ['12.5', 12.5],
  ['12,5', 12.5],
  ['1/4', 0.25],
  ['1 1/2', 1.5],
  ['1-1/2', 1.5],
  ['85 %', 85],
  [' 3 mm ', 3],
  ['.5', 0.5],
])('%s is read as %d', (text, value) => {
  expect(readNumber(text)).toMatchObject({ ok: true, value });
});

test.each(['', 'about half', '1,250', '-3', '3/0', '12..5', '1e400'])('"%s" is refused with a sentence', (text) => {
  const reading = readNumber(text);
  expect(reading.ok).toBe(false);
  if (!reading.ok) expect(reading.sentence.length).toBeGreaterThan(8);
});

describe('marking', () => {
  test('every box of a list counts: all ticked or none earns no more than what is put right over what is put wrong', () => {
    const keyed = ofKind('all');
    const letters = keyed.item.form.kind === 'all' ? keyed.item.form.choices.map(({ letter }) => letter).join('') : '';
    const right = keyed.key.right.length;
    const share = (hits: number) => Math.max(0, (2 * hits - letters.length) / letters.length);
    expect(markAnswer(keyed, letters).points).toBeCloseTo(share(right));
    expect(markAnswer(keyed, '-').points).toBeCloseTo(share(letters.length - right));
  });

  test('an order turned round earns nothing, one swap of neighbours all but one pair', () => {
    const keyed = ofKind('order');
    const { right } = keyed.key;
    expect(markAnswer(keyed, [...right].reverse().join('')).points).toBe(0);
    const swapped = `${right[1] ?? ''}${right[0] ?? ''}${right.slice(2)}`;
    expect(markAnswer(keyed, swapped).points).toBeCloseTo((right.length - 2) / (right.length - 1));
  });

  test('verdict and reason count half each', () => {
    const keyed = ofKind('judge');
    const [verdict = '', letter = ''] = keyed.key.right.split(' ');
    expect(markAnswer(keyed, `${verdict === 'yes' ? 'no' : 'yes'} ${letter}`).points).toBe(0.5);
  });

  test('a number may be written in the other system', () => {
    const keyed = compose(bank, { template: 'setting/how-far', seed: 1, slot: 0 }, 'imperial');
    const mm = keyed.key.number?.value ?? 0;
    expect(markAnswer(keyed, `${mm} mm`).outcome).toBe('right');
    expect(markAnswer(keyed, `${mm / 25.4} in`).outcome).toBe('right');
    expect(markAnswer(keyed, `${mm} kg`).outcome).toBe('unreadable');
  });

  test('an item holds nothing of its key', () => {
    for (const { id } of bank.templates) {
      const { item } = compose(bank, { template: id, seed: 5, slot: 0 }, 'metric');
      const names: string[] = [];
      JSON.stringify(item, (name, value: unknown) => {
        names.push(name);
        return value;
      });
      for (const told of ['key', 'right', 'idea', 'ideas', 'decisions', 'why', 'rules'])
        expect(names).not.toContain(told);
    }
  });

  test('an answer of absurd length is not read', () => {
    expect(readAnswer(ofKind('one').item, 'A'.repeat(5000))).toMatchObject({ ok: false, blank: false });
  });
});

test('a draw whose wrong answer would count as right clashes', () => {
  const number = {
    kind: 'number',
    quantity: 'gap',
    value: 2,
    tolerance: 0.2,
    ideas: [{ idea: 'skin-is-fine', value: 2.3 }],
  } as const;
  expect(clashes({ ...number, ideas: [...number.ideas] })).toBe(true);
  expect(clashes({ ...number, ideas: [{ idea: 'skin-is-fine', value: 2.5 }] })).toBe(false);
  expect(clashes({ kind: 'one', right: 'A thing', wrong: [{ text: 'a  thing', idea: null }] })).toBe(true);
});

describe('the bank', () => {
  test('has at least seventy templates, some in every module, of every kind', () => {
    expect(bank.templates.length).toBeGreaterThanOrEqual(70);
    expect(new Set(bank.templates.map(({ id }) => id)).size).toBe(bank.templates.length);
    for (const module of MODULES)
      expect(bank.templates.filter((one) => one.module === module).length).toBeGreaterThanOrEqual(3);
    const kinds = new Set(
      bank.templates.map(({ id }) => compose(bank, { template: id, seed: 1, slot: 0 }, 'imperial').item.form.kind),
    );
    expect([...kinds].sort()).toEqual(['all', 'judge', 'mark', 'number', 'one', 'order']);
  });

  test('every wrong idea stands behind several templates in different modules', () => {
    expect(IDEAS.length).toBeGreaterThanOrEqual(18);
    for (const idea of IDEAS) {
      const found = bank.templates.filter(({ ideas }) => ideas.includes(idea));
      expect(found.length, idea).toBeGreaterThanOrEqual(3);
      expect(new Set(found.map(({ module }) => module)).size, idea).toBeGreaterThanOrEqual(2);
    }
  });

  test('a round is the same again, keeps to its modules, and repeats no template before all were used', () => {
    const plan = { seed: 9, items: 12, modules: ['mixing', 'setting'] as const };
    const refs = roundRefs(bank, plan);
    expect(roundRefs(bank, plan)).toEqual(refs);
    const pool = bank.templates.filter(({ module }) => module === 'mixing' || module === 'setting').map(({ id }) => id);
    expect(refs.every(({ template }) => pool.includes(template))).toBe(true);
    expect(new Set(refs.slice(0, 10).map(({ template }) => template)).size).toBe(10);
  });

  test('the first draws stand as they were for this version of the bank', () => {
    const drawn = bank.templates.map(({ id }) => {
      const { item, key } = compose(bank, { template: id, seed: 1, slot: 0 }, 'imperial');
      return `${id}: ${item.story.join(' ')} → ${key.says}`;
    });
    // When this fails on purpose, raise BANK_VERSION and take the new snapshot.
    expect([BANK_VERSION, ...drawn]).toMatchSnapshot();
  });
});
