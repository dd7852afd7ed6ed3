import { expect, test } from '@playwright/test';

const PLAN_WORKER = /plan\.worker-.*\.js$/;

test.describe('a worker that is lost', () => {
  test('leaves the job as it was typed, says so, and the plan is worked out when asked again', async ({ page }) => {
    await page.route(PLAN_WORKER, (route) => route.abort());
    await page.goto('job/');
    await page.getByLabel('Name of the job').fill('Mill Street hall');
    await expect(page.getByText('The plan could not be worked out.')).toBeVisible();
    await expect(page.getByLabel('Name of the job')).toHaveValue('Mill Street hall');
    await page.unroute(PLAN_WORKER);
    await page.getByRole('button', { name: 'Work it out again' }).click();
    await expect(page.getByText('The plan could not be worked out.')).toBeHidden();
    await expect(page.getByText(/Coverage to expect/).first()).toBeVisible();
  });

  test('does the same when the browser ends it in the middle of a plan', async ({ page }) => {
    // The first worker says that it is at work, is heard no more and then ended: its plan can't come before its end.
    await page.addInitScript(() => {
      let first = true;
      window.Worker = class extends Worker {
        constructor(url: string | URL, options?: WorkerOptions) {
          super(url, options);
          if (!first || !String(url).includes('plan.worker')) return;
          first = false;
          let heard = false;
          this.addEventListener('message', (event) => {
            if (heard) event.stopImmediatePropagation();
            else setTimeout(() => this.terminate(), 300);
            heard = true;
          });
        }
      };
    });
    await page.goto('job/');
    await expect(page.getByText('The plan could not be worked out.')).toBeVisible();
    await page.getByRole('button', { name: 'Work it out again' }).click();
    await expect(page.getByText('The plan could not be worked out.')).toBeHidden();
    await expect(page.getByText(/Coverage to expect/).first()).toBeVisible();
  });
});
