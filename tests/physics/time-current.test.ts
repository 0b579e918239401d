import { describe, expect, test } from 'vitest';
import { amperes, ratio, seconds } from '../../src/index.js';
import { thermalTimeConstantOf, thermalTripTime } from '../../src/physics/definitions.js';
import { currentAt, gateBounds, inverseTime, smoothTimeAt, timeAt } from '../../src/physics/index.js';
import { ggEnvelope } from '../../src/products/bs88/gg-envelope.js';
import { breakerEnvelope } from '../../src/products/en60898/envelope.js';
import { cases } from './time-current.cases.js';

const near = (ours: number, expected: number, relative = 1e-9) =>
  expect(Math.abs(ours - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));

// gG between gates: rating, time, slow and fast current; gates of IEC 60269-1 from memory, arithmetic done elsewhere
const gg = [
  [16, 0.1, 150.0, 85.0],
  [16, 0.4, 111.530272365, 63.9328698374],
  [16, 1, 91.6912057479, 52.9622507075],
  [16, 60, 45.7164947531, 28.3341860251],
  [16, 3600, 25.6, 20.0],
  [32, 0.2, 301.209393629, 172.55013875],
  [32, 0.4, 259.220282316, 148.867751913],
  [32, 5, 150.0, 86.9312543512],
  [32, 60, 99.9489612774, 61.9381618376],
  [63, 0.1, 820.0, 450.0],
  [63, 0.2, 694.073120982, 385.138870515],
  [63, 1, 471.278472577, 268.3281573],
  [63, 5, 320.0, 186.945555258],
  [63, 3600, 100.8, 78.75],
  [100, 0.1, 1450.0, 820.0],
  [100, 0.4, 1047.97504331, 599.686316974],
  [100, 1, 845.558641707, 487.647413609],
  [100, 60, 373.523537929, 230.601898303],
  [100, 7200, 160.0, 125.0],
  [160, 0.2, 2168.31670811, 1219.8872537],
  [160, 0.4, 1815.28855083, 1026.29304258],
  [160, 5, 950.0, 546.771841396],
  [160, 60, 606.927302153, 366.645814384],
] as const;
// relays of IEC 60255-151 and IEEE: k, c, exponent, multiple, time; constants in four relay manuals
const relays = [
  [0.14, 0.0, 0.02, 2, 10.02902702],
  [0.14, 0.0, 0.02, 5, 4.27972007095],
  [0.14, 0.0, 0.02, 20, 2.26735636725],
  [13.5, 0.0, 1.0, 1.5, 27.0],
  [13.5, 0.0, 1.0, 5, 3.375],
  [13.5, 0.0, 1.0, 10, 1.5],
  [80.0, 0.0, 2.0, 1.5, 64.0],
  [80.0, 0.0, 2.0, 2, 26.6666666667],
  [80.0, 0.0, 2.0, 10, 0.808080808081],
  [80.0, 0.0, 2.0, 20, 0.200501253133],
  [120.0, 0.0, 1.0, 2, 120.0],
  [120.0, 0.0, 1.0, 5, 30.0],
  [120.0, 0.0, 1.0, 20, 6.31578947368],
  [0.05, 0.0, 0.04, 1.5, 3.05794690519],
  [0.05, 0.0, 0.04, 5, 0.751936889325],
  [0.05, 0.0, 0.04, 10, 0.518251812314],
  [0.0515, 0.114, 0.02, 1.5, 6.439016218],
  [0.0515, 0.114, 0.02, 2, 3.80324922523],
  [0.0515, 0.114, 0.02, 10, 1.20675592247],
  [0.0515, 0.114, 0.02, 20, 0.948063235094],
  [19.61, 0.491, 2.0, 2, 7.02766666667],
  [19.61, 0.491, 2.0, 5, 1.30808333333],
  [19.61, 0.491, 2.0, 20, 0.540147869674],
  [28.2, 0.1217, 2.0, 1.5, 22.6817],
  [28.2, 0.1217, 2.0, 5, 1.2967],
  [28.2, 0.1217, 2.0, 10, 0.406548484848],
] as const;
// thermal trip: multiple, preload, slow and fast time, from the gate at 2.55 times the rated current
const thermal = [
  [1.2, 0, null, 9.96278396005],
  [1.5, 0, 418.583971761, 3.83409469927],
  [2.55, 0, 60.0, 1.0],
  [3, 0, 40.8721491577, 0.699893756314],
  [5, 0, 13.4949461067, 0.239810011139],
  [8, 0, 5.13130820688, 0.0921853003322],
  [2, 0.5, 104.646650421, null],
  [2, 0.8, 87.7772376774, null],
] as const;
// monotone cubic through (51.2 A, 3600 s), (150, 5), (350, 0.1): current, time; a numerical library agrees
const cubic = [
  [60, 1215.97338456],
  [80, 187.292716764],
  [150, 5.0],
  [200, 1.17459002198],
  [300, 0.187605187058],
  [350, 0.1],
] as const;

