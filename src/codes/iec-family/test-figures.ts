import type { Calculation } from '../../calculation/index.js';
import { plain } from '../../calculation/index.js';
import { isMissing, type Known, missing } from '../../core/index.js';
import type { Run } from '../../installation/index.js';
import type { Ohms } from '../../units/index.js';
import type { CircuitFigures, RunFigures } from '../wiring-code.js';
import type { TemperaturePlace } from './places.js';

/** Entries of a contents list that are asked for by name. */
const named = [
  'capacity',
  'hottestConductor',
  'governingStretch',
  'voltageAtLowestSupply',
  'voltageAtHighestSupply',
  'totalDrop',
  'dropAlong',
  'dropLimit',
  'lowestSupply',
  'externalImpedance',
  'lineAndProtectiveCold',
  'loopAtOrigin',
  'loopImpedance',
  'loopImpedanceLimit',
  'prospectiveAtOrigin',
  'protectiveArea',
] as const satisfies readonly (keyof CircuitFigures)[];

/** Figures of a calculation that its list gives. */
export function circuitFigures(calculation: Calculation): CircuitFigures {
  const found: Record<string, unknown> = {};
  for (const name of named) {
    const figure = plain(name, calculation.figure(name));
    if (figure !== undefined) found[name] = isMissing(figure) ? { missing: figure.missing } : figure;
  }
  return found;
}

/**
 * What the conductors of a run amount to.
 * @param calculation the calculation of a circuit; for figures at the temperature of the test its options state one
 * @param run the circuit, or a distribution circuit on the way to it
 * @param at in normal operation, or as warm as at the test
 */
export function runFigures(calculation: Calculation, run: Run, at: 'operating' | 'test'): RunFigures {
  const found = calculation.things('temperatures').find(({ place }) => {
    const here = place as TemperaturePlace;
    return here.run === run && here.at === at;
  });
  const figure = (name: string): Known<Ohms> =>
    (found ? plain(name, found.figure(name)) : missing({ kind: 'fact', fact: 'resistance of the run' })) as Known<Ohms>;
  return {
    line: figure('lineResistance'),
    protective: figure('protectiveResistance'),
    both: figure('lineAndProtectiveResistance'),
    impedance: figure('segmentImpedance'),
  };
}
