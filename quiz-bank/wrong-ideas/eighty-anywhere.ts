import { valueOf } from '../../simulations/rules/rulebook.ts';

/** "Eighty is the number": asks the dry-floor share everywhere. */
export const eightyAnywhere = {
  id: 'eighty-anywhere',
  /** Required coverage as its holder has it, 0…1. */
  required: (): number => valueOf('coverage.dry', 'share'),
} as const;
