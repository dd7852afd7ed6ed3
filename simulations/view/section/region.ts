/** A place in a section: along it from the tile's centre, and over the floor's mean plane, mm. */
export type Point = readonly [placeMm: number, heightMm: number];

/** What of a section some stuff takes up: convex pieces that do not overlap, and the edges it ends at. */
export interface Region {
  pieces: Point[][];
  edges: [Point, Point][];
}

/** A net of points over a section, in columns of equally many from the lowest to the highest. */
export type Net = readonly (readonly Point[])[];

/** A point of the net and how far it lies inside, in any unit: 0 and more is inside. */
interface Corner {
  point: Point;
  inside: number;
}

/** Where the value passes zero between two corners, as if it ran evenly. */
function crossing(a: Corner, b: Corner): Point {
  const share = a.inside / (a.inside - b.inside);
  return [a.point[0] + (b.point[0] - a.point[0]) * share, a.point[1] + (b.point[1] - a.point[1]) * share];
}

/** Adds what of a triangle lies inside. */
function addTriangle({ pieces, edges }: Region, corners: readonly Corner[]): void {
  const piece: Point[] = [];
  const ends: Point[] = [];
  corners.forEach((corner, n) => {
    const next = corners[(n + 1) % corners.length]!;
    if (corner.inside >= 0) piece.push(corner.point);
    if (corner.inside >= 0 === next.inside >= 0) return;
    const end = crossing(corner, next);
    piece.push(end);
    ends.push(end);
  });
  if (piece.length > 2) pieces.push(piece);
  if (ends.length === 2) edges.push([ends[0]!, ends[1]!]);
}

/** Adds the squares between two columns that lie inside as a whole, those on one another as one piece. */
function addWhole({ pieces }: Region, left: readonly Point[], right: readonly Point[], from: number, to: number): void {
  // With every point of both sides: pieces beside it then meet it corner to corner.
  pieces.push([...left.slice(from, to + 1).reverse(), ...right.slice(from, to + 1)]);
}

/** The last of the rows from one on that lie inside on both sides. */
function lastWhole(inLeft: Float64Array, inRight: Float64Array, from: number): number {
  let row = from;
  while (inLeft[row]! >= 0 && inRight[row]! >= 0) row += 1;
  return row - 1;
}

/**
 * The part of a net where a value is not negative. Each square of the net is taken as two triangles over which the value
 * runs evenly, so straight borders of an even field come out exactly.
 * @param values a value for each point, laid out as the net
 */
export function regionOf(net: Net, values: readonly Float64Array[]): Region {
  const region: Region = { pieces: [], edges: [] };
  for (let column = 0; column + 1 < net.length; column++) {
    const [left, right] = [net[column]!, net[column + 1]!];
    const [inLeft, inRight] = [values[column]!, values[column + 1]!];
    const rows = left.length;
    for (let row = 0; row + 1 < rows;) {
      const to = lastWhole(inLeft, inRight, row);
      if (to > row) {
        addWhole(region, left, right, row, to);
        row = to;
        continue;
      }
      const [lowLeft, lowRight, highLeft, highRight] = [
        { point: left[row]!, inside: inLeft[row]! },
        { point: right[row]!, inside: inRight[row]! },
        { point: left[row + 1]!, inside: inLeft[row + 1]! },
        { point: right[row + 1]!, inside: inRight[row + 1]! },
      ];
      addTriangle(region, [lowLeft, lowRight, highRight]);
      addTriangle(region, [lowLeft, highRight, highLeft]);
      row += 1;
    }
  }
  return region;
}
