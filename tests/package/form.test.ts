/** The form of the brief survey in Chromium: made from the schema alone, with a plan that follows the answers. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { questionnaire } from '../../src/io/index.js';
import { chromiumPath } from '../support/chromium.js';
import { install } from '../support/packed.js';

const types: Readonly<Record<string, string>> = { html: 'text/html', js: 'text/javascript', mjs: 'text/javascript' };

/** What is known of an easy house; typed into the form as somebody would. */
const typed: Readonly<Record<string, string>> = {
  reference: 'INV-017',
  date: '2026-09-21',
  edition: '2018+A2:2022',
  mainFuse: '100',
  tails: '25',
  earthingConductor: '16 mm²',
  ringCircuits: '2',
  cooker: '7.2 kW',
  wallsOutside: '8',
  indoors: '4 m',
};
const chosen: Readonly<Record<string, string>> = {
  earthing: 'TN-C-S',
  phases: '1',
  looped: 'false',
  allListed: 'true',
};

async function fillIn(page: Page): Promise<void> {
  await page.evaluate('for (const d of document.querySelectorAll("details")) d.open = true');
  for (const [id, text] of Object.entries(typed)) await page.fill(`#${id}`, text);
  for (const [id, value] of Object.entries(chosen)) await page.selectOption(`#${id}`, value);
}

test.skipIf(chromiumPath === undefined)(
  'the form asks every question, plans while it is filled in, and names what is wrong beside its field',
  async () => {
    const project = install();
    const browser = await chromium.launch({
      executablePath: chromiumPath ?? '',
      args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'],
    });
    try {
      const page = await browser.newPage({ viewport: { width: 390, height: 800 } });
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(error.message));
      page.on('console', (m) => m.type() === 'error' && errors.push(m.text()));
      await page.route('**/*', (route) => {
        const { pathname } = new URL(route.request().url());
        // the folder of the installed package, with what it depends on beside it
        const inPackage = /^\/(dist|docs\/examples)\//.test(pathname);
        const path = join(project.dir, inPackage ? 'node_modules/ohmwright' : '', pathname);
        if (!(inPackage || /^\/node_modules\/zod\//.test(pathname)) || !existsSync(path)) return route.abort();
        const contentType = types[pathname.split('.').at(-1) ?? ''] ?? 'application/json';
        return route.fulfill({ contentType, body: readFileSync(path, 'utf8') });
      });
      await page.goto('http://page.test/docs/examples/form.html');
      await page.waitForSelector('#earthing');
      expect(await page.locator('.field').count()).toBe(questionnaire().length);
      // each field has its label, and can be reached and answered by keyboard alone
      expect(await page.locator('.field label').count()).toBe(questionnaire().length);
      await page.focus('#reference');
      await page.keyboard.type('INV');
      await page.keyboard.press('Tab');
      expect(await page.evaluate('document.activeElement.id')).toBe('date');
      await page.waitForFunction('/Still needed/.test(document.getElementById("answer").textContent)');

      await fillIn(page);
      await page.waitForFunction('/mm² *;|mm²;|open/.test(document.getElementById("answer").textContent)', undefined, {
        timeout: 60_000,
      });
      expect(await page.textContent('#answer strong')).toMatch(/Not decided yet|Not like this|Yes/);
      expect(await page.locator('#next li').count()).toBeGreaterThan(0);

      await page.fill('#mainFuse', '80 V');
      await page.waitForFunction('document.getElementById("mainFuse-problem").textContent !== ""');
      expect(await page.textContent('#mainFuse-problem')).toContain("is '80 V'; a figure in A");

      // a narrow screen scrolls downwards only, and no text is too small to read
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
      const smallest = await page.evaluate(
        'Math.min(...[...document.querySelectorAll("body *")].map((e) => Number.parseFloat(getComputedStyle(e).fontSize)))',
      );
      expect(smallest).toBeGreaterThanOrEqual(9);
      expect(errors).toEqual([]);
    } finally {
      await browser.close();
      project.remove();
    }
  },
  180_000,
);
