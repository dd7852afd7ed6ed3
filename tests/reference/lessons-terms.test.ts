/** A term is linked where it first stands in a lesson, so that nobody meets a word before its meaning. */
import { describe, expect, it } from 'vitest';

import { lessonTexts } from './lesson-text.ts';

/** The text with tags blanked out at the same length, so that places stay comparable; headings don't count. */
const shown = (body: string): string =>
  body
    .replace(/<[^>]*>/g, (tag) => ' '.repeat(tag.length))
    .replace(/^#.*$/gm, (line) => ' '.repeat(line.length))
    .toLowerCase();

describe.each(lessonTexts())('$file', ({ body }) => {
  it('links each term at its first word', () => {
    const text = shown(body);
    const late = [...body.matchAll(/<Term id="([^"]*)">([^<]*)<\/Term>/g)].flatMap((match) => {
      const word = (match[2] ?? '').toLowerCase();
      const first = text.search(new RegExp(`(?<![\\p{L}-])${word.replace(/[^\p{L}\p{N} ]/gu, '.')}(?!\\p{L})`, 'u'));
      return first < match.index ? [`${match[1] ?? ''} stands ${match.index - first} characters before its link`] : [];
    });
    expect(late).toEqual([]);
  });
});
