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

/** Keeps what page and worker say to each other, and may hold back what the worker says. */
const listenIn = `
  const Own = Worker;
  window.sent = [];
  window.told = [];
  window.Worker = class extends Own {
    constructor(...given) {
      super(...given);
      super.addEventListener('message', ({ data }) => window.told.push({ ...data, at: performance.now() }));
    }
    postMessage(data) {
      window.sent.push({ number: data.number, at: performance.now() });
      super.postMessage(data);
    }
    addEventListener(kind, hear) {
      super.addEventListener(kind, hear);
      window.hear = hear;
    }
  };
  window.settled = () => window.sent.length > 0 && window.told.at(-1)?.number === window.sent.at(-1).number;
`;

type Said = Record<'sent' | 'told', { number: number; at: number }[]>;

/** What was said once the last question is answered, read in the same moment: a key that is still waiting may be asked next. */
const settled = async (page: Page): Promise<Said> => {
  const said = 'window.settled() && { sent: [...window.sent], told: [...window.told] }';
  return (await page.waitForFunction(said, undefined, { timeout: 60_000 })).jsonValue() as Promise<Said>;
};

/** Every control is reached from the first by the tabulator alone, in the order in which the questions stand. */
async function walk(page: Page): Promise<readonly string[]> {
  const visited: string[] = [];
  await page.evaluate('document.activeElement?.blur()');
  await page.focus('#form input, #form select');
  for (let steps = 0; steps < 500; steps++) {
    const at = await page.evaluate<string>('document.activeElement.id || document.activeElement.tagName');
    if (at === 'BODY') break;
    // more questions open by the keyboard as well
    if (at === 'SUMMARY') await page.keyboard.press('Enter');
    else if (visited.at(-1) !== at) visited.push(at);
    await page.keyboard.press('Tab');
  }
  return visited;
}

async function fillIn(page: Page): Promise<void> {
  await page.evaluate('for (const d of document.querySelectorAll("details")) d.open = true');
  for (const [id, text] of Object.entries(typed)) await page.fill(`#${id}`, text);
  for (const [id, value] of Object.entries(chosen)) await page.selectOption(`#${id}`, value);
}

/**
 * How long an answer takes after a key, and how long the page takes to lay itself out anew and show it, by the clock of the
 * page: medians of twenty, ms. Printed for docs/performance.md where MEASURE is set; no test, since it depends on the machine.
 */
const measured = (page: Page): Promise<string> =>
  page.evaluate(`(async () => {
    const median = (of) => of.sort((a, b) => a - b)[Math.floor(of.length / 2)];
    const frame = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    const field = document.getElementById('wallsOutside');
    const [answers, plans, renders] = [[], [], []];
    for (let k = 0; k < 20; k++) {
      const from = performance.now();
      field.value = String(10 + k);
      field.dispatchEvent(new Event('input', { bubbles: true }));
      const count = window.sent.length;
      while (window.sent.length === count || !window.settled()) await new Promise((done) => setTimeout(done, 1));
      answers.push(window.told.at(-1).at - from);
      plans.push(window.told.at(-1).at - window.sent.at(-1).at);
      await frame();
      const start = performance.now();
      document.body.style.fontSize = k % 2 ? '1rem' : '1.01rem';
      await frame();
      renders.push(performance.now() - start);
    }
    const [answer, plan, render] = [answers, plans, renders].map(median);
    return 'answer ' + answer + ' ms, of it plan ' + plan + ' ms; rendering ' + render + ' ms; plan over rendering ' + plan / render;
  })()`);

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
      await page.addInitScript(listenIn);
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

      const inOrder = await page.$$eval('.field input, .field select', (all) => all.map((e) => e.id));
      expect(await walk(page)).toEqual(inOrder);

      await fillIn(page);
      await page.waitForFunction('/mm² *;|mm²;|open/.test(document.getElementById("answer").textContent)', undefined, {
        timeout: 60_000,
      });
      expect(await page.textContent('#answer strong')).toMatch(/Not decided yet|Not like this|Yes/);
      expect(await page.locator('#next li').count()).toBeGreaterThan(0);

      // several keys in one go are one question at most each, and what is shown in the end is the answer to the last
      const before = (await settled(page)).sent.length;
      await page.focus('#wallsOutside');
      await page.keyboard.type('12345678');
      await page.keyboard.press('Control+A');
      await page.keyboard.type('19');
      const { sent, told } = await settled(page);
      expect(sent.length - before).toBeLessThanOrEqual(11);
      // an answer each, and another where what could be put right is sought
      expect(told.length).toBeLessThanOrEqual(2 * sent.length);
      const numbers = told.map((t) => t.number);
      expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
      expect(numbers.at(-1)).toBe(sent.at(-1)?.number);

      // an answer to what was typed before comes too late, and is not shown
      const hearing = (number: string, verdict: string) =>
        page.evaluate<string[]>(`(() => {
          const shown = () => document.getElementById('answer').textContent;
          const before = shown();
          window.hear({ data: { ...window.told.at(-1), number: window.told.at(-1).number ${number}, verdict: '${verdict}' } });
          return [before, shown()];
        })()`);
      const [asWas, late] = await hearing('- 1', 'late');
      expect(late).toBe(asWas);
      expect((await hearing('', 'in time'))[1]).toContain('in time');

      if (process.env.MEASURE) process.stdout.write(`${await measured(page)}\n`);

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
