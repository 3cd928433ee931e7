/**
 * Who may import whom. Two rules for each wall: nothing outside the list of what a room may see.
 *
 *     electron -> contract -> shared-model <- renderer -> contract (types)
 */

/** What each room of the model may see besides itself. */
const MODEL_ROOMS = {
  words: [],
  geometry: [],
  document: ['geometry', 'words'],
  catalogue: ['document', 'geometry', 'words'],
  commands: ['score', 'catalogue', 'document', 'geometry', 'file-format', 'words'],
  checks: ['score', 'catalogue', 'document', 'geometry', 'words'],
  'file-format': ['score', 'catalogue', 'document', 'geometry', 'words'],
  drawing: ['checks', 'pages', 'programme', 'score', 'catalogue', 'document', 'geometry', 'words'],
  arrange: ['score', 'catalogue', 'document', 'geometry', 'words'],
  programme: ['checks', 'commands', 'catalogue', 'document', 'geometry', 'words'],
  pages: ['checks', 'commands', 'score', 'catalogue', 'document', 'geometry', 'words'],
  score: ['document', 'words'],
  underlay: ['commands', 'document', 'geometry', 'words'],
};

const PURE_LIBRARIES = [
  'valibot',
  '@valibot/to-json-schema',
  'delaunator',
  'munkres',
  'saxes',
  '@tarikjabiri/dxf',
  'i18next',
];

/** Only this file of the checks tries commands: a remedy has to be something that the user could do. */
const REMEDY = '^shared-model/checks/remed(y\\.ts$|ies/)';

/** Only these of the checks ask how a page plan is judged, which itself goes by the check of reach. */
const KEPT_PLAN = '^shared-model/checks/(turns/|about/turns-page\\.ts$)';

const roomRule = ([room, seen]) => ({
  name: `model-${room}`,
  comment: `shared-model/${room} may see ${seen.join(', ') || 'nothing but itself'}`,
  severity: 'error',
  from: { path: `^shared-model/${room}/`, ...(room === 'checks' ? { pathNot: [REMEDY, KEPT_PLAN] } : {}) },
  to: { path: '^shared-model/', pathNot: [room, ...seen].map((name) => `^shared-model/${name}/`) },
});

module.exports = {
  forbidden: [
    ...Object.entries(MODEL_ROOMS).map(roomRule),
    {
      name: 'model-remedy',
      severity: 'error',
      from: { path: REMEDY },
      to: {
        path: '^shared-model/',
        pathNot: ['checks', 'commands', ...MODEL_ROOMS.checks].map((name) => `^shared-model/${name}/`),
      },
    },
    {
      name: 'model-kept-plan',
      severity: 'error',
      from: { path: KEPT_PLAN },
      to: {
        path: '^shared-model/',
        pathNot: ['checks', 'pages', ...MODEL_ROOMS.checks].map((name) => `^shared-model/${name}/`),
      },
    },
    {
      name: 'model-alone',
      comment: 'the model sees itself and small pure libraries',
      severity: 'error',
      from: { path: '^shared-model/' },
      to: { pathNot: ['^shared-model/', `^node_modules/(${PURE_LIBRARIES.join('|')})/`] },
    },
    {
      name: 'contract',
      severity: 'error',
      from: { path: '^electron/contract/' },
      to: { pathNot: ['^electron/contract/', '^shared-model/', '^node_modules/valibot/'] },
    },
    {
      name: 'renderer-not-to-shell',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { path: '^electron/', pathNot: '^electron/contract/' },
    },
    {
      name: 'renderer-contract-types',
      comment: 'the window takes only types from the contract',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { path: '^electron/contract/', dependencyTypesNot: ['type-only', 'type-import'] },
    },
    {
      name: 'shell-not-to-renderer',
      severity: 'error',
      from: { path: '^electron/' },
      to: { path: '^renderer/' },
    },
    {
      name: 'services-know-no-shell',
      severity: 'error',
      from: { path: '^electron/services/' },
      to: { path: ['^electron/(main|preload|loopback|cli|bootstrap)/', '^node_modules/electron/'] },
    },
    {
      name: 'electron-only-in-its-shell',
      severity: 'error',
      from: { pathNot: '^electron/(main|preload)/' },
      to: { path: '^(node_modules/)?electron(/electron.d.ts|$)' },
    },
    {
      name: 'shells-apart',
      severity: 'error',
      from: { path: '^electron/(main|preload|loopback|cli)/' },
      to: { path: '^electron/(main|preload|loopback|cli|bootstrap)/', pathNot: '^electron/$1/' },
    },
    { name: 'not-to-tests', severity: 'error', from: { pathNot: '^tests/' }, to: { path: '^tests/' } },
    {
      name: 'no-circles',
      comment: 'a component may show itself, as a menu in a menu does',
      severity: 'error',
      from: { path: '^(.+)$' },
      to: { circular: true, pathNot: '^$1$', viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    { name: 'resolvable', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: ['node_modules', 'dist'] },
    exclude: { path: ['^dist/'] },
    tsPreCompilationDeps: 'specify',
    detectProcessBuiltinModuleCalls: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['svelte', 'import', 'types', 'default'],
      extensions: ['.ts', '.svelte', '.js', '.mjs', '.json'],
    },
  },
};
