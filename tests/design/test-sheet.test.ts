import { describe, expect, test } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/code.js';
import { type TestEdition, testPlan } from '../../src/codes/bs7671/test-plan.js';
import { iec60364 } from '../../src/codes/iec60364/code.js';
import type { WiringCode } from '../../src/codes/wiring-code.js';
import { judgeReadings } from '../../src/design/judge-readings.js';
import { testSheet } from '../../src/design/test-sheet.js';
import { celsius, known, milliamperes, ohms, type Run, unknown } from '../../src/index.js';
import { caseOf, chargePoint, circuit, house } from '../support/house.js';

// of 2008 the tests alone are entered: they go with the code of 2018 here
const codeOf = (edition: TestEdition): WiringCode =>
  edition === '2008' ? { ...bs7671('2018'), tests: testPlan(edition) } : bs7671(edition);

function sheetOf(
  change: Partial<Run> = {},
  temperature = 10,
  code: WiringCode = codeOf('2018+A2:2022'),
  electronics: 'connected' | 'disconnected' = 'disconnected',
) {
  const point = { ...chargePoint, directCurrentDetection: known(true) };
  const c = caseOf(
    house([
      circuit({
        residual: [{ position: 'origin-of-circuit', type: known('A'), rating: known(milliamperes(30)) }],
        feeds: [point],
        ...change,
      }),
    ]),
    'ev',
  );
  return testSheet({
    code,
    circuit: c,
    testTemperature: celsius(temperature),
    electronics,
  });
}
const reading = (sheet: ReturnType<typeof sheetOf>, id: string) => {
  const found = sheet.tests.flatMap((t) => t.readings).find((r) => r.id === id);
  if (!found) throw new Error(id);
  return found;
};

