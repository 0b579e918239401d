/** The reports as Chromium shows and prints them. Skipped where there is none; CHROMIUM may name its path. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import {
  customerPage,
  designFile,
  installerPage,
  operatorPage,
  renderFragment,
  renderHtml,
  testerPage,
} from '../../src/report/index.js';
import { chromiumPath } from '../support/chromium.js';
import { examplePlan, planInBritain } from '../support/plan.js';
import { printedPages } from '../support/printed.js';

const pages = { customerPage, installerPage, testerPage, operatorPage, designFile };
const sites = fileURLToPath(new URL('../../docs/examples/surveys/sites/', import.meta.url));
type PageName = keyof typeof pages;
const names = Object.keys(pages) as PageName[];
const htmlOf = (survey: string, page: PageName): string => {
  const plan = examplePlan(survey);
  return renderHtml(pages[page](plan), plan.about.title, plan.about.reference);
};

/** What is wrong with what a page shows: texts that are too small, or too faint; measured in the page itself. */
function faults(): string[] {
  const found: string[] = [];
  const channels = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const light = ([r = 0, g = 0, b = 0]: number[]) => {
    const [x = 0, y = 0, z = 0] = [r, g, b].map((c) => {
      const s = c / 255;
      return s <= 0.03928 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4; // relative luminance, WCAG 2.1
    });
    return 0.2126 * x + 0.7152 * y + 0.0722 * z;
  };
  const behind = (element: Element): number[] => {
    for (let at: Element | null = element; at; at = at.parentElement) {
      const colour = channels(getComputedStyle(at).backgroundColor);
      if (colour.length === 3 || (colour[3] ?? 0) > 0.99) return colour;
    }
    return [255, 255, 255];
  };
  let seen = 0;
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    const words = node.textContent?.trim() ?? '';
    if (!element || words === '' || element.closest('style, title, desc')) continue;
    const style = getComputedStyle(element);
    const range = document.createRange();
    range.selectNodeContents(node);
    if (style.display === 'none' || range.getClientRects().length === 0) continue;
    seen++;
    const svg = element.closest('svg');
    const drawn = svg ? svg.getBoundingClientRect().width / (svg.viewBox.baseVal.width || 1) : 1;
    const size = Number.parseFloat(style.fontSize) * drawn;
    if (size < 9) found.push(`${size.toFixed(1)} px: ${words.slice(0, 40)}`);
    const [ink, paper] = [channels(svg ? style.fill : style.color), behind(svg ?? element)].map(light) as [
      number,
      number,
    ];
    const contrast = (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05);
    if (contrast < 4.5) found.push(`contrast ${contrast.toFixed(1)}: ${words.slice(0, 40)}`);
  }
  if (seen === 0) found.push('nothing is shown');
  if (document.documentElement.scrollWidth > document.documentElement.clientWidth)
    found.push(`scrolls sideways: ${document.documentElement.scrollWidth} px`);
  return found;
}

