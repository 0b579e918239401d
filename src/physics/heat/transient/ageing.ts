import { evaluate, formula, moving, procedure } from '../../../core/index.js';
import { type Amperes, celsius, type Kelvins } from '../../../units/index.js';
import { conductorAttained, refuse } from './buried-body.js';
import { ALL_HOURS, loadProblems, lossOrdinates, risesOf } from './cyclic.js';
import { type BuriedCable, cableProblems, temperatureAt } from './load.js';

/** Rate at which the insulation of a cable ages, over that at its operating temperature: twice for each 10 K. Common practice. */
export const ageingByTenKelvin = /* @__PURE__ */ moving({
  id: 'cable-ageing-ten-kelvin',
  title: 'Rate of ageing of the insulation of a cable, by the rule of ten kelvins',
  moves: { conductorTemperature: 1, operatingTemperature: -1 },
  output: 'ageingRate',
  expression: '2^((conductorTemperature - operatingTemperature) / ten)',
  constants: { ten: [10, 'K'] },
  compute: ({ conductorTemperature, operatingTemperature }) =>
    2 ** ((conductorTemperature - operatingTemperature) / 10),
  valid: { conductorTemperature: { least: -20, most: 150 } },
  source: {
    document: 'Common practice',
    provenance: 'memory',
    note: 'a rule of thumb after Montsinger (1930); tests of one material by IEC 60216 go before it. No limit of temperature follows from it',
  },
});

/** Rate at which insulation ages, over that at its operating temperature, from thermal endurance tests of the material. IEC 60216. */
export const ageingByArrhenius = /* @__PURE__ */ formula({
  id: 'cable-ageing-arrhenius',
  title: 'Rate of ageing of the insulation of a cable, from endurance tests',
  inputs: ['conductorTemperature', 'operatingTemperature', 'activationTemperature'],
  output: 'ageingRate',
  expression:
    'exp(activationTemperature / (operatingTemperature + zero) - activationTemperature / (conductorTemperature + zero))',
  constants: { zero: [273.15, 'K'] },
  direction: { conductorTemperature: 1, operatingTemperature: -1 },
  compute: ({ conductorTemperature, operatingTemperature, activationTemperature: b }) =>
    Math.exp(b / (operatingTemperature + 273.15) - b / (conductorTemperature + 273.15)),
  valid: { conductorTemperature: { least: -20, most: 150 } },
  source: {
    document: 'IEC 60216',
    clause: 'Arrhenius relation',
    provenance: 'memory',
    note: 'the activation energy of the material over the Boltzmann constant: 1 eV is 11 604.5 K',
  },
});

/** A day of a buried cable that repeats. @inline */
export interface CableDay {
  readonly cable: BuriedCable;
  /** Current in each hour of the day, A: 24 numbers from 0, not all of them 0. */
  readonly currents: readonly Amperes[];
  /** Slope of the endurance of its insulation, K, from tests of the material; the rule of ten kelvins where it is absent. */
  readonly activationTemperature?: Kelvins;
}

/**
 * Mean rate at which the insulation of a buried cable ages in a day that repeats, over that of its steady capacity for ever: each
 * hour at the warmer of its ends. Guidance for a load that varies, such as a night's charging: it permits no higher temperature. Heat conduction.
 */
export const ageingOfCableDay = /* @__PURE__ */ procedure({
  id: 'cable-ageing-day',
  title: 'Rate of ageing of the insulation of a buried cable over a day',
  output: 'ageingRate',
  method:
    'temperature at the end of each hour by the step responses of a hundred days; mean of the rates at the warmer ends',
  source: {
    document: 'Heat conduction',
    clause: 'superposition of steps, with the rule of ten kelvins or the Arrhenius relation',
    provenance: 'derived',
  },
  run: ({ cable, currents, activationTemperature }: CableDay) => {
    refuse([...cableProblems(cable), ...loadProblems(currents).map((p) => ({ ...p, path: ['currents'] }))]);
    const peak = (Math.max(...currents) / cable.steadyCapacity) ** 2;
    const response = (t: number) => conductorAttained(cable.body, t);
    const ends = risesOf(lossOrdinates(currents), ALL_HOURS, response).map((rise) => temperatureAt(cable, peak * rise));
    const { operatingTemperature } = cable;
    const rates = ends.map((end, hour) => {
      const conductorTemperature = celsius(Math.max(end, ends[(hour + 23) % 24] as number));
      return activationTemperature === undefined
        ? evaluate(ageingByTenKelvin, { conductorTemperature, operatingTemperature })
        : evaluate(ageingByArrhenius, { conductorTemperature, operatingTemperature, activationTemperature });
    });
    return rates.reduce((sum, r) => sum + r, 0) / 24;
  },
});
