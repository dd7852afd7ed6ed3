// @vitest-environment jsdom
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';

import Cmi5 from '@xapi/cmi5';
import { XmlDocument, XsdValidator } from 'libxml2-wasm';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';

import { cmi5Platform } from '@site/packages/launch/cmi5.ts';
import type { Report } from '@site/packages/launch/progress.ts';
import { cmi5Structure } from '@site/packages/manifests.mjs';

import { bodyOf, RecordStore, statementFaults, verbOf, type LaunchData } from '../browser/record-store.ts';

const ACTIVITY = 'urn:platform:unit:1';
const REGISTRATION = '6f2a1c9e-1d3b-4c5a-9e7f-0a1b2c3d4e5f';
const actor = {
  objectType: 'Agent',
  account: { homePage: 'http://platform.example', name: 'learner-1' },
} as const;
const learner = JSON.stringify(actor);
const ALLOW = {
  Origin: 'http://localhost:3000',
  Headers: 'authorization, content-type, x-experience-api-version, if-match, if-none-match',
  Methods: 'GET, PUT, POST',
};
const done: Report = { completion: 1, score: 0.9, complete: true, passed: true };
const half: Report = { completion: 0.5, score: 0.9, complete: false, passed: false };

let server: Server;
let store: RecordStore;
beforeAll(() => {
  server = createServer((request, response) => {
    // The page stands on another port than the store.
    for (const [what, value] of Object.entries(ALLOW)) response.setHeader(`Access-Control-Allow-${what}`, value);
    if (request.method === 'OPTIONS') return void response.writeHead(204).end();
    void bodyOf(request).then((body) => store.answer(request, body, response) || response.writeHead(404).end());
  }).listen(0);
});
afterAll(() => server.close());
beforeEach(() => (store = new RecordStore()));

/** One launch of the unit, as the platform makes it. */
async function session(data: LaunchData, ...reports: Report[]) {
  store.launch(data);
  const here = `http://localhost:${(server.address() as AddressInfo).port}`;
  const platform = cmi5Platform(
    new Cmi5({
      endpoint: `${here}/xapi/`,
      fetch: `${here}/fetch`,
      actor,
      registration: REGISTRATION,
      activityId: ACTIVITY,
    }),
  );
  const resumed = await platform.start();
  for (const report of reports) await platform.report(report, 'rtb1.line', 'index.html');
  await platform.end();
  return resumed;
}
const verbs = () => store.said.map(verbOf);

describe('what the cmi5 package says', () => {
  test('is sound xAPI, each verb once, with the results that sections 9.5.1 to 9.5.4 ask for', async () => {
    await session({ masteryScore: 0.8 }, half, done, done);
    expect(verbs()).toEqual(['initialized', 'completed', 'passed', 'terminated']);
    expect(store.said.flatMap(statementFaults)).toEqual([]);
    const [initialized, completed, passed, terminated] = store.said;
    expect(initialized?.result).toBeUndefined();
    expect(completed?.result).toEqual({ completion: true, duration: expect.stringMatching(/^PT/) as string });
    expect(passed?.result).toMatchObject({ success: true, score: { scaled: 0.9 } });
    expect(terminated?.result).toEqual({ duration: expect.stringMatching(/^PT/) as string });
    for (const { object, context } of store.said) {
      expect(object.id).toBe(ACTIVITY);
      expect(context.registration).toBe(REGISTRATION);
    }
    // Section 9.6.2.2: what decides whether the learner may move on is marked so.
    const marked = store.said.filter(({ context }) =>
      context.contextActivities.category?.some(({ id }) => id.endsWith('/categories/moveon')),
    );
    expect(marked.map(verbOf)).toEqual(['completed', 'passed']);
  });
  test('is not said again when the learner comes back (section 9.3: once a registration)', async () => {
    expect(await session({}, done)).toEqual({ line: '', page: '', learner });
    expect(await session({}, done)).toEqual({ line: 'rtb1.line', page: 'index.html', learner });
    expect(verbs()).toEqual(['initialized', 'completed', 'passed', 'terminated', 'initialized', 'terminated']);
  });
  test('claims no pass under the platform’s own mastery score, whatever the package was made with', async () => {
    await session({ masteryScore: 0.95 }, done);
    expect(verbs()).toEqual(['initialized', 'completed', 'terminated']);
  });
  test('judges nothing when the platform only shows the course (launch modes Browse and Review)', async () => {
    for (const launchMode of ['Browse', 'Review'] as const) await session({ launchMode }, done);
    expect(verbs()).toEqual(['initialized', 'terminated', 'initialized', 'terminated']);
    expect(store.states.has('ridge-to-bed')).toBe(false);
  });
  test('is found unsound when it is', () => {
    expect(statementFaults({ actor: { objectType: 'Agent', mbox: 'nobody' }, verb: { id: 'done' } })).not.toEqual([]);
  });
});

describe('cmi5.xml', () => {
  const schema = XmlDocument.fromString(readFileSync('tests/reference/cmi5-course-structure.xsd', 'utf8'));
  const validator = XsdValidator.fromDoc(schema);
  const check = (text: string) => {
    const document = XmlDocument.fromString(text);
    try {
      validator.validate(document);
    } finally {
      document.dispose();
    }
  };
  const good = cmi5Structure({ title: 'A & B', about: '<c> "d"', name: 'course', pass: 80 }) as string;
  afterAll(() => {
    validator.dispose();
    schema.dispose();
  });

  test('holds to the course structure of cmi5, section 13.1', () => {
    expect(() => check(good)).not.toThrow();
    expect(() =>
      check(cmi5Structure({ title: 'T', about: 'A', name: 'modules-3-4', pass: 0 }) as string),
    ).not.toThrow();
  });
  test.each([
    ['a unit without its id', / id="urn:ridge-to-bed:course:whole"/, ''],
    ['a mastery score of eighty', 'masteryScore="0.8"', 'masteryScore="80"'],
    ['a way to move on that the standard lacks', 'CompletedOrPassed', 'Finished'],
    ['a way to launch that the standard lacks', 'AnyWindow', 'Tab'],
    ['no place to launch', /<url>.*<\/url>/, ''],
    ['no description', /<description>.*<\/description>/, ''],
    ['a title without a language string', /<title><langstring.*<\/title>/, '<title>A</title>'],
    ['an element of no standard', '<url>', '<link>x</link><url>'],
    ['another namespace', 'profiles/cmi5/v1', 'profiles/cmi5/v2'],
  ])('and %s is refused', (_, what, by) => {
    const spoilt = good.replace(what, by);
    expect(spoilt).not.toBe(good);
    expect(() => check(spoilt)).toThrow();
  });
});
