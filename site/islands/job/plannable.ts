import { AREA_BOXES, JOB_BOXES, type JobBoxId } from './catalogue.ts';
import type { Draft } from './draft.ts';
import { areaRefused, type FormFaults } from './faults.ts';

type Tree = Record<string, unknown>;

/** Takes the value at a dotted path out of a tree. */
function without(tree: Tree, path: string): Tree {
  const [key = '', ...rest] = path.split('.');
  if (rest.length === 0) {
    const { [key]: gone, ...kept } = tree;
    void gone;
    return kept;
  }
  const branch = tree[key];
  return typeof branch === 'object' && branch !== null && !Array.isArray(branch)
    ? { ...tree, [key]: without(branch as Tree, rest.join('.')) }
    : tree;
}

/**
 * The part of the job that can be planned while some boxes are refused: the areas with no refused box, and the job
 * without its refused ones (a refused maker's notch goes as a whole). Null when no area is left.
 */
export function plannableJob(draft: Draft, job: Readonly<Tree>, faults: FormFaults): { job: Tree } | null {
  const areas = (job['areas'] as Tree[]).filter((_, at) => !areaRefused(faults, draft.areas[at]?.id ?? -1));
  if (areas.length === 0) return null;
  const refused = (Object.keys(faults.job) as JobBoxId[]).map((id) => JOB_BOXES[id].path);
  const paths = refused.map((path) => (path.startsWith('instructions.notch.') ? 'instructions.notch' : path));
  return { job: paths.reduce<Tree>(without, { ...job, areas }) };
}

/** Paths that the form has boxes for; used to see that no field of the core is forgotten. */
export const formPaths = (): { area: string[]; job: string[] } => ({
  area: Object.values(AREA_BOXES).map((box) => box.path),
  job: Object.values(JOB_BOXES).map((box) => box.path),
});
