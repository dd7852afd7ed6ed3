import { describe, expect, test } from 'vitest';

import { course } from '@lessons/course.ts';
import { barText } from '@site/packages/launch/bar.ts';
import { choiceOf, launchPage, nameOf, titleOf } from '@site/packages/choice.ts';

const slugs = course.map(({ slug }) => slug);

describe('what a package is asked to count', () => {
  test('is the whole course at eighty per cent where nothing is said', () => {
    const choice = choiceOf({});
    expect(choice).toEqual({ modules: [], pass: 80 });
    expect(titleOf(choice)).toBe('Ridge to Bed');
    expect(nameOf(choice)).toBe('course');
  });
  test('is the modules named, in the course’s order, each once', () => {
    const choice = choiceOf({ modules: 'combing, mixing,combing', pass: '72.5' });
    expect(choice).toEqual({ modules: ['mixing', 'combing'], pass: 72.5 });
    expect(titleOf(choice)).toBe('Ridge to Bed: Mixing, Combing');
    expect(nameOf(choice)).toBe('modules-3-4');
    expect(launchPage('<body data-modules="{modules}" data-pass="{pass}">', choice)).toBe(
      '<body data-modules="mixing,combing" data-pass="72.5">',
    );
  });
  test('all modules named one by one are the whole course', () => {
    expect(choiceOf({ modules: slugs.join(',') }).modules).toEqual([]);
  });
  test.each(['setting,grouting', 'Mixing', '../mixing'])('modules "%s" are refused by name', (modules) => {
    expect(() => choiceOf({ modules })).toThrow(/^--modules: ".+" is not a module; accepted are what-the-ridges/);
  });
  test.each(['101', '-1', 'eighty', '', 'Infinity', '80%'])('a pass mark of "%s" is refused', (pass) => {
    expect(() => choiceOf({ pass })).toThrow(`--pass: "${pass}" is not a percentage; give a number from 0 to 100`);
  });
});

describe('the line above the course', () => {
  const begun = { completion: 0.5, score: null, complete: false, passed: false };
  test('names what counts, how much is done and the pass mark', () => {
    expect(barText(begun, ['mixing', 'combing'], 2, 0.75)).toBe(
      'Counts here: Mixing, Combing. 1 of 2 modules done. Each module ends in a check that counts. Pass mark 75 %.',
    );
  });
  test('says when it is passed', () => {
    expect(barText({ completion: 1, score: 0.9, complete: true, passed: true }, [], 16, 0.8)).toBe(
      '16 of 16 modules done. Points so far 90 %. Passed.',
    );
  });
});
