/** The example page in Chromium: a survey goes in, a report comes out, without a server and without Node. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { expect, test } from 'vitest';
import { chromiumPath } from '../support/chromium.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
const survey = readFileSync(`${root}docs/examples/surveys/easy-home.json`, 'utf8');
const types: Readonly<Record<string, string>> = { html: 'text/html', js: 'text/javascript' };

test.skipIf(chromiumPath === undefined)(
  'the page plans a survey, and tells what is wrong with one',
  async () => {
    const browser = await chromium.launch({
      executablePath: chromiumPath ?? '',
      args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'],
    });
    try {
      const page = await browser.newPage();
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(error.message));
      // the folder of the package, served as it is
      await page.route('**/*', (route) => {
        const { pathname } = new URL(route.request().url());
        const path = `${root}${pathname.slice(1)}`;
        if (!/^\/(dist|docs\/examples|node_modules\/zod)\//.test(pathname) || !existsSync(path)) return route.abort();
        const contentType = types[pathname.split('.').at(-1) ?? ''] ?? 'application/json';
        return route.fulfill({ contentType, body: readFileSync(path, 'utf8') });
      });
      await page.goto('http://page.test/docs/examples/web-page.html');
      await page.fill('#survey', survey);
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
    }
  },
  120_000,
);
