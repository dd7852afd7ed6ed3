import { readFileSync } from 'node:fs';

import { XmlDocument, XsdValidator } from 'libxml2-wasm';
import { afterAll, describe, expect, test } from 'vitest';

import { cmi5Structure } from '@site/packages/manifests.mjs';

describe('cmi5.xml', () => {
  const schema = XmlDocument.fromString(readFileSync('tests/reference/cmi5-course-structure.xsd', 'utf8'));
  const validator = XsdValidator.fromDoc(schema);
  const check = (text: string) => {
    const document = XmlDocument.fromString(text);
    try {
      validator.validate(document);
    } finally {
      document.dispose();
    }
  };
  const good = cmi5Structure({ title: 'A & B', about: '<c> "d"', name: 'course', pass: 80 }) as string;
  afterAll(() => {
    validator.dispose();
    schema.dispose();
  });

  test('holds to the course structure of cmi5, section 13.1', () => {
    expect(() => check(good)).not.toThrow();
    expect(() =>
      check(cmi5Structure({ title: 'T', about: 'A', name: 'modules-3-4', pass: 0 }) as string),
    ).not.toThrow();
  });
  test.each([
    ['a unit without its id', / id="urn:ridge-to-bed:course:whole"/, ''],
    ['a mastery score of eighty', 'masteryScore="0.8"', 'masteryScore="80"'],
    ['a way to move on that the standard lacks', 'CompletedOrPassed', 'Finished'],
    ['a way to launch that the standard lacks', 'AnyWindow', 'Tab'],
    ['no place to launch', /<url>.*<\/url>/, ''],
    ['no description', /<description>.*<\/description>/, ''],
    ['a title without a language string', /<title><langstring.*<\/title>/, '<title>A</title>'],
    ['an element of no standard', '<url>', '<link>x</link><url>'],
    ['another namespace', 'profiles/cmi5/v1', 'profiles/cmi5/v2'],
  ])('and %s is refused', (_, what, by) => {
    const spoilt = good.replace(what, by);
    expect(spoilt).not.toBe(good);
    expect(() => check(spoilt)).toThrow();
  });
});
