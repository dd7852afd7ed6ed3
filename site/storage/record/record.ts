import { RecordKeeper, type Bell } from './keeper.ts';

function tabBell(): Bell {
  if (typeof BroadcastChannel === 'undefined') return { ring: () => undefined, answer: () => undefined };
  const channel = new BroadcastChannel('rtb.record');
  return {
    ring: () => channel.postMessage('changed'),
    answer: (hear) => channel.addEventListener('message', hear),
  };
}

let keeper: RecordKeeper | null = null;

/** The learner's record of this browser; opened when it is first asked for. */
export function learnerRecord(): RecordKeeper {
  keeper ??= new RecordKeeper(tabBell());
  return keeper;
}
