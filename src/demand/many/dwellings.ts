import { type Gap, type Known, missing, type Sheet, type Source, silent } from '../../core/index.js';
import { buildingLoad, buildingLoadSecondReading } from '../../guidance/din18015/building-load.js';
import { riserSimultaneity } from '../../networks/nfc14100/riser-simultaneity.js';
import {
  invalidInput,
  type Problem,
  type Ratio,
  ratio,
  type VoltAmperes,
  type WattHours,
  type Watts,
} from '../../units/index.js';
import type { Applicability } from '../method.js';
import { applicable, notApplicable } from '../method.js';
import { afterDiversityGroup, energyToPeak, riserDemand, rootCoincidence } from './formulas.js';

/** Like dwellings on one riser or in one building. */
export interface DwellingGroup {
  /** Number of dwellings, whole, 1 and up. */
  readonly dwellings: number;
  /** Demand or contracted power of one dwelling, VA. */
  readonly each?: VoltAmperes;
  readonly electricWaterHeating?: boolean;
  readonly storageHeating?: boolean;
  /** Constants of the user's own for demand after diversity; there are no built-in ones. */
  readonly afterDiversity?: {
    /** Demand of one of very many dwellings, W. */
    readonly demand: Watts;
    /** Constant term, W. */
    readonly constant: Watts;
    /** Allowance for unbalance, 1 and up. */
    readonly unbalance: Ratio;
  };
  /** Constants of the user's own for a coincidence that falls with the root of the number. */
  readonly coincidence?: {
    /** Largest demand of one dwelling, W. */
    readonly largest: Watts;
    /** Coincidence of very many, 0 to 1. */
    readonly limit: Ratio;
  };
  /** Energy and coefficients of the user's own. */
  readonly energy?: {
    /** Energy of all dwellings in a year, Wh. */
    readonly annual: WattHours;
    /** Coefficient k_1, kW per kWh. */
    readonly linear: Ratio;
    /** Coefficient k_2, kW per root of kWh. */
    readonly root: Ratio;
  };
}

/** A method for many dwellings: a value. */
export interface GroupMethod {
  readonly id: string;
  readonly title: string;
  readonly source: Source;
  readonly assumption: string;
  /** Whether its factors step with the number, so that one more dwelling can lower the demand. */
  readonly countBands: boolean;
  /** Whether the figure is apparent (VA) or active power (W). */
  readonly unit: 'VA' | 'W';
  /** Whether it may be used. */
  applies(group: DwellingGroup): Applicability;
  /** Demand of the group. */
  demand(group: DwellingGroup, sheet: Sheet): Known<number>;
}

/** What one method says of a group. */
export interface GroupResult {
  readonly method: string;
  readonly title: string;
  readonly source: Source;
  readonly assumption: string;
  readonly verdict: Applicability['verdict'];
  readonly because?: string;
  readonly gaps?: readonly Gap[];
  /** Demand in the unit of the method. */
  readonly demand?: Known<number>;
  readonly unit: 'VA' | 'W';
}

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

const none = (fact: string) => missing({ kind: 'fact', fact, obtain: 'state it' });
const constantsLacking = (what: string): Applicability =>
  notApplicable(`${what} are the user’s, none is built in, and none was handed over`);

/** The sum of all dwellings, no diversity. */
const sumOfDwellings: GroupMethod = {
  id: 'sum-of-dwellings',
  title: 'Sum of all dwellings, no diversity',
  source: { document: 'sum', provenance: 'definition' },
  assumption: 'Every dwelling takes its full demand at once: an upper bound.',
  countBands: false,
  unit: 'VA',
  applies: (g) => (g.each === undefined ? notApplicable('the demand of one dwelling is not stated') : applicable),
  demand: (g, sheet) => {
    const dwellings = sheet.given('dwellings', ratio(g.dwellings));
    const dwellingPower = sheet.given('dwellingPower', g.each ?? none('each'));
    const simultaneityFactor = sheet.given('simultaneityFactor', ratio(1), 'no diversity');
    return sheet.step(riserDemand, { dwellings, dwellingPower, simultaneityFactor });
  },
};

/** The riser table of NF C 14-100. */
const riserTable: GroupMethod = {
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
    const dwellingPower = sheet.given('dwellingPower', g.each ?? none('each'));
    if (g.storageHeating) {
      const simultaneityFactor = sheet.given('simultaneityFactor', ratio(0.8), 'NF C 14-100, storage heating');
      return sheet.step(riserDemand, { dwellings, dwellingPower, simultaneityFactor });
    }
    const supply = sheet.label('supply', '230/400 V');
    const dwellingBand = sheet.label('dwellingBand', bandOf(g.dwellings) ?? none('dwellings'));
    const simultaneityFactor = sheet.look(riserSimultaneity, { supply, dwellingBand });
    return sheet.step(riserDemand, { dwellings, dwellingPower, simultaneityFactor });
  },
};

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

