/*
 * Which part of the project may import which. Data flows one way, and so do imports; types count as much as values.
 * `npm run check` keeps these rules. Imports inside .astro files are not seen here; tests/commands/astro-doors.test.ts
 * looks at those.
 */

/** The stages of the engine in the order of the data. A stage imports only from those on earlier lines. */
const STAGES = [
  ['diagnostics'],
  ['units'],
  ['geometry'],
  ['spec'],
  ['panels'],
  ['assembly'],
  ['motion'],
  ['layers'],
  ['gravity', 'sheets', 'mail'],
  ['dryfit'],
  ['wording'],
  ['drawings'],
  ['render'],
];

const stageFolder = (stages) => `^plugins/engine/(${stages.join('|')})/`;

const stageRules = STAGES.slice(0, -1).map((stages, position) => ({
  name: `engine-order-${stages.join('-')}`,
  comment: `${stages.join(', ')} may import only from earlier stages: ${STAGES.slice(0, position).flat().join(', ') || 'none'}.`,
  severity: 'error',
  from: { path: stageFolder(stages) },
  to: { path: stageFolder(STAGES.slice(position + 1).flat()) },
}));

module.exports = {
  forbidden: [
    ...stageRules,
    {
      name: 'engine-stays-pure',
      comment:
        'The engine runs in a browser too: no modules of Node, and of packages only those for exact numbers and robust geometry.',
      severity: 'error',
      from: { path: '^plugins/engine/' },
      to: {
        dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'npm-unknown'],
        pathNot: '(^|/)node_modules/(fraction\\.js|robust-predicates|clipper2-ts)/',
      },
    },
    {
      name: 'engine-knows-no-neighbours',
      comment: 'The engine is the innermost part; nothing around it may be imported into it.',
      severity: 'error',
      from: { path: '^plugins/engine/' },
      to: { pathNot: '^plugins/engine/|node_modules', dependencyTypesNot: ['core'], couldNotResolve: false },
    },
    {
      name: 'engine-by-its-door',
      comment: 'Import the engine through plugins/engine/index.ts. Tests of a stage may import that stage.',
      severity: 'error',
      from: { path: '^(plugins|site)/', pathNot: '^plugins/engine/' },
      to: { path: '^plugins/engine/', pathNot: '^plugins/engine/index\\.ts$' },
    },
    {
      name: 'content-imports-engine-only',
      comment: 'Content is read and checked without Markdown, Astro or commands.',
      severity: 'error',
      from: { path: '^plugins/content/' },
      to: { path: '^(plugins/(markdown|astro|commands)|site|tests)/' },
    },
    {
      name: 'markdown-imports-content-and-engine',
      comment: 'Markdown plugins find nodes, ask content and engine, and splice the result.',
      severity: 'error',
      from: { path: '^plugins/markdown/' },
      to: { path: '^(plugins/(astro|commands)|site|tests)/' },
    },
    {
      name: 'astro-imports-no-commands',
      comment: 'The integration serves the commands, not the other way round.',
      severity: 'error',
      from: { path: '^plugins/astro/' },
      to: { path: '^(plugins/commands|site|tests)/' },
    },
    {
      name: 'nothing-imports-tests',
      comment: 'What is published stands without its tests; the bench generates its posts there.',
      severity: 'error',
      from: { path: '^(plugins|site)/', pathNot: '^plugins/commands/bench\\.ts$' },
      to: { path: '^tests/' },
    },
    {
      name: 'site-imports-no-commands',
      comment: 'Pages are rendered by the commands and know nothing of them.',
      severity: 'error',
      from: { path: '^site/' },
      to: { path: '^plugins/commands/' },
    },
    {
      name: 'oracles-stand-alone',
      comment: 'An oracle imports nothing that it checks.',
      severity: 'error',
      from: { path: '^tests/oracles/', pathNot: '\\.test\\.ts$' },
      to: { path: '^(plugins|site)/' },
    },
    {
      name: 'no-cycles',
      comment: 'Two files that import each other are one concept or three.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-unresolved',
      comment: 'Every import leads to a file. Virtual modules of Astro are known by their prefix.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^(astro|virtual):' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '\\.astro$' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      extensions: ['.ts', '.mjs', '.js', '.cjs', '.d.ts'],
    },
  },
};
