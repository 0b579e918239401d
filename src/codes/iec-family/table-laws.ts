/** Laws that the figures of tables obey by the role of their cells and rows, for tables that somebody corrects after the print. */
import type { Table } from '../../core/index.js';
import {
  columnName,
  type Guard,
  halfDrop,
  oneWay,
  ordered,
  type Printed,
  phases,
  positive,
  printedCell,
  smooth,
  triangle,
  within,
} from '../../core/laws.js';

/** The inferred zero of resistance, degrees below zero, and K of the adiabatic equation, by metal. IEC 60949. */
const metals: Readonly<Record<string, readonly [factor: number, beta: number]>> = {
  copper: [226, 234.5],
  aluminium: [148, 228],
  steel: [78, 202],
  lead: [41, 230],
};

/** Which way a figure goes down the rows: by its role and that of the rows; labels stand in the order of the print. */
const ways: Readonly<Record<string, Readonly<Record<string, 'rises' | 'falls'>>>> = {
  tabulatedCapacity: { conductorArea: 'rises' },
  dropRate: { conductorArea: 'falls' },
  loopImpedanceLimit: { deviceRating: 'falls' },
  operatingCurrent: { deviceRating: 'rises' },
  ambientFactor: { ambientTemperature: 'falls', groundTemperature: 'falls' },
  soilFactor: { soilResistivity: 'falls' },
  groupFactor: { circuitsInGroup: 'falls' },
  insulationFactor: { insulatedLength: 'falls' },
  coresFactor: { loadedCores: 'falls' },
  resistancePerMetre20: { conductorArea: 'falls' },
  minimumBondingArea: { supplyNeutralArea: 'rises' },
  protectiveArea: { conductorArea: 'rises' },
  minimumProtectiveArea: { deviceRating: 'rises' },
  conductorDiameter: { conductorArea: 'rises' },
  cableDiameter: { conductorArea: 'rises' },
  armourArea: { conductorArea: 'rises' },
  armourWireDiameter: { conductorArea: 'rises' },
  insulationThickness: { conductorArea: 'rises' },
  beddingThickness: { laidUpDiameter: 'rises' },
  letThrough: { deviceRating: 'rises' },
  operatingTime: { deviceRating: 'rises', faultCurrent: 'falls', residualMultiple: 'falls' },
  disconnectionTime: { residualMultiple: 'falls', smoothResidualCurrent: 'falls' },
  requiredTime: { nominalVoltage: 'falls' },
  groupPower: { dwellings: 'rises' },
  demandPower: { cutOutRating: 'rises' },
  tailsCapacity: { tailsArea: 'rises' },
};
/** Roles whose figures may stay the same from row to row. */
const mayStay: ReadonlySet<string> = new Set([
  'loopImpedanceLimit',
  'groupFactor',
  'armourWireDiameter',
  'insulationThickness',
  'beddingThickness',
  'armourArea',
  'operatingTime',
  'disconnectionTime',
  'requiredTime',
  'letThrough',
  'protectiveArea',
  'minimumProtectiveArea',
  'resistancePerMetre20',
]);

/** Roles whose figures may be zero or below. */
const maybeNone: ReadonlySet<string> = new Set([
  'initialTemperature',
  'pilotVoltage',
  'lawCoefficient',
  'smoothResidualWithstand',
]);

/** Every column moves one way from row to row, or stays. */
const notAgainst =
  (way: 'rises' | 'falls'): Guard =>
  (table) =>
    table.columns.flatMap((key, c) => {
      const cells = table.rows.flatMap((row) => {
        const v = row[c + 1];
        return typeof v === 'number' ? [{ row: row[0], v }] : [];
      });
      return cells.flatMap(({ row, v }, i) => {
        const before = cells[i - 1]?.v;
        const off = before !== undefined && (way === 'rises' ? v < before : v > before);
        return off ? [`${way}: ${columnName(key)}, ${row}`] : [];
      });
    });

/** The order of reference methods: more shut in is not above more open, three loaded conductors not above two. */
export function orderOfMethods(table: Printed): Guard {
  const rank = ['A', 'B', 'C', 'E', 'F', 'G'];
  const keys = table.columns.map((k) => ({
    name: columnName(k),
    method: String(k[0]),
    loaded: String(k[1]),
    rest: k.slice(2).join(' '),
  }));
  const pairs: [string, string][] = [];
  for (const a of keys)
    for (const b of keys) {
      if (a.method === b.method && a.loaded === '3' && b.loaded === '2') pairs.push([a.name, b.name]);
      if (a.loaded !== b.loaded || !rank.includes(a.method) || !rank.includes(b.method)) continue;
      if (rank.indexOf(a.method) < rank.indexOf(b.method)) pairs.push([a.name, b.name]);
    }
  return ordered(pairs);
}

/** Half of the last place that a figure shows. */
const halfShown = (value: number): number => 0.5 * 10 ** -(String(value).split('.')[1]?.length ?? 0);

/** Loop impedance of circuit-breakers: C_min U_0 / (m I_n), m being 5, 10 and 20. EN 60898. */
const ofBreakers =
  (voltage: (column: string) => number): Guard =>
  (table) => {
    const multiple: Readonly<Record<string, number>> = { B: 5, C: 10, D: 20 };
    return within(
      'C_min U_0 over m I_n',
      (column, rating) => {
        const m = multiple[column.split(' ').at(-1) ?? ''];
        return m === undefined ? undefined : voltage(column) / (m * rating);
      },
      // two places, or three digits cut instead of rounded
      () => 0.005,
      0,
    )(table);
  };

