import { by, derive, type Line, set, weigh, when } from '../../../calculation/index.js';
import { type CheckResult, isMissing } from '../../../core/index.js';
import type { Cable } from '../../../installation/index.js';
import { adiabaticFactorOf } from '../../../physics/index.js';
import { materialFactors, reciprocalCoefficients } from '../../../products/iec60949/material-constants.js';
import { type Celsius, celsius } from '../../../units/index.js';
import { protectiveMetalOf } from '../../iec-family/conductors.js';
import { opened } from '../../iec-family/opened.js';
import { ofCable } from '../../iec-family/places.js';
import { table431Final, table431Initial } from '../tables/43-1.js';
import { table543Final, table543Initial } from '../tables/54-3.js';
import { table544Final, table544Initial } from '../tables/54-4.js';
import { table545Final, table545Initial } from '../tables/54-5.js';

const thermoplastic = (upTo300: boolean) => `70 °C thermoplastic, ${upTo300 ? 'up to' : 'above'} 300 mm²`;
const lineInsulationOf = ({ insulation }: Cable, upTo300: boolean) => {
  if (insulation === 'thermosetting-90') return '90 °C thermosetting (XLPE)';
  return insulation === 'thermosetting-60' ? '60 °C thermosetting (rubber)' : thermoplastic(upTo300);
};

type Temperature = Line<'lineInsulation' | 'protectiveInsulation' | 'armourInsulation', Celsius>;

/** Factor k from the material constants, with the temperatures of the table unless the real load is to be counted. */
const factor = (clause: string, metal: Line<never, string>, initial: Temperature, final: Temperature) =>
  by(adiabaticFactorOf, clause, {
    materialFactor: by(materialFactors, undefined, { property: set('value'), metal }),
    reciprocalCoefficient: by(reciprocalCoefficients, undefined, { property: set('value'), metal }),
    initialTemperature: when(
      'realLoad',
      ofCable((c) => celsius(c.options.initialTemperature ?? 0), { by: 'real load, as the options say' }),
      initial,
    ),
    finalTemperature: final,
  });

/** A start of the fault cooler than the table has it is a departure: what it lets pass is for whoever states it to show. */
export function cooler(result: CheckResult, { realLoad }: { readonly realLoad: unknown }): CheckResult {
  if (realLoad !== true || result.verdict !== 'pass') return result;
  return opened(result, [
    {
      kind: 'fact',
      fact: 'departure from the temperature of the conductors before the fault',
      obtain:
        'another temperature than that of the table is stated: that the conductors are never warmer, whatever they are loaded with later, is for the designer to show in writing',
    },
  ]);
}

/** Factor k of the line conductors, of a protective conductor in the cable, of the armour, and of conduit. BS 7671 Tables 43.1, 54.3 to 54.5. */
export const factorsK = () => {
  const line = ofCable((c) => (c.run.cable.material === 'aluminium' ? 'aluminium' : 'copper'));
  const protective = ofCable((c) => protectiveMetalOf(c.run.cable));
  const steel = set('steel');
  const ofLine = { metal: line, insulation: 'lineInsulation' } as const;
  const ofProtective = { metal: protective, insulation: 'protectiveInsulation' } as const;
  const ofArmour = { metal: steel, insulation: 'armourInsulation' } as const;
  return {
    realLoad: ofCable((c) => c.options.initialTemperature !== undefined),
    upTo300: weigh(['conductorArea'], ({ conductorArea }) => isMissing(conductorArea) || conductorArea <= 300, {
      direction: { conductorArea: -1 },
    }),
    lineInsulation: derive(['cable', 'upTo300'], ({ cable, upTo300 }) => lineInsulationOf(cable, upTo300)),
    protectiveInsulation: derive(['cable', 'upTo300'], ({ cable, upTo300 }) =>
      cable.insulation === 'thermosetting-90' ? '90 °C thermosetting' : thermoplastic(upTo300),
    ),
    armourInsulation: derive(['cable'], ({ cable }) =>
      cable.insulation === 'thermosetting-90' ? '90 °C thermosetting' : '70 °C thermoplastic',
    ),
    lineFactor: factor(
      '434.5.2',
      line,
      by(table431Initial, 'Table 43.1', ofLine),
      by(table431Final, 'Table 43.1', ofLine),
    ),
    protectiveFactor: when(
      ofCable((c) => c.run.cable.protective !== 'conduit'),
      factor(
        '543.1.3',
        protective,
        by(table543Initial, 'Table 54.3', ofProtective),
        by(table543Final, 'Table 54.3', ofProtective),
      ),
      factor('543.1.3', steel, by(table545Initial, 'Table 54.5', ofArmour), by(table545Final, 'Table 54.5', ofArmour)),
    ),
    armourFactor: factor(
      '543.1.3',
      steel,
      by(table544Initial, 'Table 54.4', ofArmour),
      by(table544Final, 'Table 54.4', ofArmour),
    ),
  };
};
