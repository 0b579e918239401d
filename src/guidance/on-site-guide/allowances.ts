import type { Known, Sheet, Source } from '../../core/index.js';
import { shareOfCurrent } from '../../demand/formulas.js';
import type { DemandLoad } from '../../demand/loads.js';
import { applicable, type DemandMethod, inFull, notApplicable, onLine, type Premises } from '../../demand/method.js';
import type { Purpose } from '../../installation/index.js';
import { type Amperes, ratio } from '../../units/index.js';
import { tableA2, tableA2Conflicts, tableA2First } from './a2.js';
import { firstAndShare } from './formulas.js';

type GuidePremises = Exclude<Premises, 'other'>;
type FirstRow = 'heating-and-power' | 'cooking';
type Row =
  | FirstRow
  | 'lighting'
  | 'motors'
  | 'instantaneous-water-heating'
  | 'thermostatic-water-heating'
  | 'floor-heating'
  | 'storage-heating'
  | 'standard-circuits'
  | 'other-socket-outlets';
type Part = 'all' | 'largest' | 'second' | 'others';

/** Row of the guide's table by purpose; what is not here has no row and counts in full. */
const rowOf: { readonly [P in Purpose]?: Row } = {
  lighting: 'lighting',
  'socket-outlets': 'standard-circuits',
  cooking: 'cooking',
  'instantaneous-water-heating': 'instantaneous-water-heating',
  'thermostatic-water-heating': 'thermostatic-water-heating',
  'space-heating': 'heating-and-power',
  'floor-heating': 'floor-heating',
  'storage-heating': 'storage-heating',
  motor: 'motors',
  other: 'heating-and-power',
};
/** Socket circuits are standard circuits unless the survey says otherwise. */
const isOtherSocket = (load: DemandLoad) => load.purpose === 'socket-outlets' && load.standardCircuit === false;

/** How a row counts: a share of all, shares in order of size, or first amperes and a share of the rest. */
function shapeOf(row: Row, premises: GuidePremises): 'all' | 'ranked' | 'excess' | 'none' {
  const has = (part: Part | 'excess') => tableA2.find({ premises, part, purposeRow: row }) !== undefined;
  return has('all') ? 'all' : has('largest') ? 'ranked' : has('excess') ? 'excess' : 'none';
}

interface Entry {
  readonly title: string;
  readonly loads: readonly DemandLoad[];
}

/** A current that is not known ranks first, so that nothing that is known is taken for the largest. */
const total = (entry: Entry) =>
  entry.loads.reduce((sum, l) => sum + (l.current.state === 'known' ? l.current.value : Number.POSITIVE_INFINITY), 0);
const bySize = (entries: readonly Entry[]): readonly Entry[] =>
  [...entries].sort((a, b) => {
    const [x, y] = [total(a), total(b)];
    return x === y ? (a.title < b.title ? -1 : 1) : y - x;
  });

/** Loads gathered by the circuit that feeds them. */
export function circuitsOf(loads: readonly DemandLoad[]): readonly Entry[] {
  const circuits = new Map<string, DemandLoad[]>();
  for (const load of loads) {
    const found = circuits.get(load.circuit);
    if (found) found.push(load);
    else circuits.set(load.circuit, [load]);
  }
  return [...circuits].map(([title, its]) => ({ title, loads: its }));
}

/** Circuits where the row speaks of circuits, appliances elsewhere. */
const entriesOf = (row: Row, loads: readonly DemandLoad[]): readonly Entry[] =>
  row === 'standard-circuits' || row === 'other-socket-outlets'
    ? circuitsOf(loads)
    : loads.map((l) => ({ title: l.id, loads: [l] }));

/** Takes down the current of an entry on its part of the sheet. */
function takeCurrent(entry: Entry, sheet: Sheet): Known<Amperes> {
  const [only, ...more] = entry.loads;
  if (only && more.length === 0) return sheet.given('connectedCurrent', only.current);
  return sheet.gather(
    'sum',
    'connectedCurrent',
    'connectedCurrent',
    inFull(entry.loads, 'connectedCurrent', '', sheet),
  );
}

