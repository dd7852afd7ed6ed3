import type { shell } from '@site/messages/en/shell.ts';

/** The parts of the manual in the order of the contents. */
export const parts = [
  { path: '/lessons/', name: 'course' },
  { path: '/bench/', name: 'bench' },
  { path: '/job/', name: 'job' },
  { path: '/rounds/', name: 'rounds' },
  { path: '/eye/', name: 'eye' },
  { path: '/desk/', name: 'desk' },
  { path: '/crew/', name: 'crew' },
  { path: '/sources/', name: 'sources' },
] as const satisfies readonly { path: string; name: keyof typeof shell }[];
