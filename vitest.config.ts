import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { writeDocExamples } from './tests/support/doc-examples.js';
import { aliases } from './tests/support/entries.js';

const root = fileURLToPath(new URL('.', import.meta.url));
writeDocExamples(root); // before vitest lists the test files

export default defineConfig({
  resolve: {
    alias: [
      ...aliases(root),
      // while seeds are hunted with, each property is asserted under many
      ...(process.env.OHMWRIGHT_HUNT ? [{ find: /^fast-check$/, replacement: `${root}tests/hunt/many-seeds.ts` }] : []),
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['./tests/support/seed.ts'],
    // a loaded machine is no failure: no test is a timed test; a hunt for seeds takes as long as it is given
    testTimeout: process.env.OHMWRIGHT_HUNT ? 0 : 600_000,
    isolate: false, // pure functions: share loaded modules (mathjs alone costs about a second a file)
    typecheck: { enabled: true, include: ['tests/**/*.test-d.ts'], tsconfig: './tests/tsconfig.json' },
    reporters: ['default', './tests/support/closing-line.ts'],
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      exclude: ['src/**/index.ts'],
      reporter: [['text', { skipFull: true }], 'json-summary'],
      thresholds: { lines: 98, statements: 97, functions: 98, branches: 91 },
    },
  },
});
