import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { build, type Plugin } from 'esbuild';
import { transform as toRequire } from 'sucrase';
import { minify } from 'terser';
import { defineConfig, type Options } from 'tsup';
import { briefJsonSchema, priceBookJsonSchema, surveyJsonSchema, workRulesJsonSchema } from './src/io/index.js';
import { entries } from './tests/support/entries.js';

const namespace = /^import \* as (\w+) from '(\.[^']+)\.js';$/gm;

/**
 * A namespace that is used as a value becomes a plain object of named imports: as a namespace it costs a call in the
 * published chunk, which a bundler that reads it cannot drop.
 */
const plainNamespaces: Plugin = {
  name: 'plain-namespaces',
  setup({ onLoad }) {
    onLoad({ filter: /(verify[\\/]definitions|groups[\\/]coordination|collections)\.ts$/ }, async ({ path }) => {
      let contents = readFileSync(path, 'utf8');
      for (const [line, name = '', from = ''] of [...contents.matchAll(namespace)]) {
        const { metafile } = await build({
          entryPoints: [resolve(dirname(path), `${from}.ts`)],
          bundle: true,
          write: false,
          metafile: true,
          format: 'esm',
          outdir: 'dist',
        });
        const names = Object.values(metafile.outputs)[0]?.exports ?? [];
        const imports = names.map((it) => `${it} as ${name}_${it}`).join(', ');
        const fields = names.map((it) => `${it}: ${name}_${it}`).join(', ');
        contents = contents.replace(line, `import { ${imports} } from '${from}.js'; const ${name} = { ${fields} };`);
      }
      return { contents, loader: 'ts' };
    });
  },
};

const ES = 2022;

/** What a bundler that reads the module can still leave out stays as it is. */
const nothingDropped = {
  defaults: false,
  arrows: true,
  booleans: true,
  comparisons: true,
  computed_props: true,
  conditionals: true,
  dead_code: true,
  evaluate: true,
  if_return: true,
  join_vars: true,
  properties: true,
} as const;

/**
 * Makes the built ES modules small. Public functions keep their names for who reads a trace, and calls their marks for bundlers,
 * which the bundler's own pass drops with the comments.
 */
async function small(): Promise<void> {
  const read = (name: string) => readFileSync(`dist/${name}`, 'utf8');
  const exported = entries.flatMap(({ name }) =>
    [...read(`${name}.js`).matchAll(/^export \{([^}]*)\}/gm)].flatMap(([, names = '']) =>
      names.split(',').map((n) => (n.split(' as ').at(-1) ?? '').trim()),
    ),
  );
  const named = new RegExp(`^(${exported.join('|').replaceAll('$', '\\$')})$`);
  for (const name of readdirSync('dist').filter((f) => f.endsWith('.js'))) {
    const { code } = await minify(read(name), {
      module: true,
      ecma: ES,
      compress: { ecma: ES, ...nothingDropped },
      mangle: { keep_fnames: named },
      format: { comments: false, preserve_annotations: true },
    });
    writeFileSync(`dist/${name}`, code ?? '');
  }
}

const entry = Object.fromEntries(entries.map((e) => [e.name, e.source]));

/**
 * The same as CommonJS, split into chunks too. No bundler reads it for what can be left out. Not by the bundler's own pass: it can't split CommonJS, and what does it
 * for it writes every `?.` out as a call.
 */
async function commonJs(): Promise<void> {
  const { outputFiles } = await build({
    entryPoints: entry,
    bundle: true,
    splitting: true,
    write: false,
    format: 'esm',
    platform: 'neutral',
    packages: 'external',
    target: 'es2022',
    charset: 'utf8',
    minify: true,
    outdir: 'dist',
    outExtension: { '.js': '.cjs' },
    chunkNames: 'chunk-[hash]',
  });
  for (const { path, text } of outputFiles) {
    const { code } = toRequire(text, { transforms: ['imports'], disableESTransforms: true });
    const least = await minify(code, { toplevel: true, ecma: ES, compress: { ecma: ES, passes: 2 } });
    writeFileSync(path, least.code ?? '');
  }
}

const shared: Options = {
  entry,
  target: 'es2022',
  platform: 'neutral',
  splitting: true, // one copy of each module whichever entry reaches it
  silent: true,
  esbuildPlugins: [plainNamespaces],
  esbuildOptions(options) {
    options.charset = 'utf8';
  },
};

rmSync('dist', { recursive: true, force: true });

export default defineConfig([
  {
    ...shared,
    format: 'esm',
    async onSuccess() {
      const schemas = {
        survey: surveyJsonSchema(),
        brief: briefJsonSchema(),
        prices: priceBookJsonSchema(),
        'work-rules': workRulesJsonSchema(),
      };
      for (const [name, schema] of Object.entries(schemas))
        writeFileSync(`dist/${name}.schema.json`, `${JSON.stringify(schema)}\n`);
      // the declarations once, for both forms of module: an ES module may read those of CommonJS, not the other way round
      for (const { name } of entries) writeFileSync(`dist/${name}.d.ts`, `export * from './${name}.cjs';\n`);
      await Promise.all([small(), commonJs()]);
    },
  },
  {
    ...shared,
    format: 'cjs',
    // tsup 8.5.1 sets baseUrl in its declaration pass, which TypeScript 6 refuses unless told otherwise
    dts: { only: true, compilerOptions: { ignoreDeprecations: '6.0' } },
  },
]);
