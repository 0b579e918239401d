/** The example page in Chromium: a survey goes in, a report comes out, without a server and without Node. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { expect, test } from 'vitest';
import { chromiumPath } from '../support/chromium.js';
import { bundle, install } from '../support/packed.js';

const file = (path: string) =>
  readFileSync(fileURLToPath(new URL(`../../docs/examples/${path}`, import.meta.url)), 'utf8');

test.skipIf(chromiumPath === undefined)(
  'the page plans a survey, and tells what is wrong with one',
  async () => {
    const project = install();
    const browser = await chromium.launch({
      executablePath: chromiumPath ?? '',
      args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'],
    });
    try {
      const scripts: Record<string, string> = {};
      for (const name of ['io', 'site', 'report'])
        scripts[`/bundle/${name}.js`] = (await bundle(project, `export * from 'ohmwright/${name}';`)).text;
      const page = await browser.newPage();
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(error.message));
      await page.route('**/*', (route) => {
        const { pathname } = new URL(route.request().url());
        const script = scripts[pathname];
        return script === undefined
          ? route.fulfill({ contentType: 'text/html', body: pathname === '/' ? file('web-page.html') : '' })
          : route.fulfill({ contentType: 'text/javascript', body: script });
      });
      await page.goto('http://page.test/');
      await page.fill('#survey', file('surveys/easy-home.json'));
      await page.click('#plan');
      await page.waitForSelector('#report h1', { timeout: 60_000 });
      expect(await page.textContent('#report h1')).toContain('Larch Cottage (invented)');
      expect(await page.locator('#report svg').count()).toBeGreaterThan(1);
      await page.fill('#survey', '{"format":"survey/1"}');
      await page.click('#plan');
      expect(await page.textContent('#report')).toContain('supply: is missing');
      expect(errors).toEqual([]);
    } finally {
      await browser.close();
      project.remove();
    }
  },
  120_000,
);
