/** Who may import whom; the reasons stand in DEVELOPERS.md under "The house". */
const core = '^(simulations|quiz-bank)/';
module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'nothing-imports-site', severity: 'error', from: { path: core }, to: { path: '^site/' } },
    {
      name: 'core-is-plain',
      comment: 'The core runs unchanged in Node, a worker and a page.',
      severity: 'error',
      from: { path: core, pathNot: '^simulations/(view/|calc\\.ts$|calc/)' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'only-view-draws',
      severity: 'error',
      from: { path: '^(simulations|quiz-bank)/', pathNot: '^simulations/view/' },
      to: { path: 'node_modules/(three|svelte|astro)/' },
    },
    {
      name: 'units-stand-alone',
      severity: 'error',
      from: { path: '^simulations/units/' },
      to: { path: '^simulations/', pathNot: '^simulations/units/' },
    },
    {
      name: 'bed-knows-no-rules',
      severity: 'error',
      from: { path: '^simulations/(bed|trowel|mortar|tile)/' },
      to: { path: '^simulations/(rules|estimate|judge|worker|view)/' },
    },
    {
      name: 'rules-know-no-bed',
      severity: 'error',
      from: { path: '^simulations/rules/' },
      to: { path: '^simulations/bed/' },
    },
    {
      name: 'quiz-draws-nothing',
      severity: 'error',
      from: { path: '^quiz-bank/' },
      to: { path: '^simulations/view/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { extensions: ['.ts', '.js', '.mjs', '.svelte', '.astro'] },
  },
};
