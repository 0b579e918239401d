/** The first minutes of three newcomers, each from the packed package in an empty folder. */
import { mkdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { csvText, parseCsv } from '../../src/io/index.js';
import { install, type Project } from '../support/packed.js';
import { houses } from './houses.js';

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
  const [heads = [], ...street] = houses(200, 1);
  const reference = heads.indexOf('Reference');
  /** One route is odd, so that somebody has to look again. */
  const oddRoute = 'INV-008';
  const sheet = csvText([
    heads,
    ...street.map((row) => row.map((c, i) => (row[reference] === oddRoute && heads[i] === 'indoors' ? '2500 m' : c))),
  ]);

  test('starts from a sheet with headings, which reads as it is', () => {
    project.run('npx', '--no', 'ohmwright', 'sheet', 'empty.csv');
    const rows = parseCsv(readFileSync(join(project.dir, 'empty.csv'), 'utf8'));
    expect(rows).toHaveLength(2);
    // what an ordinary home is decided by, and no more: the rest of the questionnaire is asked where an answer opens it
    expect(rows[0]?.length).toBeLessThanOrEqual(22);
  });

  test('has 200 decisions for 200 rows by one command, three in four of them to go ahead by', () => {
    project.write('jobs.csv', sheet);
    const said = project.run(
      ...(['npx', '--no', 'ohmwright', 'batch', 'jobs.csv', 'decisions.csv'] as const),
      ...['--defaults', packaged('defaults.json'), '--prices', packaged('prices.json')],
    );
    expect(said).toMatch(/^200 jobs: (\d+ [a-z-]+(, )?)+\. Written to decisions\.csv\.\n$/);
    const text = readFileSync(join(project.dir, 'decisions.csv'), 'utf8');
    expect(text.startsWith('\uFEFF')).toBe(true);
    // a line for each row and nothing besides: no cell is broken
    expect(text.split('\r\n')).toHaveLength(202);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const [names = [], ...rows] = parseCsv(text);
    const at = (row: readonly string[], name: string) => row[names.indexOf(name)] ?? '';
    expect(rows.map((r) => at(r, 'Reference'))).toEqual(street.map((h) => h[reference]));
    for (const row of rows) {
      expect([at(row, 'Reference'), at(row, 'Problem')]).toEqual([at(row, 'Reference'), '']);
      expect(at(row, 'Verdict')).toMatch(/^(pass|conditional|not-determined|fail)$/);
      expect(at(row, 'Network operator')).toMatch(
        /^(no-duty|notify-after|notify-before|apply-first|not-determined)(, once confirmed)?$/,
      );
      // money as money, and only for what is decided and has a price for everything
      const net = at(row, 'Net');
      expect(net).toMatch(/^(|\d+\.\d\d)$/);
      expect(at(row, 'Currency')).toBe(net === '' ? '' : 'GBP');
      if (net !== '')
        expect([at(row, 'Without a price'), /fail|not-det/.test(at(row, 'Verdict'))]).toEqual(['', false]);
      // what stands in the way is named, and so is what it rests on
      if (at(row, 'Verdict') === 'not-determined') expect(at(row, 'Facts that are missing')).not.toBe('');
      if (at(row, 'Verdict') === 'conditional') expect(at(row, 'To confirm on site')).not.toBe('');
    }
    const decided = rows.filter((r) => /^(pass|conditional)$/.test(at(r, 'Verdict')));
    expect(decided.length).toBeGreaterThanOrEqual(155);
    // most of what is decided has a price; where a trench is dug, the surface is still to be said
    expect(decided.filter((r) => at(r, 'Net') !== '').length).toBeGreaterThanOrEqual(100);
    expect(at(rows.find((r) => at(r, 'Reference') === oddRoute) ?? [], 'Look again')).toMatch(/2500 m/);
  }, 900_000);

  test('is told how to use the command, and what is wrong with a file', () => {
    expect(() => project.run('npx', '--no', 'ohmwright')).toThrow(/batch jobs.csv/);
    project.write('wrong.csv', 'fuse,erthing\r\n80,PME\r\n');
    expect(() => project.run('npx', '--no', 'ohmwright', 'batch', 'wrong.csv')).toThrow(/write 'earthing'/);
  });
});
