import { describe, expect, it } from 'vitest';
import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { adequacyOf, demandOf, demandOfDwellings, type MeterReadings, sumOfDwellings } from '../../src/demand/index.js';
import { checkReadings } from '../../src/demand/methods/readings.js';
import { amperes, hasCode, type Installation, known, ratio, unknown, volts, wattHours } from '../../src/index.js';
import { pathText } from '../../src/units/error.js';
import { circuit, type LoadSpec, load, point, premises } from './premises.js';

/** The paths of an `invalid-input` error. */
function paths(run: () => unknown): readonly string[] {
  try {
    run();
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => pathText(p.path));
    throw error;
  }
  return [];
}
const of = (installation: Installation) =>
  paths(() => adequacyOf(bs7671Demand, installation, { premises: 'dwelling' }));
const spec = (change: Partial<LoadSpec>): LoadSpec => ({ purpose: 'lighting', current: 6, ...change });

describe('an installation that cannot be', () => {
  it.each<[string, Installation, readonly string[]]>([
    ['unknown purpose', premises([spec({ purpose: 'aquarium' as never })]), ['board.runs[0].feeds[0].purpose']],
    ['negative current', premises([spec({ current: -6 })]), ['board.runs[0].feeds[0].current.value']],
    [
      'current that is no number',
      premises([spec({ current: { state: 'known', value: Number.NaN as never } })]),
      ['board.runs[0].feeds[0].current.value'],
    ],
    [
      'range the wrong way round',
      premises([spec({ current: { state: 'between', least: amperes(6), most: amperes(3) } })]),
      ['board.runs[0].feeds[0].current'],
    ],
    [
      'line that a single-phase supply has not',
      premises([spec({ lines: ['L2'] })]),
      ['board.runs[0].lines[0]', 'board.runs[0].feeds[0].lines[0]'],
    ],
    [
      'line that does not exist',
      premises([spec({ lines: ['L4' as never] })], [], { phases: known(3) }),
      ['board.runs[0].lines[0]', 'board.runs[0].feeds[0].lines[0]'],
    ],
    ['no line', premises([spec({ lines: [] })]), ['board.runs[0].lines', 'board.runs[0].feeds[0].lines']],
    ['setting of zero', premises([], [point('ev', 0)]), ['board.runs[0].feeds[0].setting.value']],
    [
      'negative cut-out',
      premises([], [], { cutOut: { kind: unknown(), rating: known(amperes(-60)) } }),
      ['supply.cutOut.rating.value'],
    ],
    [
      'negative main switch',
      premises([], [], {}, { mainSwitch: { rating: known(amperes(-100)), noFuseAhead: known(true) } }),
      ['board.mainSwitch.rating.value'],
    ],
    ['two lines of supply', premises([], [], { phases: known(2 as never) }), ['supply.phases.value']],
    ['no voltage', premises([], [], { nominalVoltage: volts(0) }), ['supply.nominalVoltage']],
    [
      'control without a name',
      premises([], [point('ev', 32)], {}, { control: { name: ' ', limit: known(amperes(60)), controls: ['ev'] } }),
      ['board.control.name'],
    ],
    [
      'control of nothing that is there',
      premises([], [point('ev', 32)], {}, { control: { name: 'x', limit: known(amperes(60)), controls: ['EV'] } }),
      ['board.control.controls[0]'],
    ],
  ])('%s', (_, installation, expected) => expect(of(installation)).toEqual(expected));

  it('a load on a line that its circuit has not, and a name used twice', () => {
    const base = premises([], [], { phases: known(3) });
    const runs = [
      circuit('a', load('x', spec({ lines: ['L2'] })), ['L1']),
      circuit('b', load('x', spec({ lines: ['L1'] })), ['L1']),
    ];
    expect(of({ ...base, board: { ...base.board, runs } })).toEqual([
      'board.runs[0].feeds[0].lines[0]',
      'board.runs[1].feeds[0].id',
    ]);
  });

  it('gives all problems at once', () => {
    expect(
      of(premises([spec({ current: -1 }), spec({ purpose: 'x' as never, current: -2 })], [point('ev', -3)])),
    ).toHaveLength(4);
  });
});

