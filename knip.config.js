import { readFileSync } from 'node:fs';

const entries = JSON.parse(readFileSync(new URL('./entries.config.json', import.meta.url), 'utf8'));

export default {
  entry: [
    ...Object.values(entries).map((entry) => entry.source),
    'tests/**/*.test.ts',
    'tests/**/*.test-d.ts',
    'tests/handbook/{handbook,trace}.ts', // by name, in what tests/handbook/handbook.mjs bundles
    'tests/handbook/handbook.d.mts', // types of handbook.mjs, for the test that imports it
    'tests/mutation/vitest.config.ts', // by name, in tests/mutation/run.mjs
    'tests/**/*.cases.ts',
    'tests/**/*.cross.ts',
    'tests/{charging,ranges,trust}/*slice.ts', // by name, bundled by the runs of many cases
    'tests/hunt/many-seeds.ts', // by name, in place of fast-check while seeds are hunted with
    'bench/**/*.bench.ts',
    'docs/examples/**/*.{ts,mjs}',
  ],
  project: ['src/**', 'tests/**', 'bench/**', 'docs/examples/**'],
  ignoreDependencies: ['@stryker-mutator/vitest-runner'], // by name, as the runner that the mutation tool loads
  ignoreExportsUsedInFile: true,
};
