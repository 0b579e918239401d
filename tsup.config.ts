import { writeFileSync } from 'node:fs';
import { defineConfig } from 'tsup';
import { priceBookJsonSchema, surveyJsonSchema, workRulesJsonSchema } from './src/io/index.js';
import { entries } from './tests/support/entries.js';

export default defineConfig({
  entry: Object.fromEntries(entries.map((e) => [e.name, e.source])),
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  splitting: true, // one copy of each module whichever entry reaches it, in CommonJS too
  sourcemap: true,
  clean: true,
  silent: true,
  async onSuccess() {
    const schemas = {
      survey: surveyJsonSchema(),
      prices: priceBookJsonSchema(),
      'work-rules': workRulesJsonSchema(),
    };
    for (const [name, schema] of Object.entries(schemas))
      writeFileSync(`dist/${name}.schema.json`, `${JSON.stringify(schema)}\n`);
  },
  // tsup 8.5.1 sets baseUrl in its declaration pass, which TypeScript 6 refuses unless told otherwise
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
});
