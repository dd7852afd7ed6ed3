import { getCollection } from 'astro:content';

import type { NamingTexts } from './rule-uses.ts';

// The bundler reads these calls as text: their options must stand in them.
const sheet = import.meta.glob<string>(['/simulations/estimate/**/*.ts', '/simulations/judge/**/*.ts'], {
  query: '?raw',
  import: 'default',
  eager: true,
});
const rounds = import.meta.glob<string>('/quiz-bank/templates/**/*.ts', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The texts of this build that name rules. */
export async function namingTexts(): Promise<NamingTexts> {
  const lessons = await getCollection('lessons');
  return {
    sheet: Object.values(sheet),
    rounds: Object.values(rounds),
    modules: new Map(lessons.map(({ data, body }) => [data.slug, `${JSON.stringify(data)}\n${body ?? ''}`] as const)),
  };
}
