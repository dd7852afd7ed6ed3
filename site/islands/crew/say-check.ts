import { checkWords } from '@site/messages/en/crew.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { formatShare } from '@sim/units/format.ts';

import type { CheckId } from './work.ts';

const figures: Readonly<Record<string, () => string>> = {
  dry: () => formatShare(valueOf('coverage.dry', 'share')),
  wet: () => formatShare(valueOf('coverage.wet', 'share')),
  tiles: () => String(valueOf('sampling.tiles', 'tiles')),
};

/** A check in words, its figures from the rules. */
export const sayCheck = (id: CheckId): string =>
  checkWords[id].replace(/\{(\w+)\}/g, (whole, name: string) => figures[name]?.() ?? whole);
