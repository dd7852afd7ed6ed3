import { expect, test } from '@playwright/test';

/** Addresses in a page's own HTML: links, images, scripts, styles. */
const addresses = (html: string): string[] =>
  [...html.matchAll(/\s(?:href|src|component-url|renderer-url)="([^"]*)"/g)].map((found) =>
    (found[1] ?? '').replaceAll('&amp;', '&'),
  );

const ids = (html: string): Set<string> =>
  new Set([...html.matchAll(/\sid="([^"]*)"/g)].map((found) => found[1] ?? ''));

test('every link on every page leads somewhere in the site, down to its anchor', async ({ request, baseURL }) => {
  const start = new URL('/', baseURL);
  const pages = new Map<string, string>();
  const others = new Map<string, boolean>();
  const waiting = [start.pathname];
  const wanted: { from: string; page: string; anchor: string }[] = [];
  const broken: string[] = [];
  while (waiting.length > 0) {
    const path = waiting.pop() ?? '';
    if (pages.has(path)) continue;
    const response = await request.get(path);
    if (!response.ok()) broken.push(path);
    const html = await response.text();
    pages.set(path, html);
    for (const address of addresses(html)) {
      const target = new URL(address, new URL(path, start));
      if (target.origin !== start.origin) {
        broken.push(`${path} → ${address} leads to another host`);
      } else if (target.pathname.endsWith('/')) {
        waiting.push(target.pathname);
        if (target.hash.length > 1 && !target.hash.includes('='))
          wanted.push({ from: path, page: target.pathname, anchor: decodeURIComponent(target.hash.slice(1)) });
      } else if (!others.has(target.pathname)) {
        const found = (await request.get(target.pathname)).ok();
        others.set(target.pathname, found);
        if (!found) broken.push(`${path} → ${address}`);
      }
    }
  }
  for (const { from, page, anchor } of wanted)
    if (!ids(pages.get(page) ?? '').has(anchor)) broken.push(`${from} → ${page}#${anchor}`);
  expect(broken).toEqual([]);
  expect(pages.size).toBeGreaterThan(40);
});