describe('test sheet', () => {
  test('expects the resistance of the day: 6/2.5 mm² over 20 m at 10 °C', () => {
    const sheet = sheetOf();
    expect(reading(sheet, 'continuity').expected?.value).toBeCloseTo(10.49e-3 * 20 * 0.96, 10);
    expect(reading(sheet, 'loop').expected?.value).toBeCloseTo(0.35 + 10.49e-3 * 20 * 0.96, 10);
    // exact: (Z_max - Z_e) 0.96/1.2 + Z_e
    expect(reading(sheet, 'loop').limits[0]?.amount?.value).toBeCloseTo((218.5 / 160 - 0.35) * 0.8 + 0.35, 10);
    expect(reading(sheet, 'loop').limits[1]?.amount?.value).toBeCloseTo(0.8 * (218.5 / 160), 10);
  });
  test('asks for the electrode of a point on TT earthing: 50 V over 30 mA', () => {
    const onTt = { ...chargePoint, earthing: 'tt-earthing' as const, electrode: { resistance: known(ohms(80)) } };
    const sheet = sheetOf({ feeds: [onTt] });
    const found = reading(sheet, 'electrode-point');
    expect(found.expected?.value).toBe(80);
    expect(found.limits[0]?.amount?.value).toBeCloseTo(50 / 0.03, 9);
    // the loop at the point runs through the electrode: 80 ohm there is no fault, on the cable's own conductor it is
    const verdicts = (ohm: number) =>
      judgeReadings(sheet, { loop: ohm, 'loop-point': 80 }).results.flatMap((r) =>
        /^reading-loop/.test(r.check) ? [[r.check, r.verdict].join(' ')] : [],
      );
    expect(verdicts(0.5)).toEqual([
      'reading-loop-at-most pass',
      'reading-loop-rule-of-thumb pass',
      'reading-loop-at-least pass',
      'reading-loop-point-at-most pass',
      'reading-loop-point-at-least pass',
    ]);
    expect(verdicts(80)).toContain('reading-loop-at-most fail');
    expect(reading(sheet, 'loop').what).toContain('own protective conductor');
    expect(reading(sheetOf(), 'loop').what).toContain('farthest point');
    const { electrode: _, ...sharing } = onTt;
    const rows = testSheet({
      code: codeOf('2018+A2:2022'),
      circuit: caseOf(house([circuit({ feeds: [sharing] })], { system: known('TT') }), 'ev'),
      testTemperature: celsius(10),
      electronics: 'disconnected',
    }).tests.flatMap((t) => t.readings.map((r) => r.id));
    expect(rows).toContain('loop');
    expect(rows).not.toContain('loop-point');
  });
  test('is plain data in the order of the tests, dead before live', () => {
    const sheet = sheetOf();
    expect(JSON.parse(JSON.stringify(sheet))).toEqual(sheet);
    const states = sheet.tests.map((t) => t.state);
    expect(states.indexOf('live')).toBe(states.lastIndexOf('dead') + 1);
    expect(sheet.tests.map((t) => t.kind)).toEqual([
      'continuity',
      'insulation',
      'polarity',
      'loop-impedance',
      'prospective-current',
      'residual-current-device',
      'direct-current-detection',
      'functional',
      'voltage-under-load',
    ]);
  });
  test('follows the edition: A1 and A3 left the tests as they were', () => {
    const ids = (edition: TestEdition) =>
      sheetOf({}, 10, codeOf(edition))
        .tests.flatMap((t) => t.readings.map((r) => r.id))
        .filter((i) => i.startsWith('residual'));
    expect(ids('2018+A2:2022')).toEqual(['residual1At1']);
    expect(ids('2018+A3:2024')).toEqual(['residual1At1']);
    expect(ids('2018')).toEqual(['residual1At1', 'residual1At5']);
    expect(ids('2018+A1:2020')).toEqual(['residual1At1', 'residual1At5']);
    expect(ids('2008')).toEqual(['residual1At0.5', 'residual1At1', 'residual1At5']);
    expect(() => testPlan('2026' as never)).toThrow(/not available/);
  });
  test.each([bs7671('2018+A4:2026'), iec60364('2009')])('what $name:$edition asks for is not entered', (code) => {
    const sheet = sheetOf({}, 10, code);
    expect(sheet.tests).toEqual([]);
    expect(sheet.edition).toBe(`${code.name}:${code.edition}`);
    expect(sheet.cautions).toEqual([code.standing]);
    // no test asked for is no test passed
    const { results } = judgeReadings(sheet, {});
    expect(results.map((r) => [r.verdict, r.source.document])).toEqual([['not-determined', code.name]]);
    expect(() => judgeReadings(sheet, { loop: 0.3 })).toThrow(/no such reading/);
  });
  test('with electronics connected the insulation is tested at 250 V to earth only', () => {
    const sheet = sheetOf({}, 20, codeOf('2018+A2:2022'), 'connected');
    expect(reading(sheet, 'insulationEarth').note).toMatch(/250 V/);
    expect(() => reading(sheet, 'insulationLive')).toThrow();
  });
  test('a ring: ends, and a quarter of both when cross-connected', () => {
    const sheet = sheetOf({ ring: true }, 20);
    const [r1, r2] = [3.08e-3 * 20, 7.41e-3 * 20];
    expect(reading(sheet, 'ringLine').expected?.value).toBeCloseTo(r1, 12);
    expect(reading(sheet, 'crossLineNeutral').expected?.value).toBeCloseTo(r1 / 2, 12);
    expect(reading(sheet, 'crossLineProtective').expected?.value).toBeCloseTo((r1 + r2) / 4, 12);
  });
});