describe.skipIf(!chromiumPath)('on the screen and on paper', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({
      executablePath: chromiumPath ?? '',
      args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'],
    });
  }, 60_000);
  afterAll(async () => browser?.close());

  const shown = async (html: string, width: number, colorScheme: 'light' | 'dark'): Promise<Page> => {
    const page = await browser.newPage({ viewport: { width, height: 844 }, colorScheme });
    await page.setContent(html);
    return page;
  };
  const printed = async (html: string): Promise<readonly string[]> => {
    const page = await shown(html, 800, 'light');
    const pdf = await page.pdf({ preferCSSPageSize: true });
    await page.close();
    return printedPages(pdf);
  };

  test.each(['easy-home', 'tt-cottage', 'workshop', 'flats'])(
    '%s can be read on a telephone, light and dark, and on a desk',
    async (survey) => {
      for (const name of names)
        for (const [width, scheme] of [
          [390, 'light'],
          [390, 'dark'],
          [760, 'light'],
          [1280, 'light'],
        ] as const) {
          const page = await shown(htmlOf(survey, name), width, scheme);
          expect(await page.evaluate(faults), `${name}, ${width} px, ${scheme}`).toEqual([]);
          await page.close();
        }
    },
  );

  test('what measures finds what is too small, too faint or too wide', async () => {
    const page = await shown(
      '<p style="font-size:8px">small</p><p style="color:#bbb;background:#fff">faint</p><p style="width:500px">wide</p>',
      390,
      'light',
    );
    expect((await page.evaluate(faults)).map((f) => f.replace(/[\d.]+/, 'n'))).toEqual([
      'n px: small',
      'contrast n: faint',
      'scrolls sideways: n px',
    ]);
    await page.close();
  });

  test('the answer is the largest text of its page', async () => {
    const page = await shown(htmlOf('easy-home', 'customerPage'), 390, 'light');
    const sizes = await page.evaluate(() => {
      const sizeOf = (e: Element) => Number.parseFloat(getComputedStyle(e).fontSize);
      const answer = document.querySelector('.answer strong') as Element;
      const others = [...document.querySelectorAll('.ow-report *')].filter((e) => e !== answer);
      return { answer: sizeOf(answer), others: Math.max(...others.map(sizeOf)) };
    });
    expect(sizes.answer).toBeGreaterThan(sizes.others);
    await page.close();
  });

  test('every printed page bears the reference, its number and how many there are', async () => {
    for (const name of names) {
      const all = await printed(htmlOf('easy-home', name));
      expect(all.length).toBeGreaterThan(0);
      for (const [i, text] of all.entries()) {
        expect(text.replace(/\s/g, '')).toContain(`${i + 1}/${all.length}`);
        expect(text).toContain('INV-001');
      }
    }
  });

  test('each reader’s page is one or two printed pages; the flats with their design file 20 in all', async () => {
    for (const survey of ['easy-home', 'tt-cottage', 'workshop', 'flats'])
      for (const name of names)
        if (name !== 'designFile')
          expect((await printed(htmlOf(survey, name))).length, `${survey}, ${name}`).toBeLessThanOrEqual(2);
    let flats = 0;
    for (const name of names) flats += (await printed(htmlOf('flats', name))).length;
    expect(flats).toBeLessThanOrEqual(20);
  });

  test.each(readdirSync(sites))(
    '%s takes at most 20 printed pages in all and each reader two, however many points it has',
    async (file) => {
      const survey = readSurvey(JSON.parse(readFileSync(`${sites}${file}`, 'utf8')));
      const plan = planInBritain(survey, { lengths: false, sheets: 'none' });
      let all = 0;
      for (const name of names) {
        const { length } = await printed(renderHtml(pages[name](plan), plan.about.title, plan.about.reference));
        if (name !== 'designFile') expect(length, name).toBeLessThanOrEqual(2);
        all += length;
      }
      expect(all).toBeLessThanOrEqual(20);
    },
  );

  test('a fragment leaves the style of the page that it stands in alone, and keeps its own', async () => {
    const host = (inside: string) =>
      `<style>h2{font-size:40px;color:rgb(1,2,3)} table{border:9px solid}</style><h2 id="host">Ours</h2>${inside}`;
    const look = () => {
      const style = getComputedStyle(document.querySelector('#host') as Element);
      return [style.fontSize, style.color, style.margin, getComputedStyle(document.body).margin];
    };
    const alone = await shown(host(''), 390, 'light');
    const before = await alone.evaluate(look);
    await alone.close();
    const page = await shown(host(renderFragment(customerPage(examplePlan('easy-home')))), 390, 'light');
    expect(await page.evaluate(look)).toEqual(before);
    expect(await page.evaluate(faults)).toEqual([]);
    const own = await page.evaluate(
      () => getComputedStyle(document.querySelector('.ow-report h2') as Element).fontSize,
    );
    expect(own).not.toBe('40px');
    await page.close();
  });
});
