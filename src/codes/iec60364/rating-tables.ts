import { type Missing, missing } from '../../core/index.js';
import type { Cable, ReferenceMethod, Run } from '../../installation/index.js';
import { type SquareMillimetres, squareMillimetres } from '../../units/index.js';
import { tableB522 } from './tables/b52-2.js';
import { tableB523 } from './tables/b52-3.js';
import { tableB5210 } from './tables/b52-10.js';
import { tableB5211 } from './tables/b52-11.js';

/** Why Annex B, as entered here, has no table for a cable; undefined where it has. */
export function without(cable: Cable): string | undefined {
  if (cable.insulation === 'thermosetting-60') return 'cables with insulation for 60 °C';
  if (cable.construction === 'flexible') return 'flexible cables';
  return cable.construction === 'armoured' ? 'armoured cables' : undefined;
}

/** @internal Why there is no figure. */
export const noTable = (what: string): Missing =>
  missing({
    kind: 'cell',
    table: tableB522.id,
    explain: `IEC 60364-5-52 Annex B, as entered here, has no table for ${what}`,
    source: tableB522.source,
  });

/** @internal Whether a method is one in free air, with tables of its own. */
export const inAir = (method: ReferenceMethod) => method === 'E' || method === 'F' || method === 'G';

/** @internal The areas that the tables list for a cable: those of its material and insulation, enclosed and in air. */
export function iecSizesFor(run: Run): readonly SquareMillimetres[] {
  const { cable } = run;
  if (without(cable)) return [];
  const hot = cable.insulation === 'thermosetting-90';
  const enclosed = (hot ? tableB523 : tableB522).rows.filter((row) =>
    row.slice(1).some((cell, c) => cell !== null && tableB522.columns[c]?.[0] === cable.material),
  );
  const air = (cable.material === 'copper' ? tableB5210 : tableB5211).rows;
  const all = new Set([...enclosed, ...air].map((row) => row[0] as number));
  return [...all].sort((a, b) => a - b).map(squareMillimetres);
}
