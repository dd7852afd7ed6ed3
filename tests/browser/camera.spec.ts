import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { expect, test } from '@playwright/test';
import { encode } from 'uqr';

import { bank } from '@quiz/bank.ts';
import type { ClassRound } from '@quiz/records/class-round.ts';
import { writeHandIn } from '@quiz/records/hand-in.ts';
import { seatItems } from '@quiz/records/mark-class.ts';

import config from '../../playwright.config.ts';

const round: ClassRound = {
  code: 'MILL-3', bank: bank.version, modules: [], items: 4, pass: 0.75, perSeat: true, units: 'imperial', due: null,
}; // prettier-ignore
const answers = seatItems(bank, round, 9).map(({ key }) => key.right);
const line = writeHandIn({ round, seat: 9, name: 'Cy Fenn', answers, at: 29_000_000 });

/** A film of one picture, as a camera would see a phone's screen: a square code, dark on light grey, with a margin. */
function film(text: string): string {
  const { data, size } = encode(text, { border: 4 });
  const [wide, high] = [640, 480];
  const square = Math.floor(high / size);
  const left = Math.floor((wide - square * size) / 2);
  const top = Math.floor((high - square * size) / 2);
  const light = Buffer.alloc(wide * high, 200);
  for (let y = 0; y < square * size; y++)
    for (let x = 0; x < square * size; x++)
      if (data[Math.floor(y / square)]?.[Math.floor(x / square)]) light[(top + y) * wide + left + x] = 40;
  const grey = Buffer.alloc((wide * high) / 2, 128);
  const path = join(mkdtempSync(join(tmpdir(), 'film-')), 'code.y4m');
  writeFileSync(
    path,
    Buffer.concat([
      Buffer.from(`YUV4MPEG2 W${wide} H${high} F15:1 Ip A1:1 C420jpeg\n`),
      ...Array.from({ length: 3 }, () => Buffer.concat([Buffer.from('FRAME\n'), light, grey])),
    ]),
  );
  return path;
}

const own = config.use?.launchOptions;
test.use({
  permissions: ['camera'],
  launchOptions: {
    ...own,
    args: [
      ...(own?.args ?? []),
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-video-capture=${film(line)}`,
    ],
  },
});

test('a hand-in is read from the square code on a phone held to the camera, once, and the camera stops', async ({
  page,
}) => {
  await page.goto('desk/');
  await page.getByLabel('Code of the round').fill('MILL-3');
  await page.getByLabel('Questions', { exact: true }).fill('4');
  await page.getByLabel('Pass mark').fill('75');
  await page.getByRole('button', { name: 'Set this round' }).click();
  await page.getByRole('tab', { name: 'Hand-ins' }).click();
  await page.getByRole('button', { name: 'Scan a square code' }).click();
  await expect(page.getByText('One hand-in taken.')).toBeVisible({ timeout: 15_000 });
  const stream = await page.locator('video').evaluateHandle((video: HTMLVideoElement) => video.srcObject);
  // The code is held before the camera for longer: it is not taken twice, nor refused as a copy.
  await page.waitForTimeout(1000);
  await expect(page.getByRole('table', { name: 'Not taken' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Stop the camera' }).click();
  await expect(page.locator('video')).toHaveCount(0);
  expect(await stream.evaluate((one) => (one as MediaStream).getTracks().map(({ readyState }) => readyState))).toEqual([
    'ended',
  ]);
  await page.getByRole('tab', { name: 'Marks' }).click();
  await expect(page.getByRole('row', { name: /9 Cy Fenn 100 %/ })).toBeVisible();
});
