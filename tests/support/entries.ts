import list from '../../entries.config.json' with { type: 'json' };

/** One public entry of the package. */
export interface Entry {
  /** Key in `exports`: `.` or `./bs7671`. */
  readonly path: string;
  /** What is written in an import: `ohmwright` or `ohmwright/bs7671`. */
  readonly specifier: string;
  /** File name in `dist` without its ending. */
  readonly name: string;
  /** Source module. */
  readonly source: string;
  /** Ceiling of its bundled size, minified and compressed, dependencies included. */
  readonly limit: string;
}

/** What stands for the public names in tests: their sources below a folder, ending with `/`. */
export const aliases = (root: string): { find: RegExp; replacement: string }[] =>
  entries.map((e) => ({ find: new RegExp(`^${e.specifier}$`), replacement: root + e.source }));

/** The public entries, from `entries.config.json`: the only place that lists them. */
export const entries: readonly Entry[] = Object.entries(list).map(([path, { source, limit }]) => ({
  path,
  specifier: path === '.' ? 'ohmwright' : path.replace('.', 'ohmwright'),
  name: path === '.' ? 'index' : path.slice(2),
  source,
  limit,
}));
