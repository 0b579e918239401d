import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { everyTable, excused, unguarded } from './every-table.js';
import { guardedOthers } from './guarded-others.js';
import { digitSlipScore, objections } from './guards.js';

// What the guards say of the tables as printed. Bands are not widened for it: each line stays visible until the print
// is seen. Write it anew with OHMWRIGHT_WRITE_OBJECTIONS=1 and read the difference.
const file = fileURLToPath(new URL('./objections.json', import.meta.url));
const said = Object.fromEntries(everyTable.map(({ table, guards }) => [table.id, [...objections(table, guards)]]));
if (process.env.OHMWRIGHT_WRITE_OBJECTIONS) {
  const some = Object.fromEntries(Object.entries(said).filter(([, all]) => all.length > 0));
  writeFileSync(file, `${JSON.stringify(some, undefined, 2)}\n`);
}
const known = JSON.parse(readFileSync(file, 'utf8')) as Record<string, string[]>;

describe('every table', () => {
  it.each(everyTable)('$table.id: the guards object to the known cells only', ({ table }) => {
    expect(said[table.id]).toEqual(known[table.id] ?? []);
  });

  it('has a guard, or is excused by name', () => {
    expect([...unguarded].sort()).toEqual(Object.keys(excused).sort());
  });

  // the slips that a second hand drew and that nothing noticed
  it.each([
    ['bs7671/4f3a', 'single-phase', 4, 72],
    ['iec60228/conductor-resistance', 'copper 1', 2.5, 7.01],
    ['bs6004/protective-conductors', 'flat-twin-and-earth', 2.5, 2.5],
    ['bs7671/41.6', 'none 63.5 D', 125, 7.03],
    ['bs7671/41.6', 'none 63.5 B', 10, 1.07],
    ['bs7671/41.3', '2008 D', 10, 1.13],
    ['bs7671/41.2', '2011 BS 88-2', 10, 4.83],
    ['bs7671/722.411.4.1-window', 'upper', 'upper', 251],
    ['bs7671/722.411.4.1-voltage', '', 'low-electrode', 75],
    ['bs88/conventional-times', 'fusing', 63, 3200],
    ['bs7671/43.1', 'copper', '60 °C thermosetting (rubber)', 147],
    ['bs7671/54.4', 'steel', '70 °C thermoplastic', 57],
  ] as const)('%s: a slip in %s, %s to %s is noticed', (id, column, row, wrong) => {
    const { table, guards } = everyTable.find((g) => g.table.id === id) as (typeof everyTable)[number];
    const c = Math.max(
      0,
      table.columns.findIndex((k) => k.join(' ') === column),
    );
    const rows = table.rows.map((r) => (r[0] === row ? r.map((v, i) => (i === c + 1 ? wrong : v)) : r));
    expect(rows).not.toEqual(table.rows);
    const now = objections({ ...table, rows }, guards);
    expect([...now].some((o) => !said[id]?.includes(o))).toBe(true);
  });

  it.each(['bs7671/4d5', ...Object.keys(guardedOthers)])('%s: at least 95 of 100 slips are noticed', (id) => {
    const own = everyTable.find((g) => g.table.id === id);
    const { slips, noticed } = own ? digitSlipScore(own.table, own.guards) : { slips: 1, noticed: 0 };
    expect(noticed / slips).toBeGreaterThan(0.95);
  });
});
