import { amperes, metres, millivoltsPerAmpereMetre, ohms, ratio, vars, volts, watts } from '../../src/index.js';
import {
  dropOfEqualTaps,
  voltageAtConstantCurrent,
  voltageAtConstantPower,
  voltageAtSourceCurrent,
} from '../../src/physics/definitions.js';
import { dropOnRing } from '../../src/physics/index.js';
import type { PublishedCase } from '../support/published.js';

const circuitTheory = { document: 'Circuit theory', where: 'closed form, computed independently of this project' };

// R, X of the loop in Ω, current in A, power factor (negative sine where it leads), drop referred to source and to load
const phasors = [
  ['6-mm2-30-m', 0.219, 0, 32, 1, 1, 7.008, 7.008],
  ['25-mm2-60-m-0.85', 0.105, 0.0102, 100, 0.85, 1, 9.4130013737, 9.50961653428],
  ['95-mm2-120-m-0.8', 0.0564, 0.0186, 200, 0.8, 1, 11.2231346783, 11.2872613941],
  ['240-mm2-100-m-0.6', 0.0195, 0.0145, 400, 0.6, 1, 9.30274129478, 9.3365605962],
  ['240-mm2-100-m-0.5-leading', 0.0195, 0.0145, 400, 0.5, -1, -1.32452480724, -0.92020801042],
] as const;

const exact = phasors.flatMap(([id, r, x, current, cos, sign, atSource, atLoad]): PublishedCase[] =>
  (
    [
      ['source', voltageAtSourceCurrent, atSource],
      ['load', voltageAtConstantCurrent, atLoad],
    ] as const
  ).map(([to, formula, published]) => ({
    id: `drop-${id}-${to}`,
    about: `exact drop, current referred to the ${to}`,
    source: circuitTheory,
    provenance: 'derived',
    exercises: [formula.id],
    ours: () =>
      230 -
      formula({
        supplyVoltage: volts(230),
        resistance: ohms(r),
        reactance: ohms(x),
        designCurrent: amperes(current),
        powerFactor: ratio(cos),
        reactiveFactor: ratio(sign * Math.sqrt(1 - cos ** 2)),
      }),
    published,
    unit: 'V',
    tolerance: 1e-8,
  })),
);

const power = (
  [
    ['charger-7360-w', 0.73, 0.02, 7360, 0, 26.3886651906],
    ['20-kw-0.9', 0.105, 0.0102, 20000, 9686.44209676, 10.0254098746],
    ['three-phase-22-kw', 0.05015728, 0.0064, 7360, 0, 1.61648576958],
  ] as const
).map(
  ([id, r, x, p, q, published]): PublishedCase => ({
    id: `constant-power-${id}`,
    about: 'exact drop of a load that holds its power',
    source: circuitTheory,
    provenance: 'derived',
    exercises: ['voltage-at-constant-power'],
    ours: () =>
      230 -
      voltageAtConstantPower({
        supplyVoltage: volts(230),
        resistance: ohms(r),
        reactance: ohms(x),
        activePower: watts(p),
        reactivePower: vars(q),
      }),
    published,
    unit: 'V',
    tolerance: 1e-8,
  }),
);

const taps = (
  [
    [5, 17.52],
    [10, 16.06],
  ] as const
).map(
  ([count, published]): PublishedCase => ({
    id: `equal-taps-${count}`,
    about: `drop at the last of ${count} equal loads over 100 m`,
    source: circuitTheory,
    provenance: 'derived',
    exercises: ['drop-of-equal-taps'],
    ours: () =>
      dropOfEqualTaps({
        dropRate: millivoltsPerAmpereMetre(7.3),
        designCurrent: amperes(40),
        length: metres(100),
        tapCount: ratio(count),
      }),
    published,
    unit: 'V',
    tolerance: 1e-9,
  }),
);

const ring = (
  [
    [0.5, 7.02],
    [0.4, 6.7392],
  ] as const
).map(
  ([place, published]): PublishedCase => ({
    id: `ring-load-at-${place}`,
    about: 'drop of 26 A on a ring of 60 m',
    source: circuitTheory,
    provenance: 'derived',
    exercises: ['drop-on-ring'],
    ours: () =>
      dropOnRing({
        dropRate: millivoltsPerAmpereMetre(18),
        designCurrent: amperes(26),
        length: metres(60),
        ringPosition: ratio(place),
      }),
    published,
    unit: 'V',
    tolerance: 1e-9,
  }),
);

/** Figures of voltage drop. */
export const cases: readonly PublishedCase[] = [...exact, ...power, ...taps, ...ring];
