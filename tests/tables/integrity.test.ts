import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { definitions } from '../../src/verify/definitions.js';
import { guarded } from './guarded.js';
import { digitSlipScore, objections } from './guards.js';

// What the guards say of the tables as printed. Bands are not widened for it: each line stays visible until the print
// is seen. Write it anew with OHMWRIGHT_WRITE_OBJECTIONS=1 and read the difference.
const file = fileURLToPath(new URL('./objections.json', import.meta.url));
const said = Object.fromEntries(guarded.map(({ table, guards }) => [table.id, [...objections(table, guards)]]));
if (process.env.OHMWRIGHT_WRITE_OBJECTIONS) writeFileSync(file, `${JSON.stringify(said, undefined, 2)}\n`);
const known = JSON.parse(readFileSync(file, 'utf8')) as Record<string, string[]>;

describe('tables of capacity, drop and factors', () => {
  it('have identifiers of their own', () => {
    expect(new Set(guarded.map((g) => g.table.id)).size).toBe(guarded.length);
  });

  it.each(guarded)('$table.id: the guards object to the known cells only', ({ table }) => {
    expect(said[table.id]).toEqual(known[table.id] ?? []);
  });

  it('no table of the library with such cells is without guards', () => {
    const roles = new Set<string>(definitions.tables.filter((t) => said[t.id]).map((t) => t.cell));
    expect(roles.size).toBeGreaterThan(6);
    expect(definitions.tables.filter((t) => roles.has(t.cell) && !said[t.id]).map((t) => t.id)).toEqual([]);
  });

  it('a slip of one digit in 4D5 is noticed in at least 95 of 100 cases', () => {
    const own = guarded.find((g) => g.table.id === 'bs7671/4d5');
    const { slips, noticed } = own ? digitSlipScore(own.table, own.guards) : { slips: 1, noticed: 0 };
    expect(noticed / slips).toBeGreaterThan(0.95);
  });
});
