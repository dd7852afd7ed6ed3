/** "The chart says so": one notch chart, by tile size, for every membrane, board and maker. */
export const oneChartForAll = {
  id: 'one-chart-for-all',
  /** Whose word counts: never the maker's. */
  heedsTheMaker: (): boolean => false,
} as const;
