import { formula } from '../../core/index.js';
import { constantsLacking, type GroupMethod, notStated } from '../../demand/many/dwellings.js';
import { applicable } from '../../demand/method.js';

/**
 * Demand of many consumers from the energy that they use in a year. Nordic network design practice, P = k_1·W +
 * k_2·√W.
 */
export const energyToPeak = /* @__PURE__ */ formula({
  id: 'energy-to-peak',
  title: 'Peak from the energy of a year',
  inputs: ['annualEnergy', 'linearCoefficient', 'rootCoefficient'],
  output: 'groupActivePower',
  expression:
    '(linearCoefficient * (annualEnergy / kilowattHour) + rootCoefficient * sqrt(annualEnergy / kilowattHour)) * kilowatt',
  constants: { kilowattHour: [1000, 'Wh'], kilowatt: [1000, 'W'] },
  compute: ({ annualEnergy, linearCoefficient, rootCoefficient }) =>
    (linearCoefficient * (annualEnergy / 1000) + rootCoefficient * Math.sqrt(annualEnergy / 1000)) * 1000,
  source: {
    document: 'Nordic network design practice',
    clause: 'P = k_1·W + k_2·√W',
    provenance: 'memory',
    note: 'the form is recalled; both coefficients are the user’s',
  },
});

/** Peak of many dwellings from the energy of a year, with coefficients of the user's own. */
export const peakFromEnergy: GroupMethod = {
  id: 'energy-to-peak',
  title: 'Peak from the energy of a year',
  source: {
    document: 'Nordic network design practice',
    provenance: 'memory',
    note: 'the form is recalled; both coefficients are the user’s',
  },
  assumption: 'Both coefficients are the user’s; energies of all dwellings are summed first.',
  countBands: false,
  unit: 'W',
  applies: (g) => (g.energy ? applicable : constantsLacking('the coefficients')),
  demand: (g, sheet) => {
    const by = 'stated by the user';
    const annualEnergy = sheet.given('annualEnergy', g.energy?.annual ?? notStated('energy'), by);
    const linearCoefficient = sheet.given('linearCoefficient', g.energy?.linear ?? notStated('energy'), by);
    const rootCoefficient = sheet.given('rootCoefficient', g.energy?.root ?? notStated('energy'), by);
    return sheet.step(energyToPeak, { annualEnergy, linearCoefficient, rootCoefficient });
  },
};