/** Demand after diversity. */
const afterDiversity: GroupMethod = {
  id: 'after-diversity',
  title: 'Demand after diversity with a constant term',
  source: {
    document: 'British network design practice',
    provenance: 'memory',
    note: 'the form is recalled; every constant is the user’s',
  },
  assumption: 'Both constants and the allowance for unbalance are the user’s. Like dwellings.',
  countBands: false,
  unit: 'W',
  applies: (g) => (g.afterDiversity ? applicable : constantsLacking('the constants')),
  demand: (g, sheet) => {
    const own = g.afterDiversity;
    const dwellings = sheet.given('dwellings', ratio(g.dwellings));
    const by = 'stated by the user';
    const afterDiversityDemand = sheet.given('afterDiversityDemand', own?.demand ?? none('afterDiversity'), by);
    const groupConstant = sheet.given('groupConstant', own?.constant ?? none('afterDiversity'), by);
    const unbalanceAllowance = sheet.given('unbalanceAllowance', own?.unbalance ?? none('afterDiversity'), by);
    return sheet.step(afterDiversityGroup, { dwellings, afterDiversityDemand, groupConstant, unbalanceAllowance });
  },
};

/** Coincidence by the root of the number. */
const byRoot: GroupMethod = {
  id: 'root-coincidence',
  title: 'Coincidence that falls with the root of the number',
  source: {
    document: 'network design practice',
    provenance: 'memory',
    note: 'the form is recalled; every constant is the user’s',
  },
  assumption: 'Both constants are the user’s. Like dwellings.',
  countBands: false,
  unit: 'W',
  applies: (g) => (g.coincidence ? applicable : constantsLacking('the constants')),
  demand: (g, sheet) => {
    const dwellings = sheet.given('dwellings', ratio(g.dwellings));
    const by = 'stated by the user';
    const largestPower = sheet.given('largestPower', g.coincidence?.largest ?? none('coincidence'), by);
    const coincidenceLimit = sheet.given('coincidenceLimit', g.coincidence?.limit ?? none('coincidence'), by);
    return sheet.step(rootCoincidence, { dwellings, largestPower, coincidenceLimit });
  },
};

/** Peak from the energy of a year. */
const byEnergy: GroupMethod = {
  id: 'energy-to-peak',
  title: 'Peak from the energy of a year',
  source: {
    document: 'Nordic network design practice',
    provenance: 'memory',
    note: 'the form is recalled; both coefficients are the user’s',
  },
  assumption: 'Both coefficients are the user’s; energies of all dwellings are summed first.',
  countBands: false,
  unit: 'W',
  applies: (g) => (g.energy ? applicable : constantsLacking('the coefficients')),
  demand: (g, sheet) => {
    const by = 'stated by the user';
    const annualEnergy = sheet.given('annualEnergy', g.energy?.annual ?? none('energy'), by);
    const linearCoefficient = sheet.given('linearCoefficient', g.energy?.linear ?? none('energy'), by);
    const rootCoefficient = sheet.given('rootCoefficient', g.energy?.root ?? none('energy'), by);
    return sheet.step(energyToPeak, { annualEnergy, linearCoefficient, rootCoefficient });
  },
};

/** Every method for many dwellings. The table for a single dwelling is not among them, however often it is multiplied. */
export const groupMethods: readonly GroupMethod[] = [
  sumOfDwellings,
  riserTable,
  /* @__PURE__ */ curve('din18015-curve', 'Curve of DIN 18015-1, first reading', buildingLoad),
  /* @__PURE__ */ curve('din18015-curve-second', 'Curve of DIN 18015-1, second reading', buildingLoadSecondReading),
  afterDiversity,
  byRoot,
  byEnergy,
];

/**
 * The demand of many like dwellings by every method that applies, with the assumption beside each number. None governs
 * by itself: the methods belong to different countries.
 * @param group number of dwellings and what is known of them
 * @param sheet where the calculation is written; nowhere when absent
 * @returns one result for each method, with its assumption, A or VA, or why it does not apply
 * @throws CalculationError `invalid-input` when the number of dwellings is not whole or below 1
 * @example
 * ```ts
 * import { kilovoltAmperes } from 'ohmwright';
 * import { demandOfDwellings } from 'ohmwright/demand';
 *
 * const results = demandOfDwellings({ dwellings: 25, each: kilovoltAmperes(6), storageHeating: false });
 * results.find((r) => r.method === 'nfc14100-riser')?.demand; // => 69000
 * ```
 */
export function demandOfDwellings(group: DwellingGroup, sheet: Sheet = silent()): readonly GroupResult[] {
  const problems: Problem[] = [];
  if (!(Number.isSafeInteger(group.dwellings) && group.dwellings >= 1))
    problems.push({ path: ['dwellings'], message: `is ${group.dwellings}; a number of dwellings is whole, 1 and up` });
  if (group.each !== undefined && !(group.each >= 0 && Number.isFinite(group.each)))
    problems.push({ path: ['each'], message: `is ${group.each} VA; a demand is 0 VA and up` });
  if (problems.length > 0) throw invalidInput('the group of dwellings', problems);
  return groupMethods.map((m) => {
    const { id, title, source, assumption, unit } = m;
    const head = { method: id, title, source, assumption, unit };
    const applies = m.applies(group);
    if (applies.verdict !== 'applicable') return { ...head, ...applies };
    return { ...head, verdict: 'applicable', demand: m.demand(group, sheet.part(title)) };
  });
}