function shared(entry: Entry, partOfRow: Part, row: Row, premises: GuidePremises, group: Sheet): Sheet {
  const sheet = group.part(entry.title);
  const connectedCurrent = takeCurrent(entry, sheet);
  const part = sheet.label('part', partOfRow);
  const demandFactor = sheet.look(tableA2, { premises, part, purposeRow: row });
  sheet.step(shareOfCurrent, { connectedCurrent, demandFactor });
  return sheet;
}

/** First amperes of the whole group in full, a share of the rest, and an addition for each cooker unit with a socket-outlet. */
function firstOfGroup(row: FirstRow, loads: readonly DemandLoad[], group: Sheet): void {
  const allowance = (of: 'first' | 'socket', title: string) => {
    const part = group.part(title);
    part.label('allowance', of);
    part.look(tableA2First, { allowance: of, purposeRow: row });
    return part;
  };
  const sockets = row === 'cooking' ? loads.filter((l) => l.withSocket) : [];
  const currents = inFull(loads, 'connectedCurrent', '', group);
  const connectedCurrent = group.gather('sum', 'connectedCurrent', 'connectedCurrent', currents);
  const firstCurrent = group.gather('sum', 'allowanceCurrent', 'firstCurrent', [
    allowance('first', 'first amperes of the group'),
  ]);
  const socketAllowance = group.gather(
    'sum',
    'allowanceCurrent',
    'socketAllowance',
    sockets.map((l) => allowance('socket', `socket-outlet at ${l.id}`)),
  );
  group.label('premises', 'dwelling');
  const part = group.label('part', 'excess');
  const demandFactor = group.look(tableA2, { premises: 'dwelling', part, purposeRow: row });
  group.step(firstAndShare, { connectedCurrent, firstCurrent, demandFactor, socketAllowance });
}

/** Demand of one row of the guide's table, on a part of its own. */
export function demandOfRow(row: Row, premises: GuidePremises, loads: readonly DemandLoad[], sheet: Sheet): Sheet {
  const group = sheet.part(row);
  const shape = shapeOf(row, premises);
  if (shape === 'none') {
    group.gather('sum', 'demand', 'demand', inFull(loads, 'demand', ', in full', group));
    return group;
  }
  group.label('purposeRow', row);
  if (shape === 'excess') {
    firstOfGroup(row as FirstRow, loads, group);
    return group;
  }
  group.label('premises', premises);
  const entries = entriesOf(row, loads);
  const parts =
    shape === 'all'
      ? entries.map((e) => shared(e, 'all', row, premises, group))
      : bySize(entries).map((e, i) =>
          shared(e, i === 0 ? 'largest' : i === 1 ? 'second' : 'others', row, premises, group),
        );
  group.gather('sum', 'demand', 'demand', parts);
  return group;
}

/** Demand of the loads of one line, row by row. */
function byRows(loads: readonly DemandLoad[], premises: GuidePremises, sheet: Sheet): Known<Amperes> {
  const rows = new Map<Row, DemandLoad[]>();
  const rowless: DemandLoad[] = [];
  for (const load of loads) {
    const row = isOtherSocket(load) ? 'other-socket-outlets' : rowOf[load.purpose];
    if (!row) rowless.push(load);
    else if (rows.has(row)) rows.get(row)?.push(load);
    else rows.set(row, [load]);
  }
  const groups = [...rows].map(([row, its]) => demandOfRow(row, premises, its, sheet));
  return sheet.gather('sum', 'demand', 'existingDemand', [
    ...groups,
    ...inFull(rowless, 'demand', ', no row in the guide, in full', sheet),
  ]);
}

