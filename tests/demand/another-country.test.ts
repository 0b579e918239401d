/** The engine works through the rules of a country that it has never heard of: an invented one. */
import { describe, expect, it } from 'vitest';
import { feederDemandOf } from '../../src/demand/feeder.js';
import { formEntries } from '../../src/demand/form.js';
import {
  adequacyOf,
  type DemandMethod,
  type DemandRules,
  demandOf,
  type NetworkRules,
  notificationOf,
} from '../../src/demand/index.js';
import {
  alternatives,
  amperes,
  type Comparison,
  comparison,
  formula,
  known,
  recorder,
  type Source,
  statement,
  writeSheet,
} from '../../src/index.js';
import { verifySheet } from '../../src/verify/index.js';
import { circuit, load, point, premises } from './premises.js';

const source: Source = { document: 'Invented Code', clause: '7', provenance: 'definition' };
const atMost = { kind: 'at-most', value: 'demand', weight: 'rule', source } as const;
const withPoints = formula({
  id: 'invented-with-points',
  title: 'Demand with the charge points',
  inputs: ['existingDemand', 'chargeCurrent'],
  output: 'demand',
  expression: 'existingDemand + chargeCurrent',
  compute: ({ existingDemand, chargeCurrent }) => existingDemand + chargeCurrent,
  source,
});
const withControl = formula({
  id: 'invented-with-control',
  title: 'Demand with a load control, at its limit throughout',
  inputs: ['existingDemand', 'chargeCurrent', 'controlLimit', 'restDemand'],
  output: 'demand',
  expression: 'restDemand + max(controlLimit, existingDemand) + 0 * chargeCurrent',
  compute: ({ existingDemand, controlLimit, restDemand }) => restDemand + Math.max(controlLimit, existingDemand),
  source,
});
/** The largest load alone. */
const largestLoad: DemandMethod = {
  id: 'largest-load',
  title: 'Largest load',
  source,
  assumption: 'One load runs at a time.',
  countBands: false,
  divisible: true,
  applies: (_, { premises: kind }) =>
    kind === 'other' ? { verdict: 'not-applicable', because: 'homes only' } : { verdict: 'applicable' },
  existing: (loads, line, _c, _options, sheet) => {
    const parts = loads
      .filter((l) => l.lines.includes(line))
      .map((l) => {
        const part = sheet.part(l.id);
        part.given('connectedCurrent', l.current);
        return part;
      });
    return sheet.gather('largest', 'connectedCurrent', 'existingDemand', parts);
  },
};
const overload = <const L extends 'mainSwitchRating' | 'residualRatedCurrent' | 'tailsCapacity'>(
  of: string,
  value: L,
) => {
  const own = { kind: 'at-least', value, weight: 'rule', source } as const;
  const against = <const R extends 'aheadRating' | 'servedRating'>(id: string, title: string, limit: R) =>
    comparison({
      ...own,
      id: `invented-${of}-${id}`,
      title: `${of} ${title}`,
      limit,
    } as never) as unknown as Comparison<L, R>;
  return {
    protected: alternatives({ id: `invented-${of}`, title: `${of} protected`, weight: 'rule', source }),
    ahead: against('ahead', 'behind', 'aheadRating'),
    below: against('below', 'ahead of', 'servedRating'),
    declared: statement({ id: `invented-${of}-declared`, title: `${of} declared`, weight: 'rule', source }),
  };
};
const rules: DemandRules = {
  methods: [largestLoad],
  governing: { title: 'the largest load of a home', methods: [largestLoad] },
  withPoints,
  withControl,
  supply: {
    cutOut: comparison({ ...atMost, id: 'invented-fuse', title: 'within the fuse', limit: 'cutOutRating' }),
    mainSwitch: comparison({ ...atMost, id: 'invented-switch', title: 'within the switch', limit: 'mainSwitchRating' }),
    mainSwitchOverload: overload('switch-overload', 'mainSwitchRating'),
    residualOverload: overload('residual', 'residualRatedCurrent'),
    tails: overload('tails', 'tailsCapacity'),
    ownService: statement({ id: 'invented-service', title: 'a service of its own', weight: 'rule', source }),
    tailsCapacity: (_supply, _phases, sheet) => sheet.given('tailsCapacity', amperes(50), 'whatever their size'),
    services: (phases) => (phases === 1 ? [amperes(40), amperes(45)] : [amperes(25), amperes(32)]),
  },
  cautions: ['Invented.'],
};
const network: NetworkRules = {
  id: 'invented-network',
  title: 'Tell nobody below 20 A',
  country: 'ZZ',
  decide: ({ lines }) => ({
    country: 'ZZ',
    route: lines.every(({ demand }) => typeof demand === 'number' && demand < 20) ? 'no-duty' : 'apply-first',
    results: [],
    duties: [],
    cautions: [],
  }),
  safety: [],
  form: [formEntries.installer, ({ facts }) => [{ id: 'volts', title: 'Voltage', value: facts.nominalVoltage }]],
};
const house = (...currents: number[]) =>
  premises(
    currents.map((current) => ({ purpose: 'other', current })),
    [point('ev', 16)],
    { cutOut: { kind: known({ standard: 'BS 88-3' }), rating: known(amperes(40)) } },
  );

