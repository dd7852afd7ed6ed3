import { getCollection } from 'astro:content';

import { searchDocuments } from '@site/search/documents.ts';

/** What the search page looks through, written once when the site is built. */
export async function GET(): Promise<Response> {
  const lessons = (await getCollection('lessons')).map((entry) => ({
    slug: entry.data.slug,
    summary: entry.data.summary,
    body: entry.body ?? '',
  }));
  return new Response(JSON.stringify(searchDocuments(lessons)), { headers: { 'content-type': 'application/json' } });
}
