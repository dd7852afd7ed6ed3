import type { RuleUnit, RuleValue } from '../rules/rule.ts';
import { type RuleId, ruleById } from '../rules/rulebook.ts';
import { fill, sayRule, sayValue } from '../rules/say.ts';
import type { UnitSystem } from '../units/format.ts';
import type { Finding } from './plan-types.ts';

type Values = Readonly<Record<string, RuleValue | string>>;

/** Words with measures filled in, in one system of units. */
export type Speaker = (sentence: string, values?: Values) => string;

export const speakerFor =
  (units: UnitSystem): Speaker =>
  (sentence, values = {}) =>
    fill(sentence, values, units);

export const lengthValue = (value: number, as?: RuleValue['as']): RuleValue => ({
  value,
  unit: 'mm',
  ...(as ? { as } : {}),
});
export const valueIn = (value: number, unit: RuleUnit): RuleValue => ({ value, unit });

/** A finding that says a sentence of its own. */
export const finding = (rule: RuleId, severity: Finding['severity'], says: string): Finding => ({
  rule,
  severity,
  says,
  source: ruleById(rule).source,
});

/** A finding that says its rule. */
export const ruleFinding = (rule: RuleId, severity: Finding['severity'], units: UnitSystem): Finding =>
  finding(rule, severity, sayRule(ruleById(rule), units));

/** A number of a decision's subject, as it is read. */
export const saySubject = (subject: string, value: number, units: UnitSystem): string =>
  sayValue(
    subject === 'coverage' || subject === 'offset'
      ? valueIn(value, 'share')
      : lengthValue(value, subject === 'movement' ? 'span' : 'gap'),
    units,
  );
