import { formula, relation } from '../../core/index.js';
import { CalculationError } from '../../units/index.js';

/** Heat that a cable gives to free air at 1 K. IEC 60287-2-1. */
export const dissipationOf = /* @__PURE__ */ formula({
  id: 'heat-dissipation',
  title: 'Heat that the surface of a cable gives to the air',
  inputs: ['dissipationSlope', 'dissipationBase', 'dissipationExponent', 'cableDiameter'],
  output: 'dissipation',
  expression: 'dissipationSlope / (cableDiameter / metre)^dissipationExponent + dissipationBase',
  constants: { metre: [1, 'm'] },
  compute: (v) => v.dissipationSlope / (v.cableDiameter / 1000) ** v.dissipationExponent + v.dissipationBase,
  valid: { cableDiameter: { above: 0, most: 150 } },
  source: {
    document: 'IEC 60287-2-1',
    clause: 'cables in free air, without sun',
    provenance: 'memory',
    note: 'for diameters up to 150 mm, on a wall up to 80 mm',
  },
});

/** Thermal resistance between the surface of a cable and free air. IEC 60287-2-1. */
export const freeAirResistance = /* @__PURE__ */ formula({
  id: 'free-air-thermal-resistance',
  title: 'Thermal resistance between a cable and free air',
  inputs: ['cableDiameter', 'dissipation', 'surfaceRise'],
  output: 'externalThermalResistance',
  expression: 'one / (3.141592653589793 * (cableDiameter / metre) * dissipation * (surfaceRise / kelvin)^0.25)',
  constants: { one: [1, 'K·m/W'], metre: [1, 'm'], kelvin: [1, 'K'] },
  compute: ({ cableDiameter, dissipation, surfaceRise }) =>
    1000 / (Math.PI * cableDiameter * dissipation * surfaceRise ** 0.25),
  valid: { surfaceRise: { above: 0 } },
  source: { document: 'IEC 60287-2-1', clause: 'cables in free air', provenance: 'memory' },
});

/** Ratio of the drop of temperature inside a cable in air to that outside it at a surface rise of 1 K. IEC 60287-2-1. */
export const surfaceShareOf = /* @__PURE__ */ formula({
  id: 'surface-share',
  title: 'Ratio of the temperature drops inside and outside a cable in air',
  inputs: ['cableDiameter', 'dissipation', 'innerThermalResistance'],
  output: 'surfaceShare',
  expression: '3.141592653589793 * (cableDiameter / metre) * dissipation * (innerThermalResistance / one)',
  constants: { metre: [1, 'm'], one: [1, 'K·m/W'] },
  compute: ({ cableDiameter, dissipation, innerThermalResistance }) =>
    ((Math.PI * cableDiameter) / 1000) * dissipation * innerThermalResistance,
  source: { document: 'IEC 60287-2-1', clause: 'cables in free air', provenance: 'memory' },
});

/** Rise of the surface of a cable in air at the permitted rise of its conductor. IEC 60287-2-1. */
export const surfaceRiseOf = /* @__PURE__ */ relation({
  id: 'surface-rise',
  title: 'Rise of the surface of a cable in air',
  inputs: ['permissibleRise', 'surfaceShare'],
  output: 'surfaceRise',
  terms: ['surfaceRise', 'surfaceRise * surfaceShare * (surfaceRise / kelvin)^0.25', '-permissibleRise'],
  constants: { kelvin: [1, 'K'] },
  tolerance: 1e-12,
  valid: { surfaceShare: { least: 0, most: 1e6 } },
  solve: ({ permissibleRise, surfaceShare }) => {
    // rising and convex: Newton's steps come down to the root from above and cannot leave it
    let x: number = permissibleRise;
    let residual = Number.POSITIVE_INFINITY;
    for (let i = 0; i < 60; i++) {
      const inside = surfaceShare * x ** 0.25;
      residual = x * (1 + inside) - permissibleRise;
      if (Math.abs(residual) <= 1e-14 * permissibleRise) return x;
      x -= residual / (1 + 1.25 * inside);
    }
    if (Math.abs(residual) <= 1e-12 * permissibleRise) return x;
    throw new CalculationError('not-converged', 'the rise of the surface was not found', {
      method: 'surface-rise',
      iterations: 60,
      residual,
    });
  },
  source: { document: 'IEC 60287-2-1', clause: 'cables in free air', provenance: 'memory' },
});
