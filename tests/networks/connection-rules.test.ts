import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { type NotificationOptions, notificationOf } from '../../src/demand/index.js';
import { amperes, known, recorder, type Supply, unknown, volts } from '../../src/index.js';
import { germany, greatBritain } from '../../src/networks/index.js';
import { type LoadSpec, point, premises } from '../demand/premises.js';

const gb: NotificationOptions = { premises: 'other', completed: '2026-11-25', programme: known(false) };
const house = (current: number, change: Partial<Supply> = {}, points = [point('ev', 32)]) =>
  premises([{ purpose: 'other', current }], points, change);
const route = (current: number, change: Partial<Supply> = {}) =>
  notificationOf(bs7671Demand, greatBritain, house(current, change), gb).decision.route;
const fuse = (rating: number) => ({ cutOut: { kind: unknown(), rating: known(amperes(rating)) } });

describe('notify or apply in Great Britain', () => {
  it('up to 60 A with a sound, known, single service: connect and notify within 28 days', () => {
    const { decision } = notificationOf(bs7671Demand, greatBritain, house(28), gb);
    expect(decision.route).toBe('notify-after');
    expect(decision.duties).toMatchObject([{ id: 'notify', due: '2026-12-23' }]);
  });

  it.each([
    ['above 60 A', 28.1, {}],
    ['above the cut-out', 20, fuse(50)],
    ['looped', 20, { looped: known(true) }],
    ['unsafe', 20, { cutOutSound: known(false) }],
    ['unmetered', 20, { metered: known(false) }],
  ] as const)('%s: apply first', (_, current, change) => {
    const { decision } = notificationOf(bs7671Demand, greatBritain, house(current, change), gb);
    expect(decision.route).toBe('apply-first');
    expect(decision.duties[0]).toMatchObject({ id: 'apply', when: 'before connecting' });
    expect(decision.duties[0]).not.toHaveProperty('due');
  });

  it.each([
    ['loop', { looped: unknown() }],
    ['state of the cut-out', { cutOutSound: unknown() }],
    ['metering', { metered: unknown() }],
    ['number of lines', { phases: unknown() }],
  ] as const)('unknown %s: not determined, ask first meanwhile', (name, change) => {
    const { decision } = notificationOf(bs7671Demand, greatBritain, house(20, change), gb);
    if (name === 'number of lines')
      expect(decision.route).toBe('notify-after'); // 60 A decides on every line
    else {
      expect(decision.route).toBe('not-determined');
      expect(decision.meanwhile).toContain('ask the distributor');
    }
  });

  it('a capacity that nobody knows is a reason to apply by itself, until the rating is read', () => {
    // joint operators' questions and answers: contact first where the capacity is uncertain
    const unread = { cutOut: { kind: unknown(), rating: unknown('letter') } };
    const { decision } = notificationOf(bs7671Demand, greatBritain, house(20, unread), gb);
    expect(decision.route).toBe('apply-first');
    expect(decision.meanwhile).toContain('ask the distributor');
    expect(route(20)).toBe('notify-after');
  });

  it('a certain reason to apply is not undone by what is unknown', () => {
    expect(route(40, { looped: unknown() })).toBe('apply-first');
  });

  it('a change of the supply itself is asked for before the work, however small the demand', () => {
    // joint operators' questions and answers: contact first where an upgrade is certainly needed
    const changed = { ...gb, supplyChange: 'a larger fuse is asked for' };
    const { decision } = notificationOf(bs7671Demand, greatBritain, house(20), changed);
    expect(decision.route).toBe('apply-first');
    expect(decision.results.filter((r) => r.verdict === 'fail').map((r) => r.check)).toEqual(['supply-stays']);
    expect(route(20)).toBe('notify-after');
  });

  it('13.8 kVA binds before 60 A where the nominal voltage is higher', () => {
    const higher: typeof greatBritain = {
      ...greatBritain,
      decide: (facts, sheet) => greatBritain.decide({ ...facts, nominalVoltage: volts(240) }, sheet),
    };
    const by = (current: number) => notificationOf(bs7671Demand, higher, house(current), gb).decision.route;
    expect(by(28)).toBe('apply-first');
    expect(by(25.5)).toBe('notify-after');
    // so it does while nobody knows how many lines there are
    const open = house(28, { phases: unknown() });
    expect(notificationOf(bs7671Demand, higher, open, gb).decision.route).toBe('apply-first');
  });

  it('a nominal voltage that is not covered is refused, as in a survey', () => {
    expect(() => route(28, { nominalVoltage: volts(240) })).toThrow('not covered: a nominal voltage of 240 V');
  });

  it('never turns from apply to notify when the demand rises', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 300 }), (a, more) => {
        if (route(a / 10) === 'apply-first') expect(route((a + more) / 10)).toBe('apply-first');
      }),
    );
  });

  it('several planned close together: the distributor comes first; not known, it is advice', () => {
    // ENA process for charge points and heat pumps: contact in advance
    const { decision } = notificationOf(bs7671Demand, greatBritain, house(20), { ...gb, programme: known(true) });
    expect(decision.route).toBe('apply-first');
    expect(decision.results.find((r) => r.check === 'single-installation')?.verdict).toBe('fail');
    const { programme: _, ...silent } = gb;
    expect(notificationOf(bs7671Demand, greatBritain, house(20), silent).decision.route).toBe('notify-after');
  });

  const solar = (current: number): LoadSpec => ({ purpose: 'generation', current, existing: false });
  const battery = (current: number): LoadSpec => ({ purpose: 'storage', current, existing: true });
  it.each([
    [[solar(16)], 'pass', 'generation-notice'],
    [[solar(10), battery(6)], 'pass', 'generation-notice'],
    [[solar(10), battery(6.1)], 'fail', 'generation-permission'],
  ] as const)('all sources on a line are added up %#', (specs, verdict, duty) => {
    const { decision } = notificationOf(bs7671Demand, greatBritain, premises(specs, [point('ev', 6)]), gb);
    expect(decision.results.find((r) => r.check === 'sources-for-notice')?.verdict).toBe(verdict);
    expect(decision.duties.map((d) => d.id)).toContain(duty);
  });

  it.each([
    [1, ['L1'], 32, 'pass'],
    [3, ['L1', 'L2', 'L3'], 32, 'pass'],
  ] as const)(
    'a point that feeds back is a source: 17 kW on one line, 50 kW on three',
    (phases, lines, setting, form) => {
      const v2x = { ...point('v2x', setting, lines), bidirectional: true };
      const { decision } = notificationOf(
        bs7671Demand,
        greatBritain,
        premises([], [v2x], { phases: known(phases) }),
        gb,
      );
      expect(decision.results.find((r) => r.check === 'sources-for-one-form')?.verdict).toBe(form);
      expect(decision.results.find((r) => r.check === 'sources-for-notice')?.verdict).toBe('fail'); // 32 A is above 16 A
      const big = premises([solar(50)], [v2x], { phases: known(phases) });
      if (phases === 1)
        expect(
          notificationOf(bs7671Demand, greatBritain, big, gb).decision.results.find(
            (r) => r.check === 'sources-for-one-form',
          )?.verdict,
        ).toBe('fail');
    },
  );

  it('fills the form from the survey and lists what is missing', () => {
    const sheet = recorder('notification');
    const { fields } = notificationOf(
      bs7671Demand,
      greatBritain,
      house(20, { meterPoint: known('1412345678901', 'bill') }),
      { ...gb, particulars: { installer: 'an invented firm' } },
      sheet,
    );
    const of = (id: string) => fields.find((f) => f.id === id);
    expect(of('meter-point')).toMatchObject({ value: '1412345678901', by: 'bill' });
    expect(of('distributor-area')).toMatchObject({ value: 'West Midlands' });
    expect(of('cut-out')).toMatchObject({ value: 100, unit: 'A', by: 'label on the fuse' });
    expect(of('demand.L1')).toMatchObject({ value: 52, unit: 'A' });
    expect(of('ev.power')).toMatchObject({ value: 7.36, unit: 'kVA' });
    expect(of('installer')).toMatchObject({ value: 'an invented firm' });
    expect(fields.filter((f) => 'missing' in f).map((f) => f.id)).toEqual(['address', 'ev.type']);
    expect(of('meter-point')).toMatchObject({ result: { verdict: 'pass' } });
    expect(new Set(fields.map((f) => f.id)).size).toBe(fields.length);
    expect(JSON.parse(JSON.stringify(fields))).toEqual(fields);
  });
});

