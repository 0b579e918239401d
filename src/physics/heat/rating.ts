import { added, formula } from '../../core/index.js';

/** Rise of the conductor that is permitted above the air. Heat balance. */
export const riseAboveAir = /* @__PURE__ */ added({
  id: 'permissible-rise-in-air',
  title: 'Permitted rise of the conductor above the air',
  plus: ['operatingTemperature'],
  minus: ['ambientTemperature'],
  output: 'permissibleRise',
  source: { document: 'Heat balance', provenance: 'definition' },
});

/** Rise of the conductor that is permitted above the ground. Heat balance. */
export const riseAboveGround = /* @__PURE__ */ added({
  id: 'permissible-rise-in-ground',
  title: 'Permitted rise of the conductor above the ground',
  plus: ['operatingTemperature'],
  minus: ['groundTemperature'],
  output: 'permissibleRise',
  source: { document: 'Heat balance', provenance: 'definition' },
});

/** Factor for another temperature of air or ground than a table's: the roots of the permitted rises. Heat balance. */
export const ambientFactorOfRises = /* @__PURE__ */ formula({
  id: 'ambient-factor-of-rises',
  title: 'Factor for another temperature than that of a table',
  inputs: ['permissibleRise', 'referenceRise'],
  output: 'ambientFactor',
  expression: 'sqrt(permissibleRise / referenceRise)',
  compute: ({ permissibleRise, referenceRise }) => Math.sqrt(permissibleRise / referenceRise),
  source: { document: 'Heat balance', clause: 'thermal resistances taken as constant', provenance: 'derived' },
});

/** Current at which the conductor reaches its permitted rise. IEC 60287-1-1. */
export const balancedCapacity = /* @__PURE__ */ formula({
  id: 'balanced-capacity',
  title: 'Current at which the conductor reaches its permitted rise',
  inputs: [
    'permissibleRise',
    'acResistancePerMetre',
    'loadedCores',
    'armourLossFactor',
    'coreThermalResistance',
    'beddingThermalResistance',
    'sheathThermalResistance',
    'externalThermalResistance',
  ],
  output: 'computedCapacity',
  expression:
    'sqrt(permissibleRise / (acResistancePerMetre * (coreThermalResistance + loadedCores * beddingThermalResistance + loadedCores * (1 + armourLossFactor) * (sheathThermalResistance + externalThermalResistance))))',
  compute: (v) =>
    Math.sqrt(
      v.permissibleRise /
        (v.acResistancePerMetre *
          (v.coreThermalResistance +
            v.loadedCores * v.beddingThermalResistance +
            v.loadedCores * (1 + v.armourLossFactor) * (v.sheathThermalResistance + v.externalThermalResistance))),
    ),
  source: {
    document: 'IEC 60287-1-1',
    clause: 'permissible current rating of cables, alternating current',
    provenance: 'one-source',
    note: 'no dielectric loss and no loss in a metal sheath: low voltage; steady load, no sun, soil that does not dry out; stands in an open library of IEC 60287 that cites its clauses, there with dielectric and sheath losses',
  },
});

/** Temperature of the surface of a cable at its computed capacity. Heat balance. */
export const surfaceTemperatureOf = /* @__PURE__ */ formula({
  id: 'surface-temperature',
  title: 'Temperature of the surface of a cable at its computed capacity',
  inputs: ['operatingTemperature', 'permissibleRise', 'innerThermalResistance', 'externalThermalResistance'],
  output: 'surfaceTemperature',
  signed: true,
  expression:
    'operatingTemperature - permissibleRise * innerThermalResistance / (innerThermalResistance + externalThermalResistance)',
  compute: (v) =>
    v.operatingTemperature -
    (v.permissibleRise * v.innerThermalResistance) / (v.innerThermalResistance + v.externalThermalResistance),
  source: { document: 'Heat balance', provenance: 'definition' },
});

/** Temperature of the armour of a cable at its computed capacity. Heat balance. */
export const armourTemperatureOf = /* @__PURE__ */ formula({
  id: 'armour-temperature',
  title: 'Temperature of the armour of a cable at its computed capacity',
  inputs: [
    'operatingTemperature',
    'permissibleRise',
    'innerThermalResistance',
    'sheathThermalResistance',
    'externalThermalResistance',
  ],
  output: 'balancedArmourTemperature',
  signed: true,
  expression:
    'operatingTemperature - permissibleRise * (innerThermalResistance - sheathThermalResistance) / (innerThermalResistance + externalThermalResistance)',
  compute: (v) =>
    v.operatingTemperature -
    (v.permissibleRise * (v.innerThermalResistance - v.sheathThermalResistance)) /
      (v.innerThermalResistance + v.externalThermalResistance),
  source: { document: 'Heat balance', provenance: 'definition' },
});
