import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pilotOffer, pilotStateAt, readCable, readPilot } from '../../src/charging/index.js';
import { amperes, ohms, percent, ratio, volts } from '../../src/index.js';
import { pilotStates, pilotTimes } from '../../src/products/definitions.js';
import { cases } from './pilot.cases.js';

describe('control pilot', () => {
  test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => {
    expect(Math.abs(c.ours() - c.published)).toBeLessThanOrEqual(c.tolerance);
  });

  // IEC 61851-1:2017 Table A.8 as seen in a text copy and in makers' documents
  test.each([
    [0, 'not-allowed'],
    [2.9, 'not-allowed'],
    [3, 'digital-communication'],
    [7, 'digital-communication'],
    [7.5, 'not-allowed'],
    [8, 6],
    [9.9, 6],
    [10, 6],
    [53, 31.8],
    [85, 51],
    [85.1, 52.75],
    [96, 80],
    [97, 80],
    [97.1, 'not-allowed'],
    [99, 'not-allowed'],
    [100, 'not-offered'],
  ] as const)('a vehicle reads %d %% as %s', (duty, expected) => {
    const reading = readPilot(percent(duty));
    if (typeof expected === 'number') expect(reading.meaning === 'current' && reading.current).toBeCloseTo(expected, 9);
    else expect(reading.meaning).toBe(expected);
  });

  test('a measured duty cycle between bands never reads as more than 80 A', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (d) => {
        const reading = readPilot(ratio(d));
        if (reading.meaning === 'current') expect(reading.current).toBeLessThanOrEqual(80);
      }),
    );
  });

  test('states by voltage, within a volt and no further', () => {
    for (const [state, high, low] of [
      ['B', 9, -12],
      ['C', 6, -12],
      ['D', 3, -12],
      ['E', 0, 0],
      ['F', -12, -12],
    ] as const) {
      expect(pilotStates.get({ half: 'high', state })).toBe(high);
      expect(pilotStateAt(volts(high + 0.9), volts(low - 0.9))).toBe(state);
      expect(pilotStateAt(volts(high + 1.4), volts(low))).toBeUndefined();
    }
    expect(pilotStateAt(volts(12))).toBe('A');
    expect(pilotStateAt(volts(12), volts(-12))).toBeUndefined();
  });

  test('times', () => {
    expect(pilotTimes.get({ end: 'longest', event: 'vehicle follows a changed duty cycle' })).toBe(5);
    expect(
      pilotTimes.find({ end: 'longest', event: 'point waits before it starts the pilot signal again' }),
    ).toBeUndefined();
  });
});

describe('coding of cables', () => {
  test.each([
    [1500, 13],
    [680, 20],
    [220, 32],
    [1100, 13],
    [2460, 13],
    [400, 20],
    [936, 20],
    [164, 32],
    [308, 32],
  ] as const)('%d Ω is a cable of %d A', (resistance, current) => {
    expect(readCable(ohms(resistance), 'three-phase')).toEqual({ kind: 'cable', current });
  });
  test('63 A on three phases and 70 A on one share a resistor', () => {
    expect(readCable(ohms(100), 'three-phase')).toEqual({ kind: 'cable', current: 63 });
    expect(readCable(ohms(100), 'single-phase')).toEqual({ kind: 'cable', current: 70 });
  });
  test.each([
    [59, 'error'],
    [70, 'not-determined'],
    [150, 'not-determined'],
    [350, 'not-determined'],
    [1000, 'not-determined'],
    [3000, 'not-determined'],
    [5000, 'no-cable'],
  ] as const)('%d Ω is %s', (resistance, kind) => {
    expect(readCable(ohms(resistance), 'single-phase').kind).toBe(kind);
  });
});

describe('what a point offers', () => {
  test('the smallest counts, and nothing below 6 A', () => {
    const cable = readCable(ohms(680), 'single-phase');
    expect(pilotOffer({ setting: amperes(32), cable, allocation: amperes(25) })).toMatchObject({
      current: 20,
      limitedBy: 'cable',
    });
    expect(pilotOffer({ setting: amperes(16), cable, allocation: amperes(25) })).toMatchObject({
      current: 16,
      limitedBy: 'setting',
    });
    expect(pilotOffer({ setting: amperes(16), cable: 'fixed', allocation: amperes(25) })).toMatchObject({
      current: 16,
      limitedBy: 'setting',
    });
    expect(
      pilotOffer({ setting: amperes(16), cable: { kind: 'not-determined' }, allocation: amperes(25) }),
    ).toMatchObject({ current: 0, limitedBy: 'cable-not-determined' });
    expect(pilotOffer({ setting: amperes(16), cable: { kind: 'no-cable' }, allocation: amperes(25) }).current).toBe(0);
  });
  test('is never above any of them, nor between 0 and 6 A, and a vehicle reads it as no more', () => {
    const current = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(current, current, fc.constantFrom(0.1, 1), (setting, allocation, resolution) => {
        const offer = pilotOffer({
          setting: amperes(setting),
          cable: 'fixed',
          allocation: amperes(allocation),
          resolution: amperes(resolution),
        });
        expect(offer.current).toBeLessThanOrEqual(Math.min(setting, allocation) + 1e-7);
        expect(offer.current === 0 || offer.current >= 6).toBe(true);
        const reading = readPilot(offer.dutyCycle);
        if (offer.current > 0 && offer.current <= 51)
          expect(reading.meaning === 'current' && reading.current).toBeCloseTo(offer.current, 9);
        if (offer.current === 0) expect(reading.meaning).toBe('not-offered');
      }),
    );
  });
  test('refuses negative currents, all at once', () => {
    expect(() =>
      pilotOffer({ setting: amperes(-1), cable: 'fixed', allocation: amperes(-1), resolution: amperes(0) }),
    ).toThrow(/3 problem/);
  });
});
