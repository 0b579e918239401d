import { type Name, stated, termOf } from '../core/index.js';
import { type FoundRange, type Installation, rangesIn } from '../installation/index.js';
import type { RangedFact } from './range-report.js';

/** A range in the tree, with what is known of it. */
export interface Range extends RangedFact {
  /** Whether only whole numbers make sense. */
  readonly whole: boolean;
}

/** Roles of facts by the name of their property; areas and ratings are left out: nothing is monotone in them. */
const roles: Readonly<Record<string, Name>> = {
  externalImpedance: 'externalImpedance',
  prospectiveCurrent: 'prospectiveCurrent',
  length: 'length',
  insulated: 'insulatedLength',
  current: 'designCurrent',
  setting: 'designCurrent',
  circuits: 'circuitsInGroup',
  resistance: 'electrodeResistance',
  separation: 'earthSeparation',
  thirdHarmonic: 'thirdHarmonic',
  terminalTemperature: 'terminalTemperature',
  supplyNeutral: 'supplyNeutralArea',
  breakingCapacity: 'breakingCapacity',
  conditionalRating: 'breakingCapacity',
};

function roleOf(key: string, parent: FoundRange['parent']): Name | undefined {
  const method = parent.method as { readonly value?: unknown } | undefined;
  if (key === 'ambient') return String(method?.value).startsWith('D') ? 'groundTemperature' : 'ambientTemperature';
  // the resistivity of an electrode's soil is another one
  if (key === 'soilResistivity') return method ? 'soilResistivity' : undefined;
  return roles[key];
}

/** What a fact of a tree is called: what it is, and of what; its role and unit where its name says them. */
export function called({
  key,
  parent,
  where,
}: Pick<FoundRange, 'key' | 'parent' | 'where'>): Pick<RangedFact, 'name' | 'role' | 'unit'> {
  const role = roleOf(key, parent);
  const term = role === undefined ? undefined : termOf(role);
  const what = term?.words ?? key;
  return {
    name: where ? `${what}, ${where}` : what,
    ...(role === undefined ? {} : { role }),
    ...(term === undefined ? {} : { unit: term.unit }),
  };
}

/** Facts of an installation that are known only within a range, in the order of the tree. */
export function rangesOf(installation: Installation): readonly Range[] {
  const found: Range[] = [];
  for (const one of rangesIn(installation)) {
    const { fact } = one;
    const { name, role, unit } = called(one);
    const twin = found.filter((f) => f.name === name || f.name.startsWith(`${name} (`)).length;
    found.push({
      name: twin === 0 ? name : `${name} (${twin + 1})`,
      ...stated({ role, unit }),
      least: fact.least,
      most: fact.most,
      whole: role === 'circuitsInGroup',
    });
  }
  return found;
}
