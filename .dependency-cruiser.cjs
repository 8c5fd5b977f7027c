const { Compiler } = require('@swc/core')

/** The library reads every TypeScript file as one without JSX; a file that ends in .tsx is told apart here. */
const parse = Compiler.prototype.parseFileSync
Compiler.prototype.parseFileSync = function (path, options) {
  return parse.call(this, path, { ...options, tsx: path.endsWith('.tsx') })
}

/** Which room may know which: a room imports from the floors below its own, never across or up. */
const floors = [
  ['science'],
  ['trade'],
  ['record'],
  ['planning', 'advice'],
  ['store', 'api', 'exchange', 'print', 'demo'],
  ['app', 'server'],
  ['cli'],
]

/** Shelves of a room with a door of their own, because most users of the room should not carry their weight. */
const sideDoors = ['trade/facts', 'trade/guides', 'api/routes', 'exchange/weather']

const rules = floors.flatMap((rooms, floor) =>
  rooms.map(room => {
    const allowed = [room, ...floors.slice(0, floor).flat()]
    return {
      name: `${room}-knows-only-the-floors-below`,
      comment: `src/${room} (floor ${floor}) may import from: ${allowed.join(', ')}`,
      severity: 'error',
      from: { path: `^src/${room}/`, pathNot: '\\.test\\.tsx?$' },
      to: { path: '^src/', pathNot: `^src/(${allowed.join('|')})/` },
    }
  }),
)

module.exports = {
  forbidden: [
    ...rules,
    {
      name: 'rooms-have-one-door',
      comment: "Another room's files are reached through its index.ts alone.",
      severity: 'error',
      from: { path: '^src/([^/]+)/', pathNot: '\\.test\\.tsx?$' },
      to: { path: '^src/', pathNot: ['^src/$1/', `^src/([^/]+|${sideDoors.join('|')})/index\\.ts$`] },
    },
    {
      name: 'the-program-stands-without-its-tools',
      comment: 'What runs in src needs no file of the tests, the scripts or the bench.',
      severity: 'error',
      from: { path: '^src/', pathNot: '\\.test\\.tsx?$' },
      to: { path: ['^(test|scripts|bench)/', '\\.test\\.tsx?$'] },
    },
    {
      name: 'simulator-shares-nothing-with-the-model',
      comment:
        'The simulated seasons check the linear model: they reach none of it, nor of its rules, by whatever way.',
      severity: 'error',
      from: { path: '^src/planning/simulate/', pathNot: '\\.test\\.ts$' },
      to: { path: '^src/planning/(model|rules|whole|sureness|replan|answer)/', reachable: true },
    },
    {
      name: 'no-circles',
      comment: 'Two files that import each other, be it for types alone, are one idea in two places.',
      severity: 'error',
      from: { path: '^src/' },
      to: { circular: true },
    },
    {
      name: 'pure-rooms-touch-no-machine',
      comment: 'science, trade, record, planning and advice run unchanged in a browser and on a server.',
      severity: 'error',
      from: { path: '^src/(science|trade|record|planning|advice)/', pathNot: '\\.test\\.ts$' },
      to: { dependencyTypes: ['core'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    parser: 'swc',
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.cjs'],
      conditionNames: ['import', 'node', 'default'],
    },
  },
}
