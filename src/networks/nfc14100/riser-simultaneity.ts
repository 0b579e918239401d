import { table } from '../../core/index.js';
import { type GroupMethod, notStated } from '../../demand/many/dwellings.js';
import { riserDemand } from '../../demand/many/formulas.js';
import { applicable, notApplicable } from '../../demand/method.js';
import { ratio } from '../../units/index.js';

/** Simultaneity of dwellings on one riser by their number. NF C 14-100. */
export const riserSimultaneity = /* @__PURE__ */ table({
  id: 'nfc14100/riser',
  title: 'Simultaneity of dwellings on one riser',
  axes: [
    { name: 'supply', labels: ['230/400 V'] },
    {
      name: 'dwellingBand',
      labels: ['2-4', '5-9', '10-14', '15-19', '20-24', '25-29', '30-34', '35-39', '40-49', '50+'],
    },
  ],
  rows: [
    ['2-4', 1],
    ['5-9', 0.78],
    ['10-14', 0.63],
    ['15-19', 0.53],
    ['20-24', 0.49],
    ['25-29', 0.46],
    ['30-34', 0.44],
    ['35-39', 0.42],
    ['40-49', 0.41],
    ['50+', 0.4],
  ],
  cell: 'simultaneityFactor',
  unit: '1',
  source: {
    document: 'NF C 14-100',
    clause: 'as reproduced in an installation handbook, Table A10',
    provenance: 'one-source',
    note: 'two digits of the scan repaired, recalled figures agree',
  },
  notes: ['With storage heating 0.8 whatever the number (one text).'],
});

/** The band of the print that a number of dwellings falls in. */
const bandOf = (n: number) =>
  n < 2
    ? undefined
    : n < 5
      ? '2-4'
      : n < 10
        ? '5-9'
        : n < 15
          ? '10-14'
          : n < 20
            ? '15-19'
            : n < 25
              ? '20-24'
              : n < 30
                ? '25-29'
                : n < 35
                  ? '30-34'
                  : n < 40
                    ? '35-39'
                    : n < 50
                      ? '40-49'
                      : '50+';

/** Demand of dwellings on a riser by the table of NF C 14-100. */
export const riserMethod: GroupMethod = {
  id: 'nfc14100-riser',
  title: 'Simultaneity of dwellings on a riser, NF C 14-100',
  source: {
    document: 'NF C 14-100',
    clause: 'as reproduced in an installation handbook, Table A10',
    provenance: 'one-source',
  },
  assumption:
    'French consumers at 230/400 V. The factor steps with the number, so that one more dwelling can lower the demand. With storage heating 0.8 whatever the number.',
  countBands: true,
  unit: 'VA',
  applies: (g) =>
    g.each === undefined
      ? notApplicable('the demand of one dwelling is not stated')
      : g.dwellings < 2
        ? notApplicable('the table begins at 2 dwellings')
        : g.storageHeating === undefined
          ? {
              verdict: 'not-determined',
              because: 'whether there is storage heating is not stated',
              gaps: [{ kind: 'fact', fact: 'storageHeating' }],
            }
          : applicable,
  demand: (g, sheet) => {
    const dwellings = sheet.given('dwellings', ratio(g.dwellings));
    const dwellingPower = sheet.given('dwellingPower', g.each ?? notStated('each'));
    if (g.storageHeating) {
      const simultaneityFactor = sheet.given('simultaneityFactor', ratio(0.8), 'NF C 14-100, storage heating');
      return sheet.step(riserDemand, { dwellings, dwellingPower, simultaneityFactor });
    }
    const supply = sheet.label('supply', '230/400 V');
    const dwellingBand = sheet.label('dwellingBand', bandOf(g.dwellings) ?? notStated('dwellings'));
    const simultaneityFactor = sheet.look(riserSimultaneity, { supply, dwellingBand });
    return sheet.step(riserDemand, { dwellings, dwellingPower, simultaneityFactor });
  },
};
