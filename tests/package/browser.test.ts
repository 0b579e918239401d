/** Every entry, as built, in Chromium. Skipped where there is none; CHROMIUM may name its path. */
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { chromiumPath } from '../support/chromium.js';
import { entries } from '../support/entries.js';
import { bundle, install, type Project } from '../support/packed.js';

describe.skipIf(!chromiumPath)('in a browser', () => {
  let browser: Browser;
  let project: Project;
  beforeAll(async () => {
    project = install();
    browser = await chromium.launch({
      executablePath: chromiumPath ?? '',
      args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'],
    });
  }, 60_000);
  afterAll(async () => {
    await browser?.close();
    project?.remove();
  });

  test.each(entries)(
    '$specifier loads and has the exports that Node sees',
    async ({ specifier, name }) => {
      // the bundler fails on a Node built-in: the platform is the browser
      const { text } = await bundle(
        project,
        `import * as it from '${specifier}'; globalThis.names = Object.keys(it).sort();`,
      );
      const page = await browser.newPage();
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(error.message));
      await page.addScriptTag({ type: 'module', content: text });
      const inNode = Object.keys(await import(`${project.dir}/node_modules/ohmwright/dist/${name}.js`)).sort();
      // a module script runs in its own time: wait until it has, or until it has failed
      await expect
        .poll(async () => errors.length > 0 || (await page.evaluate('globalThis.names')) !== undefined, {
          timeout: 30_000,
        })
        .toBe(true);
      expect(await page.evaluate('globalThis.names')).toEqual(inNode);
      expect(errors).toEqual([]);
      await page.close();
    },
    60_000,
  );
});
