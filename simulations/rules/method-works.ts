/** A publication that a computation rests on, apart from the rules of the trade. */
export interface MethodWork {
  work: string;
  /** What it is used for here. */
  for: string;
  /** Where, in the source. */
  file: string;
}

/** What the solver, the statistics and the texts rest on. Titles and years are from memory where no copy was at hand. */
export const methodWorks: readonly MethodWork[] = [
  {
    work: 'A. Nadai, 1923, on the sand heap as the picture of plastic torsion; L. Prigozhin, 1996, on sandpiles',
    for: 'the pressure under a full bed, whose volume is the load of a rectangle',
    file: 'tests/reference/bed-exact.test.ts',
  },
  {
    work: 'G. H. Covey and B. R. Stanmore, 1981, on the parallel-plate plastometer',
    for: 'the load of a disc of paste, squeezed slowly',
    file: 'tests/reference/bed-exact.test.ts',
  },
  {
    work: 'R. Hill, 1950, slip lines between rough plates',
    for: 'the end term of a strip, three halves of the yield stress',
    file: 'simulations/bed/bed.ts',
  },
  {
    work: 'E. C. Bingham, 1922, on plastic flow',
    for: 'the flow of a paste between sliding plates',
    file: 'tests/reference/slot-flux.ts',
  },
  {
    work: 'R. Boyle, 1662, on the spring of the air',
    for: 'the pressure of air shut in under a tile',
    file: 'tests/reference/bed-mass-and-air.test.ts',
  },
  {
    work: 'ISO 10545-2, dimensions and surface quality of tiles',
    for: 'centre curvature, edge curvature and warpage',
    file: 'simulations/tile/iso-measures.ts',
  },
  {
    work: 'EN 1347, wetting capability',
    for: 'the glass test and what it should read',
    file: 'tests/reference/bed-cases.test.ts',
  },
  {
    work: 'C. J. Clopper and E. S. Pearson, 1934, on exact limits of a share',
    for: 'what passing tiles tell of those not lifted',
    file: 'simulations/estimate/pull.ts',
  },
  {
    work: 'G. F. Kuder and M. W. Richardson, 1937, formula 20; L. J. Cronbach, 1951, alpha; an example in K. Wuensch’s notes',
    for: 'how far the marks of a round can be relied on',
    file: 'tests/unit/desk-statistics.test.ts',
  },
  {
    work: 'J. P. Kincaid and others, 1975, reading grade',
    for: 'the reading age of the lessons',
    file: 'tests/reference/lessons-reading-age.test.ts',
  },
];
