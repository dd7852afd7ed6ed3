import MiniSearch from 'minisearch';

import type { SearchDocument } from '@site/search/documents.ts';

export interface Found {
  document: SearchDocument;
  /** A piece of the text around the first word that was found. */
  excerpt: string;
}

const EXCERPT = 160;
const MOST = 40;

function excerptOf(text: string, words: string[]): string {
  const lower = text.toLowerCase();
  const places = words.map((word) => lower.indexOf(word)).filter((place) => place >= 0);
  const at = places.length > 0 ? Math.min(...places) : 0;
  const from = Math.max(0, text.lastIndexOf(' ', Math.max(0, at - 40)) + 1);
  const piece = text.slice(from, from + EXCERPT);
  const cut = piece.length === EXCERPT ? `${piece.slice(0, piece.lastIndexOf(' '))} …` : piece;
  return from > 0 ? `… ${cut}` : cut;
}

/** Makes a finder over the documents: titles count most, beginnings and small misspellings are forgiven. */
export function finder(documents: SearchDocument[]): (words: string) => Found[] {
  const index = new MiniSearch<SearchDocument>({
    fields: ['title', 'section', 'text'],
    searchOptions: {
      boost: { title: 4, section: 2 },
      prefix: true,
      fuzzy: (word) => (word.length > 4 ? 0.2 : false),
      combineWith: 'AND',
    },
  });
  index.addAll(documents);
  return (words) =>
    index
      .search(words)
      .slice(0, MOST)
      .flatMap(({ id, terms }) => {
        const document = documents[id as number];
        return document ? [{ document, excerpt: excerptOf(document.text, terms) }] : [];
      });
}
