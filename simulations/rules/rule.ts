import * as z from 'zod/mini';

import type { Mm } from '../units/length.ts';
import { feet, inches } from '../units/length.ts';

/** The sets of standards a job may be planned by. A rule that belongs to none of them stands for comparison only. */
export const standardSets = ['north-america', 'iso-en'] as const;
export type StandardSet = (typeof standardSets)[number];

/** How sure we are of a rule; shown wherever its number is shown. */
export const ruleStatuses = ['published', 'common-practice', 'model', 'from-memory'] as const;
export type RuleStatus = (typeof ruleStatuses)[number];

/** What a rule's number is measured in; the printing of each stands in `say.ts`. */
export const ruleUnits = [
  'share',
  'mm',
  'mm²',
  'm²',
  '°',
  'min',
  'h',
  'days',
  'kg',
  'kg/m²',
  'kg/m² per mm',
  'kg/m³',
  'L',
  'L/m²',
  'L/kg',
  '°C',
  'K',
  'N',
  'N/mm²',
  'Pa',
  'Pa·s',
  'mm/s',
  'µg/m³',
  'ppm',
  'rpm',
  'count',
  'times',
  'm² per bag',
] as const;
export type RuleUnit = (typeof ruleUnits)[number];

export interface RuleValue {
  value: number;
  unit: RuleUnit;
  /**
   * How a length prints: in fractions of an inch (the default), in thousandths or hundredths, in feet and metres, or as
   * a short bar that is laid on.
   */
  as?: 'gap' | 'span' | 'bar';
}

export interface RuleSource {
  title: string;
  clause?: string;
  edition?: string;
  status: RuleStatus;
}

/** A rule as it stands in a data file; its key there is its id. */
export interface RuleRow {
  title: string;
  /** One sentence; `{name}` stands for the value of that name. */
  says: string;
  values: Readonly<Record<string, RuleValue>>;
  source: RuleSource;
  /** What another source says, where one does. */
  disagreement?: string;
  standards: readonly StandardSet[];
}

export interface Rule extends RuleRow {
  id: string;
}

const text = z.string().check(z.minLength(3));
/** What every row must satisfy; a row without a source or status is no rule. */
export const ruleSchema = z.strictObject({
  id: z.string().check(z.regex(/^[a-z0-9-]+(\.[a-z0-9-]+)+$/)),
  title: text,
  says: z.string().check(z.regex(/^[^ ].*\.$/)),
  values: z.record(
    z.string().check(z.regex(/^[a-zA-Z0-9]+$/)),
    z.strictObject({
      value: z.number(),
      unit: z.enum(ruleUnits),
      as: z.optional(z.enum(['gap', 'span', 'bar'])),
    }),
  ),
  source: z.strictObject({
    title: text,
    clause: z.optional(z.string()),
    edition: z.optional(z.string()),
    status: z.enum(ruleStatuses),
  }),
  disagreement: z.optional(text),
  standards: z.array(z.enum(standardSets)),
});

/** Keeps each row's value names known to the type checker, so that a misspelt one doesn't compile. */
export const ruleTable = <const T extends Readonly<Record<string, RuleRow>>>(rows: T): T => rows;

export const BOTH: readonly StandardSet[] = [...standardSets];
export const NORTH_AMERICA: readonly StandardSet[] = ['north-america'];
export const ISO_EN: readonly StandardSet[] = ['iso-en'];
/** Known and shown, but decides nothing in either set. */
export const FOR_COMPARISON: readonly StandardSet[] = [];

export const PRACTICE: RuleSource = { title: 'Common practice, no published source', status: 'common-practice' };
export const MODEL: RuleSource = { title: 'Our bed model, not experimentally validated', status: 'model' };
export const FROM_MEMORY: RuleSource = { title: 'From memory, not confirmed in print', status: 'from-memory' };
/** A published source; pass the clause and edition as that source or its quotation gives them. */
export const published = (title: string, clause?: string, edition?: string): RuleSource => ({
  title,
  ...(clause === undefined ? {} : { clause }),
  ...(edition === undefined ? {} : { edition }),
  status: 'published',
});

export const measure = (value: number, unit: RuleUnit): RuleValue => ({ value, unit });
export const share = (value: number): RuleValue => ({ value, unit: 'share' });
export const mm = (value: Mm): RuleValue => ({ value, unit: 'mm' });
/** A length given in inches by its source. */
export const inch = (value: number): RuleValue => ({ value: inches(value), unit: 'mm' });
/** A length too fine for fractions. */
export const gap = (value: Mm): RuleValue => ({ value, unit: 'mm', as: 'gap' });
export const gapInch = (value: number): RuleValue => ({ value: inches(value), unit: 'mm', as: 'gap' });
/** A length across a floor. */
export const span = (value: Mm): RuleValue => ({ value, unit: 'mm', as: 'span' });
export const spanFeet = (value: number): RuleValue => ({ value: feet(value), unit: 'mm', as: 'span' });
/** The length of a bar laid on a floor, and of the run of a fall. */
export const barInch = (value: number): RuleValue => ({ value: inches(value), unit: 'mm', as: 'bar' });
