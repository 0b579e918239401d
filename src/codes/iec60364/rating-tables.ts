import { factValue, isMissing, type Known, type Missing, missing, type Sheet } from '../../core/index.js';
import type { Cable, Run, Stretch } from '../../installation/index.js';
import { ggConventional } from '../../products/bs88/conventional-currents.js';
import { type Amperes, type Ratio, ratio, type SquareMillimetres, squareMillimetres } from '../../units/index.js';
import { groupFactorOf } from '../iec-family/group-factor.js';
import { isBuried, noFactor, type RatingTables, soilFactorOf } from '../iec-family/rating-tables.js';
import { tableB522 } from './tables/b52-2.js';
import { tableB523 } from './tables/b52-3.js';
import { tableB524 } from './tables/b52-4.js';
import { tableB525 } from './tables/b52-5.js';
import { tableB5210 } from './tables/b52-10.js';
import { tableB5211 } from './tables/b52-11.js';
import { tableB5212 } from './tables/b52-12.js';
import { tableB5213 } from './tables/b52-13.js';
import { tableB5214 } from './tables/b52-14.js';
import { tableB5215 } from './tables/b52-15.js';
import { tableB5216 } from './tables/b52-16.js';
import { tableB5217 } from './tables/b52-17.js';
import { tableB5218 } from './tables/b52-18.js';
import { tableB5219Multicore, tableB5219SingleCore } from './tables/b52-19.js';
import { tableB5220 } from './tables/b52-20.js';
import { tableB5221 } from './tables/b52-21.js';

/** Why Annex B, as entered here, has no table for a cable; undefined where it has. */
function without(cable: Cable): string | undefined {
  if (cable.insulation === 'thermosetting-60') return 'cables with insulation for 60 °C';
  if (cable.construction === 'flexible') return 'flexible cables';
  return cable.construction === 'armoured' ? 'armoured cables' : undefined;
}

const noTable = (what: string): Missing =>
  missing({
    kind: 'cell',
    table: tableB522.id,
    explain: `IEC 60364-5-52 Annex B, as entered here, has no table for ${what}`,
    source: tableB522.source,
  });

/** A label that comes from data: where a table has no such label, the table itself says what it has. */
const listed = (label: Known<string>) => label as Known<never>;

/** The method as IEC names it: A, B and D are two each, by the cable and by what it lies in. */
function iecMethod(cable: Cable, stretch: Stretch): Known<string> {
  const method = factValue(`method of ${stretch.name}`, stretch.method);
  if (isMissing(method)) return method;
  if (method === 'A' || method === 'B') return `${method}${cable.construction === 'single-core' ? 1 : 2}`;
  if (method !== 'D') return method;
  if (stretch.containment === 'duct') return 'D1';
  if (stretch.containment === 'buried') return 'D2';
  return missing({
    kind: 'fact',
    fact: `containment of ${stretch.name}`,
    obtain: 'see whether it lies in a duct (D1) or direct in the ground (D2)',
  });
}

const inAir = (method: string) => method === 'E' || method === 'F' || method === 'G';

/** How cables lie where the tables for free air ask for it. */
function formationOf(method: string, loaded: '2' | '3', stretch: Stretch): string {
  if (method === 'E') return 'multicore';
  if (method === 'G') return stretch.formation ?? 'spaced-horizontal';
  return stretch.formation ?? (loaded === '2' ? 'flat-touching' : 'trefoil');
}

function tabulated(sheet: Sheet, cable: Cable, stretch: Stretch, loaded: '2' | '3'): Known<Amperes> {
  const lacking = without(cable);
  if (lacking) return sheet.given('tabulatedCapacity', noTable(lacking));
  const known = iecMethod(cable, stretch);
  const conductorArea = sheet.given('conductorArea', cable.area);
  const method = listed(sheet.label('method', known));
  const hot = cable.insulation === 'thermosetting-90';
  if (!isMissing(known) && inAir(known)) {
    const table = cable.material === 'copper' ? (hot ? tableB5212 : tableB5210) : hot ? tableB5213 : tableB5211;
    const formation = listed(sheet.label('formation', formationOf(known, loaded, stretch)));
    return sheet.look(table, { method, loaded: sheet.label('loaded', loaded), formation, conductorArea });
  }
  const material = sheet.label('material', cable.material);
  const table = loaded === '2' ? (hot ? tableB523 : tableB522) : hot ? tableB525 : tableB524;
  return sheet.look(table, { material, method, conductorArea });
}

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

function ambient(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio> {
  if (cable.insulation === 'thermosetting-60')
    return sheet.given('ambientFactor', noTable('cables with insulation for 60 °C'));
  const insulation = sheet.label('insulation', cable.insulation);
  if (isBuried(stretch))
    return sheet.look(tableB5215, {
      insulation,
      groundTemperature: sheet.given('groundTemperature', stretch.ambient),
    });
  return sheet.look(tableB5214, {
    insulation,
    ambientTemperature: sheet.given('ambientTemperature', stretch.ambient),
  });
}

const group = /* @__PURE__ */ groupFactorOf({
  touching: (sheet, arrangement, circuitsInGroup) =>
    sheet.look(tableB5217, {
      circuitsInGroup: circuitsInGroup(),
      arrangement: sheet.label('arrangement', arrangement),
    }),
  direct: tableB5218,
  ductsOfMulticore: tableB5219Multicore,
  ductsOfSingles: tableB5219SingleCore,
  trays: tableB5220,
  traysOfSingles: tableB5221,
  lightClause: 'IEC 60364-5-52 523.5',
});

function insulation(sheet: Sheet, _cable: Cable, stretch: Stretch): Known<Ratio> {
  const length = stretch.insulated && factValue(`insulated length of ${stretch.name}`, stretch.insulated);
  if (length === 0) return noFactor(sheet, 'insulationFactor', 'no length in thermal insulation');
  return sheet.given('insulationFactor', noTable('cables that thermal insulation surrounds over a length'));
}

const soil = /* @__PURE__ */ soilFactorOf(tableB5216, (cable, stretch) => {
  const method = iecMethod(cable, stretch);
  if (isMissing(method)) return method;
  return method === 'D1' ? 'ducts' : 'direct';
});

/** Conventional operating currents: breakers by their standard, gG fuses by the table of IEC 60269. */
function conventionalMultiple(sheet: Sheet, run: Run): Known<Ratio> {
  const kind = factValue('kind of the overcurrent device', run.device.kind);
  if (isMissing(kind)) return sheet.given('conventionalMultiple', kind);
  if (kind.standard === 'EN 60898' || kind.standard === 'EN 61009')
    return sheet.given('conventionalMultiple', ratio(1.45), 'EN 60898: conventional tripping current 1.45 I_n');
  if (kind.standard === 'BS 88-2') {
    const part = sheet.part('Conventional fusing current');
    part.look(ggConventional, {
      edge: part.label('edge', 'fusing'),
      deviceRating: part.given('deviceRating', run.device.rating),
    });
    return sheet.gather('sum', 'deviceMultiple', 'conventionalMultiple', [part]);
  }
  return sheet.given(
    'conventionalMultiple',
    missing({
      kind: 'fact',
      fact: `conventional operating current of a device to ${kind.standard}`,
      obtain: 'the product standard',
    }),
  );
}

/** The rating tables of IEC 60364-5-52 Annex B. */
export const iecRatingTables: RatingTables = {
  tabulated,
  ambient,
  group,
  insulation,
  soil,
  containsInsulation: (method) => /^A[12]?$/.test(method),
  overload: { conventionalMultiple, notSimultaneous: false },
};
