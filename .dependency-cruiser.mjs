// The walls between rooms. Each floor looks only down; inside a floor a room looks only where this table allows.
// A file in a room's root is its front door; files in its sub-folders are private to the room.

/** Room → the rooms it may import. `faults` is open to all; `golf/` alone means every room of that floor. */
const MAY_IMPORT = {
  'numbers/units': [],
  'numbers/geometry': ['numbers/units'],
  'numbers/statistics': ['numbers/units'],
  'numbers/raster': ['numbers/units', 'numbers/geometry'],
  'numbers/kernels': [],
  'numbers/solver': ['numbers/statistics', 'numbers/kernels'],
  'golf/ball': ['numbers/'],
  'golf/rules': ['numbers/units'],
  'golf/course': ['numbers/', 'golf/rules'],
  'golf/player': ['numbers/', 'golf/ball'],
  'golf/strategy': ['numbers/', 'golf/ball', 'golf/rules', 'golf/course', 'golf/player'],
  'golf/round': ['numbers/', 'golf/rules', 'golf/course', 'golf/player', 'golf/strategy'],
  'paper/draw': ['numbers/units', 'numbers/geometry', 'numbers/raster', 'golf/'],
  'paper/book': ['paper/draw', 'numbers/units', 'numbers/geometry', 'golf/'],
  'outside/formats': ['numbers/units', 'numbers/geometry', 'golf/course', 'golf/player', 'golf/round'],
  'outside/store': ['golf/'],
  'outside/print': ['paper/draw'],
  'outside/workers': [],
  'apps/cli': ['numbers/', 'golf/', 'paper/', 'outside/', 'apps/server'],
  'apps/server': ['numbers/', 'golf/', 'paper/', 'outside/'],
  'apps/web': ['numbers/', 'golf/', 'paper/', 'outside/formats', 'outside/print', 'outside/workers'],
}

const TESTS = '\\.(test|fixture)\\.tsx?$'

/** `golf/` → every room of the floor; `golf/course` → that room only. */
const path = (room) => (room.endsWith('/') ? `^src/${room}` : `^src/${room}/`)

const rooms = Object.entries(MAY_IMPORT).flatMap(([room, allowed]) => [
  {
    name: `${room.replace('/', '-')}-looks-only-down`,
    comment:
      allowed.length === 0
        ? `${room} stands on nothing: pass the value in as an argument, or move the function up to the room that knows it.`
        : `${room} may import ${allowed.join(', ')} and faults. Pass the value in as an argument, or move the function to the lowest room that knows both.`,
    severity: 'error',
    from: { path: `^src/${room}/`, pathNot: TESTS },
    to: { path: '^src/', pathNot: ['^src/faults/', `^src/${room}/`, ...allowed.map(path)] },
  },
  {
    name: `${room.replace('/', '-')}-front-door`,
    comment: `Files in sub-folders of ${room} are private. Import a file of the room's root, or move what you need there.`,
    severity: 'error',
    from: { pathNot: [`^src/${room}/`, TESTS, '^test/'] },
    to: { path: `^src/${room}/[^/]+/` },
  },
])

export default {
  forbidden: [
    ...rooms,
    {
      name: 'faults-stand-alone',
      comment: 'Every room imports faults, so faults imports none: keep it to codes and plain records.',
      severity: 'error',
      from: { path: '^src/faults/', pathNot: TESTS },
      to: { path: '^src/', pathNot: '^src/faults/' },
    },
    {
      name: 'no-room-without-walls',
      comment:
        'A new room needs a line in MAY_IMPORT of .dependency-cruiser.mjs that says what it may import.',
      severity: 'error',
      from: {
        path: '^src/',
        pathNot: ['^src/faults/', ...Object.keys(MAY_IMPORT).map((room) => `^src/${room}/`)],
      },
      to: {},
    },
    {
      name: 'no-circle',
      comment:
        'Two files that import each other are one thought: join them, or move what both need into a third.',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'pure-floors-know-no-machine',
      comment:
        'numbers, golf and paper run in a browser, a worker and Node alike: read files and clocks outside and pass the result in.',
      severity: 'error',
      from: { path: '^src/(numbers|golf|paper|faults)/', pathNot: TESTS },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'screen-knows-no-machine',
      comment: 'The screen runs in a browser: ask the server for what a file or the store holds.',
      severity: 'error',
      from: { path: '^src/apps/web/', pathNot: TESTS },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'tests-stay-tests',
      comment: 'Code that ships imports no test and no fixture: move what both need into a file of its own.',
      severity: 'error',
      from: { path: '^(src|tools|bench|bin)/', pathNot: TESTS },
      to: { path: [TESTS, '^test/'] },
    },
    {
      name: 'no-dead-import',
      comment: 'The import leads nowhere: a renamed file, a missing package, or a missing .ts ending.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '\\.css$' },
    },
    {
      name: 'shipped-code-needs-shipped-packages',
      comment:
        'What runs on the professional\'s machine comes from "dependencies". The screen is built ahead, so it may use the others.',
      severity: 'error',
      from: { path: '^src/', pathNot: [TESTS, '^src/apps/web/'] },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'], dependencyTypesNot: ['type-only'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
    },
  },
}
