import { by, choose, derive, set } from '../../../calculation/index.js';
import { ohmMillimetres, ohmsPerMetre, ratio, volts } from '../../../units/index.js';
import { coreReactance, coreReactanceBy } from '../../iec-family/conductor-constants.js';
import { type DropRules, voltageDropOf } from '../../iec-family/drop.js';
import { dropRateAtWorstAngle } from '../../iec-family/voltage-drop.js';
import { dropRateOfReactance, dropRateOfResistivity } from '../annex-g.js';
import { clauses } from '../clauses.js';

/** Line and neutral there and back, or the drop between lines of a balanced system. */
const wayFactor = () =>
  choose('phaseSystem', {
    'single-phase': set(ratio(2), 'go and return'),
    'three-phase': set(ratio(Math.sqrt(3)), 'balanced, between lines'),
  });
const material = /* @__PURE__ */ derive(['cable'], ({ cable }) => cable.material);
const service = 'IEC 60364-5-52:2009 Annex G: 1.25 times the resistivity at 20 °C';

/** Drop of the resistance of a cable, whatever its insulation and the way of laying. */
const resistive = () =>
  by(dropRateOfResistivity, 'Annex G', {
    wayFactor: wayFactor(),
    // in Ω·mm²/m 0.0225 and 0.036
    serviceResistivity: choose(material, {
      copper: set(ohmMillimetres(0.0225 / 1000), service),
      aluminium: set(ohmMillimetres(0.036 / 1000), service),
    }),
  });
const reactive = () =>
  by(dropRateOfReactance, 'Annex G', {
    wayFactor: wayFactor(),
    reactancePerMetre: set(ohmsPerMetre(coreReactance), coreReactanceBy),
  });

const rules = (): DropRules => ({
  rate: (part) =>
    part === 'r'
      ? resistive()
      : part === 'x'
        ? reactive()
        : by(dropRateAtWorstAngle, 'Annex G', {
            resistiveRate: resistive(),
            reactiveRate: reactive(),
            temperatureCorrection: set(ratio(1), 'resistivity of normal service'),
          }),
  formation: () => 'flat-touching',
  // the parts follow from a formula, for every size
  wholeRateUpTo: 0,
  limit: {
    lighting: 0.03,
    other: 0.05,
    by: 'IEC 60364-5-52:2009 Table G.52.1, installations fed from a public network',
  },
  supply: { least: volts(207), most: volts(253), by: 'IEC 60038: 230 V +10 % -10 %, from memory' },
  clauses: { drop: 'Annex G', limit: '525' },
  ...clauses(),
});

/** Voltage drop from the origin. IEC 60364-5-52 525, Annex G. */
export const voltageDrop = () => voltageDropOf(rules());