describe('readings that come back', () => {
  const sheet = sheetOf();
  const good = {
    continuity: 0.2,
    protectiveContinuity: 0.14,
    insulationLive: 200e6,
    insulationEarth: 200e6,
    polarity: true,
    externalLoop: 0.3,
    loop: 0.5,
    prospective: 900,
    residual1At1: 0.024,
    'directTrip-point': 0.0045,
    'directTime-point': 0.9,
    functional: true,
    voltage: 240,
    loadedVoltage: 235.6,
  };
  const ids = (change: Record<string, number | boolean>) =>
    judgeReadings(sheet, { ...good, ...change }).contradictions.map((c) => c.id);
  const failed = (change: Record<string, number | boolean>) =>
    judgeReadings(sheet, { ...good, ...change })
      .results.filter((r) => r.verdict === 'fail')
      .map((r) => r.check);

  test('good readings pass, owe nothing and do not contradict each other', () => {
    const judged = judgeReadings(sheet, good);
    expect(judged.results.filter((r) => r.verdict !== 'pass')).toEqual([]);
    expect(judged.owing).toEqual([]);
    expect(judged.contradictions).toEqual([]);
  });
  test.each([
    [{ loop: 0.25 }, ['loop-below-external', 'parallel-path']],
    [{ loop: 0.4 }, ['parallel-path']],
    [{ loop: 0.8 }, ['high-joint']],
    [{ continuity: 0.1, loop: 0.42 }, ['continuity-low']],
    [{ continuity: 0.4, loop: 0.72 }, ['continuity-high']],
    [{ loadedVoltage: 231 }, ['drop-larger-than-calculated']],
    [{ prospective: 500 }, ['prospective-and-loop']],
  ])('%o', (change, expected) => expect(ids(change)).toEqual(expected));
  test.each([
    [{ insulationEarth: 0.9e6 }, ['reading-insulationEarth-at-least']],
    [{ residual1At1: 0.31 }, ['reading-residual1At1-at-most']],
    [{ 'directTrip-point': 0.0061 }, ['reading-directTrip-point-at-most']],
    [{ polarity: false }, ['reading-polarity']],
    [{ prospective: 6500 }, ['reading-prospective-at-most']],
    [{ loop: 1.2 }, ['reading-loop-at-most', 'reading-loop-rule-of-thumb']],
    [{ voltage: 254 }, ['reading-voltage-at-most']],
  ])('%o fails', (change, expected) => expect(failed(change)).toEqual(expected));
  test('a ring whose ends differ, or whose cross-connected reading is no quarter', () => {
    const ring = sheetOf({ ring: true }, 20);
    const of = (change: Record<string, number>) =>
      judgeReadings(ring, {
        ringLine: 0.6,
        ringNeutral: 0.62,
        ringProtective: 1,
        crossLineNeutral: 0.3,
        crossLineProtective: 0.4,
        ...change,
      })
        .contradictions.map((c) => c.id)
        .filter((id) => id.startsWith('ring-'));
    expect(of({})).toEqual([]);
    expect(of({ ringNeutral: 0.7, crossLineNeutral: 0.325 })).toEqual(['ring-ends-differ']);
    expect(of({ crossLineProtective: 0.5 })).toEqual(['ring-cross-connection']);
  });
  test('what was not read is owing and not determined', () => {
    const { polarity: _, ...rest } = good;
    const judged = judgeReadings(sheet, rest);
    expect(judged.owing).toEqual(['polarity']);
    expect(judged.results.find((r) => r.check === 'reading-polarity')?.verdict).toBe('not-determined');
  });
  test('of two readings of which one is enough the other is not owing', () => {
    const { protectiveContinuity: _, ...rest } = good as Record<string, number | boolean>;
    expect(judgeReadings(sheet, rest).owing).toEqual([]);
    const { continuity: _both, ...neither } = rest;
    expect(judgeReadings(sheet, neither).owing).toEqual(['continuity', 'protectiveContinuity']);
  });
  test('a yes in the place of a number, or a number in the place of a yes, is refused', () => {
    // true would count as 1 Ω and pass the limit of 1.16 Ω; 0 for the polarity would not count at all
    for (const wrong of [{ loop: true }, { polarity: 0 }, { continuity: true }, { insulationEarth: true }])
      expect(() => judgeReadings(sheet, { ...good, ...wrong })).toThrow(/a problem/);
  });
  test('a reading whose limit is not known decides nothing', () => {
    const unknownKind = { ...circuit().device, kind: unknown('its marking') };
    const noCapacity = { kind: circuit().device.kind, rating: circuit().device.rating };
    const verdicts = (device: Run['device'], id: string) =>
      judgeReadings(sheetOf({ device }), good)
        .results.filter((r) => r.check === `reading-${id}`)
        .map((r) => r.verdict);
    expect(verdicts(unknownKind, 'loop')).toEqual(['not-determined']);
    expect(verdicts(noCapacity, 'prospective')).toEqual(['not-determined']);
    expect(verdicts(circuit().device, 'loop')).toEqual([]);
  });
  test('names and numbers that are no readings are refused together', () => {
    expect(() => judgeReadings(sheet, { loop: Number.NaN, other: 1 })).toThrow(/2 problem/);
  });
});
