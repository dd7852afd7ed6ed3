/**
 * Calls back with what another tab of this browser wrote to the shelf under a key (null: taken off it), so that two
 * tabs do not write over each other's work.
 * @returns the function that stops it
 */
export function onOtherTab(key: string, hear: (text: string | null) => void): () => void {
  const listen = (event: StorageEvent): void => {
    if (event.key === key) hear(event.newValue);
  };
  addEventListener('storage', listen);
  return () => removeEventListener('storage', listen);
}

/** A bell between the tabs of this browser, for what lies in a database, which tells nobody of its changes. */
export interface Bell {
  ring: () => void;
  answer: (hear: () => void) => void;
}

const SILENT: Bell = { ring: () => undefined, answer: () => undefined };

export function tabBell(name: string): Bell {
  if (typeof BroadcastChannel === 'undefined') return SILENT;
  const channel = new BroadcastChannel(name);
  return {
    ring: () => channel.postMessage('changed'),
    answer: (hear) => channel.addEventListener('message', hear),
  };
}