describe('charging equipment in Germany', () => {
  const de: NotificationOptions = { premises: 'other', completed: '2026-11-25' };
  const all = ['L1', 'L2', 'L3'] as const;
  const decide = (points: Parameters<typeof premises>[1], options = de, board = {}) =>
    notificationOf(bs7671Demand, germany, premises([], points, { phases: known(3) }, board), options).decision;

  it('11 kW on three lines: notice, no consent, controllable', () => {
    const found = decide([point('ev', 16, all)]);
    expect(found.route).toBe('notify-before');
    expect(found.duties.map((d) => d.id)).toEqual(['notify', 'controllable']);
  });
  it('22 kW, or twice 11 kW: consent', () => {
    expect(decide([point('ev', 32, all)]).route).toBe('apply-first');
    expect(decide([point('a', 16, all), point('b', 16, all)]).route).toBe('apply-first');
  });
  it('twice 11 kW under a common cap of 16 A: the cap counts', () => {
    const cap = { control: { name: 'cap', limit: known(amperes(16)), controls: ['a', 'b'] } };
    expect(decide([point('a', 16, all), point('b', 16, all)], de, cap).route).toBe('notify-before');
  });
  it('32 A on one line: above the unbalance of 20 A', () => {
    const found = decide([point('ev', 32)]);
    expect(found.results.find((r) => r.check === 'de-unbalance')).toMatchObject({ verdict: 'fail' });
    expect(decide([point('ev', 20)]).results.find((r) => r.check === 'de-unbalance')).toMatchObject({
      verdict: 'pass',
    });
  });
  it('commissioned before 2024: need not be controllable', () => {
    const found = decide([point('ev', 16, all)], { ...de, completed: '2023-12-31' });
    expect(found.duties.map((d) => d.id)).toEqual(['notify']);
  });
  it('an unknown setting determines nothing', () => {
    expect(decide([point('ev', unknown())]).route).toBe('not-determined');
  });
});