describe('options', () => {
  const run = (options: object) =>
    paths(() => demandOf(bs7671Demand, premises([spec({})]), { premises: 'dwelling', ...options }));
  it.each([
    [{ premises: 'castle' }, ['premises']],
    [{ governing: 'a guess' }, ['governing']],
    [
      { factors: { utilisation: { lighting: 1.2 }, simultaneity: { db: -1 } } },
      ['factors.utilisation.lighting', 'factors.simultaneity.db'],
    ],
  ])('%j', (options, expected) => expect(run(options)).toEqual(expected));
  it('factors that are lacking determine nothing', () => {
    const { methods } = demandOf(bs7671Demand, premises([spec({})]), {
      premises: 'dwelling',
      factors: { utilisation: {}, simultaneity: { db: ratio(1) } },
    });
    expect(methods.find((m) => m.method === 'utilisation-and-simultaneity')).toMatchObject({
      verdict: 'not-determined',
      gaps: [{ fact: 'factors.utilisation.lighting' }],
    });
  });
  it.each([0, 1.5, Number.NaN])('%d dwellings', (dwellings) => {
    expect(paths(() => demandOfDwellings([sumOfDwellings], { dwellings }))).toEqual(['dwellings']);
  });
});

describe('half-hour readings', () => {
  const meter = (starts: readonly string[], energy = 500): MeterReadings => ({
    readings: starts.map((start) => ({ start, energy: wattHours(energy) })),
    season: 'winter',
    margin: ratio(0.2),
  });
  const at = (time: string) => `2026-01-05T${time}:00Z`;
  const check = (m: MeterReadings) => paths(() => checkReadings(m));

  it('in order are accepted, through a change of clocks too', () => {
    expect(check(meter([at('17:00'), at('17:30'), at('18:00')]))).toEqual([]);
    expect(check(meter(['2026-03-29T00:30:00+00:00', '2026-03-29T02:00:00+01:00']))).toEqual([]);
  });
  it.each<[string, MeterReadings, readonly string[]]>([
    ['none', meter([]), ['readings']],
    ['gap', meter([at('17:00'), at('18:00')]), ['readings[1].start']],
    ['duplicate', meter([at('17:00'), at('17:00'), at('17:30')]), ['readings[1].start']],
    ['out of order', meter([at('17:30'), at('17:00')]), ['readings[1].start']],
    ['not on the half-hour', meter([at('17:10')]), ['readings[0].start']],
    ['no offset', meter(['2026-01-05T17:00:00']), ['readings[0].start']],
    ['no such day', meter(['2026-02-30T17:00:00Z']), ['readings[0].start']],
    ['negative energy', meter([at('17:00')], -1), ['readings[0].energy']],
    ['no season', { ...meter([at('17:00')]), season: '' }, ['season']],
    ['no margin', { ...meter([at('17:00')]), margin: undefined as never }, ['margin']],
  ])('%s', (_, m, expected) => expect(check(m)).toEqual(expected));

  it('of a whole year govern, of a day do not', () => {
    const half = (n: number) =>
      meter(Array.from({ length: n }, (_, i) => new Date(Date.UTC(2025, 0, 1) + i * 1800e3).toISOString()));
    const governing = (n: number) =>
      demandOf(bs7671Demand, premises([spec({})]), { premises: 'dwelling', readings: half(n) }).governing.method;
    expect(governing(48)).toBe('on-site-guide-dwelling');
    expect(governing(365 * 48)).toBe('half-hour-readings');
  });

  it('new loads come on top, and a three-phase meter says nothing of a line', () => {
    const readings = meter([at('17:00')], 3220);
    const byReadings = (more: Partial<LoadSpec>) =>
      demandOf(bs7671Demand, premises([spec({ existing: true }), spec({ current: 10, ...more })], [point('ev', 32)]), {
        premises: 'dwelling',
        readings,
        governing: 'half-hour-readings',
      }).governing.lines[0];
    expect(byReadings({ existing: false })?.existing).toBeCloseTo(28 * 1.2 + 10, 9);
    expect(byReadings({ existing: false })?.demand).toBeCloseTo(28 * 1.2 + 42, 9);
    // nobody says that it was there
    expect(byReadings({})).toEqual(byReadings({ existing: false }));
    expect(byReadings({ existing: true })?.existing).toBeCloseTo(28 * 1.2, 9);
    const three = demandOf(bs7671Demand, premises([spec({})], [], { phases: known(3) }), {
      premises: 'dwelling',
      readings,
    });
    expect(three.methods.find((m) => m.method === 'half-hour-readings')?.verdict).toBe('not-applicable');
  });
});
