import { deflateSync } from 'fflate';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { areaBoxIds } from '@site/islands/job/catalogue.ts';
import { addArea, blankJob, freshDraft, setAreaBoxes, setTitle } from '@site/islands/job/draft.ts';
import { linkHash, readLink } from '@site/islands/job/link.ts';
import { pack, unpack } from '@sim/input/packed.ts';

const readable = fc.string({ maxLength: 40, unit: fc.constantFrom(...'abz09 /.,"<>&é漢½×²°') });

describe('a link carries the job', () => {
  test('every text comes back as typed', () => {
    fc.assert(
      fc.property(readable, fc.constantFrom(...areaBoxIds), readable, (title, box, text) => {
        const draft = setAreaBoxes(setTitle(addArea(freshDraft('imperial')), title), 2, { [box]: text });
        expect(readLink(linkHash(draft))).toEqual({ state: 'read', draft });
      }),
    );
  });
  test('is letters, figures, - and _ only, and short enough to send', () => {
    const hash = linkHash(freshDraft('imperial'));
    expect(hash).toMatch(/^#job1\.[\w-]+$/);
    expect(hash.length).toBeLessThan(500);
  });
  test('cut off, altered or foreign links are recognised', () => {
    const hash = linkHash(freshDraft('metric'));
    for (let end = 7; end < hash.length; end += 5) expect(readLink(hash.slice(0, end)).state).toBe('broken');
    expect(readLink('')).toEqual({ state: 'none' });
    expect(readLink('#areas')).toEqual({ state: 'none' });
    expect(readLink('#job2.abc')).toEqual({ state: 'other-version' });
    expect(readLink('#job1.<script>')).toEqual({ state: 'broken' });
  });
  test('any text after the mark gives an answer and never an error', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), (text) => {
        expect(['broken', 'read']).toContain(readLink(`#job1.${text}`).state);
      }),
    );
  });
  test('text that swells is stopped', () => {
    const swelling = deflateSync(new Uint8Array(5_000_000), { level: 9 });
    const packed = Buffer.from(swelling).toString('base64url');
    expect(packed.length).toBeLessThan(12_000);
    expect(unpack(packed)).toBeNull();
    expect(unpack('A'.repeat(20_000))).toBeNull();
  });
  test('fields we do not know, too many areas and too long text are refused', () => {
    const send = (value: unknown) => readLink(`#job1.${pack(JSON.stringify(value))}`).state;
    const good = { version: 1, units: 'metric', title: '', job: {}, areas: [{ name: 'Hall' }] };
    expect(send(good)).toBe('read');
    expect(send({ ...good, extra: 1 })).toBe('broken');
    expect(send({ ...good, areas: Array.from({ length: 21 }, () => ({})) })).toBe('broken');
    expect(send({ ...good, areas: [{ name: 'x'.repeat(401) }] })).toBe('broken');
    expect(send({ ...good, areas: [{ name: 5 }] })).toBe('broken');
  });
  test('an inherited name is not taken for a box', () => {
    const sent = '{"version":1,"units":"metric","title":"","job":{"__proto__":{"bag":"1"}},"areas":[{}]}';
    const reading = readLink(`#job1.${pack(sent)}`);
    expect(reading.state === 'read' && reading.draft.job).toEqual(blankJob());
  });
  test('characters that hide or turn text are taken out', () => {
    const draft = setTitle(freshDraft('metric'), 'Hall\u202e\u0007 floor\u200b');
    const reading = readLink(linkHash(draft));
    expect(reading.state === 'read' && reading.draft.title).toBe('Hall floor');
  });
});
