import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** A lesson's or an instructor page's file, taken apart for the checks of its words. */
export interface LessonText {
  file: string;
  slug: string;
  /** Rules that the front matter names. */
  rules: string[];
  /** Terms of the glossary that the module explains. */
  terms: string[];
  summary: string;
  /** The body as written, without front matter, imports and comments. */
  body: string;
  /** What a reader reads: tags gone, computed numbers as the word "eight". */
  prose: string;
}

const FOLDERS = ['lessons/en', 'lessons/en/teach'];
/** A computed number stands for one word of a sentence. */
const NUMBER_WORD = 'eight';
const INLINE = /<(Fact|Measure|Amount|NotchName|MeanBed|RidgeHeight)\b[^>]*\/>/g;
const FIGURE = /<[A-Z]\w*\b(?:"[^"]*"|\{[^}]*\}|[^>"{])*\/>/g;
const TAG = /<\/?[A-Za-z]\w*\b(?:"[^"]*"|\{[^}]*\}|[^>"{])*>/g;

const listUnder = (head: string, key: string): string[] => {
  const lines = head.split('\n');
  const at = lines.findIndex((line) => line.startsWith(`${key}:`));
  if (at < 0) return [];
  const rest = lines.slice(at + 1);
  const end = rest.findIndex((line) => !line.startsWith('  - '));
  return rest.slice(0, end < 0 ? undefined : end).map((line) => line.slice(4).trim());
};
const valueUnder = (head: string, key: string): string =>
  new RegExp(`^${key}: (.*)$`, 'm').exec(head)?.[1]?.replace(/^(['"])(.*)\1$/, '$2') ?? '';

/** Titles and questions stand in attributes; a reader reads them too. */
const readAttributes = (body: string): string[] =>
  [...body.replace(INLINE, '').matchAll(/\b(?:title|ask|kind)="([^"]*)"/g)].map((match) => `${match[1] ?? ''}.`);

function proseOf(body: string): string {
  const text = body
    .replace(INLINE, NUMBER_WORD)
    .replace(FIGURE, ' ')
    .replace(TAG, ' ')
    .replace(/\{[^}]*\}/g, NUMBER_WORD)
    .replace(/^\|[-| ]*\|$/gm, '')
    .replace(/^#+ (.*)$/gm, '$1.')
    .replace(/^\s*(?:[-*>]|\d+\.) /gm, '')
    .replace(/\|/g, '.\n\n')
    .replace(/[*_]/g, ' ');
  return [text, ...readAttributes(body)].join('\n');
}

function take(folder: string, name: string): LessonText {
  const file = join(folder, name);
  const raw = readFileSync(file, 'utf8');
  const [, head = '', rest = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(raw) ?? [];
  const body = rest.replace(/^import .*$/gm, '').replace(/\{\/\*[\s\S]*?\*\/\}/g, '');
  return {
    file,
    slug: valueUnder(head, 'slug'),
    rules: listUnder(head, 'rules'),
    terms: valueUnder(head, 'terms')
      .replace(/[[\]]/g, '')
      .split(', ')
      .filter((id) => id !== ''),
    summary: valueUnder(head, 'summary'),
    body,
    prose: proseOf(body),
  };
}

const read = (folder: string): LessonText[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.mdx'))
    .toSorted()
    .map((name) => take(folder, name));

export const lessonTexts = (): LessonText[] => read(FOLDERS[0] ?? '');
export const allTexts = (): LessonText[] => FOLDERS.flatMap(read);
