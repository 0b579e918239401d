import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const cache = fileURLToPath(new URL('../../node_modules/.cache/', import.meta.url));

/** What becomes of TypeScript in one file that Node runs; packages stay imports. */
export async function bundled(options) {
  const { outputFiles } = await build({
    bundle: true,
    format: 'esm',
    platform: 'node',
    packages: 'external',
    write: false,
    ...options,
  });
  return outputFiles[0].text;
}

/** The module that such a text is, run from where it finds its packages. */
export async function run(text) {
  const file = `${cache}bundled-${process.pid}.mjs`;
  mkdirSync(cache, { recursive: true });
  writeFileSync(file, text);
  try {
    return await import(pathToFileURL(file));
  } finally {
    rmSync(file, { force: true });
  }
}
