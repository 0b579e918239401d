import { formula } from '../../core/index.js';
import { constantsLacking, type GroupMethod, notStated } from '../../demand/many/dwellings.js';
import { applicable } from '../../demand/method.js';
import { ratio } from '../../units/index.js';

/**
 * Demand of many like dwellings from their demand after diversity and a constant term, both the user's. British
 * network design practice, N·ADMD·(1 + P_c/(N·ADMD)).
 */
export const afterDiversityGroup = /* @__PURE__ */ formula({
  id: 'after-diversity-group',
  title: 'Demand after diversity with a constant term',
  inputs: ['dwellings', 'afterDiversityDemand', 'groupConstant', 'unbalanceAllowance'],
  output: 'groupActivePower',
  expression: 'unbalanceAllowance * (dwellings * afterDiversityDemand + groupConstant)',
  compute: ({ dwellings, afterDiversityDemand, groupConstant, unbalanceAllowance }) =>
    unbalanceAllowance * (dwellings * afterDiversityDemand + groupConstant),
  source: {
    document: 'British network design practice',
    clause: 'N·ADMD·(1 + P_c/(N·ADMD))',
    provenance: 'memory',
    note: 'the form is recalled; every constant is the user’s',
  },
});

/** Demand after diversity of many dwellings, with constants of the user's own. */
export const afterDiversity: GroupMethod = {
  id: 'after-diversity',
  title: 'Demand after diversity with a constant term',
  source: {
    document: 'British network design practice',
    provenance: 'memory',
    note: 'the form is recalled; every constant is the user’s',
  },
  assumption: 'Both constants and the allowance for unbalance are the user’s. Like dwellings.',
  countBands: false,
  unbalanceIncluded: true,
  unit: 'W',
  applies: (g) => (g.afterDiversity ? applicable : constantsLacking('the constants')),
  demand: (g, sheet) => {
    const own = g.afterDiversity;
    const dwellings = sheet.given('dwellings', ratio(g.dwellings));
    const by = 'stated by the user';
    const afterDiversityDemand = sheet.given('afterDiversityDemand', own?.demand ?? notStated('afterDiversity'), by);
    const groupConstant = sheet.given('groupConstant', own?.constant ?? notStated('afterDiversity'), by);
    const unbalanceAllowance = sheet.given('unbalanceAllowance', own?.unbalance ?? notStated('afterDiversity'), by);
    return sheet.step(afterDiversityGroup, { dwellings, afterDiversityDemand, groupConstant, unbalanceAllowance });
  },
};
