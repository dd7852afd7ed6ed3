import { globSync, readFileSync } from 'node:fs';

import { expect, test } from '@playwright/test';

import { UNCONFIRMED } from '../reference/unconfirmed.ts';

/** Text of a built page; blocks are told apart by a bar, so that no sign reaches over from one to the next. */
const textOf = (html: string): string =>
  html
    .replace(/<(script|style)[\s\S]*?<\/\1>/g, '')
    .replace(/<\/?(a|abbr|b|code|em|i|span|strong|sub|sup)\b[^>]*>/g, '')
    .replace(/<[^>]+>/g, ' | ')
    .replaceAll('&nbsp;', ' ')
    .replace(/\s+/g, ' ');

test('no built page prints a figure that nobody has confirmed', () => {
  const pages = globSync('dist/**/*.html');
  expect(pages.length).toBeGreaterThan(40);
  const found = pages.flatMap((page) => {
    const text = textOf(readFileSync(page, 'utf8'));
    return UNCONFIRMED.flatMap(([what, sign]) => {
      const [hit] = sign.exec(text) ?? [];
      return hit === undefined ? [] : [`${page}: ${what}: ${hit.slice(0, 160)}`];
    });
  });
  expect(found).toEqual([]);
});
