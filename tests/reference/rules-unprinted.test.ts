import { expect, test } from 'vitest';

import { allRules } from '@sim/rules/rulebook.ts';
import { sayRule } from '@sim/rules/say.ts';

/** Figures nobody has confirmed in print, and documents nobody has seen: no rule may quote them as a source or say them. */
const UNCONFIRMED: readonly [what: string, sign: RegExp][] = [
  ['contact shares of BS 5385', /BS 5385[^.]*\d ?%/],
  ['values of AS 3958:2023', /AS 3958(\.1)?:2023/],
  ['notch by edge of DIN 18157', /DIN 18157[^.]*notch/i],
  ['exterior contact of A108.20', /A108\.20/],
  ['drop count of EN 1015-3', /EN 1015-3/],
  ['load and angle of EN 12004-2', /EN 12004-2/],
  ['tables of NF DTU 52.2 and UNE 138002', /DTU 52\.2|UNE 138002/],
  ['rib depths of JIS A 5209', /JIS A 5209/],
];
const lines = allRules().map((rule) =>
  [sayRule(rule, 'imperial'), rule.title, rule.disagreement, ...Object.values(rule.source)].join(' | '),
);

test.each(UNCONFIRMED)('%s is said nowhere', (_, sign) => {
  expect(lines.length).toBeGreaterThan(200);
  expect(lines.filter((line) => sign.test(line))).toEqual([]);
});
