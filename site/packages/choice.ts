import { course, type ModuleSlug } from '../../lessons/course.ts';
import { moduleTitles } from '../messages/en/course.ts';
import { packageWords as words } from '../messages/en/package.ts';

/** What a package counts. */
export interface Choice {
  /** The modules that count, in the course's order; empty: all of them. */
  readonly modules: readonly ModuleSlug[];
  /** Pass mark, per cent, 0…100. */
  readonly pass: number;
}

const USUAL_PASS = 80;

/**
 * Reads what `npm run package` was asked for.
 * @param asked `modules`: slugs with commas between; `pass`: a percentage. Either may be missing
 * @throws a sentence that names the option, what was wrong and what is accepted
 */
export function choiceOf(asked: { modules?: string | undefined; pass?: string | undefined }): Choice {
  const known = course.map(({ slug }) => slug);
  const given = (asked.modules ?? '')
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '');
  const strange = given.find((one) => !known.some((slug) => slug === one));
  if (strange !== undefined) throw new Error(words.strangeModule(strange, known));
  const pass = asked.pass === undefined ? USUAL_PASS : Number(asked.pass.trim() === '' ? Number.NaN : asked.pass);
  if (!(pass >= 0 && pass <= 100)) throw new Error(words.strangePass(asked.pass ?? ''));
  const modules = known.filter((slug) => given.includes(slug));
  return { modules: modules.length === known.length ? [] : modules, pass };
}

/** Title under which a platform lists the package. */
export const titleOf = ({ modules }: Choice): string =>
  modules.length === 0 ? words.title : `${words.title}: ${modules.map((slug) => moduleTitles[slug]).join(', ')}`;

/** What tells one package from another on the same platform: the numbers of the modules that count. */
export const nameOf = ({ modules }: Choice): string =>
  modules.length === 0
    ? 'course'
    : `modules-${course.flatMap(({ slug, number }) => (modules.includes(slug) ? [number] : [])).join('-')}`;

/** The package's outer page, told what counts. */
export const launchPage = (page: string, { modules, pass }: Choice): string =>
  page.replace('{modules}', modules.join(',')).replace('{pass}', String(pass));
