import { type Gap, missing } from '../../core/index.js';
import type { Outlet, Purpose } from '../../installation/index.js';
import { ratedDiversity } from '../../products/iec61439/rated-diversity.js';
import { invalidInput, type Problem, ratio } from '../../units/index.js';
import { factorChain, shareOfCurrent } from '../formulas.js';
import type { DemandCase } from '../loads.js';
import { applicable, type DemandMethod, type DemandOptions, inFull, notApplicable, onLine } from '../method.js';

/** The sum of what is connected: every load in full. */
export const connectedLoad: DemandMethod = {
  id: 'connected-load',
  title: 'Connected load, no diversity',
  source: { document: 'sum of the loads', provenance: 'definition' },
  assumption: 'Every load runs at its full current at once: an upper bound, not an estimate.',
  countBands: false,
  divisible: true,
  applies: () => applicable,
  existing: (loads, line, _c, _options, sheet) =>
    sheet.gather(
      'sum',
      'connectedCurrent',
      'existingDemand',
      inFull(onLine(loads, line), 'connectedCurrent', '', sheet),
    ),
};

/** Loads that run for hours at their full current: a diversity by number of circuits does not hold for them. */
const lasting: readonly Purpose[] = [
  'thermostatic-water-heating',
  'floor-heating',
  'storage-heating',
  'heat-pump',
  'storage',
];
const isLasting = (l: { readonly purpose: Purpose }) => lasting.includes(l.purpose);

/** The band of a number of circuits in the print. */
const bandOf = (n: number): '2-3' | '4-5' | '6-9' | '10+' | undefined =>
  n < 2 ? undefined : n <= 3 ? '2-3' : n <= 5 ? '4-5' : n <= 9 ? '6-9' : '10+';

/** Circuits that leave the first board and carry a load that is not lasting. */
function countedCircuits(c: DemandCase): number {
  const counted = new Set(c.loads.filter((l) => !isLasting(l)).map((l) => l.id));
  const carries = (o: Outlet): boolean =>
    o.kind === 'board' ? o.runs.some((r) => r.feeds.some(carries)) : counted.has(o.id);
  return c.installation.board.runs.filter((run) => run.feeds.some(carries)).length;
}

/** Rated diversity of the board by its number of outgoing circuits. */
export const boardFactor: DemandMethod = {
  id: 'board-factor',
  title: 'Rated diversity factor of the board',
  source: {
    document: 'IEC 61439',
    clause: 'Table 101 of parts 2 and 3',
    provenance: 'memory',
    note: 'the figures of part 2 seen in one text',
  },
  assumption:
    'The factor is one for the loading of an assembly: the maker’s own figure, and the loading that is really present, go ' +
    'before it. Lasting loads and charge points are outside it, in full. It steps with the number of circuits, so that one ' +
    'more circuit can lower the figure.',
  countBands: true,
  divisible: false,
  applies: (c, { assembly }) => {
    if (!assembly) return notApplicable('the standard of the board is not stated');
    const n = countedCircuits(c);
    return n >= 2 ? applicable : notApplicable(`the table begins at 2 outgoing circuits, here ${n}`);
  },
  existing: (loads, line, c, { assembly }, sheet) => {
    const all = onLine(loads, line);
    const group = sheet.part('circuits under the factor');
    const under = all.filter((l) => !isLasting(l));
    const parts = inFull(under, 'connectedCurrent', '', group);
    const connectedCurrent = group.gather('sum', 'connectedCurrent', 'connectedCurrent', parts);
    const n = countedCircuits(c);
    const standard = group.label('assembly', assembly ?? missing({ kind: 'fact', fact: 'assembly' }));
    const count = bandOf(n) ?? missing({ kind: 'fact', fact: 'number of outgoing circuits' });
    const circuitBand = group.label('circuitBand', count, `${n} outgoing circuits`);
    const demandFactor = group.look(ratedDiversity, { assembly: standard, circuitBand });
    group.step(shareOfCurrent, { connectedCurrent, demandFactor });
    const added = inFull(all.filter(isLasting), 'demand', ', in full', sheet);
    return sheet.gather('sum', 'demand', 'existingDemand', [group, ...added]);
  },
};

type Factors = NonNullable<DemandOptions['factors']>;

function checkFactors(factors: Factors): void {
  const problems: Problem[] = [];
  for (const at of ['utilisation', 'simultaneity'] as const)
    for (const [key, value] of Object.entries(factors[at]))
      if (!(typeof value === 'number' && value >= 0 && value <= 1))
        problems.push({ path: ['factors', at, key], message: `is ${String(value)}; a factor is 0 to 1` });
  if (problems.length > 0) throw invalidInput('the demand options', problems);
}

/** Every factor between a load and the origin that the user has not given. */
function lacking(c: DemandCase, factors: Factors): readonly Gap[] {
  const purposes = new Set(c.loads.map((l) => l.purpose));
  const boards = new Set(c.loads.flatMap((l) => l.boards));
  const names = [
    ...[...purposes].filter((p) => factors.utilisation[p] === undefined).map((p) => `factors.utilisation.${p}`),
    ...[...boards].filter((b) => factors.simultaneity[b] === undefined).map((b) => `factors.simultaneity.${b}`),
  ];
  return names.map((fact) => ({ kind: 'fact', fact, obtain: 'the user’s own factor; none is built in' }));
}

/** Utilisation factors of the loads and simultaneity factors of the boards, in a chain. */
export const utilisationChain: DemandMethod = {
  id: 'utilisation-and-simultaneity',
  title: 'Utilisation and simultaneity factors in a chain',
  source: { document: 'IEC 60364 practice', clause: 'factors k_u and k_s', provenance: 'one-source' },
  assumption: 'Every factor is the user’s; none is built in. Charge points are outside the chain, in full.',
  countBands: false,
  divisible: true,
  applies: (c, { factors }) => {
    if (!factors) return notApplicable('no factors were handed over');
    checkFactors(factors);
    const gaps = lacking(c, factors);
    if (gaps.length === 0) return applicable;
    return { verdict: 'not-determined', because: 'some factors were not handed over', gaps };
  },
  existing: (loads, line, _c, { factors }, sheet) => {
    const parts = onLine(loads, line).map((load) => {
      const part = sheet.part(load.id);
      const connectedCurrent = part.given('connectedCurrent', load.current);
      const own = factors?.utilisation[load.purpose];
      const utilisation = own ?? missing({ kind: 'fact', fact: `factors.utilisation.${load.purpose}` });
      const utilisationFactor = part.given('utilisationFactor', utilisation, 'stated by the user');
      const product = load.boards.reduce((k, b) => k * (factors?.simultaneity[b] ?? 1), 1);
      const by = `stated by the user, ${load.boards.join(' × ')}`;
      const simultaneityFactor = part.given('simultaneityFactor', ratio(product), by);
      part.step(factorChain, { connectedCurrent, utilisationFactor, simultaneityFactor });
      return part;
    });
    return sheet.gather('sum', 'existingDemand', 'existingDemand', parts);
  },
};
