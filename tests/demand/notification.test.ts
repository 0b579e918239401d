import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  daysAfter,
  meterPointCheckDigit,
  monthAfter,
  mountingResults,
  type NotificationOptions,
  notificationOf,
  readMeterPoint,
} from '../../src/demand/index.js';
import { amperes, hasCode, known, millimetres, recorder, type Supply, unknown, volts } from '../../src/index.js';
import { type LoadSpec, point, premises } from './premises.js';

const gb: NotificationOptions = { premises: 'other', country: 'GB', completed: '2026-11-25', programme: known(false) };
const house = (current: number, change: Partial<Supply> = {}, points = [point('ev', 32)]) =>
  premises([{ purpose: 'other', current }], points, change);
const route = (current: number, change: Partial<Supply> = {}) =>
  notificationOf(house(current, change), gb).decision.route;
const fuse = (rating: number) => ({ cutOut: { kind: unknown(), rating: known(amperes(rating)) } });

describe('notify or apply in Great Britain', () => {
  it('up to 60 A with a sound, known, single service: connect and notify within 28 days', () => {
    const { decision } = notificationOf(house(28), gb);
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
    const { decision } = notificationOf(house(current, change), gb);
    expect(decision.route).toBe('apply-first');
    expect(decision.duties[0]).toMatchObject({ id: 'apply', when: 'before connecting' });
    expect(decision.duties[0]).not.toHaveProperty('due');
  });

  it.each([
    ['rating of the cut-out', { cutOut: { kind: unknown(), rating: unknown('letter') } }],
    ['loop', { looped: unknown() }],
    ['state of the cut-out', { cutOutSound: unknown() }],
    ['metering', { metered: unknown() }],
    ['number of lines', { phases: unknown() }],
  ] as const)('unknown %s: not determined, ask first meanwhile', (name, change) => {
    const { decision } = notificationOf(house(20, change), gb);
    if (name === 'number of lines')
      expect(decision.route).toBe('notify-after'); // 60 A decides on every line
    else {
      expect(decision.route).toBe('not-determined');
      expect(decision.meanwhile).toContain('ask the distributor');
    }
  });

  it('a certain reason to apply is not undone by what is unknown', () => {
    expect(route(40, { looped: unknown() })).toBe('apply-first');
  });

  it('13.8 kVA binds before 60 A where the nominal voltage is higher', () => {
    expect(route(28, { nominalVoltage: volts(240) })).toBe('apply-first');
    expect(route(25.5, { nominalVoltage: volts(240) })).toBe('notify-after');
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
    const { decision } = notificationOf(house(20), { ...gb, programme: known(true) });
    expect(decision.route).toBe('apply-first');
    expect(decision.results.find((r) => r.check === 'single-installation')?.verdict).toBe('fail');
    const { programme: _, ...silent } = gb;
    expect(notificationOf(house(20), silent).decision.route).toBe('notify-after');
  });

  const solar = (current: number): LoadSpec => ({ purpose: 'generation', current, existing: false });
  const battery = (current: number): LoadSpec => ({ purpose: 'storage', current, existing: true });
  it.each([
    [[solar(16)], 'pass', 'generation-notice'],
    [[solar(10), battery(6)], 'pass', 'generation-notice'],
    [[solar(10), battery(6.1)], 'fail', 'generation-permission'],
  ] as const)('all sources on a line are added up %#', (specs, verdict, duty) => {
    const { decision } = notificationOf(premises(specs, [point('ev', 6)]), gb);
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
      const { decision } = notificationOf(premises([], [v2x], { phases: known(phases) }), gb);
      expect(decision.results.find((r) => r.check === 'sources-for-one-form')?.verdict).toBe(form);
      expect(decision.results.find((r) => r.check === 'sources-for-notice')?.verdict).toBe('fail'); // 32 A is above 16 A
      const big = premises([solar(50)], [v2x], { phases: known(phases) });
      if (phases === 1)
        expect(notificationOf(big, gb).decision.results.find((r) => r.check === 'sources-for-one-form')?.verdict).toBe(
          'fail',
        );
    },
  );

  it('fills the form from the survey and lists what is missing', () => {
    const sheet = recorder('notification');
    const { fields, meterPoint } = notificationOf(
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
    expect(meterPoint?.verdict).toBe('pass');
    expect(new Set(fields.map((f) => f.id)).size).toBe(fields.length);
    expect(JSON.parse(JSON.stringify(fields))).toEqual(fields);
  });
});

describe('charging equipment in Germany', () => {
  const de: NotificationOptions = { premises: 'other', country: 'DE', completed: '2026-11-25' };
  const all = ['L1', 'L2', 'L3'] as const;
  const decide = (points: Parameters<typeof premises>[1], options = de, board = {}) =>
    notificationOf(premises([], points, { phases: known(3) }, board), options).decision;

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
  it('another country is refused', () => {
    expect(() => decide([], { ...de, country: 'XX' as never })).toThrow(/XX is not known/);
  });
});

describe('due dates', () => {
  it.each([
    ['2026-11-25', 28, '2026-12-23'],
    ['2024-02-01', 28, '2024-02-29'],
    ['2025-02-01', 28, '2025-03-01'],
    ['2026-12-31', 1, '2027-01-01'],
  ])('%s and %i days: %s', (day, days, due) => expect(daysAfter(day, days)).toBe(due));
  it.each([
    ['2027-01-31', '2027-02-28'],
    ['2028-01-31', '2028-02-29'],
    ['2026-12-15', '2027-01-15'],
  ])('a month after %s: %s', (day, due) => expect(monthAfter(day)).toBe(due));
  it.each(['2026-02-29', '2026-13-01', '25-11-2026', ''])('%s is no day', (day) => {
    let thrown: unknown;
    try {
      daysAfter(day, 28);
    } catch (error) {
      thrown = error;
    }
    expect(hasCode(thrown, 'invalid-input')).toBe(true);
  });
});

describe('meter-point number', () => {
  // invented numbers
  it.each([
    '1000000000003',
    '1200000000777',
    '1412345678901',
    '1599999999993',
    '1711111111111',
    '2001020304051',
    '2298765432108',
    '2300000000107',
    '1800000000000',
  ])('%s is plausible', (core) => {
    expect(readMeterPoint(core).result.verdict).toBe('pass');
    expect(readMeterPoint(`S 01 801 0AB ${core}`)).toMatchObject({
      structure: 'full',
      profileClass: '01',
      lineLossClass: '0AB',
    });
  });
  it('says what is wrong', () => {
    expect(readMeterPoint('1412345678902').result.because).toContain('check digit is 1');
    expect(readMeterPoint('141234567890').result.because).toContain('12 characters');
    expect(readMeterPoint('81234567890').structure).toBe('northern-ireland');
    expect(readMeterPoint('').structure).toBe('unreadable');
  });
  it('an independent network has no area', () => {
    const first12 = '240000000000';
    const read = readMeterPoint(`${first12}${meterPointCheckDigit(first12)}`);
    expect(read.result.verdict).toBe('pass');
    expect(read.area).toBeUndefined();
  });

  /** Invented numbers from a linear congruential generator with a fixed seed. */
  let state = 20261125;
  const below = (n: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * n);
  };
  const numbers = Array.from({ length: 20000 }, () => {
    const first12 = `${10 + below(14)}${Array.from({ length: 10 }, () => below(10)).join('')}`;
    return `${first12}${meterPointCheckDigit(first12)}`;
  });
  const passes = (core: string) => meterPointCheckDigit(core) === Number(core[12]);

  it('misses between one and two of a hundred single-digit slips', () => {
    let [missed, tried] = [0, 0];
    for (const core of numbers) {
      const at = below(13);
      for (let d = 0; d <= 9; d++) {
        if (String(d) === core[at]) continue;
        tried++;
        if (passes(core.slice(0, at) + d + core.slice(at + 1))) missed++;
      }
    }
    expect(missed / tried).toBeGreaterThan(0.01);
    expect(missed / tried).toBeLessThan(0.02); // published simulation: 0.0166
  });
  it('misses between one and two and a half of a hundred swaps of neighbours before the check digit', () => {
    let [missed, tried] = [0, 0];
    for (const core of numbers) {
      const at = below(11); // among the first twelve digits
      if (core[at] === core[at + 1]) continue;
      tried++;
      if (passes(core.slice(0, at) + core[at + 1] + core[at] + core.slice(at + 2))) missed++;
    }
    expect(missed / tried).toBeGreaterThan(0.01);
    expect(missed / tried).toBeLessThan(0.025); // published simulation: 0.0179
  });
  it.each([
    [3, 8],
    [6, 11],
  ])('never sees a swap of digits %i and %i', (a, b) => {
    for (const core of numbers) {
      const digits = [...core];
      [digits[a - 1], digits[b - 1]] = [digits[b - 1] as string, digits[a - 1] as string];
      expect(passes(digits.join(''))).toBe(true);
    }
  });
  it('is called plausible, never valid', () => {
    const { title, caution } = readMeterPoint('1412345678901').result;
    expect(title).toContain('plausible');
    expect(`${title} ${caution}`).not.toMatch(/\bvalid/);
  });
});

