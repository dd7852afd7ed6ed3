import { course } from '@lessons/course.ts';
import { terms, type Term } from '@lessons/en/terms.ts';
import { allRules } from '@sim/rules/rulebook.ts';
import { sayRule } from '@sim/rules/say.ts';
import { parts } from '@site/components/parts.ts';
import { moduleLines, moduleTitles } from '@site/messages/en/course.ts';
import { partLines } from '@site/messages/en/parts.ts';
import { shell } from '@site/messages/en/shell.ts';
import { termsPage } from '@site/messages/en/terms.ts';

import { stretches } from './plain-text.ts';

/** One thing that can be found. `path` has no base folder. */
export interface SearchDocument {
  id: number;
  kind: 'module' | 'rule' | 'term' | 'part';
  title: string;
  /** Where in a module the words stand. */
  section: string;
  text: string;
  path: string;
}

type Draft = Omit<SearchDocument, 'id'>;

/** A heading's anchor, as the lesson's page gives it. */
const anchor = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .trim()
    .replace(/\s/g, '-');

function ofModules(lessons: { slug: string; summary: string; body: string }[]): Draft[] {
  return course.flatMap((place): Draft[] => {
    const lesson = lessons.find((one) => one.slug === place.slug);
    const title = `${place.number}. ${moduleTitles[place.slug]}`;
    const path = `/lessons/${place.slug}/`;
    const whole: Draft = {
      kind: 'module',
      title,
      section: '',
      text: `${moduleLines[place.slug]}. ${lesson?.summary ?? ''}`,
      path,
    };
    const sections = stretches(lesson?.body ?? '').map(({ heading, text }): Draft => ({
      kind: 'module',
      title,
      section: heading,
      text,
      path: heading === '' ? path : `${path}#${anchor(heading)}`,
    }));
    return [whole, ...sections];
  });
}

const ofRules = (): Draft[] =>
  allRules().map((rule) => ({
    kind: 'rule',
    title: rule.title,
    section: '',
    text: [...new Set([sayRule(rule, 'imperial'), sayRule(rule, 'metric')]), rule.source.title, rule.disagreement ?? '']
      .join(' ')
      .trim(),
    path: `/sources/#${rule.id}`,
  }));

const ofTerms = (): Draft[] =>
  Object.entries<Term>(terms).map(([id, { term, says, also }]) => ({
    kind: 'term',
    title: term,
    section: '',
    text: also ? `${says} (${termsPage.also} ${also.join(', ')})` : says,
    path: `/terms/#${id}`,
  }));

const ofParts = (): Draft[] =>
  parts.map(({ path, name }) => ({
    kind: 'part',
    title: shell[name],
    section: '',
    text: partLines[name],
    path,
  }));

/** Everything that can be found, numbered. */
export const searchDocuments = (lessons: { slug: string; summary: string; body: string }[]): SearchDocument[] =>
  [...ofTerms(), ...ofModules(lessons), ...ofRules(), ...ofParts()].map((draft, id) => ({ id, ...draft }));
