import { describe, expect, test } from 'vitest';

import { oneByOne } from '../../simulations/worker/one-by-one.ts';

/** Work that ends when told, and what was begun and ended so far. */
function slowWork() {
  const begun: number[] = [];
  const ended: number[] = [];
  let finish: (() => void) | null = null;
  const work = async (asked: number): Promise<() => void> => {
    begun.push(asked);
    await new Promise<void>((done) => (finish = done));
    return () => ended.push(asked);
  };
  const end = async (): Promise<void> => {
    finish?.();
    // What follows is begun a few turns later.
    await new Promise((later) => setTimeout(later));
  };
  return { work, end, begun, ended };
}

describe('work asked for quicker than it can be done', () => {
  test('is begun at once when nothing is under way', () => {
    const { work, begun } = slowWork();
    oneByOne(work).ask(1);
    expect(begun).toEqual([1]);
  });

  test('however long the asking goes on, what was begun is ended, and the last asked for is done', async () => {
    const { work, end, begun, ended } = slowWork();
    const turns = oneByOne(work);
    let asked = 0;
    for (let round = 0; round < 20; round++) {
      for (let n = 0; n < 5; n++) turns.ask((asked += 1));
      await end();
    }
    while (ended.length < begun.length) await end();
    // The first of all, then the last of each round.
    expect(ended).toEqual([1, ...Array.from({ length: 20 }, (_, round) => 5 * (round + 1))]);
  });

  test('what came of one is put before the eye when the next is already under way', async () => {
    const { work, end, begun } = slowWork();
    const underWay: number[] = [];
    const turns = oneByOne(async (asked: number) => {
      await work(asked);
      return () => underWay.push(begun.length);
    });
    turns.ask(1);
    turns.ask(2);
    await end();
    expect(underWay).toEqual([2]);
  });

  test('what waits can be dropped; what is under way goes on, and what is asked later is done', async () => {
    const { work, end, ended } = slowWork();
    const turns = oneByOne(work);
    turns.ask(1);
    turns.ask(2);
    turns.drop();
    await end();
    expect(ended).toEqual([1]);
    turns.ask(3);
    await end();
    expect(ended).toEqual([1, 3]);
  });
});
