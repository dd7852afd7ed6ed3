export const twoPulls = {
  title: 'Two backs of one share',
  says: 'Grey is mortar; the round patches are bare tile. The dots are the film: one dot, one point.',
  spread: 'Small voids, well inside',
  corner: 'One void, at a corner',
  coverage: 'Coverage',
  counted: 'Dots on mortar',
  largest: 'Largest void',
  limit: 'Largest void, good practice',
  toEdge: 'Nearest void to an edge',
  near: 'Keep clear of edges, good practice',
  table: 'The numbers',
  of: (count: number) => `${count} of 100`,
} as const;
