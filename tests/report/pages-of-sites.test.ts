/** Pages of larger sites, as their readers read them. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { customerPage, installerPage, renderText, testerPage } from '../../src/report/index.js';
import type { Plan } from '../../src/site/index.js';
import { examplePlan, planInBritain } from '../support/plan.js';

const plans = new Map<string, Plan>();
const site = (name: string): Plan => {
  const file = new URL(`../../docs/examples/surveys/sites/${name}.json`, import.meta.url);
  const plan =
    plans.get(name) ??
    planInBritain(readSurvey(JSON.parse(readFileSync(file, 'utf8'))), { lengths: false, sheets: 'none' });
  plans.set(name, plan);
  return plan;
};
const words = (text: string): string => text.replace(/\s+/g, ' ');

describe('the tester', () => {
  const limits = (row: string) => /\((?<least>[\d.]+)–(?<most>[\d.]+)\)/.exec(row)?.groups ?? {};
  test('finds a good reading of every bay within the limits that stand beside it', () => {
    const text = renderText(testerPage(examplePlan('flats')));
    const [, table = ''] = text.split('Readings, dead tests');
    const rows = [...table.matchAll(/(bay \d+) +L\d +([\d.]+) Ω[^[]*\[ \] +([\d.]+) Ω[^\n]*\n([^\n]*)/g)];
    expect(rows).toHaveLength(24);
    for (const [, bay, expected = '', , below = ''] of rows) {
      const { least, most } = limits(below);
      // common practice: half to twice of what is expected, and a few hundredths of an ohm of leads
      expect(Number(least), bay).toBeCloseTo(Math.max(0, Number(expected) / 2 - 0.025), 3);
      expect(Number(most), bay).toBeCloseTo(Number(expected) * 2 + 0.05, 2);
    }
    // the one with the shortest route is not below the limit of the one with the longest
    expect(text).toMatch(/R_1\+R_2 +0.0362 Ω to 0.169 Ω +below +below/);
    expect(text).toMatch(/Z_s +0.129 Ω to 0.277 Ω +0.0541 Ω +1.06 Ω/);
  });
});

describe('the installer of 200 bays', () => {
  const text = () => words(renderText(installerPage(site('car-park'))));
  test('reads on which line they are in one sentence: each row begins on L1', () => {
    expect(text()).toContain('Lines: in turn, from the first of each row on: L1, L2, L3, and so on.');
    expect(text()).not.toContain('deck 3 row 2 bay 1, 4, 7, 10');
    // of few rows each line is named with what is on it
    expect(words(renderText(installerPage(site('tower'))))).toContain(
      'L1: yard bay 1, 4, 7, 10. L2: yard bay 2, 5, 8.',
    );
  });
  test('finds feeders of one cable and device in one table, each with its length', () => {
    expect(text()).toMatch(
      /‘feeder to deck 1’ riser and tray to deck 1 32 m .*‘feeder to deck 4’ riser and tray to deck 4 68 m/,
    );
    expect(text().match(/armoured cable, 5-core, 150 mm², copper\./g)).toHaveLength(1);
  });
  test('orders boards by what they are', () => {
    expect(text()).toContain('20 set distribution board, main switch 80 A');
    expect(text()).toContain('4 set distribution board, main switch 250 A');
  });
});

test('the customer of a depot reads of every board from which points are fed', () => {
  expect(words(renderText(customerPage(site('depot'))))).toContain('from ‘hall board 1’ to ‘hall board 3’ (3): tray');
});
