import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { aliases } from '../support/entries.js';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** As the tests run otherwise, without types, coverage and what takes minutes or needs the built package. */
export default defineConfig({
  root,
  resolve: { alias: aliases(root) },
  test: {
    include: [`${process.env.MUTATION_TESTS ?? 'tests'}/**/*.test.ts`],
    // what takes minutes, needs the built package, or reads the source as text
    exclude: [
      'tests/package/**',
      'tests/generated/**',
      'tests/verify/verify-sheet.test.ts',
      'tests/verify/definitions.test.ts',
      'tests/entries.test.ts',
      'tests/accuracy/**',
      'tests/handbook/**',
      'tests/doc-comments.test.ts',
    ],
    // what is drawn comes to the same in every run
    setupFiles: ['tests/support/seed.ts'],
    testTimeout: 120_000,
    isolate: false,
  },
});
