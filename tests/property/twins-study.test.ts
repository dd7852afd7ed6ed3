import fc from 'fast-check';
import { it } from 'vitest';
import { coverage } from '@sim/bed/contact.ts';
import { draws, setupOf } from './bed-draws.ts';
import { TURNINGS, workedBed, workedTwin } from './bed-twins.ts';
it('study', () => {
  const S: Record<string, { d: number; draw: any }[]> = {};
  const all = fc.sample(draws, { numRuns: Number(process.env['N'] ?? 100), seed: Number(process.env['SEED'] ?? 77) });
  for (const draw of all) {
    const setup = setupOf(draw);
    const bed = workedBed(setup);
    const c = coverage(bed);
    for (const t of TURNINGS) {
      const other = coverage(workedTwin(setup, t));
      (S[t] ??= []).push({ d: Math.abs(other - c), draw });
    }
  }
  for (const [k, v] of Object.entries(S)) {
    v.sort((a, b) => b.d - a.d);
    console.log(k.padEnd(14), v.filter((x) => x.d > 0.005).length, v.filter((x) => x.d > 0.001).length, v.slice(0, 8).map((x) => x.d.toFixed(5)).join(' '));
    for (const x of v.slice(0, 3)) if (x.d > 0.001) console.log(x.d, JSON.stringify(x.draw));
  }
}, 3000000);
