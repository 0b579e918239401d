/** A charge point of mode 4: what its circuit carries follows from its direct-current power. */
import { expect, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import {
  amperes,
  assess,
  between,
  type ChargePoint,
  known,
  type Run,
  ratio,
  unknown,
  watts,
} from '../../../src/index.js';
import { rectifierCurrentOf } from '../../../src/physics/power/rectifier.js';
import { premises, soundCircuit, soundHouse, soundPoint } from '../../hazards/sound.js';

const code = bs7671('2018+A2:2022');
const lines = ['L1', 'L2', 'L3'] as const;
const unit = (change: Partial<ChargePoint> = {}): ChargePoint =>
  soundPoint({
    mode: 4,
    lines,
    setting: known(amperes(40)),
    directPower: known(watts(24_000), 'plate'),
    efficiency: known(ratio(0.94), 'data sheet'),
    powerFactor: known(ratio(0.98), 'data sheet'),
    ...change,
  });
const circuitOf = (point: ChargePoint): Run =>
  soundCircuit({
    lines,
    cable: {
      construction: 'armoured',
      material: 'copper',
      insulation: 'thermosetting-90',
      cores: 4,
      area: known(16 as never),
      protective: 'armour',
    },
    feeds: [point],
  });
const verdictOf = (change: Partial<ChargePoint>, check: string) =>
  assess(code, soundHouse([circuitOf(unit(change))], { phases: known(3) }), 'ev', premises).results.find(
    (r) => r.check === check,
  );

// 24 kW / (0.94 x 0.98 x 3 x 230 V) = 37.76 A
test('the current on each line', () => {
  expect(
    rectifierCurrentOf({
      directOutputPower: watts(24_000),
      rectifierEfficiency: ratio(0.94),
      powerFactor: ratio(0.98),
      nominalVoltage: 230 as never,
      phases: ratio(3),
    }),
  ).toBeCloseTo(37.76, 2);
});

const within = 'direct-current-within-setting';
test('is within the setting, or is not', () => {
  expect(verdictOf({}, within)?.verdict).toBe('pass');
  expect(verdictOf({ setting: known(amperes(32)) }, within)?.verdict).toBe('fail');
  // from 0.90 down it takes 39.4 A and more: 24 000 / (0.88 x 0.98 x 690) = 40.3 A
  expect(verdictOf({ efficiency: between(ratio(0.9), ratio(0.95)) }, within)?.verdict).toBe('pass');
  expect(verdictOf({ efficiency: between(ratio(0.88), ratio(0.95)) }, within)?.verdict).toBe('not-determined');
});

test.each(['directPower', 'efficiency', 'powerFactor'] as const)('stays open without its %s', (key) => {
  const { [key]: _left, ...rest } = unit();
  const told = assess(code, soundHouse([circuitOf(rest)], { phases: known(3) }), 'ev', premises);
  expect(told.results.find((r) => r.check === within)?.verdict).toBe('not-determined');
  expect(verdictOf({ [key]: unknown('ask') }, within)?.verdict).toBe('not-determined');
});

test('is asked of no other mode', () => {
  const results = assess(code, soundHouse(), 'ev', premises).results;
  expect(results.some((r) => r.check === within)).toBe(false);
});

test('a unit that is plugged in is judged by its socket-outlet too', () => {
  const plugged = { socket: known('EN 60309' as const), socketRating: known(amperes(16)) };
  expect(verdictOf(plugged, 'socket-outlet-for-hours')?.verdict).toBe('fail');
  expect(verdictOf(plugged, 'socket-outlet-behind-its-device')?.verdict).toBe('fail');
  expect(verdictOf({}, 'socket-outlet-for-hours')).toBeUndefined();
});

test('its third harmonics are asked for where there is a neutral', () => {
  const { thirdHarmonic: _unknown, ...silent } = circuitOf(unit());
  const open = assess(code, soundHouse([silent], { phases: known(3) }), 'ev', premises);
  expect(open.overall.undetermined.map((r) => r.check)).toContain('load-within-capacity');
});
