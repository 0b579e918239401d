import { formula } from '../core/index.js';

/** Power of a charge point from its current per line and the nominal voltage, unity power factor. Definition of power. */
export const chargePowerFromCurrent = /* @__PURE__ */ formula({
  id: 'charge-power-from-current',
  title: 'Charging power from current and voltage',
  inputs: ['nominalVoltage', 'chargeCurrent', 'phases'],
  output: 'availablePower',
  expression: 'nominalVoltage * chargeCurrent * phases',
  compute: ({ nominalVoltage, chargeCurrent, phases }) => nominalVoltage * chargeCurrent * phases,
  source: { document: 'Definition of power', provenance: 'definition', note: 'unity power factor, nominal voltage' },
});

/** Time to charge at constant power. Definition of energy. */
export const chargeTimeAtPower = /* @__PURE__ */ formula({
  id: 'charge-time-at-power',
  title: 'Time to charge at constant power',
  inputs: ['energyNeeded', 'availablePower', 'chargeEfficiency'],
  output: 'chargeTime',
  expression: 'energyNeeded / (availablePower * chargeEfficiency)',
  compute: ({ energyNeeded, availablePower, chargeEfficiency }) =>
    (energyNeeded / (availablePower * chargeEfficiency)) * 3600,
  source: {
    document: 'Definition of energy',
    provenance: 'definition',
    note: 'constant power; real charging slows near full',
  },
});

/** Cable to order for a route: length with waste, and a tail at each end. Common practice, no source. */
export const cableToOrder = /* @__PURE__ */ formula({
  id: 'cable-to-order',
  title: 'Cable to order for a route',
  inputs: ['length', 'wasteShare', 'terminationLength'],
  output: 'cableQuantity',
  expression: 'length * (1 + wasteShare) + 2 * terminationLength',
  compute: ({ length, wasteShare, terminationLength }) => length * (1 + wasteShare) + 2 * terminationLength,
  source: { document: 'Common practice', provenance: 'common-practice', note: 'no source' },
});

/** Fixings along a stretch, before rounding up. Common practice, no source. */
export const fixingsAlong = /* @__PURE__ */ formula({
  id: 'fixings-along',
  title: 'Fixings along a stretch',
  inputs: ['length', 'fixingSpacing'],
  output: 'count',
  expression: 'length / fixingSpacing + 1',
  compute: ({ length, fixingSpacing }) => length / fixingSpacing + 1,
  source: { document: 'Common practice', provenance: 'common-practice', note: 'no source' },
});
