import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { build, type Plugin } from 'esbuild';
import { defineConfig } from 'tsup';
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

export default defineConfig({
  entry: Object.fromEntries(entries.map((e) => [e.name, e.source])),
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  splitting: true, // one copy of each module whichever entry reaches it, in CommonJS too
  sourcemap: true,
  clean: true,
  silent: true,
  esbuildPlugins: [plainNamespaces],
  esbuildOptions(options) {
    options.charset = 'utf8';
  },
  async onSuccess() {
    const schemas = {
      survey: surveyJsonSchema(),
      brief: briefJsonSchema(),
      prices: priceBookJsonSchema(),
      'work-rules': workRulesJsonSchema(),
    };
    for (const [name, schema] of Object.entries(schemas))
      writeFileSync(`dist/${name}.schema.json`, `${JSON.stringify(schema)}\n`);
  },
  // tsup 8.5.1 sets baseUrl in its declaration pass, which TypeScript 6 refuses unless told otherwise
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
});