/** k from the temperatures that it goes with, to the whole number. IEC 60949. */
const ofTemperatures =
  (initial: Printed, final: Printed): Guard =>
  (table) =>
    table.columns.flatMap((key, c) =>
      table.rows.flatMap((row, r) => {
        const [k, from, to] = [row, initial.rows[r], final.rows[r]].map((cells) => cells?.[c + 1]);
        const [factor, beta] = metals[String(key[0])] ?? [];
        if (typeof k !== 'number' || factor === undefined || beta === undefined) return [];
        const due = factor * Math.sqrt(Math.log((beta + Number(to)) / (beta + Number(from))));
        return Math.abs(k - due) > 0.6 ? [`k of its temperatures: ${columnName(key)}, ${row[0]}`] : [];
      }),
    );

/** Least and greatest product of resistance and area, Ω mm²/km, by metal and class; 50 mm² is made with 47.5. IEC 60228. */
const resistivities: Readonly<Record<string, readonly [least: number, most: number]>> = {
  'copper 1': [17.5, 18.9],
  'copper 2': [17.5, 18.9],
  'copper 5': [18, 20],
  'aluminium 1': [29, 31],
  'aluminium 2': [29, 31],
  '1': [17.5, 19.6],
  '2': [17.5, 19.6],
  '5': [18.3, 20.8],
};
const ofArea: Guard = (table) =>
  table.columns.flatMap((key, c) =>
    table.rows.flatMap((row) => {
      const [r, name] = [row[c + 1], columnName(key)];
      const [least, most] = resistivities[name] ?? [];
      if (typeof r !== 'number' || least === undefined || most === undefined) return [];
      const product = r * (row[0] === 50 ? 47.5 : Number(row[0]));
      return product < least || product > most ? [`resistance times area: ${name}, ${row[0]}`] : [];
    }),
  );

/**
 * Laws that the figures of a table obey, from the role of its cells and of its rows.
 * @param t the table
 * @param others tables by identifier, among them those that print what belongs to its figures
 */
export function lawsOfTable(t: Table, others: ReadonlyMap<string, Table>): readonly Guard[] {
  const rows = t.axes.at(-1)?.name ?? '';
  const way = ways[t.cell]?.[rows];
  const laws: Guard[] = [];
  if (!maybeNone.has(t.cell)) laws.push(positive);
  if (way)
    laws.push(mayStay.has(t.cell) ? notAgainst(way) : oneWay(way, (c) => t.cell === 'dropRate' && c.endsWith(' x')));
  switch (t.cell) {
    case 'tabulatedCapacity':
      laws.push(orderOfMethods(t), smooth(0.03));
      break;
    case 'dropRate':
      laws.push(
        smooth(0.06, (c) => c.endsWith(' x')),
        triangle(halfDrop),
        phases(0.03),
      );
      break;
    case 'loopImpedanceLimit':
      if (t.id.endsWith('/41.3')) laws.push(ofBreakers((column) => (column.startsWith('2015') ? 218.5 : 230)));
      if (t.id.endsWith('/41.6'))
        laws.push(ofBreakers((c) => Number(c.split(' ')[1]) * (c.startsWith('none') ? 1 : 0.95)));
      break;
    case 'operatingCurrent':
      if (t.id.endsWith('/fuse-operating-currents')) laws.push(ofImpedances(others));
      break;
    case 'adiabaticFactor': {
      const [initial, final] = ['initial', 'final'].map((end) => others.get(`${t.id}-${end}`));
      if (initial && final) laws.push(ofTemperatures(initial, final));
      break;
    }
    case 'initialTemperature':
    case 'finalTemperature': {
      const id = t.id.replace(/-(initial|final)$/, '');
      const [k, initial, final] = ['', '-initial', '-final'].map((end) => others.get(`${id}${end}`));
      if (k && initial && final)
        laws.push((table) =>
          ofTemperatures(
            t.cell === 'initialTemperature' ? table : initial,
            t.cell === 'initialTemperature' ? final : table,
          )(k),
        );
      break;
    }
    case 'resistancePerMetre20':
      if (t.id.startsWith('iec60228/')) laws.push(ofArea);
      break;
    default:
  }
  return laws;
}

/** Operating currents of fuses beside the printed loop impedances: U_0 over the one is the other, as far as it is printed. */
function ofImpedances(others: ReadonlyMap<string, Table>): Guard {
  const printedAs: Readonly<Record<string, string>> = {
    'BS 88-2.2': '2008',
    'BS 1361': '2008',
    'BS 3036': '2011',
    'BS 1362': '2011',
    'BS 88-2': '2011',
    'BS 88-3': '2011',
  };
  return (table) =>
    table.columns.flatMap((key, c) => {
      const [device, time] = [String(key[0]), Number(key[1])];
      const impedances = others.get(time === 0.4 ? 'bs7671/41.2' : 'bs7671/41.4');
      return table.rows.flatMap((row) => {
        const current = row[c + 1];
        const z = impedances && printedCell(impedances, `${printedAs[device]} ${device}`, row[0] as number);
        if (typeof current !== 'number' || z === undefined) return [];
        const off = Math.abs(230 / current - z);
        return off > halfShown(z) + 0.02 * z ? [`U_0 over the printed impedance: ${columnName(key)}, ${row[0]}`] : [];
      });
    });
}
