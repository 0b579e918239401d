import { table } from '../../core/index.js';
import { type GroupMethod, notStated } from '../../demand/many/dwellings.js';
import { applicable } from '../../demand/method.js';
import { ratio, watts } from '../../units/index.js';
import { afterDiversityGroup } from './after-diversity.js';

/** Customary demand of British dwellings after diversity, by heating. British network design practice. */
export const customaryDwellingDemand = /* @__PURE__ */ table({
  id: 'gb-network/dwelling-demand',
  title: 'Customary demand of dwellings after diversity, by heating',
  axes: [
    { name: 'supply', labels: ['230/400 V'] },
    { name: 'dwellingHeating', labels: ['not-electric', 'direct-electric', 'night-storage', 'heat-pump'] },
  ],
  rows: [
    ['not-electric', 2],
    ['direct-electric', 5],
    ['night-storage', 7],
    ['heat-pump', 3.7],
  ],
  cell: 'afterDiversityDemand',
  unit: 'W',
  per: 0.001,
  printed: 'kW',
  source: {
    document: 'British network design practice',
    provenance: 'memory',
    note: 'recalled ranges over several operators, the larger where they differ; no table of an operator could be read',
  },
  notes: [
    'Storage heating: a flat, by night. Heat pump: 1.7 kW of field trials on top of the dwelling without electric heating.',
    'The figure of the operator goes before it.',
  ],
});

/** Constant term that goes with these figures, W: the larger of the two that are recalled, 8 kW and 12 kW. */
const CONSTANT = 12_000;

/** Demand after diversity of many dwellings by customary British figures. */
export const customaryAfterDiversity: GroupMethod = {
  id: 'customary-after-diversity',
  title: 'Demand after diversity, customary British figures',
  source: {
    document: 'British network design practice',
    clause: 'N·ADMD + P_c, P_c = 12 kW',
    provenance: 'memory',
    note: 'recalled figures of street mains; the operator’s own go before them',
  },
  assumption:
    'Recalled figures that operators take for street mains, for a first design only: ask the operator for its own, or measure. Summer and winter, night and day are not told apart.',
  countBands: false,
  unit: 'W',
  applies: (g) =>
    g.heating === undefined
      ? {
          verdict: 'not-determined',
          because: 'how the dwellings are heated is not stated',
          gaps: [{ kind: 'fact', fact: 'heating' }],
        }
      : applicable,
  demand: (g, sheet) => {
    const dwellings = sheet.given('dwellings', ratio(g.dwellings));
    const supply = sheet.label('supply', '230/400 V');
    const dwellingHeating = sheet.label('dwellingHeating', g.heating ?? notStated('heating'));
    const afterDiversityDemand = sheet.look(customaryDwellingDemand, { supply, dwellingHeating });
    const groupConstant = sheet.given('groupConstant', watts(CONSTANT), 'customary, from memory');
    const unbalanceAllowance = sheet.given(
      'unbalanceAllowance',
      ratio(1),
      'none: the line with most dwellings is taken',
    );
    return sheet.step(afterDiversityGroup, { dwellings, afterDiversityDemand, groupConstant, unbalanceAllowance });
  },
};
