import { expect, test } from '@playwright/test';

test('a hands-on record: bare squares by key and by finger, judged, kept on reload', async ({ page }) => {
  await page.goto('desk/');
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  await page.getByRole('button', { name: 'Judge and keep' }).click();
  await expect(page.getByText('Write the learner’s name.')).toBeVisible();
  await page.getByLabel('Learner', { exact: true }).fill('Ada');
  await page.getByLabel('Coverage the learner expects').fill('90');
  const first = page.getByRole('application', { name: /Outline of tile 1/ });
  await first.focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Space');
  await expect(page.getByText('99 % covered (1 of 144 squares bare)')).toBeVisible();
  await first.click({ position: { x: 100, y: 100 } });
  await expect(page.getByText('99 % covered (2 of 144 squares bare)')).toBeVisible();
  await page.getByRole('button', { name: 'Judge and keep' }).click();
  await expect(page.getByRole('row', { name: /Ada .* 90 % – 100 % −9\.5 points passes/ })).toBeVisible();
  await page.reload();
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  await expect(page.getByRole('row', { name: /Ada/ })).toBeVisible();
});

test('the mortar is tested once, goes with each record, and the model is held against the pulls', async ({ page }) => {
  await page.goto('desk/');
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  await page.getByLabel('Weight on top').fill('lots');
  await page.getByLabel('Diameter of the patty').fill('3 3/4');
  await expect(page.getByText('Give a number above zero.')).toBeVisible();
  await page.getByLabel('Weight on top').fill('4.4');
  await expect(page.getByText(/It starts to move at \d+ Pa: a mix that holds a ridge/)).toBeVisible();
  await page.reload();
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  await expect(page.getByLabel('Diameter of the patty')).toHaveValue('3 3/4 in');
  await page.getByLabel('Learner', { exact: true }).fill('Ada');
  await page.getByLabel('Notch', { exact: true }).selectOption('1/2 × 1/2 in square');
  await page.getByLabel('Length', { exact: true }).fill('24');
  await page.getByLabel('Width', { exact: true }).fill('24');
  await page.getByLabel('How it was set').selectOption('Pressed only');
  await page.getByRole('button', { name: 'Judge and keep' }).click();
  await expect(page.getByRole('row', { name: /Ada .* \d+ % to \d+ % 100 %/ })).toBeVisible();
  await expect(page.getByText(/One pull foretold: on average −\d/)).toBeVisible();
});

test('nothing is lost to haste: a shelf slow to open, a photo still being made small, a tab looked at in between', async ({
  page,
}) => {
  await page.addInitScript((lateMs) => {
    const late = () => new Promise((done) => setTimeout(done, lateMs));
    const made = window.createImageBitmap.bind(window) as (from: ImageBitmapSource) => Promise<ImageBitmap>;
    window.createImageBitmap = async (from: ImageBitmapSource) => (await late(), made(from));
    const asked = IDBObjectStore.prototype.get;
    // What is kept is read late: the answer is handed on after a while.
    IDBObjectStore.prototype.get = function (key) {
      const answer = asked.call(this, key);
      const told = answer.addEventListener.bind(answer);
      answer.addEventListener = (kind: string, hear: EventListener) =>
        told(kind, (event) => void late().then(() => hear.call(answer, event)));
      return answer;
    };
  }, 250);
  const keep = async (name: string): Promise<void> => {
    await page.getByRole('tab', { name: 'Hands-on' }).click();
    await page.getByLabel('Learner', { exact: true }).fill(name);
    await page.getByRole('tab', { name: 'Round', exact: true }).click();
    await page.getByRole('tab', { name: 'Hands-on' }).click();
    await expect(page.getByLabel('Learner', { exact: true })).toHaveValue(name);
    await page
      .getByLabel(/Photo/)
      .setInputFiles({ name: 'p.png', mimeType: 'image/png', buffer: await page.screenshot() });
    await page.getByRole('button', { name: 'Judge and keep' }).click();
    await expect(page.getByRole('row', { name: new RegExp(name) })).toContainText('Photo');
  };
  await page.goto('desk/');
  await keep('Ada');
  await page.reload();
  await expect(page.getByText('Opening what this browser keeps')).toBeVisible();
  await keep('Bo');
  await page.reload();
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  for (const name of ['Ada', 'Bo']) await expect(page.getByRole('row', { name: new RegExp(name) })).toBeVisible();
  await page.getByLabel(/Photo/).setInputFiles({ name: 'p.png', mimeType: 'image/png', buffer: Buffer.from('none') });
  await expect(page.getByText('That file can’t be read as a picture.')).toBeVisible();
});

test('the desk’s file carries records and photos to another device', async ({ page, browser }) => {
  await page.goto('desk/');
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  await page.getByLabel('Learner', { exact: true }).fill('Ada');
  await page
    .getByLabel(/Photo/)
    .setInputFiles({ name: 'p.png', mimeType: 'image/png', buffer: await page.screenshot() });
  await page.getByRole('button', { name: 'Judge and keep' }).click();
  await expect(page.getByRole('button', { name: 'Photo', exact: true })).toBeVisible();
  await page.getByRole('tab', { name: 'Keep and erase' }).click();
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the desk as a file' }).click();
  const path = await (await saved).path();

  const other = await (await browser.newContext()).newPage();
  await other.goto(page.url());
  await other.getByRole('tab', { name: 'Keep and erase' }).click();
  const bring = other.getByLabel('Bring in a saved desk');
  await bring.setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') });
  await expect(other.getByText('That file is not a saved desk')).toBeVisible();
  await bring.setInputFiles(path);
  await expect(other.getByText('Kept in this browser.')).toBeVisible();
  await bring.setInputFiles(path);
  await expect(other.getByText('Kept in this browser.')).toBeVisible();
  await other.reload();
  await other.getByRole('tab', { name: 'Hands-on' }).click();
  await expect(other.getByRole('row', { name: /Ada/ })).toHaveCount(1);
  const shown = other.waitForEvent('popup');
  await other.getByRole('button', { name: 'Photo', exact: true }).click();
  expect((await shown).url()).toMatch(/^blob:/);
  await other.getByRole('tab', { name: 'Keep and erase' }).click();
  await other.getByRole('button', { name: 'Erase everything of the desk' }).click();
  await other.getByRole('button', { name: 'Yes, erase it all' }).click();
  await other.getByRole('tab', { name: 'Hands-on' }).click();
  await expect(other.getByText('No record yet.')).toBeVisible();
});

test('where the browser keeps nothing, records last as long as the page, whatever tab is open', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
  await page.goto('desk/');
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  await expect(page.getByText('This browser keeps nothing').first()).toBeVisible();
  await page.getByLabel('Learner', { exact: true }).fill('Ada');
  await page.getByRole('button', { name: 'Judge and keep' }).click();
  await page.getByRole('tab', { name: 'Round', exact: true }).click();
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  await expect(page.getByRole('row', { name: /Ada/ })).toBeVisible();
});
