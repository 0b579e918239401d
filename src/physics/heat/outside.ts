import { citation, type Known, type Sheet, type Vocabulary } from '../../core/index.js';
import { type Celsius, type Millimetres, millimetres } from '../../units/index.js';
import { dissipationOf, freeAirResistance, surfaceRiseOf, surfaceShareOf } from './air.js';
import { type HeatCase, neighboursOf, type Soil } from './cable.js';
import { ductedResistance, ductGapResistance, ductResistance, mediumTemperatureOf } from './duct.js';
import { buriedResistance, groundResistance, neighbourResistance } from './ground.js';
import { build, shell } from './inside.js';
import { airDissipation } from './tables/air-dissipation.js';
import { ductGap } from './tables/duct-gap.js';

/** Soil around a cable or duct of a diameter, and what the neighbours add. */
function soil(sheet: Sheet, heat: HeatCase, at: Soil, diameter: Millimetres) {
  const by = 'survey of the ground';
  const around = sheet.part('Soil around it');
  around.step(buriedResistance, {
    soilResistivity: around.given('soilResistivity', at.soilResistivity, by),
    burialDepth: around.given('burialDepth', at.burialDepth, by),
    cableDiameter: around.given('cableDiameter', diameter, build),
  });
  const neighbours = neighboursOf(heat).map((n, i) => {
    const part = sheet.part(`Neighbour ${i + 1}`);
    part.step(neighbourResistance, {
      soilResistivity: part.given('soilResistivity', at.soilResistivity, by),
      burialDepth: part.given('burialDepth', at.burialDepth, by),
      neighbourOffset: part.given('neighbourOffset', n.offset, by),
      neighbourDepth: part.given('neighbourDepth', n.depth, by),
    });
    return part;
  });
  return {
    soilThermalResistance: sheet.gather('sum', 'soilThermalResistance', 'soilThermalResistance', [around]),
    neighboursThermalResistance: sheet.gather(
      'sum',
      'neighbourThermalResistance',
      'neighboursThermalResistance',
      neighbours,
    ),
  };
}

/** @internal T_4: outside the cable. */
export function outside(
  sheet: Sheet,
  heat: HeatCase,
  permissibleRise: Known<Vocabulary['permissibleRise']>,
  innerThermalResistance: Known<Vocabulary['innerThermalResistance']>,
) {
  const { cable, surroundings } = heat;
  if (surroundings.where === 'ground')
    return sheet.step(groundResistance, soil(sheet, heat, surroundings, cable.overallDiameter));
  if (surroundings.where === 'duct') {
    const { kind, wall, innerDiameter, outerDiameter } = surroundings.duct;
    const layer = { material: wall, thickness: millimetres((outerDiameter - innerDiameter) / 2) };
    const part = shell(sheet.part('Wall of the duct'), layer, innerDiameter, 'build of the duct');
    const around = soil(sheet, heat, surroundings, outerDiameter);
    const ductThermalResistance = sheet.step(ductResistance, {
      wallThermalResistance: sheet.gather('sum', 'shellThermalResistance', 'wallThermalResistance', [part]),
      ...around,
    });
    const constant = (name: 'U' | 'V' | 'Y') => ductGap.get({ constant: name, duct: kind });
    const by = `${citation(ductGap.source)}, ${kind}`;
    const gap = {
      ductGapBase: sheet.given('ductGapBase', constant('U'), by),
      ductGapOffset: sheet.given('ductGapOffset', constant('V'), by),
      ductGapSlope: sheet.given('ductGapSlope', constant('Y'), by),
      cableDiameter: sheet.given('cableDiameter', cable.overallDiameter, build),
    };
    const mediumTemperature = sheet.step(mediumTemperatureOf, {
      groundTemperature: sheet.latest('groundTemperature') as Known<Celsius>,
      permissibleRise,
      innerThermalResistance,
      ductThermalResistance,
      ...gap,
    });
    return sheet.step(ductedResistance, {
      gapThermalResistance: sheet.step(ductGapResistance, { ...gap, mediumTemperature }),
      ductThermalResistance,
    });
  }
  const constant = (name: 'Z' | 'E' | 'g') => airDissipation.get({ constant: name, formation: surroundings.formation });
  const by = `${citation(airDissipation.source)}, ${surroundings.formation}`;
  const cableDiameter = sheet.given('cableDiameter', cable.overallDiameter, build);
  const dissipation = sheet.step(dissipationOf, {
    dissipationSlope: sheet.given('dissipationSlope', constant('Z'), by),
    dissipationBase: sheet.given('dissipationBase', constant('E'), by),
    dissipationExponent: sheet.given('dissipationExponent', constant('g'), by),
    cableDiameter,
  });
  const surfaceShare = sheet.step(surfaceShareOf, { cableDiameter, dissipation, innerThermalResistance });
  const surfaceRise = sheet.step(surfaceRiseOf, { permissibleRise, surfaceShare });
  return sheet.step(freeAirResistance, { cableDiameter, dissipation, surfaceRise });
}
