import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';

import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import { cmi5Platform } from '@site/packages/launch/cmi5.ts';
import type { Report } from '@site/packages/launch/progress.ts';
import { launchOf } from '@site/packages/launch/xapi.ts';

import { bodyOf, RecordStore, statementFaults, verbOf } from '../browser/record-store.ts';

const NOTHING: Report = { completion: 0, score: null, complete: false, passed: false };
const HALF: Report = { completion: 0.5, score: 0.9, complete: false, passed: false };
const PASSED: Report = { completion: 1, score: 0.84, complete: true, passed: true };

let server: Server;
let store: RecordStore;
/** Addresses that answer with a failure, by a part of them. */
let broken: string;

beforeEach(() => {
  store = new RecordStore();
  store.launch();
  broken = '';
  server = createServer((request, response) => {
    void bodyOf(request).then((body) => {
      if (broken !== '' && request.url?.includes(broken)) response.writeHead(500).end();
      else if (!store.answer(request, body, response)) response.writeHead(404).end();
    });
  }).listen(0);
});
afterEach(() => server.close());

const address = (): string => {
  const here = `http://localhost:${(server.address() as AddressInfo).port}`;
  const actor = JSON.stringify({ objectType: 'Agent', account: { homePage: 'http://p.example', name: 'learner-1' } });
  return `?${new URLSearchParams({ endpoint: `${here}/xapi/`, fetch: `${here}/fetch`, actor, registration: '6f2a1c9e-1d3b-4c5a-9e7f-0a1b2c3d4e5f', activityId: 'urn:platform:unit:1' }).toString()}`; // prettier-ignore
};
const visit = () => {
  const launch = launchOf(address());
  if (!launch) throw new Error('The address is a launch.');
  return cmi5Platform(launch);
};

describe('the address of a launch (cmi5 Quartz, section 8.1)', () => {
  it('is told from any other: all five parts, and a learner that can be read', () => {
    expect(launchOf(address())).not.toBeNull();
    for (const part of ['endpoint', 'fetch', 'actor', 'registration', 'activityId']) {
      const without = new URLSearchParams(address());
      without.delete(part);
      expect(launchOf(`?${without.toString()}`), part).toBeNull();
    }
    expect(launchOf(address().replace(/actor=[^&]*/, 'actor=nobody'))).toBeNull();
    expect(launchOf('')).toBeNull();
  });
});

