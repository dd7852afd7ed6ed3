import { expect, test, type BrowserContext, type Page } from '@playwright/test';

/** Two tabs of one browser on one page. */
async function tabs(context: BrowserContext, path: string): Promise<[Page, Page]> {
  const [one, other] = [await context.newPage(), await context.newPage()];
  for (const tab of [one, other]) {
    await tab.goto(path);
    await expect(tab.locator('astro-island[ssr]')).toHaveCount(0);
  }
  return [one, other];
}

async function setRound(page: Page, code: string): Promise<void> {
  await page.getByLabel('Code of the round').fill(code);
  await page.getByLabel('Seats', { exact: true }).fill('6');
  await page.getByRole('button', { name: 'Set this round' }).click();
  await expect(page.getByRole('heading', { name: code })).toBeVisible();
}

test('rounds and names given at two desks of one browser are all kept', async ({ context }) => {
  const [one, other] = await tabs(context, '/desk/');
  await setRound(one, 'MILL-1');
  await setRound(other, 'MILL-2');
  await one.getByLabel('Name at seat 2').fill('Ada');
  await one.getByLabel('Name at seat 3').click();
  await expect(one.getByText('Kept in this browser.')).toBeVisible();
  const rounds = other.getByLabel('Rounds', { exact: true });
  await expect(rounds.locator('option')).toHaveCount(2);
  await expect(other.getByRole('heading', { name: 'MILL-2' })).toBeVisible();
  await other.getByLabel('Name at seat 5').fill('Bo');
  await other.getByLabel('Name at seat 4').click();
  await expect(other.getByText('Kept in this browser.')).toBeVisible();
  await other.reload();
  await expect(other.getByLabel('Name at seat 5')).toHaveValue('Bo');
  await rounds.selectOption({ index: 1 });
  await expect(other.getByRole('heading', { name: 'MILL-1' })).toBeVisible();
  await expect(other.getByLabel('Name at seat 2')).toHaveValue('Ada');
});

test('crew cards written in two tabs are all kept', async ({ context }) => {
  const [one, other] = await tabs(context, '/crew/');
  await one.getByLabel('Helper', { exact: true }).fill('Jo Lind');
  await expect(other.getByLabel('Helper', { exact: true })).toHaveValue('Jo Lind');
  await other.getByLabel('Heated floors').check();
  await expect(one.getByLabel('Heated floors')).toBeChecked();
  await one.reload();
  await expect(one.getByLabel('Helper', { exact: true })).toHaveValue('Jo Lind');
  await expect(one.getByLabel('Heated floors')).toBeChecked();
});

test('a round that goes on in one tab goes on in the other', async ({ context }) => {
  const [one, other] = await tabs(context, '/rounds/');
  await one.getByRole('button', { name: 'Begin' }).click();
  await expect(one.getByText(/Question 1 of/)).toBeVisible();
  await other.goto(one.url());
  await other.reload();
  await expect(other.getByText(/Question 1 of/)).toBeVisible();
  await one.getByRole('button', { name: 'Leave it out' }).click();
  await one.getByRole('button', { name: 'Next question' }).click();
  await expect(one.getByText(/Question 2 of/)).toBeVisible();
  // What was answered there stands here with its reasons, and this tab goes on from it.
  await other.getByRole('button', { name: 'Next question' }).click();
  await expect(other.getByText(/Question 2 of/)).toBeVisible();
});

test('a job changed in another tab is offered, and taking it is a step that undo takes back', async ({ context }) => {
  const [one, other] = await tabs(context, '/job/');
  await one.getByLabel('Name of the job').fill('Mill Lane 4');
  await other.getByLabel('Name of the job').fill('Weir House');
  await one.getByRole('button', { name: 'Show that one' }).click();
  await expect(one.getByLabel('Name of the job')).toHaveValue('Weir House');
  await one.getByRole('button', { name: 'Undo' }).click();
  await expect(one.getByLabel('Name of the job')).toHaveValue('Mill Lane 4');
});

test('guesses made by eye in two tabs are all counted', async ({ context }) => {
  const [one, other] = await tabs(context, '/eye/');
  await one.getByRole('button', { name: 'Count it' }).click();
  await expect(other.getByText(/^[01] of 1$/)).toBeVisible();
  await other.getByRole('button', { name: 'Count it' }).click();
  await expect(other.getByText(/^[012] of 2$/)).toBeVisible();
  await one.reload();
  await expect(one.getByText(/^[012] of 2$/)).toBeVisible();
});