const words: { readonly [P in GuidePremises]: string } = {
  dwelling: 'an individual dwelling',
  'small-shop': 'a small shop, office or business',
  'small-hotel': 'a small hotel or guest house',
};
const assumption =
  'Allowances purpose by purpose; the first amperes count once for a group, a socket-outlet in a cooker unit once a unit. ' +
  'Heat pumps, air-conditioning, stores that charge, and motors in dwellings have no row and count in full; socket circuits ' +
  'are standard circuits unless the survey says otherwise. The guide over-states the demand of most dwellings.';
const source: Source = {
  document: 'On-Site Guide',
  clause: 'Table A2 (Guidance Note 1, Table H2)',
  provenance: 'one-source',
  note: 'dwellings seen in two texts',
};

const guideMethod = (premises: GuidePremises): DemandMethod => ({
  id: `on-site-guide-${premises}`,
  title: `Allowances of the On-Site Guide for ${words[premises]}`,
  source,
  assumption,
  countBands: false,
  divisible: true,
  applies: (_, options) =>
    options.premises === premises
      ? applicable
      : notApplicable(`the premises are stated as ${options.premises}, the column is for ${words[premises]}`),
  existing: (loads, line, _c, _options, sheet) => byRows(onLine(loads, line), premises, sheet),
});

/** Allowances of the On-Site Guide for an individual dwelling. */
export const guideDwelling: DemandMethod = /* @__PURE__ */ guideMethod('dwelling');
/** Allowances of the On-Site Guide for a small shop. */
export const guideShop: DemandMethod = /* @__PURE__ */ guideMethod('small-shop');
/** Allowances of the On-Site Guide for a small hotel. */
export const guideHotel: DemandMethod = /* @__PURE__ */ guideMethod('small-hotel');

/** Other socket-outlets of a shop: the largest in full, the recalled share of the others. */
function recalledSockets(loads: readonly DemandLoad[], group: Sheet): void {
  const parts = bySize(circuitsOf(loads)).map((entry, i) => {
    const part = group.part(entry.title);
    const connectedCurrent = takeCurrent(entry, part);
    if (i === 0) {
      const demandFactor = part.given('demandFactor', ratio(1), 'the largest counts in full');
      part.step(shareOfCurrent, { connectedCurrent, demandFactor });
    } else {
      const premises = part.label('premises', 'small-shop');
      const variant = part.label('variant', 'recalled');
      const demandFactor = part.look(tableA2Conflicts, { premises, variant });
      part.step(shareOfCurrent, { connectedCurrent, demandFactor });
    }
    return part;
  });
  group.gather('sum', 'demand', 'existingDemand', parts);
}

/** The small-shop column with the recalled figure for other socket-outlets, which contradicts the one seen in print. */
export const guideShopRecalled: DemandMethod = {
  id: 'on-site-guide-small-shop-recalled',
  title: 'The small-shop allowances with the recalled figure for other socket-outlets',
  source: {
    document: 'On-Site Guide',
    clause: 'Table A2, other socket-outlets',
    provenance: 'memory',
    note: '0.70 recalled against 0.75 seen',
  },
  assumption: 'Shown because two figures conflict; it never governs by itself. Otherwise as the small-shop allowances.',
  countBands: false,
  divisible: true,
  applies: (c, options) =>
    options.premises !== 'small-shop'
      ? notApplicable(`the premises are stated as ${options.premises}, the column is for ${words['small-shop']}`)
      : c.loads.some(isOtherSocket)
        ? applicable
        : notApplicable('there are no other socket-outlets, so the two figures agree'),
  existing: (loads, line, _c, _options, sheet) => {
    const all = onLine(loads, line);
    const rest = sheet.part('all but other socket-outlets');
    const others = sheet.part('other socket-outlets');
    byRows(
      all.filter((l) => !isOtherSocket(l)),
      'small-shop',
      rest,
    );
    recalledSockets(all.filter(isOtherSocket), others);
    return sheet.gather('sum', 'existingDemand', 'existingDemand', [rest, others]);
  },
};
