import { readFileSync } from 'node:fs';

import { expect, test } from '@playwright/test';

import { PERMISSIVE } from '../unit/permissive.ts';

test('what the built site ships of others stands beside it with its licence, and each is permissive', () => {
  const text = readFileSync('dist/licences.txt', 'utf8');
  const shipped = new Map(
    [...text.matchAll(/^## (\S+) - (\S+) \((.+)\)$/gm)].map(([, name = '', , licence = '']) => [name, licence]),
  );
  // A script bundled, one that another brings along, the service worker's, the typeface.
  for (const name of ['three', 'd3-path', 'workbox-core', '@fontsource-variable/atkinson-hyperlegible-next'])
    expect([...shipped.keys()]).toContain(name);
  expect([...shipped].filter(([, licence]) => !PERMISSIVE.test(licence))).toEqual([]);
  // Each heading is followed by the licence's own words.
  for (const part of text.split(/^## /m).slice(1)) expect(part).toMatch(/Copyright|©/);
});

test('no part of the service worker is left out of the list', () => {
  const text = readFileSync('dist/licences.txt', 'utf8');
  const parts = new Set(
    [...readFileSync('dist/sw.js', 'utf8').matchAll(/"workbox:([a-z-]+):/g)].map(([, part]) => part),
  );
  expect(parts.size).toBeGreaterThan(0);
  for (const part of parts) expect(text).toContain(`## workbox-${part} - `);
});