describe('rules of an invented country', () => {
  it('its method governs where it is for the premises, the connected load elsewhere', () => {
    const home = demandOf(rules, house(20, 10), { premises: 'dwelling' });
    expect(home.governing).toMatchObject({ method: 'largest-load', lines: [{ existing: 20, demand: 36 }] });
    expect(home.governedBy).toContain('otherwise the largest load of a home; otherwise the connected load');
    expect(home.cautions.at(-1)).toBe('Invented.');
    const other = demandOf(rules, house(20, 10), { premises: 'other' });
    expect(other.governing).toMatchObject({ method: 'connected-load', lines: [{ demand: 46 }] });
    const { governing: _, ...none } = rules;
    const bare = demandOf({ ...none, methods: [] }, house(20, 10), { premises: 'dwelling' });
    expect(bare.governing.method).toBe('connected-load');
    expect(bare.governedBy).toBe('half-hour readings that cover a whole year govern; otherwise the connected load');
  });

  it('a method of another country has no name here', () => {
    expect(() => demandOf(rules, house(20), { premises: 'dwelling', governing: 'one-line-rule' })).toThrow(
      /one-line-rule is no method; there are largest-load, half-hour-readings/,
    );
  });

  it('its checks judge, by its ratings and services, and cite it', () => {
    const sheet = recorder('invented');
    const fits = adequacyOf(rules, house(24, 10), { premises: 'dwelling' }, sheet);
    expect(fits.overall.verdict).toBe('pass');
    expect(new Set(fits.results.map((r) => r.source.document))).toEqual(new Set(['Invented Code']));
    const { cutOut, mainSwitch, mainSwitchOverload, tails, ownService } = rules.supply;
    const overloads = [mainSwitchOverload, tails].flatMap((o) => Object.values(o));
    const own = [withPoints, withControl, cutOut, mainSwitch, ownService, ...overloads];
    expect(verifySheet(writeSheet(sheet), own).problems).toEqual([]);
    const above = adequacyOf(rules, house(25, 10), { premises: 'dwelling' });
    expect(above.results.map((r) => [r.check, r.verdict])).toEqual([
      ['invented-fuse', 'fail'],
      ['invented-switch', 'pass'],
      ['invented-switch-overload', 'pass'],
      ['invented-tails', 'pass'],
      ['invented-service', 'pass'],
    ]);
    expect(above.changes.map((c) => [c.change, c.cutOutRating, c.fits])).toEqual([
      ['larger-fuse', 45, true],
      ['three-phase', 25, true],
      ['three-phase', 32, true],
    ]);
    // tails of 50 A behind a fuse of 63 A, ahead of 32 A and 32 A
    const large = { kind: known({ standard: 'BS 88-3' }), rating: known(amperes(63)) } as const;
    const tailed = premises([{ purpose: 'other', current: 10 }], [point('ev', 16)], { cutOut: large });
    expect(adequacyOf(rules, tailed, { premises: 'dwelling' }).results[3]).toMatchObject({
      check: 'invented-tails',
      verdict: 'fail',
    });
  });

  it('its formula counts under a load control', () => {
    const control = { name: 'limiter', limit: known(amperes(30)), controls: ['ev'] };
    const { board, supply } = house(20);
    const held = demandOf(rules, { supply, board: { ...board, control } }, { premises: 'dwelling' });
    expect(held.governing.lines[0]?.demand).toBe(30);
  });

  it('a feeder is judged by its main switch', () => {
    const below = {
      kind: 'board',
      id: 'annexe',
      complete: known(true),
      mainSwitch: { rating: known(amperes(20)), noFuseAhead: known(true) },
    } as const;
    const at = (current: number) => {
      const runs = [circuit('below', load('heater', { purpose: 'other', current }), ['L1'])];
      const { board, supply } = house(5);
      const feeder = circuit('feeder', { ...below, runs }, ['L1']);
      const whole = { supply, board: { ...board, runs: [...board.runs, feeder] } };
      return feederDemandOf(rules, whole, 'feeder', { premises: 'dwelling' }).results[0];
    };
    expect(at(20)).toMatchObject({ check: 'invented-switch', verdict: 'pass' });
    expect(at(21)).toMatchObject({ check: 'invented-switch', verdict: 'fail' });
  });

  it('its network operator decides and asks what it asks', () => {
    const ask = (current: number) => notificationOf(rules, network, house(current), { premises: 'dwelling' });
    expect(ask(3).decision).toMatchObject({ country: 'ZZ', route: 'no-duty' });
    expect(ask(4).decision.route).toBe('apply-first');
    expect(ask(3).fields).toEqual([
      { id: 'installer', title: 'Installer and registration', missing: 'the firm' },
      { id: 'volts', title: 'Voltage', value: 230 },
    ]);
  });
});
