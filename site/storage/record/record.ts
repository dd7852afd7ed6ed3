import { tabBell } from '@site/storage/other-tabs.ts';
import { shelfName } from '@site/storage/shelf.ts';

import { RecordKeeper } from './keeper.ts';

let keeper: RecordKeeper | null = null;

/** The learner's record of this browser; opened when it is first asked for. */
export function learnerRecord(): RecordKeeper {
  keeper ??= new RecordKeeper(tabBell(shelfName('rtb.record')));
  return keeper;
}
