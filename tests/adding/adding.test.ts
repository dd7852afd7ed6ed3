/** What DEVELOPERS.md says of adding a thing, done line by line on a copy of the source. Invented things throughout. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

import { openWorkshop, type Workshop } from './workshop.ts';

const LONG = 300_000;
let shop: Workshop;

const addRule = ({ insert }: Workshop): void =>
  insert(
    'simulations/rules/data/coverage.ts',
    "  'coverage.maker': {",
    `  'coverage.training-wall': {
    title: 'The training wall',
    says: 'On the training wall of this check the share is at least {share}.',
    values: { share: share(0.97) },
    source: PRACTICE,
    standards: ['training-yard'],
  },
`,
  );

const addNotch = ({ insert }: Workshop): void =>
  insert('simulations/trowel/common-notches.ts', "  ['u', 3 / 4,", "  ['square', 5 / 8, 5 / 8, 5 / 8],\n");

const addStandardSet = ({ insert }: Workshop): void => {
  insert('simulations/rules/rule.ts', '] as const;\nexport type StandardSet', ", 'training-yard'");
  insert(
    'simulations/rules/sets.ts',
    "  'iso-en': {\n    basedOn",
    `  'training-yard': {
    basedOn: 'iso-en',
    without: ['flatness.din-large'],
    units: 'metric',
    bag: 'bag.elsewhere',
    climate: 'time.temperature-en',
    straightedgeMm: () => valueOf('flatness.uk', 'over'),
    warp: { rectified: 'iso.flatness-rectified', porcelain: 'iso.flatness', other: 'iso.flatness' },
    outdoorBack: { how: 'combed', rule: 'exterior.both-faces' },
    notches: 'inch',
    usual: { jointMm: 4, thicknessMm: 9 },
  },
`,
  );
  insert('site/messages/en/job.ts', "'iso-en': 'International", "'training-yard': 'The training yard', ");
  insert('site/messages/en/sources.ts', "'iso-en': 'ISO and EN'", "'training-yard': 'Training yard', ");
};

const addQuestion = ({ insert, write }: Workshop): void => {
  write(
    'quiz-bank/templates/mixing/half-a-bag.ts',
    `import { template } from '../../engine/template.ts';

/** Water for half the powder. */
export const halfABag = template({
  id: 'mixing/half-a-bag',
  outcomes: ['part-bag'],
  ideas: [],
  draw: (draw) => ({ waterL: draw.step(4, 8, 0.2), bagKg: draw.pick([20, 25]) }),
  pose: ({ waterL, bagKg }, say) => ({
    story: [say.t('story', { bag: say.mass(bagKg), water: say.volume(waterL) })],
    ask: say.t('ask'),
    answer: { kind: 'number', quantity: 'volume', value: waterL / 2, tolerance: 0.1, digits: 1, ideas: [] },
    why: [say.t('why', { water: say.volume(waterL / 2) })],
    rules: ['mortar.part-bag'],
  }),
});
`,
  );
  insert(
    'quiz-bank/words/en/mixing.ts',
    "  'mixing/part-bag-water': {",
    `  'mixing/half-a-bag': {
    story: 'A bag of {bag} takes {water} of water. You mix half the bag.',
    ask: 'How much water?',
    why: 'Half the powder takes half the water: {water}.',
  },
`,
  );
  insert(
    'quiz-bank/templates/all.ts',
    'import { looseKitchen }',
    "import { halfABag } from './mixing/half-a-bag.ts';\n",
  );
  insert('quiz-bank/templates/all.ts', '\n  looseKitchen,', '\n  halfABag,');
};

const addLesson = ({ insert, write }: Workshop): void => {
  insert('lessons/course.ts', '] as const;', "  { number: 17, slug: 'the-training-wall', group: 'job' },\n");
  insert('lessons/outcomes.ts', '} as const satisfies', "  'the-training-wall': ['reach-the-training-share'],\n");
  insert(
    'lessons/en/outcomes.ts',
    "  'why-ridges':",
    "  'reach-the-training-share': 'say what the training wall asks for',\n",
  );
  for (const mark of ['The bed', 'Air, fill and the bed nobody sees'])
    insert(
      'site/messages/en/course.ts',
      mark === 'The bed' ? '};\n\nexport const groupTitles' : `  'what-the-ridges-are-for': '${mark}'`,
      "  'the-training-wall': 'The training wall',\n",
    );
  write(
    'lessons/en/17-the-training-wall.mdx',
    `---
slug: the-training-wall
summary: A wall that stands in this check only, and what its rule asks of the mortar behind each tile.
minutes: 5
rules:
  - coverage.training-wall
---

The wall asks for <Fact id="coverage.training-wall" /> behind every tile.
`,
  );
  write(
    'lessons/en/teach/17-the-training-wall.mdx',
    `---
slug: the-training-wall
minutes: 10
materials:
  - One wall
---

Stand in front of it.
`,
  );
};

beforeAll(() => {
  shop = openWorkshop();
  for (const add of [addRule, addNotch, addStandardSet, addQuestion, addLesson]) add(shop);
});
afterAll(() => shop.clear());

/** What the command line answers to a question put as JSON. */
function calc(verb: string, question: unknown): { assumed: unknown } {
  shop.write('question.json', JSON.stringify(question));
  const { status, said } = shop.run('node_modules/.bin/node', ['simulations/calc.ts', verb, 'question.json']);
  expect(status, said).toBe(0);
  return JSON.parse(said) as { assumed: unknown };
}

describe('added by the five lines of DEVELOPERS.md', () => {
  test('a set of standards is planned by, with its own notch row, units and usual joint', () => {
    const tile = { material: 'porcelain', lengthMm: 600, widthMm: 600 };
    const answer = calc('plan', { standards: 'training-yard', areas: [{ areaM2: 5, tile }] });
    expect(JSON.stringify(answer.assumed)).toContain('"areas[0].jointMm":4');
    expect(JSON.stringify(answer)).toContain('5/8 × 5/8');
  });

  test('a question is drawn, keyed and fair', { timeout: LONG }, () => {
    const answer = calc('round', { seed: 5, items: 12, lessons: ['mixing'] });
    expect(JSON.stringify(answer)).toContain('You mix half the bag');
    const { said, status } = shop.run('npx', [
      ...['--no-install', 'vitest', 'run', 'tests/property/quiz-fairness.test.ts'],
      ...['-t', 'mixing/half-a-bag'],
    ]);
    expect(status, said).toBe(0);
    expect(said).toMatch(/Tests\s+[5-9] passed/);
  });

  test(
    'a lesson has its page and its page for the instructor, and the rule stands on /sources',
    { timeout: LONG },
    () => {
      const { said, status } = shop.run('npx', ['--no-install', 'astro', 'build']);
      expect(status, said).toBe(0);
      const lesson = shop.read('dist/lessons/the-training-wall/index.html');
      expect(lesson).toContain('97 %');
      expect(lesson).toContain('say what the training wall asks for');
      expect(shop.read('dist/lessons/the-training-wall/teach/index.html')).toContain('Stand in front of it.');
      expect(shop.read('dist/sources/index.html')).toContain('id="coverage.training-wall"');
      expect(shop.read('dist/index.html')).toContain('/lessons/the-training-wall/');
      expect(shop.read('dist/search-index.json')).toContain('coverage.training-wall');
    },
  );

  test('all of it agrees with the types, which know the pages once they are built', { timeout: LONG }, () => {
    const { said, status } = shop.run('npx', ['--no-install', 'tsc', '--noEmit', '--incremental', 'false']);
    expect(status, said).toBe(0);
  });
});
