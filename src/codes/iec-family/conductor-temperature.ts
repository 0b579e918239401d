import { formula, moving } from '../../core/index.js';

/** Conductor temperature at partial load, resistance taken as constant. Heat balance of the capacity tables. */
export const temperatureAtPartialLoad = /* @__PURE__ */ moving({
  id: 'temperature-at-partial-load',
  title: 'Conductor temperature at partial load, the whole group at the same share',
  moves: {
    designCurrent: 1,
    tabulatedCapacity: -1,
    groupFactor: -1,
    ambientTemperature: 1,
    operatingTemperature: 1,
  },
  output: 'conductorTemperature',
  signed: true,
  expression:
    'ambientTemperature + (designCurrent / (tabulatedCapacity * groupFactor))^2 * (operatingTemperature - reference)',
  constants: { reference: [30, '°C'] },
  compute: (v) =>
    v.ambientTemperature +
    (v.designCurrent / (v.tabulatedCapacity * v.groupFactor)) ** 2 * (v.operatingTemperature - 30),
  source: {
    document: 'Heat balance of the capacity tables',
    provenance: 'derived',
    note: 'for cables in air, reference 30 °C',
  },
});

/**
 * Conductor temperature at a share of the capacity as installed, resistance taken as constant. Heat balance of the
 * capacity tables.
 */
export const temperatureAtShareOfCapacity = /* @__PURE__ */ moving({
  id: 'temperature-at-share-of-capacity',
  title: 'Conductor temperature at a share of the capacity as installed',
  moves: { designCurrent: 'either', capacity: 'either', ambientTemperature: 'either', operatingTemperature: 1 },
  output: 'conductorTemperature',
  signed: true,
  expression: 'ambientTemperature + (designCurrent / capacity)^2 * (operatingTemperature - ambientTemperature)',
  compute: (v) =>
    v.ambientTemperature + (v.designCurrent / v.capacity) ** 2 * (v.operatingTemperature - v.ambientTemperature),
  valid: { capacity: { above: 0 } },
  source: {
    document: 'Heat balance of the capacity tables',
    provenance: 'derived',
    note: 'all factors of the stretch are in the capacity, in air or in the ground',
  },
});

/** Conductor temperature at partial load with the resistance of that temperature. Heat balance of the capacity tables. */
export const temperatureAtPartialLoadExact = /* @__PURE__ */ formula({
  id: 'temperature-at-partial-load-exact',
  title: 'Conductor temperature at partial load with the resistance of that temperature',
  inputs: ['designCurrent', 'tabulatedCapacity', 'groupFactor', 'ambientTemperature', 'operatingTemperature'],
  output: 'conductorTemperature',
  signed: true,
  expression:
    '(ambientTemperature + beta * (designCurrent / (tabulatedCapacity * groupFactor))^2 * (operatingTemperature - reference) / (beta + operatingTemperature)) / (1 - (designCurrent / (tabulatedCapacity * groupFactor))^2 * (operatingTemperature - reference) / (beta + operatingTemperature))',
  constants: { reference: [30, '°C'], beta: [230, 'K'] },
  compute: (v) => {
    const k =
      ((v.designCurrent / (v.tabulatedCapacity * v.groupFactor)) ** 2 * (v.operatingTemperature - 30)) /
      (230 + v.operatingTemperature);
    return (v.ambientTemperature + 230 * k) / (1 - k);
  },
  source: {
    document: 'Heat balance of the capacity tables',
    provenance: 'derived',
    note: 'for cables in air, reference 30 °C',
  },
});

/** Correction C_t of the tabulated drop that keeps the neighbours of a group at full load. Heat balance of the capacity tables. */
export const dropCorrectionGroupFull = /* @__PURE__ */ moving({
  id: 'drop-correction-group-full',
  title: 'Correction C_t of the tabulated drop, neighbours at full load',
  moves: {
    ambientFactor: -1,
    groupFactor: -1,
    designCurrent: 1,
    tabulatedCapacity: -1,
    operatingTemperature: 'either',
  },
  output: 'temperatureCorrection',
  expression:
    '(beta + operatingTemperature - (ambientFactor^2 * groupFactor^2 - designCurrent^2 / tabulatedCapacity^2) * (operatingTemperature - reference)) / (beta + operatingTemperature)',
  constants: { beta: [230, 'K'], reference: [30, '°C'] },
  compute: (v) =>
    (230 +
      v.operatingTemperature -
      (v.ambientFactor ** 2 * v.groupFactor ** 2 - v.designCurrent ** 2 / v.tabulatedCapacity ** 2) *
        (v.operatingTemperature - 30)) /
    (230 + v.operatingTemperature),
  source: {
    document: 'Heat balance of the capacity tables',
    provenance: 'derived',
    note: 'for cables in air, reference 30 °C, the neighbours at their capacity',
  },
});

/**
 * Correction C_t of the tabulated drop from the temperature of the conductor, the whole group at the same share of
 * load. Physics. Resistance and temperature, simplified coefficient 0.004 per kelvin at 20 °C.
 */
export const dropCorrectionAtTemperature = /* @__PURE__ */ moving({
  id: 'drop-correction-at-temperature',
  title: 'Correction C_t of the tabulated drop at a conductor temperature',
  moves: { conductorTemperature: 1, operatingTemperature: -1 },
  output: 'temperatureCorrection',
  expression: '(beta + conductorTemperature) / (beta + operatingTemperature)',
  constants: { beta: [230, 'K'] },
  compute: ({ conductorTemperature, operatingTemperature }) =>
    (230 + conductorTemperature) / (230 + operatingTemperature),
  source: {
    document: 'Resistance and temperature',
    clause: 'simplified coefficient 0.004 per kelvin at 20 °C',
    provenance: 'one-source',
  },
});
