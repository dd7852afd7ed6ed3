import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** Notes what a page must never do: errors, refusals of the content policy, requests to another host. */
export function watch(page: Page): { clean: () => void } {
  const faults: string[] = [];
  page.on('console', (message) => {
    // The browser's own line about a missing page is what a test of that page asks for.
    if (/status of 404/.test(message.text()) && message.location().url === page.url()) return;
    if (message.type() === 'error' || /content security policy/i.test(message.text())) faults.push(message.text());
  });
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (!['localhost', ''].includes(url.hostname) && url.protocol !== 'data:' && url.protocol !== 'blob:')
      faults.push(`request to ${url.host}`);
  });
  return { clean: () => expect(faults).toEqual([]) };
}

/** WCAG 2.2 A and AA and good practice, by axe. Our pages hold no frames, so it need not go through them one by one. */
export async function accessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .options({
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      resultTypes: ['violations'],
    })
    .setLegacyMode(true)
    .analyze();
  expect(
    violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`),
  ).toEqual([]);
}

/** Nothing sticks out sideways. */
export async function fits(page: Page): Promise<void> {
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
}
