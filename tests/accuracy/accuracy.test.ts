import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { definitions } from '../../src/verify/definitions.js';
import { caseFiles } from '../support/case-files.js';
import { crossChecks, slipScores, topics } from './matter.js';
import { accuracyReport } from './report.js';

const file = fileURLToPath(new URL('../../docs/accuracy.md', import.meta.url));
const report = accuracyReport();
if (process.env.ACCURACY === 'write') writeFileSync(file, report.text);

test('the accuracy report is what the definitions and the cases say; `npm run accuracy` writes it', () => {
  expect(readFileSync(file, 'utf8') === report.text).toBe(true);
});

describe('every figure from elsewhere', () => {
  test.each(report.outcomes.map((o) => [o.case.id, o] as const))('%s', (_, o) => {
    expect(Number.isFinite(o.ours)).toBe(true);
    expect(o.verdict).not.toBe('DISAGREES');
    expect(o.case.tolerance).toBeGreaterThanOrEqual(0);
  });

  test('has a name of its own and is in the report once', () => {
    const ids = caseFiles.flatMap((f) => f.cases.map((c) => c.id));
    expect(ids.filter((id, i) => ids.indexOf(id) < i)).toEqual([]);
    expect(report.outcomes.map((o) => o.case.id).sort()).toEqual(ids.sort());
  });
});

describe('every cross-check', () => {
  test.each(report.crossed.map((c) => [c.check.id, c] as const))('%s', (_, { check, result }) => {
    expect(result.compared).toBeGreaterThan(check.few === undefined ? 40 : 5);
    expect(result.agreed / result.compared).toBeGreaterThanOrEqual(check.leastShare);
  });

  test('has a name of its own and is in the report once', () => {
    expect(new Set(crossChecks.map((c) => c.id)).size).toBe(crossChecks.length);
    expect(report.crossed.length).toBe(crossChecks.length);
  });
});

test('every definition belongs to one topic, and every score to a table', () => {
  const held = topics().flatMap((t) => Object.values(t.definitions).flat());
  expect(new Set(held)).toEqual(new Set(Object.values(definitions).flat()));
  expect(held.length).toBe(new Set(held).size);
  const ids = new Set(definitions.tables.map((t) => t.id));
  expect([...slipScores().keys()].filter((id) => id !== 'all' && !ids.has(id))).toEqual([]);
});

test('nothing in it was lost on the way', () => {
  expect(report.text).not.toMatch(/undefined|NaN|\[object|Infinity/);
  for (const [block] of report.text.matchAll(/(?:^\|.*\n)+/gm)) {
    const widths = block
      .trim()
      .split('\n')
      .map((row) => row.replaceAll('\\|', '').split('|').length);
    expect([block.slice(0, 80), new Set(widths).size]).toEqual([block.slice(0, 80), 1]);
  }
});
