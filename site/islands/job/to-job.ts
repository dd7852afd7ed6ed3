import { AREA_BOXES, areaBoxIds, JOB_BOXES, jobBoxIds, type Box } from './catalogue.ts';
import type { Draft } from './draft.ts';
import { readBox, type Misread } from './read-box.ts';

/** A box of the form: the job's, or an area's by the area's id. */
export interface Place {
  readonly area: number | null;
  readonly box: string;
}

/** A box whose text is not understood. */
export interface MisreadBox extends Place {
  readonly why: Misread;
}

/** What the form says, as the core's job; boxes not understood are left out of it and listed. */
export interface FormReading {
  readonly job: Record<string, unknown>;
  readonly misread: readonly MisreadBox[];
}

type Tree = { [key: string]: unknown };

/** Puts a value at a dotted path. */
function put(tree: Tree, path: string, value: unknown): void {
  const keys = path.split('.');
  const last = keys.pop();
  if (last === undefined) return;
  let at = tree;
  for (const key of keys) {
    const next = (at[key] ??= {});
    at = next as Tree;
  }
  at[last] = value;
}

/** Reads the whole form into the job that `calc plan` takes. */
export function readForm(draft: Draft): FormReading {
  const misread: MisreadBox[] = [];
  const fill = (tree: Tree, area: number | null, id: string, box: Box, text: string): void => {
    const reading = readBox(box, text, draft.units);
    if (reading.state === 'read') put(tree, box.path, reading.value);
    if (reading.state === 'misread') misread.push({ area, box: id, why: reading.why });
  };
  const job: Tree = {};
  for (const id of jobBoxIds) fill(job, null, id, JOB_BOXES[id], draft.job[id]);
  job['areas'] = draft.areas.map((area) => {
    const tree: Tree = {};
    for (const id of areaBoxIds) fill(tree, area.id, id, AREA_BOXES[id], area.boxes[id]);
    return tree;
  });
  return { job, misread };
}

/** The box that a field of the job stands in (`areas[1].tile.lengthMm`), or null when the form has none for it. */
export function placeOf(draft: Draft, path: string): Place | null {
  const inArea = /^areas\[(\d+)\]\.(.*)$/.exec(path);
  if (inArea) {
    const area = draft.areas[Number(inArea[1])];
    const box = areaBoxIds.find((id) => AREA_BOXES[id].path === inArea[2]);
    return area && box ? { area: area.id, box } : null;
  }
  const box = jobBoxIds.find((id) => JOB_BOXES[id].path === path);
  return box ? { area: null, box } : null;
}
