import { expect, test } from '@playwright/test';

import type { SearchDocument } from '@site/search/documents.ts';

import { accessible, fits, watch } from './watch.ts';

test('finds modules, rules and terms by words, beginnings and near misses, and keeps the words in the address', async ({
  page,
}) => {
  const seen = watch(page);
  await page.goto('/');
  await page.getByRole('link', { name: 'Search' }).click();
  const box = page.getByRole('searchbox', { name: 'Find' });
  await box.fill('lippage');
  await expect(page.getByRole('link', { name: 'Lippage', exact: true })).toHaveAttribute('href', '/terms/#lippage');
  await expect(page).toHaveURL(/\?q=lippage$/);
  await box.fill('covrage wet');
  await expect(page.getByRole('link', { name: 'Least coverage, wet or exterior' })).toBeVisible();
  await box.fill('zzzz');
  await expect(page.getByText('Nothing found for “zzzz”.', { exact: false })).toBeVisible();
  await page.goto('/search/?q=ridges');
  await expect(page.getByRole('link', { name: /What the ridges are for/ }).first()).toBeVisible();
  await accessible(page);
  await page.setViewportSize({ width: 360, height: 800 });
  await fits(page);
  seen.clean();
});

test('everything that can be found leads to a place that exists', async ({ request }) => {
  const documents = (await (await request.get('/search-index.json')).json()) as SearchDocument[];
  expect(documents.length).toBeGreaterThan(200);
  const pages = new Map<string, string>();
  for (const { path, title } of documents) {
    const [page = '', anchor] = path.split('#');
    const html = pages.get(page) ?? (await (await request.get(page)).text());
    pages.set(page, html);
    if (anchor !== undefined) expect(html.includes(`id="${anchor}"`), `${title}: ${path}`).toBe(true);
  }
});
