export const searchWords = {
  title: 'Search',
  lead: 'Looks through the modules, the rules and the terms. Nothing you type leaves this device.',
  label: 'Find',
  hint: 'Words in any order; a beginning is enough.',
  count: '{n} found for “{words}”',
  one: 'One found for “{words}”',
  none: 'Nothing found for “{words}”. Try one word, or another word for it.',
  failed: 'The list to search could not be fetched. Load this page again.',
  noScript: 'Searching needs script. The modules, the terms and the sources can be read without it.',
  module: 'Module',
  rule: 'Rule',
  term: 'Term',
  part: 'Part',
} as const;
export type SearchWords = Record<keyof typeof searchWords, string>;