describe('mounting', () => {
  const verdicts = (use: Parameters<typeof mountingResults>[1], outlet: number) =>
    mountingResults({ outlet: known(millimetres(outlet)) }, use).map((r) => r.verdict)[0];
  it.each([
    ['general', 750, 1200],
    ['accessible', 750, 1000],
    ['accessible-fr', 900, 1300],
  ] as const)('%s: %i to %i mm', (use, least, greatest) => {
    expect([least - 1, least, greatest, greatest + 1].map((h) => verdicts(use, h))).toEqual([
      'fail',
      'pass',
      'pass',
      'fail',
    ]);
  });
  it('900 mm meets every British figure for the outlet', () => {
    expect((['general', 'accessible'] as const).map((use) => verdicts(use, 900))).toEqual(['pass', 'pass']);
  });
  it('judges controls, display and the gas meter, and keeps unknown apart', () => {
    const results = mountingResults(
      {
        controls: known(millimetres(900)),
        display: known(millimetres(1250)),
        outlet: unknown('measure'),
        gasMeter: known(millimetres(100)),
      },
      'accessible',
    );
    expect(results.map((r) => r.verdict)).toEqual(['not-determined', 'pass', 'pass', 'fail']);
    expect(results.every((r) => r.weight === 'advice')).toBe(true);
    expect(mountingResults({ display: known(millimetres(1250)) }, 'in-buildings')[0]).toMatchObject({
      reason: 'no-rule',
    });
  });
});
