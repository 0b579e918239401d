import { table } from '../../core/index.js';
import type { GroupMethod } from '../../demand/many/dwellings.js';
import { applicable, notApplicable } from '../../demand/method.js';
import { ratio } from '../../units/index.js';

/** Load of a residential building by its number of dwellings, as a technical dictionary reads the curves. DIN 18015-1 Annex A. */
export const buildingLoad = /* @__PURE__ */ table({
  id: 'din18015/a1',
  title: 'Load of a residential building by number of dwellings',
  axes: [
    { name: 'waterHeating', labels: ['not-electric', 'electric'] },
    { name: 'dwellings', unit: '1', between: 'exact' },
  ],
  rows: `
    waterHeating not-electric electric
    1                    14.5       34
    2                      24       52
    3                      32       64
    4                      37       73
    5                      41       81
    6                      44       87
    7                      47       93
    8                      50       98
    9                      53      103
    10                     55      107`,
  cell: 'groupPower',
  unit: 'VA',
  per: 0.001,
  printed: 'kVA',
  source: { document: 'DIN 18015-1', clause: 'Annex A, Figure A.1', provenance: 'one-source', note: 'read off curves' },
  notes: ['Another text reads the curves differently in places (buildingLoadSecondReading).'],
});

/** Load of a residential building by its number of dwellings, as an encyclopedia reads the curves. DIN 18015-1 Annex A. */
export const buildingLoadSecondReading = /* @__PURE__ */ table({
  id: 'din18015/a1-second-reading',
  title: 'Load of a residential building by number of dwellings, second reading',
  axes: [
    { name: 'waterHeating', labels: ['not-electric', 'electric'] },
    { name: 'dwellings', unit: '1', between: 'exact' },
  ],
  rows: `
    waterHeating not-electric electric
    1                      15       34
    3                      30        -
    10                     55        -
    24                      -      140
    100                   110        -`,
  cell: 'groupPower',
  unit: 'VA',
  per: 0.001,
  printed: 'kVA',
  source: {
    document: 'DIN 18015-1',
    clause: 'Annex A, Figure A.1',
    provenance: 'one-source',
    note: '"about"; read off curves',
  },
});

/** A reading of the curves of DIN 18015-1. */
const curve = (
  id: string,
  title: string,
  table: typeof buildingLoad | typeof buildingLoadSecondReading,
): GroupMethod => ({
  id,
  title,
  source: table.source,
  assumption: 'German dwellings; numbers of dwellings between those that the text gives are not interpolated.',
  countBands: false,
  unit: 'VA',
  applies: (g) => {
    if (g.electricWaterHeating === undefined)
      return {
        verdict: 'not-determined',
        because: 'whether water is heated electrically is not stated',
        gaps: [{ kind: 'fact', fact: 'electricWaterHeating' }],
      };
    const waterHeating = g.electricWaterHeating ? 'electric' : 'not-electric';
    return table.find({ waterHeating, dwellings: ratio(g.dwellings) }) === undefined
      ? notApplicable(`the text gives no figure for ${g.dwellings} dwellings`)
      : applicable;
  },
  demand: (g, sheet) => {
    const waterHeating = sheet.label('waterHeating', g.electricWaterHeating ? 'electric' : 'not-electric');
    const dwellings = sheet.given('dwellings', ratio(g.dwellings));
    return sheet.look(table as typeof buildingLoad, { waterHeating, dwellings });
  },
});

/** Load of a residential building by the first reading of the curves of DIN 18015-1. */
export const buildingCurve: GroupMethod = /* @__PURE__ */ curve(
  'din18015-curve',
  'Curve of DIN 18015-1, first reading',
  buildingLoad,
);
/** Load of a residential building by the second reading of the curves of DIN 18015-1. */
export const buildingCurveSecondReading: GroupMethod = /* @__PURE__ */ curve(
  'din18015-curve-second',
  'Curve of DIN 18015-1, second reading',
  buildingLoadSecondReading,
);
