/** Work that is asked for quicker than it can be done. */
export interface OneByOne<T> {
  /** Begins at once, or when what is under way has ended; of what is asked for meanwhile only the last is begun. */
  ask: (asked: T) => void;
  /** Forgets what waits; what is under way goes on. */
  drop: () => void;
}

/**
 * One piece of work after the other, each to its end. Under a hand that moves on without a pause something is then seen
 * all the time; were each begun anew, nothing would be seen until the hand rests.
 * @param work must not reject; what it resolves with is done when the next is under way, so that the two go on together
 */
export function oneByOne<T>(work: (asked: T) => Promise<() => void>): OneByOne<T> {
  let waiting: { asked: T } | null = null;
  let busy = false;
  const begin = async (asked: T): Promise<void> => {
    busy = true;
    const end = await work(asked);
    busy = false;
    const next = waiting;
    waiting = null;
    if (next) void begin(next.asked);
    end();
  };
  return {
    ask: (asked) => {
      if (busy) waiting = { asked };
      else void begin(asked);
    },
    drop: () => {
      waiting = null;
    },
  };
}
