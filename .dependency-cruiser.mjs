/**
 * The layers, top to bottom: a folder imports only from lines below its own, never sideways. See DEVELOPERS.md.
 */
const tower = [
  ['report'],
  ['site'],
  ['design'],
  ['codes'],
  ['networks', 'guidance'],
  ['demand', 'charging'],
  ['products'],
  ['calculation'],
  ['installation'],
  ['physics'],
  ['core'],
  ['units'],
];
/** Folders beside the tower: nothing in it imports them. Each is the only home of one package, and lists what it may not import. */
const beside = {
  io: { home: 'zod', not: ['report', 'verify', 'testing'] },
  verify: { home: 'mathjs', not: ['report', 'io', 'testing'] },
  testing: { home: 'fast-check', not: ['report', 'verify', 'io'] },
};
/** Wiring codes, which never import each other; what the IEC-based ones share is in `iec-family`. */
const codes = ['iec60364', 'bs7671', 'nfpa70'];
/** What the root entry gives. */
const root = ['units', 'core', 'installation', 'design'];

const anyOf = (names) => `(${names.join('|')})`;
const folder = (...names) => `^src/${anyOf(names)}/`;
const code = (...names) => `^src/codes/${anyOf(names)}/`;
const besideNames = Object.keys(beside);

const forbidden = [
  ...tower.flatMap((line, level) =>
    line.map((name) => ({
      name: `${name}-imports-downwards`,
      from: { path: folder(name) },
      to: {
        path: folder(...tower.slice(0, level).flat(), ...line.filter((other) => other !== name), ...besideNames),
      },
    })),
  ),
  ...besideNames.flatMap((name) => [
    { name: `${name}-stays-beside`, from: { path: folder(name) }, to: { path: folder(...beside[name].not) } },
    {
      name: `${beside[name].home}-only-in-${name}`,
      from: { path: '^src/', pathNot: folder(name) },
      to: { path: `node_modules/${beside[name].home}/` },
    },
  ]),
  {
    name: 'codes-keep-apart',
    from: { path: code(...codes) },
    to: { path: code(...codes), pathNot: '^src/codes/$1/' },
  },
  {
    name: 'what-codes-share-knows-no-code',
    from: { path: '^src/codes/', pathNot: code(...codes) },
    to: { path: code(...codes) },
  },
  {
    name: 'engines-know-no-national-product',
    from: { path: folder('demand', 'charging') },
    to: { path: '^src/products/', pathNot: '^src/products/iec\\d' },
  },
  {
    name: 'neutral-layers-know-the-interface-of-codes-only',
    from: { path: folder('design', 'site', 'report') },
    to: { path: ['^src/codes/[^/]+/', folder('networks', 'guidance', 'products')] },
  },
  {
    name: 'root-entry-is-small',
    from: { path: '^src/index\\.ts$' },
    to: { path: '^src/', pathNot: folder(...root) },
  },
  { name: 'nobody-imports-an-entry', from: { path: '^src/' }, to: { path: '^src/[^/]+\\.ts$' } },
  { name: 'no-cycles', from: {}, to: { circular: true } },
  { name: 'no-node-built-ins', from: { path: '^src/' }, to: { dependencyTypes: ['core'] } },
  {
    name: 'no-other-packages',
    from: { path: '^src/' },
    to: { path: 'node_modules/', pathNot: `node_modules/${anyOf(besideNames.map((name) => beside[name].home))}/` },
  },
  { name: 'everything-resolves', from: { path: '^src/' }, to: { couldNotResolve: true } },
  {
    name: 'no-unknown-folder',
    from: {},
    to: {
      path: '^src/',
      pathNot: `^src/(index\\.ts$|great-britain\\.ts$|${anyOf([...tower.flat(), ...besideNames])}/)`,
    },
  },
].map((rule) => ({ severity: 'error', ...rule }));

export default {
  forbidden,
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true, // type imports count
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'default'] },
  },
};
