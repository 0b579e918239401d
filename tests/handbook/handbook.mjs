// The handbook. `npm run handbook` writes docs/handbook/; a test compares it with what `makeHandbook` gives.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { bundled, run } from '../support/bundled.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
const folder = `${root}docs/handbook/`;
const entries = JSON.parse(readFileSync(`${root}entries.config.json`, 'utf8'));

/** Puts the traced definers in the place of the core's. */
const traced = {
  name: 'traced',
  setup(b) {
    b.onResolve({ filter: /\/formula\.js$/ }, ({ resolveDir, path }) =>
      /src\/core$/.test(resolveDir.replaceAll('\\', '/')) && path === './formula.js'
        ? { path: `${root}tests/handbook/trace.ts` }
        : undefined,
    );
  },
};

/** The text of every page by file name. */
export async function makeHandbook() {
  const modules = readdirSync(`${root}src`, { recursive: true, encoding: 'utf8' })
    .map((p) => p.replaceAll('\\', '/'))
    .filter(
      (p) =>
        p.endsWith('.ts') &&
        !/(^|\/)(index|definitions)\.ts$/.test(p) &&
        !/^(core|units|verify|testing|report)\//.test(p),
    )
    .sort();
  const imports = [];
  const list = (name, all) => {
    const items = all.map(([key, path], i) => {
      imports.push(`import * as ${name}${i} from ${JSON.stringify(`./${path}`)};`);
      return `[${JSON.stringify(key)}, ${name}${i}]`;
    });
    return `[${items.join(', ')}]`;
  };
  const cases = readdirSync(`${root}tests`, { recursive: true, encoding: 'utf8' })
    .map((p) => `tests/${p.replaceAll('\\', '/')}`)
    .filter((p) => p.endsWith('.cases.ts'))
    .sort();
  const args = [
    JSON.stringify(root),
    list(
      'module',
      modules.map((p) => [p, `src/${p}`]),
    ),
    list(
      'entry',
      Object.entries(entries).map(([path, { source }]) => [path.replace('.', 'ohmwright'), source]),
    ),
    `${list(
      'cases',
      cases.map((p) => [p, p]),
    )}.map(([path, { cases }]) => ({ path, cases }))`,
  ];
  const text = await bundled({
    stdin: {
      contents: `import { handbook } from './tests/handbook/handbook.ts';\n${imports.join('\n')}\nexport default () => handbook(${args.join(', ')});`,
      resolveDir: root,
      loader: 'ts',
    },
    plugins: [traced],
  });
  return (await run(text)).default();
}

/** What is checked in, by file name. */
export const readHandbook = () =>
  Object.fromEntries(readdirSync(folder).map((name) => [name, readFileSync(folder + name, 'utf8')]));

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const pages = await makeHandbook();
  mkdirSync(folder, { recursive: true });
  for (const name of readdirSync(folder)) if (!Object.hasOwn(pages, name)) rmSync(folder + name);
  for (const [name, text] of Object.entries(pages)) writeFileSync(folder + name, text);
}
