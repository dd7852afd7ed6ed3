import { type RuleId, valueOf } from '../rules/rulebook.ts';
import type { Area, Job } from './job-types.ts';
import type { AreaPlan } from './plan-types.ts';
import { isLarge, isPanel } from './tile-facts.ts';

export interface MortarChoice {
  kind: AreaPlan['mortarKind'];
  colour: AreaPlan['mortarColour'];
  rule: RuleId;
  /** What we would have taken, where the maker's instruction took its place. */
  overridden: AreaPlan['mortarKind'] | null;
  mostMm: number;
}

/** Greatest bed of a kind after embedding, mm. */
export const mostBed = (kind: AreaPlan['mortarKind']): number =>
  kind === 'large-and-heavy' ? valueOf('bed.most-heavy', 'bed') : valueOf('bed.most-thin-set', 'bed');

function ownChoice(area: Area): { kind: AreaPlan['mortarKind']; rule: RuleId } {
  const { tile } = area;
  if (tile.moistureSensitive) return { kind: 'epoxy', rule: 'stone.epoxy' };
  if (isLarge(tile) || isPanel(tile)) return { kind: 'large-and-heavy', rule: 'class.heavy' };
  return { kind: 'thin-set', rule: 'bed.most-thin-set' };
}

/** Which mortar, in what colour, and how thick its bed may be. */
export function chooseMortar(area: Area, instructions: Job['instructions']): MortarChoice {
  const own = ownChoice(area);
  const asked = instructions.mortarClass;
  // Epoxy is a matter of the stone's safety; a written class for the job's tile in general doesn't undo it.
  const kind = asked !== null && own.kind !== 'epoxy' ? asked : own.kind;
  const { material, light } = area.tile;
  return {
    kind,
    colour: material === 'glass' ? 'white-for-glass' : light ? 'white' : 'any',
    rule: kind === own.kind ? own.rule : 'coverage.maker',
    overridden: kind === own.kind ? null : own.kind,
    mostMm: mostBed(kind),
  };
}
