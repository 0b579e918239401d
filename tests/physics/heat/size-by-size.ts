import { deviationsBySize, spreadOf, type TableDeviation, tableDeviations } from './comparison.js';
import { dropDeviations } from './drop-resistance.js';
import { groupFactors, soilFactors } from './ground-factors.js';

const percent = (share: number, places = 1) => (100 * share).toFixed(places).replace(/^-(0(\.0+)?)$/, '$1');
const tableOf = (head: readonly string[], rows: readonly (readonly string[])[]) =>
  [head, head.map((_, i) => (i === 0 ? '---' : '---:')), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');

/** What the accuracy report says of the heat balance beside the tables, size by size, block by block. */
export function sizeBySize(): readonly string[] {
  const all = tableDeviations();
  const bySize = deviationsBySize(all);
  const spreads: readonly (readonly [string, readonly TableDeviation[]])[] = [
    ['all', all],
    ['from 4 mm²', all.filter((r) => r.size >= 4)],
    ['below 4 mm²', all.filter((r) => r.size < 4)],
  ];
  const drops = dropDeviations();
  const dropColumns = [...new Set(drops.map((r) => `${r.table} ${r.column}`))];
  const dropSizes = [...new Set(drops.map((r) => r.size))].sort((a, b) => a - b);
  return [
    '### Size by size',
    'Capacities computed from first principles (IEC 60287, constants as recalled) beside the tabulated ones, size by size. No constant was fitted to a table but the width of the duct, which the tables do not print: one and a half times the cable, at least 63 mm, of plastic. A computed capacity is an estimate; a tabulated one goes before it.',
    tableOf(
      ['sizes', 'cells', 'mean, %', 'spread, %', 'lowest, %', 'highest, %', 'within 3 %, %', 'within 5 %, %'],
      spreads.map(([name, rows]) => {
        const s = spreadOf(rows);
        const shares = [s.mean, s.deviation, s.least, s.most].map((d) => percent(d));
        return [name, String(s.count), ...shares, percent(s.within3, 0), percent(s.within5, 0)];
      }),
    ),
    'Computed over tabulated, less one, in %; sizes in mm². Not covered: methods A and B, flat twin cable, thermoplastic armoured cable, flexible cable, and sizes without listed dimensions.',
    tableOf(bySize.head, bySize.rows),
    'Printed r of multicore cables over twice (√3 times) the resistance of IEC 60228 at the largest temperature with skin and proximity effect, less one, in %; sizes in mm².',
    tableOf(
      ['column', ...dropSizes.map(String)],
      dropColumns.map((name) => [
        name,
        ...dropSizes.map((size) => {
          const found = drops.find((r) => `${r.table} ${r.column}` === name && r.size === size);
          return found === undefined ? '' : percent(found.deviation);
        }),
      ]),
    ),
    'Printed factor, and the range that is computed for three-core XLPE cables from 2.5 to 240 mm²: for groups the middle cable of a row, all equally loaded.',
    tableOf(
      ['cell', 'printed', 'lowest computed', 'highest computed'],
      [...groupFactors(), ...soilFactors()].map((f) => [
        f.cell,
        String(f.printed),
        f.least.toFixed(3),
        f.most.toFixed(3),
      ]),
    ),
  ];
}