describe('time-current curves', () => {
  test.each(gg)('gG %d A at %d s', (rating, time, slow, fast) => {
    const zone = ggEnvelope(amperes(rating));
    near(currentAt(zone.slow, time), slow);
    near(currentAt(zone.fast, time), fast);
  });
  test.each(relays)('relay k %d, c %d, exponent %d at %d', (k, c, exponent, multiple, expected) =>
    near(
      inverseTime({
        timeMultiplier: ratio(1),
        inverseConstant: seconds(k),
        inverseOffset: seconds(c),
        inverseExponent: ratio(exponent),
        deviceMultiple: ratio(multiple),
      }),
      expected,
      1e-10,
    ),
  );
  test.each(thermal)('thermal trip at %d after %d', (multiple, preload, slow, fast) => {
    const time = (threshold: number, test: number) =>
      thermalTripTime({
        thermalTimeConstant: thermalTimeConstantOf({
          operatingTime: seconds(test),
          deviceMultiple: ratio(2.55),
          thresholdMultiple: ratio(threshold),
        }),
        deviceMultiple: ratio(multiple),
        preloadMultiple: ratio(preload),
        thresholdMultiple: ratio(threshold),
      });
    if (slow !== null) near(time(1.45, 60), slow);
    else expect(() => time(1.45, 60)).toThrow(/operatingTime/);
    if (fast !== null) near(time(1.13, 1), fast);
  });
  test.each(cubic)('monotone cubic at %d A', (current, expected) => {
    const points = [
      { current: 51.2, time: 3600 },
      { current: 150, time: 5 },
      { current: 350, time: 0.1 },
    ];
    near(smoothTimeAt(points, current), expected);
  });
  test('straight line in log-log between 1.45 and 2.55 times the rated current', () =>
    near(
      timeAt(
        [
          { current: 1.45, time: 3600 },
          { current: 2.55, time: 60 },
        ],
        2,
      ),
      349.446819055,
    ));
  test('never outside the published points', () => {
    const points = [
      { current: 125, time: 5 },
      { current: 221.2, time: 0.4 },
    ];
    for (const run of [
      () => timeAt(points, 124.9),
      () => timeAt(points, 222),
      () => currentAt(points, 0.39),
      () => currentAt(points, 5.1),
      () => timeAt([], 1),
    ])
      expect(run).toThrow(expect.objectContaining({ code: 'out-of-range' }));
    expect(() => timeAt(points, Number.NaN)).toThrow(expect.objectContaining({ code: 'invalid-input' }));
  });

  test('the gates of a breaker are those of its standard', () => {
    for (const [type, low, high] of [
      ['B', 3, 5],
      ['C', 5, 10],
      ['D', 10, 20],
    ] as const) {
      const zone = breakerEnvelope(type, amperes(32));
      expect(zone.fast.map((p) => [p.current / 32, p.time])).toEqual([
        [1.13, 3600].map((v) => expect.closeTo(v, 9)),
        [2.55, 1].map((v) => expect.closeTo(v, 9)),
        [low, 0.1],
      ]);
      expect(zone.slow[2]).toEqual({ current: high * 32, time: 0.1 });
    }
    expect(breakerEnvelope('B', amperes(40)).slow[1]?.time).toBe(120);
    expect(breakerEnvelope('B', amperes(80)).slow[0]?.time).toBe(7200);
    expect(() => breakerEnvelope('B', amperes(160))).toThrow(/no cell/);
  });
  test('between gates only what is certain is said, and a thermal trip of either edge lies inside', () => {
    const zone = breakerEnvelope('B', amperes(32));
    for (let m = 1.46; m < 3; m += 0.07) {
      const { least, most } = gateBounds(zone, 32 * m);
      const thermalTime = (threshold: number, at: number) =>
        thermalTripTime({
          thermalTimeConstant: thermalTimeConstantOf({
            operatingTime: seconds(at),
            deviceMultiple: ratio(2.55),
            thresholdMultiple: ratio(threshold),
          }),
          deviceMultiple: ratio(m),
          preloadMultiple: ratio(0),
          thresholdMultiple: ratio(threshold),
        });
      expect(thermalTime(1.13, 1)).toBeGreaterThanOrEqual(least);
      expect(thermalTime(1.45, 60)).toBeLessThanOrEqual(most ?? Number.POSITIVE_INFINITY);
    }
    expect(gateBounds(zone, 30)).toEqual({ least: 3600 });
    expect(gateBounds(zone, 200)).toEqual({ least: 0, most: 0.1 });
  });
});

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) =>
  expect(Math.abs(c.ours() - c.published)).toBeLessThanOrEqual(c.tolerance),
);
