/** The runs of cells over which `holds` is true: first and last cell. */
export function runsOf(count: number, holds: (step: number) => boolean): [number, number][] {
  const found: [number, number][] = [];
  for (let step = 0; step < count; step++) {
    if (!holds(step)) continue;
    const first = step;
    while (step + 1 < count && holds(step + 1)) step++;
    found.push([first, step]);
  }
  return found;
}
