import type { Fault } from '@sim/input/fault.ts';
import type { Plan } from '@sim/estimate/plan-types.ts';
import type { UnitSystem } from '@sim/units/format.ts';

/** To the planning worker. The job is read again there: nothing that crosses is trusted. */
export interface PlanRequest {
  readonly run: number;
  readonly job: unknown;
  readonly units: UnitSystem;
}

/** From the planning worker, each for the run it belongs to. */
export type PlanReply =
  | { readonly kind: 'progress'; readonly run: number; readonly share: number }
  | { readonly kind: 'plan'; readonly run: number; readonly plan: Plan }
  | { readonly kind: 'refused'; readonly run: number; readonly faults: readonly Fault[] }
  | { readonly kind: 'failed'; readonly run: number; readonly message: string };
