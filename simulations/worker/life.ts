/**
 * Whether a worker still lives. One that a browser ends by itself (short of memory, a frozen tab) sends no event, and a
 * page would wait for it for ever. So the worker holds a lock as long as it lives, and the page queues for it: the
 * browser hands the lock on when the worker is gone, whatever ended it. Without locks nothing is watched.
 */
const locks = (): LockManager | undefined => globalThis.navigator?.locks;

/** A name that no other worker of this origin has, to start a worker with. */
export const lifeName = (): string => (locks() ? `worker-${crypto.randomUUID()}` : '');

/** In a worker: resolves once its lock is held, or when it can have none. To be awaited before the first answer. */
export const holdLife = (name: string): Promise<void> =>
  new Promise((ready) => {
    if (name === '' || !locks()) {
      ready();
      return;
    }
    const forEver = (): Promise<never> => {
      ready();
      return new Promise(() => undefined);
    };
    locks()?.request(name, forEver).catch(ready);
  });

/**
 * In a page: calls `gone` when the worker has ended, by the page itself too.
 * @param name the one the worker was started with
 */
export function watchLife(worker: Worker, name: string, gone: () => void): void {
  const queue = async (): Promise<void> => {
    const { held = [] } = (await locks()?.query()) ?? {};
    // A worker that got no lock is not known to be dead when the page gets it.
    if (held.some((lock) => lock.name === name)) await locks()?.request(name, gone);
  };
  worker.addEventListener('message', () => void queue().catch(() => undefined), { once: true });
}
