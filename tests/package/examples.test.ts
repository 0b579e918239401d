/** The example scripts, run as a user would against the built package. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const run = (script: string, ...args: string[]) =>
  execFileSync(process.execPath, [`docs/examples/${script}`, ...args], { cwd: root, encoding: 'utf8' });

test('one survey to its reports, a page for each reader', () => {
  const folder = mkdtempSync(join(tmpdir(), 'plan-'));
  try {
    const survey = 'docs/examples/surveys/easy-home.json';
    const printed = run('plan-a-charger.mjs', survey, folder, 'docs/examples/prices.json');
    expect(printed).toMatch(/6 mm²,\s+copper;\s+protected\s+by\s+RCBO\s+32\s+A,\s+curve\s+B/);
    expect(printed).toContain('it agrees');
    const plan = JSON.parse(readFileSync(join(folder, 'easy-home.plan.json'), 'utf8')) as { format: string };
    expect(plan.format).toBe('plan/1');
    expect(readFileSync(join(folder, 'easy-home.plan.html'), 'utf8')).toContain('<svg');
    expect(readFileSync(join(folder, 'easy-home.plan.md'), 'utf8')).toContain('| verdict |');
    const pageOf = (reader: string) => readFileSync(join(folder, `easy-home.${reader}.html`), 'utf8');
    expect(pageOf('customer')).toMatch(/Yes, it can be done.*£\d,\d{3}\.\d\d/s);
    expect(pageOf('installer')).toMatch(/Set the charge point to \d+ A\./);
    expect(pageOf('tester')).toContain('R<sub>1</sub>+R<sub>2</sub>');
    expect(pageOf('operator')).toContain('Application before the work');
    expect(pageOf('design')).toContain('href="#chapter-1"');
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('a folder of surveys to a spreadsheet of decisions, priced', () => {
  const folder = mkdtempSync(join(tmpdir(), 'batch-'));
  try {
    const file = join(folder, 'decisions.csv');
    const said = run('batch-to-csv.mjs', 'docs/examples/surveys', file, '--prices', 'docs/examples/prices.json');
    expect(said).toMatch(/^5 jobs: .*\d pass/);
    const text = readFileSync(file, 'utf8');
    // a spreadsheet needs the mark to show mm², and runs a cell with a break in it over two rows
    expect(text.startsWith('\uFEFFReference,Verdict')).toBe(true);
    const lines = text.trim().split('\r\n');
    expect(lines).toHaveLength(6);
    expect(lines[1]).toMatch(
      /^easy-home.json,pass,"As wanted, with a load limiter.*",apply-first,flat twin and earth 6 mm²,32 A,[\d.]+,[\d.]+,[\d.]+,\d+\.\d\d,GBP,/,
    );
    // what has an item without a price has no net
    const unpriced = lines.slice(1).find((line) => line.includes(',tray,'));
    expect(unpriced).toMatch(/,[\d.]+,[\d.]+,[\d.]+,,,/);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('a requirement of the firm itself', () => {
  expect(run('custom-check.mjs')).toMatch(/^drive: pass, margin 54\.\d %; with the code's rules: pass/);
});
