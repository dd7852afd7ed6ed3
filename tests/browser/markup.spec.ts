import { readFile, readdir } from 'node:fs/promises';

import { expect, test } from '@playwright/test';
import { HtmlValidate } from 'html-validate';

/** What the built pages may not have. Off are matters of spelling, and the style element that the framework writes. */
const validator = new HtmlValidate({
  extends: ['html-validate:recommended'],
  rules: {
    'no-inline-style': 'error',
    'void-style': 'off',
    'attribute-boolean-style': 'off',
    'attribute-empty-style': 'off',
    'no-implicit-input-type': 'off',
    'prefer-native-element': 'off',
    'element-permitted-content': 'off',
    'element-permitted-order': 'off',
    'wcag/h32': 'off',
    'valid-id': ['error', { relaxed: true }],
  },
});

test('every built page is sound HTML with no style and no script written into it', async () => {
  const files = (await readdir('dist', { recursive: true })).filter((file) => file.endsWith('.html'));
  expect(files.length).toBeGreaterThan(40);
  const faults: string[] = [];
  for (const file of files) {
    const report = await validator.validateString(await readFile(`dist/${file}`, 'utf8'));
    for (const { messages } of report.results)
      for (const { ruleId, message, selector } of messages)
        faults.push(`${file}: ${ruleId}: ${message} ${selector ?? ''}`);
  }
  expect(faults).toEqual([]);
});
