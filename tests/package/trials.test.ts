/** The first minutes of three newcomers, each from the packed package in an empty folder. */
import { mkdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parseCsv } from '../../src/io/index.js';
import { install, type Project } from '../support/packed.js';

let project: Project;
beforeAll(() => {
  project = install();
  // the link that npm makes for a command of a package
  mkdirSync(join(project.dir, 'node_modules/.bin'));
  symlinkSync('../ohmwright/docs/examples/ohmwright.mjs', join(project.dir, 'node_modules/.bin/ohmwright'));
}, 120_000);
afterAll(() => project?.remove());

const packaged = (file: string) => join('node_modules/ohmwright/docs/examples', file);

test('a developer copies the first lines of the README, and has a figure', () => {
  const readme = readFileSync('README.md', 'utf8');
  const [, first = ''] = /```ts\n([\s\S]*?)```/.exec(readme) ?? [];
  const script = first.replaceAll(/^(\w+\(.*?\)\.text);.*$/gm, 'console.log($1);').replaceAll(' as const', '');
  project.write('first.mjs', script);
  expect(project.run(process.execPath, 'first.mjs').trim().split('\n')).toEqual(['47 A', '4.2 V', '1.37 Ω']);
});

describe('an estimator', () => {
  /** Invented houses: what a telephone call finds out of each, in turn. */
  const turn = <T>(all: readonly T[], i: number): T => all[i % all.length] as T;
  const houses = Array.from({ length: 12 }, (_, i) => ({
    Reference: `INV-${i + 1}`,
    'Day of the survey': '21/09/2026',
    'Earthing arrangement': turn(['PME', 'PME', 'TN-S'], i),
    Phases: '1',
    'Main fuse (A)': turn(['100', '80'], i),
    'Looped service': turn(['no', 'no', ''], i),
    cutOutSound: 'yes',
    ringCircuits: turn(['2', '1'], i),
    lightingCircuits: '2',
    cooker: turn(['7.2 kW', '0'], i),
    allListed: 'yes',
    outdoors: 'yes',
    indoors: turn(['4 m', '8 m', '2500 m'], i),
    wallsOutside: turn(['8 m', '0 m'], i),
  }));
  const sheet = () => {
    const heads = Object.keys(houses[0] ?? {});
    return `${heads.join(',')}\r\n${houses.map((h) => Object.values(h).join(',')).join('\r\n')}\r\n`;
  };

  test('starts from a sheet with headings, which reads as it is', () => {
    project.run('npx', '--no', 'ohmwright', 'sheet', 'empty.csv');
    const rows = parseCsv(readFileSync(join(project.dir, 'empty.csv'), 'utf8'));
    expect(rows).toHaveLength(2);
    expect(rows[0]?.length).toBeLessThanOrEqual(20);
  });

  test('has a decision for every row by one command, and questions for odd ones', () => {
    project.write('jobs.csv', sheet());
    const said = project.run(
      ...(['npx', '--no', 'ohmwright', 'batch', 'jobs.csv', 'decisions.csv'] as const),
      ...['--defaults', packaged('defaults.json'), '--prices', packaged('prices.json')],
    );
    expect(said).toMatch(/^12 jobs: /);
    const [heads = [], ...rows] = parseCsv(readFileSync(join(project.dir, 'decisions.csv'), 'utf8'));
    const at = (row: readonly string[], name: string) => row[heads.indexOf(name)];
    expect(rows.map((r) => at(r, 'Reference'))).toEqual(houses.map((h) => h.Reference));
    for (const row of rows) {
      expect(at(row, 'Verdict')).toMatch(/^(pass|conditional|not-determined|fail)$/);
      expect(at(row, 'Problem')).toBe('');
      // no price for what is not decided
      if (/fail|not-determined/.test(at(row, 'Verdict') ?? '')) expect(at(row, 'Net')).toBe('');
    }
    // a route of 2500 m is no slip that anything passes on; all others pass on the conditions that stand beside them
    const decided = rows.filter((r) => /^(pass|conditional)$/.test(at(r, 'Verdict') ?? ''));
    expect(decided.length).toBeGreaterThanOrEqual(8);
    for (const r of decided) expect(at(r, 'To confirm on site')).not.toBe('');
    const odd = rows.filter((r) => at(r, 'Look again') !== '').map((r) => at(r, 'Reference'));
    expect(odd).toEqual(['INV-3', 'INV-6', 'INV-9', 'INV-12']);
  }, 600_000);

  test('is told how to use the command, and what is wrong with a file', () => {
    expect(() => project.run('npx', '--no', 'ohmwright')).toThrow(/batch jobs.csv/);
    project.write('wrong.csv', 'fuse,erthing\r\n80,PME\r\n');
    expect(() => project.run('npx', '--no', 'ohmwright', 'batch', 'wrong.csv')).toThrow(/write 'earthing'/);
  });
});
