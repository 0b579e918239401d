import type { Gap } from '../../core/index.js';
import type { Cable } from '../../installation/index.js';
import { armourResistances } from '../../products/bs5467/armour.js';
import { type Celsius, celsius } from '../../units/index.js';

/** Change of the resistance of copper and aluminium with temperature, 1/K. */
export const metalCoefficient = 0.004;
/** Where it comes from. */
export const metalCoefficientBy = 'linear coefficient of the trade, 0.004 per kelvin for copper and aluminium';
/** Change of the resistance of steel with temperature, 1/K. */
export const steelCoefficient = 0.0045;
/** Where it comes from. */
export const steelCoefficientBy = 'BS 5467 data, 0.0045 per kelvin for steel, from memory';

/** Reactance of one core, Ω/m. */
export const coreReactance = 0.08e-3;
/** Where it comes from. */
export const coreReactanceBy = 'IEC 60364-5-52 Annex G, 0.08 mΩ/m for each conductor, from memory';
/** Reactance of a core and the armour that the fault returns by, Ω/m. */
export const armourReactance = 0.48e-3;
/** Where it comes from. */
export const armourReactanceBy = 'core 0.08 mΩ/m and armour 0.4 mΩ/m, a rule of thumb from memory';
/** Area above which the reactance of a cable counts, mm². */
export const reactiveAbove = 16;
/** Why it does not up to there. */
export const notReactiveBy = 'neglected up to 16 mm², as the tables of voltage drop do';

/** Largest operating temperature of an insulation, °C. */
export const operatingTemperatureOf = (insulation: Cable['insulation']): Celsius =>
  celsius(insulation === 'thermosetting-90' ? 90 : insulation === 'thermosetting-60' ? 60 : 70);

/** Whether a conductor is there once, however many cables lie in parallel. */
export const isThereOnce = (
  { protective, parallel = 1 }: Cable,
  conductor: 'line' | 'protective' | 'armour' | 'conduit' | 'earthed armour',
): boolean => parallel > 1 && (conductor === 'conduit' || (conductor === 'protective' && /separate$/.test(protective)));

/** Temperature of armour or conduit in normal operation, °C: as Tables 54.4, 54.5 and A.54.5 of k assume it. */
export const steelTemperatureOf = (insulation: Cable['insulation'], steel: 'armour' | 'conduit'): Celsius => {
  const hotter = insulation === 'thermosetting-90';
  return celsius(steel === 'conduit' ? (hotter ? 60 : 50) : hotter ? 80 : 60);
};

/** Whether the figures of an armour are recalled ones that have to be accepted. */
export function armourFromMemory(cable: Cable): boolean {
  if (!cable.protective.startsWith('armour') || cable.protectiveImpedance) return false;
  const seen = armourResistances.provenanceOf ?? {};
  return cable.area.state !== 'known' || seen[String(cable.area.value)] !== 'one-source';
}

/** What is missing while they are not accepted. */
export const acceptArmour: Gap = {
  kind: 'fact',
  fact: 'resistance of the armour',
  obtain: 'from the maker of the cable; for this size the figure here is recalled (grade C) and has to be accepted',
};
