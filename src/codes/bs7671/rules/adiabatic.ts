import type { Known, Sheet } from '../../../core/index.js';
import type { Cable } from '../../../installation/index.js';
import { adiabaticFactorOf } from '../../../physics/index.js';
import { voltageFactors } from '../../../products/iec60909/voltage-factors.js';
import { materialFactors, reciprocalCoefficients } from '../../../products/iec60949/material-constants.js';
import type { AdiabaticFactor } from '../../../units/index.js';
import type { FactorCase, WithstandFigures } from '../../iec-family/withstand.js';
import type { CircuitCase } from '../../wiring-code.js';
import { table431Final, table431Initial } from '../tables/43-1.js';
import { table543Final, table543Initial } from '../tables/54-3.js';
import { table544Final, table544Initial } from '../tables/54-4.js';
import { fuseCurrentOf } from './fuses.js';

const upTo300 = (cable: Cable) => cable.area.state !== 'known' || cable.area.value <= 300;

/** Factor k from the material constants, with the temperatures of the table unless the real load is to be counted. */
function factor(sheet: Sheet, cable: Cable, of: FactorCase, circuit: CircuitCase): Known<AdiabaticFactor> {
  const part = sheet.part('Factor k');
  const property = part.label('property', 'value');
  const hot = (table: () => Known<number>) => {
    const option = circuit.options.initialTemperature;
    return option === undefined ? table() : part.given('initialTemperature', option, 'real load, as the options say');
  };
  let metal: 'copper' | 'aluminium' | 'steel';
  if (of === 'armour' || of === 'conduit') {
    metal = 'steel';
    part.label('metal', metal);
    const insulation = part.label(
      'insulation',
      cable.insulation === 'thermosetting-90' ? '90 °C thermosetting' : '70 °C thermoplastic',
    );
    hot(() => part.look(table544Initial, { metal: 'steel', insulation }));
    part.look(table544Final, { metal: 'steel', insulation });
  } else {
    const own = of === 'line' ? cable.material : cable.protectiveMaterial;
    metal = own === 'aluminium' ? 'aluminium' : 'copper';
    part.label('metal', metal);
    const thermoplastic = upTo300(cable) ? '70 °C thermoplastic, up to 300 mm²' : '70 °C thermoplastic, above 300 mm²';
    if (of === 'line') {
      const insulation = part.label(
        'insulation',
        cable.insulation === 'thermosetting-90'
          ? '90 °C thermosetting (XLPE)'
          : cable.insulation === 'thermosetting-60'
            ? '60 °C thermosetting (rubber)'
            : thermoplastic,
      );
      const keys = { metal: metal as 'copper', insulation } as const;
      hot(() => part.look(table431Initial, keys));
      part.look(table431Final, keys);
    } else {
      const insulation = part.label(
        'insulation',
        cable.insulation === 'thermosetting-90' ? '90 °C thermosetting' : thermoplastic,
      );
      const keys = { metal: metal as 'copper', insulation } as const;
      hot(() => part.look(table543Initial, keys));
      part.look(table543Final, keys);
    }
  }
  const materialFactor = part.look(materialFactors, { property, metal });
  const reciprocalCoefficient = part.look(reciprocalCoefficients, { property, metal });
  part.step(adiabaticFactorOf, {
    materialFactor,
    reciprocalCoefficient,
    initialTemperature: part.latest('initialTemperature') as never,
    finalTemperature: part.latest('finalTemperature') as never,
  });
  return sheet.gather('sum', 'adiabaticFactor', 'adiabaticFactor', [part]);
}

/**
 * What BS 7671 says of thermal withstand.
 * @param circuit the circuit, for its options
 */
export const withstandFigures = (circuit: CircuitCase): WithstandFigures => ({
  factor,
  fuseCurrent: fuseCurrentOf(circuit),
  voltageFactors: {
    most: [
      voltageFactors.get({ case: 'most', tolerance: '+10 %' }),
      'IEC 60909-0 Table 1, largest, supply tolerance +10 %',
    ],
    least: [0.95, 'BS 7671 411.4.4, C_min'],
  },
});