describe('what a cmi5 platform is told (cmi5 Quartz, section 9)', () => {
  it('results are said once in a registration, over two visits, with the marks of those that a judgement rests on', async () => {
    store.launch({ masteryScore: 0.8 });
    const first = visit();
    await first.start();
    await first.report(NOTHING, 'rtb1.a', 'job/index.html');
    await first.report(HALF, 'rtb1.a', 'job/index.html');
    await first.report(PASSED, 'rtb1.b', 'job/index.html');
    await first.report(PASSED, 'rtb1.b', 'job/index.html');
    await first.end();
    const second = visit();
    expect(await second.start()).toMatchObject({ line: 'rtb1.b', page: 'job/index.html' });
    await second.report(PASSED, 'rtb1.b', 'job/index.html');
    await second.end();
    expect(store.said.map(verbOf)).toEqual(['initialized', 'completed', 'passed', 'terminated', 'initialized', 'terminated']); // prettier-ignore
    expect(store.said.flatMap(statementFaults)).toEqual([]);
    expect(new Set(store.said.map(({ id }) => id)).size).toBe(store.said.length);
    const moveOn = 'https://w3id.org/xapi/cmi5/context/categories/moveon';
    const marked = store.said.filter(({ context }) =>
      context.contextActivities.category?.some(({ id }) => id === moveOn),
    );
    // Section 9.6.2.2: completed and passed carry it, the others do not.
    expect(marked.map(verbOf)).toEqual(['completed', 'passed']);
    const [initialized, completed, passed, terminated] = store.said;
    // Sections 9.5.1 to 9.5.4: what each must tell of the result, and nothing else.
    const span = expect.stringMatching(/^PT[\d.]+S$/) as string;
    expect(initialized?.result).toBeUndefined();
    expect(completed?.result).toEqual({ completion: true, duration: span });
    expect(passed?.result).toEqual({ success: true, score: { scaled: 0.84 }, duration: span });
    expect(terminated?.result).toEqual({ duration: span });
    expect(new Set(store.said.map(({ object }) => object.id))).toEqual(new Set(['urn:platform:unit:1']));
    expect(new Set(store.said.map(({ context }) => context.registration)).size).toBe(1);
    // Section 9.6.3: the template's own extensions stay, and the mark that was asked is told.
    expect(passed?.context).toMatchObject({
      extensions: {
        'https://w3id.org/xapi/cmi5/context/extensions/sessionid': 's1',
        'https://w3id.org/xapi/cmi5/context/extensions/masteryscore': 0.8,
      },
    });
  });

  it('and a statement that is unsound is found to be', () => {
    expect(statementFaults({ actor: { objectType: 'Agent', mbox: 'nobody' }, verb: { id: 'done' } })).not.toEqual([]);
  });

  it('a platform that asks for more than was reached is told of no pass', async () => {
    store.launch({ masteryScore: 0.9 });
    const platform = visit();
    await platform.start();
    await platform.report(PASSED, 'rtb1.b', '');
    expect(store.said.map(verbOf)).toEqual(['initialized', 'completed']);
  });

  it.each(['Browse', 'Review'] as const)('in the mode %s no result is told and nothing kept', async (launchMode) => {
    store.launch({ launchMode });
    const platform = visit();
    await platform.start();
    await platform.report(PASSED, 'rtb1.b', '');
    await platform.end();
    expect(store.said.map(verbOf)).toEqual(['initialized', 'terminated']);
    expect(store.states.has('ridge-to-bed')).toBe(false);
  });

  it('a result that did not get through is told with the next report', async () => {
    const platform = visit();
    await platform.start();
    broken = 'statements';
    await expect(platform.report(PASSED, 'rtb1.b', '')).rejects.toThrow('500');
    broken = '';
    await platform.report(PASSED, 'rtb1.b', '');
    expect(store.said.map(verbOf)).toEqual(['initialized', 'completed', 'passed']);
  });

  it('a page that goes while a result is being told says nothing after its last word', async () => {
    const platform = visit();
    await platform.start();
    const telling = platform.report(PASSED, 'rtb1.b', '');
    await platform.end();
    await telling;
    expect(store.said.map(verbOf).sort()).toEqual(['completed', 'initialized', 'terminated']);
  });

  it('after the last word nothing more is said', async () => {
    const platform = visit();
    await platform.start();
    await platform.end();
    await platform.report(PASSED, 'rtb1.b', '');
    await platform.end();
    expect(store.said.map(verbOf)).toEqual(['initialized', 'terminated']);
  });
});

describe('a platform that does not answer', () => {
  it.each([
    ['a pass', '/fetch'],
    ['what it decided', 'LMS.LaunchData'],
    ['what was kept', 'stateId=ridge-to-bed'],
    ['the first word', 'statements'],
  ])('asked for %s ends the start, and what was kept stays', async (_what, part) => {
    store.states.set('ridge-to-bed', '{"line":"rtb1.old"}');
    broken = part;
    await expect(visit().start()).rejects.toThrow();
    // A visit whose end nobody would tell is not begun.
    expect(store.said).toEqual([]);
    expect(store.states.get('ridge-to-bed')).toBe('{"line":"rtb1.old"}');
  });

  it('but one without the learner’s own settings is no fault', async () => {
    broken = 'agents/profile';
    await expect(visit().start()).resolves.toMatchObject({ line: '' });
  });
});
