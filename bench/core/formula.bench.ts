import { unit } from 'mathjs';
import { voltageDropTabulated } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  evaluate,
  type Known,
  metres,
  millivoltsPerAmpereMetre,
  recorder,
  type Sheet,
  silent,
  type Volts,
} from '../../src/index.js';
import { compare } from '../compare.js';

// One voltage drop for each of a thousand lengths; every way keeps its results, and has a loop of its own, or the engine
// would compile one loop for all of them.
const COUNT = 1000;
const dropRate = millivoltsPerAmpereMetre(7.3);
const designCurrent = amperes(32);
const lengths = Array.from({ length: COUNT }, (_, i) => metres(1 + i / 10));
const inputs = lengths.map((length) => ({ dropRate, designCurrent, length }));
const kept = new Float64Array(COUNT);
const keptSteps: Known<Volts>[] = new Array(COUNT);
const steps = (sheet: () => Sheet) => () => {
  const s = sheet();
  for (let i = 0; i < COUNT; i++) keptSteps[i] = s.step(voltageDropTabulated, inputs[i]!);
  return keptSteps;
};

export default [
  compare('one formula', {
    anchor: 'arithmetic by hand',
    per: COUNT,
    ways: {
      'arithmetic by hand': () => {
        for (let i = 0; i < COUNT; i++) kept[i] = dropRate * designCurrent * lengths[i]!;
        return kept;
      },
      'formula called': () => {
        for (let i = 0; i < COUNT; i++) kept[i] = voltageDropTabulated(inputs[i]!);
        return kept;
      },
      'formula called, inputs built for each': () => {
        for (let i = 0; i < COUNT; i++)
          kept[i] = voltageDropTabulated({ dropRate, designCurrent, length: lengths[i]! });
        return kept;
      },
      'formula evaluated, all ranges guarded': () => {
        for (let i = 0; i < COUNT; i++) kept[i] = evaluate(voltageDropTabulated, inputs[i]!);
        return kept;
      },
      'step on a silent sheet': steps(silent),
      'step on a recorder': steps(() => recorder('drops')),
      'mathjs, units made once': (() => {
        const perAmpereMetre = unit(7.3, 'mV/(A m)');
        const current = unit(32, 'A');
        const units = lengths.map((length) => unit(length, 'm'));
        return () => {
          for (let i = 0; i < COUNT; i++) kept[i] = perAmpereMetre.multiply(current).multiply(units[i]!).toNumber('V');
          return kept;
        };
      })(),
    },
  }),
];
