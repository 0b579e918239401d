import type { Calculation } from '../../calculation/index.js';
import { isNumeric, leastOf, plain } from '../../calculation/index.js';
import { isMissing, type Known, missing, whenKnown } from '../../core/index.js';
import type { Run } from '../../installation/index.js';
import { type Ohms, ohms } from '../../units/index.js';
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

/** The smallest figure of the cables of a circuit, or the first that is missing. */
function leastOfCables(calculation: Calculation, name: string): unknown {
  const each = calculation.things('cables').map((cable) => cable.figure(name));
  return (
    each.find(isMissing) ?? (each.every(isNumeric) ? each.reduce((a, b) => (leastOf(b) < leastOf(a) ? b : a)) : each[0])
  );
}

/** Figures of a calculation that its list gives. */
export function circuitFigures(calculation: Calculation): CircuitFigures {
  const found: Record<string, unknown> = {};
  for (const name of named) {
    const figure = plain(name, calculation.figure(name) ?? leastOfCables(calculation, name));
    if (figure !== undefined) found[name] = isMissing(figure) ? { missing: figure.missing } : figure;
  }
  return found;
}

/**
 * What the conductors of a run amount to.
 * @param calculation the calculation of a circuit; for figures at the temperature of the test its options state one
 * @param run the circuit, or a distribution circuit on the way to it; or the length of one of its cables
 * @param at in normal operation, or as warm as at the test
 */
export function runFigures(calculation: Calculation, run: Run, at: 'operating' | 'test'): RunFigures {
  const found = calculation.things('temperatures').filter(({ place }) => {
    const here = place as TemperaturePlace;
    return (here.run === run || here.wholeRun === run) && here.at === at;
  });
  const figure = (name: string): Known<Ohms> => {
    if (found.length === 0) return missing({ kind: 'fact', fact: 'resistance of the run' });
    const each = found.map((one) => plain(name, one.figure(name)) as Known<Ohms>);
    return whenKnown(each, (...all) => ohms(all.reduce<number>((a, b) => a + b, 0)));
  };
  return {
    line: figure('lineResistance'),
    protective: figure('protectiveResistance'),
    both: figure('lineAndProtectiveResistance'),
    impedance: figure('segmentImpedance'),
  };
}
