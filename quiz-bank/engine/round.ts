import type { ModuleId } from '../modules.ts';
import type { Bank } from './compose.ts';
import { drawFrom } from './draw.ts';
import type { ItemRef } from './item.ts';

/** What a round is made from; two rounds with the same plan and bank have the same questions. */
export interface RoundPlan {
  seed: number;
  items: number;
  /** Modules to take from; none means all. */
  modules: readonly ModuleId[];
}

/**
 * The questions of a mixed round: modules in turn, in a drawn order, and no template twice before every template of its
 * module was used.
 */
export function roundRefs(bank: Bank, plan: RoundPlan): ItemRef[] {
  const draw = drawFrom(bank.version, 'round', plan.seed);
  const wanted = new Set<string>(plan.modules);
  const byModule = new Map<string, string[]>();
  for (const { id, module } of bank.templates)
    if (wanted.size === 0 || wanted.has(module)) byModule.set(module, [...(byModule.get(module) ?? []), id]);
  const modules = draw.shuffled([...byModule.keys()]);
  const decks = new Map(modules.map((module) => [module, draw.shuffled(byModule.get(module) ?? [])]));
  if (modules.length === 0) return [];
  return Array.from({ length: plan.items }, (_, slot) => {
    const deck = decks.get(modules[slot % modules.length] ?? '') ?? [];
    const turn = Math.floor(slot / modules.length);
    return { template: deck[turn % deck.length] ?? '', seed: plan.seed, slot };
  });
}
