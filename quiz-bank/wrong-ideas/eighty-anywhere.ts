import { ruleShare } from '../jobs/rule-value.ts';

/** "Eighty is the number": asks the dry-floor share everywhere. */
export const eightyAnywhere = {
  id: 'eighty-anywhere',
  /** Required coverage as its holder has it, 0…1. */
  required: (): number => ruleShare('coverage.dry'),
} as const;
