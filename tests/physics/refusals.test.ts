/** Networks that cannot be are refused with the place of what is wrong, never solved to nonsense. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hasCode } from '../../src/index.js';
import { voltageInNetwork } from '../../src/physics/definitions.js';
import {
  lineEarthFault,
  lineEarthPath,
  lineLineFault,
  lineNeutralFault,
  openPen,
  solveRadial,
  splitImpedance,
  threePhaseFault,
  warmed,
  windowSight,
} from '../../src/physics/index.js';
import { pathText } from '../../src/units/error.js';
import { seedOf } from '../support/seed.js';

function refusedAt(call: () => unknown): readonly string[] {
  try {
    call();
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => pathText(p.path));
    throw error;
  }
  return [];
}

const cable = {
  name: 'cable',
  line: { resistance: 0.06, reactance: 0.01 },
  neutral: { resistance: 0.06, reactance: 0.01 },
  protective: { resistance: 0.1, reactance: 0.01 },
};
const radial = { lineVoltage: 400, voltageFactor: 1.1, elements: [cable] };
const faults = { threePhaseFault, lineNeutralFault, lineEarthFault, lineLineFault };

describe.each(Object.entries(faults))('%s', (_, fault) => {
  const refused = (change: object) => refusedAt(() => fault({ ...radial, ...change } as never));
  test.each<[string, object, readonly string[]]>([
    ['a voltage factor below 0', { voltageFactor: -1.1 }, ['voltageFactor']],
    ['a voltage factor above 1.2', { voltageFactor: 11 }, ['voltageFactor']],
    ['no voltage', { lineVoltage: Number.NaN }, ['lineVoltage']],
    ['a voltage in text', { lineVoltage: '400' }, ['lineVoltage']],
    ['no elements', { elements: undefined }, ['elements']],
    [
      'a negative resistance',
      { elements: [{ ...cable, line: { resistance: -0.06, reactance: 0 } }] },
      ['elements[0].line.resistance'],
    ],
    [
      'a reactance that is none',
      { elements: [{ ...cable, line: { resistance: 0.06 } }] },
      ['elements[0].line.reactance'],
    ],
    [
      'a zero sequence of NaN',
      { elements: [{ ...cable, zero: { resistance: Number.NaN, reactance: 0 } }] },
      ['elements[0].zero.resistance'],
    ],
    ['an element that is none', { elements: [null] }, ['elements[0]']],
  ])('refuses %s', (_what, change, at) => expect(refused(change)).toEqual(at));
  test('gives a finite current or a typed error, whatever the figures', () => {
    const figure = fc.oneof(fc.double(), fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, null, '1'));
    const z = fc.record({ resistance: figure, reactance: figure });
    fc.assert(
      fc.property(figure, figure, z, z, (lineVoltage, voltageFactor, line, back) => {
        const elements = [{ name: 'any', line, neutral: back, protective: back }];
        try {
          const current = fault({ lineVoltage, voltageFactor, elements } as never);
          expect(Number.isFinite(current) && current >= 0).toBe(true);
        } catch (error) {
          expect(
            ['invalid-input', 'no-solution', 'out-of-range'].some((c) => hasCode(error, c as never)),
            String(error),
          ).toBe(true);
        }
      }),
      { numRuns: 200, seed: seedOf(21) },
    );
  });
});

test('a way back that nobody states is no way of 0 Ω', () => {
  const { neutral: _n, protective: _p, ...bare } = cable;
  const elements = [{ ...cable, name: 'supply' }, bare];
  expect(refusedAt(() => lineNeutralFault({ ...radial, elements }))).toEqual(['elements[1].neutral']);
  expect(refusedAt(() => lineEarthFault({ ...radial, elements }))).toEqual(['elements[1].protective']);
  expect(refusedAt(() => threePhaseFault({ ...radial, elements }))).toEqual([]);
  const zero = { resistance: 0.2, reactance: 0.01 };
  expect(refusedAt(() => lineEarthFault({ ...radial, elements: [{ ...bare, zero }] }))).toEqual([]);
});

test('paths, parts and temperatures are refused likewise', () => {
  expect(refusedAt(() => lineEarthPath({ ...radial, voltageFactor: 0 }))).toEqual(['voltageFactor']);
  expect(refusedAt(() => splitImpedance(-5, 0.75))).toEqual(['impedance']);
  expect(refusedAt(() => splitImpedance(5, Number.NaN))).toEqual(['resistanceOverReactance']);
  expect(refusedAt(() => warmed(cable, Number.NaN))).toEqual(['temperature']);
  expect(refusedAt(() => warmed(cable, -400))).toEqual(['temperature']);
  expect(refusedAt(() => warmed({ ...cable, line: { resistance: -1, reactance: 0 } }, 70))).toEqual([
    'line.resistance',
  ]);
});

test('a four-wire network is refused with the place of each problem', () => {
  const load = { kind: 'impedance', resistance: 23, reactance: 0 } as const;
  const section = { parent: -1, line: [0.1, 0], neutral: [0.1, 0], loads: [load, null, null] } as const;
  const refused = (change: object, source: unknown = 230) =>
    refusedAt(() => solveRadial({ sourceVoltage: source, sections: [{ ...section, ...change }] } as never));
  expect(refused({})).toEqual([]);
  expect(refused({}, Number.POSITIVE_INFINITY)).toEqual(['sourceVoltage']);
  expect(refused({ line: [-0.1, 0] })).toEqual(['sections[0].line']);
  expect(refused({ neutral: [0.1] })).toEqual(['sections[0].neutral']);
  expect(refused({ parent: 0 })).toEqual(['sections[0].parent']);
  expect(refused({ loads: [load] })).toEqual(['sections[0].loads']);
  for (const odd of [
    { kind: 'impedance', resistance: -23, reactance: 0 },
    { kind: 'impedance', resistance: 0, reactance: 0 },
    { kind: 'current', current: -5, angle: 0 },
    { kind: 'current', current: 5 },
    { kind: 'power', active: Number.NaN, reactive: 0 },
    { kind: 'bogus' },
    32,
  ])
    expect(refused({ loads: [null, odd, null] })).toEqual(['sections[0].loads[1]']);
  expect(refusedAt(() => solveRadial(null as never))).toEqual(['sourceVoltage', 'sections']);
  const network = { sourceVoltage: 230, sections: [section] };
  expect(refusedAt(() => voltageInNetwork({ network, section: 3, line: 0 }))).toEqual(['section']);
});

test('a lost PEN conductor is refused with the place of each problem', () => {
  const rod = { nominalVoltage: 230, sourceFactor: 1, loads: [{ line: 1, current: 32 }], electrodes: [20] } as const;
  const refused = (change: object) => refusedAt(() => openPen({ ...rod, ...change } as never));
  expect(refused({ loads: [{ line: 1, current: 32, holds: 'bogus' }] })).toEqual(['loads[0].holds']);
  expect(refused({ loads: undefined })).toEqual(['loads']);
  expect(refused({ electrodes: [-20] })).toEqual(['electrodes[0]']);
  expect(refused({ sourceFactor: -1 })).toEqual(['sourceFactor']);
  expect(refusedAt(() => windowSight(rod, 4 as never, [253, 207], 0))).toEqual(['line', 'window', 'limit']);
});
