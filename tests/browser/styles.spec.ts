import { globSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';

import { expect, test } from '@playwright/test';

/** Names of built scripts and style sheets in a text. */
const named = (text: string): string[] => text.match(/[\w.-]+\.(?:js|css)\b/g) ?? [];

/** A component's mark, by which its styles find it; the last is Svelte's own word for safe markup. */
const marks = (text: string): string[] =>
  (text.match(/\bsvelte-[0-9a-z]{5,8}\b/g) ?? []).filter((mark) => mark !== 'svelte-trusted');

test('what a page shows, now or once its scripts have come, has its styles there', () => {
  const files = new Map(globSync('dist/_astro/*.{js,css}').map((file) => [basename(file), readFileSync(file, 'utf8')]));
  const pages = globSync('dist/**/*.html');
  expect(pages.length).toBeGreaterThan(40);
  let shown = 0;
  const bare = pages.flatMap((page) => {
    const html = readFileSync(page, 'utf8');
    // All that the page names, and what that names in turn.
    const reached = new Set(named(html));
    for (const name of reached)
      if (name.endsWith('.js')) for (const next of named(files.get(name) ?? '')) reached.add(next);
    const of = (kind: string): string[] =>
      [...reached].filter((name) => name.endsWith(kind)).flatMap((name) => marks(files.get(name) ?? ''));
    const styled = new Set(of('.css'));
    const wanted = new Set([...marks(html), ...of('.js')]);
    shown += wanted.size;
    return [...wanted].filter((mark) => !styled.has(mark)).map((mark) => `${page}: ${mark}`);
  });
  expect(shown).toBeGreaterThan(200);
  expect(bare).toEqual([]);
});

test('lines under words are asked for in a way that WebKit reads: it drops a line whose thickness stands with its kind', () => {
  const lines = globSync('dist/_astro/*.css').flatMap(
    (file) => readFileSync(file, 'utf8').match(/(?<![-\w])text-decoration:[^;}]*/g) ?? [],
  );
  expect(lines.length).toBeGreaterThan(5);
  expect(lines.filter((line) => /[\d.]+(px|em|%)|var\(/.test(line))).toEqual([]);
});
