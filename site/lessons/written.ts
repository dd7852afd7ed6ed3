import { getCollection } from 'astro:content';

/** Slugs of the modules that have a page, from the lessons folder. */
export async function writtenModules(): Promise<Set<string>> {
  return new Set((await getCollection('lessons')).map((entry) => entry.data.slug));
}
