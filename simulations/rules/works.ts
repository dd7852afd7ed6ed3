import { allRules } from './rulebook.ts';

/** A publication that rules rest on, with the rules and the clause each rests on. */
export interface CitedWork {
  title: string;
  edition: string | null;
  rules: readonly { id: string; clause: string | null }[];
}

/** Every publication the rules name, by title; one with two editions stands twice. */
export function citedWorks(): CitedWork[] {
  const works = new Map<string, CitedWork & { rules: { id: string; clause: string | null }[] }>();
  for (const { id, source } of allRules()) {
    if (source.status !== 'published') continue;
    const edition = source.edition ?? null;
    const key = `${source.title}\n${edition ?? ''}`;
    const work = works.get(key) ?? { title: source.title, edition, rules: [] };
    work.rules.push({ id, clause: source.clause ?? null });
    works.set(key, work);
  }
  return [...works.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, work]) => work);
}
