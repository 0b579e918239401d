import { type Gap, type Known, type Missing, missing, type Sheet, type Source, silent } from '../../core/index.js';
import { invalidInput, type Problem, ratio } from '../../units/index.js';
import type { Applicability } from '../method.js';
import { applicable, notApplicable } from '../method.js';
import { riserDemand, rootCoincidence } from './formulas.js';
import type { DwellingGroup } from './group.js';

/** A method for many dwellings: a value. */
export interface GroupMethod {
  readonly id: string;
  readonly title: string;
  readonly source: Source;
  readonly assumption: string;
  /** Whether its factors step with the number, so that one more dwelling can lower the demand. */
  readonly countBands: boolean;
  /** Whether it allows for lines that are not loaded alike; the line with most dwellings is taken besides when absent. */
  readonly unbalanceIncluded?: true;
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

/** What is not stated of a group of dwellings. */
export const notStated = (fact: keyof DwellingGroup): Missing => missing({ kind: 'fact', fact, obtain: 'state it' });
/** Constants that only the user can give. */
export const constantsLacking = (what: string): Applicability =>
  notApplicable(`${what} are the user’s, none is built in, and none was handed over`);

/** The sum of all dwellings, no diversity. */
export const sumOfDwellings: GroupMethod = {
  id: 'sum-of-dwellings',
  title: 'Sum of all dwellings, no diversity',
  source: { document: 'sum', provenance: 'definition' },
  assumption: 'Every dwelling takes its full demand at once: an upper bound.',
  countBands: false,
  unit: 'VA',
  applies: (g) => (g.each === undefined ? notApplicable('the demand of one dwelling is not stated') : applicable),
  demand: (g, sheet) => {
    const dwellings = sheet.given('dwellings', ratio(g.dwellings));
    const dwellingPower = sheet.given('dwellingPower', g.each ?? notStated('each'));
    const simultaneityFactor = sheet.given('simultaneityFactor', ratio(1), 'no diversity');
    return sheet.step(riserDemand, { dwellings, dwellingPower, simultaneityFactor });
  },
};

/** Coincidence that falls with the root of the number of dwellings, with constants of the user's own. */
export const coincidenceByRoot: GroupMethod = {
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
    const largestPower = sheet.given('largestPower', g.coincidence?.largest ?? notStated('coincidence'), by);
    const coincidenceLimit = sheet.given('coincidenceLimit', g.coincidence?.limit ?? notStated('coincidence'), by);
    return sheet.step(rootCoincidence, { dwellings, largestPower, coincidenceLimit });
  },
};

/**
 * The demand of many like dwellings by every given method that applies, with the assumption beside each number. None
 * governs by itself: methods belong to different countries. The table for a single dwelling is no method for many,
 * however often it is multiplied.
 * @param methods methods for many dwellings, in the order of the results
 * @param group number of dwellings and what is known of them
 * @param sheet where the calculation is written; nowhere when absent
 * @returns one result for each method, with its assumption, A or VA, or why it does not apply
 * @throws CalculationError `invalid-input` when the number of dwellings is not whole or below 1
 * @example
 * ```ts
 * import { kilovoltAmperes } from 'ohmwright';
 * import { demandOfDwellings, sumOfDwellings } from 'ohmwright/demand';
 * import { riserMethod } from 'ohmwright/networks';
 *
 * const methods = [sumOfDwellings, riserMethod];
 * const results = demandOfDwellings(methods, { dwellings: 25, each: kilovoltAmperes(6), storageHeating: false });
 * results.find((r) => r.method === 'nfc14100-riser')?.demand; // => 69000
 * ```
 */
export function demandOfDwellings(
  methods: readonly GroupMethod[],
  group: DwellingGroup,
  sheet: Sheet = silent(),
): readonly GroupResult[] {
  const problems: Problem[] = [];
  if (!(Number.isSafeInteger(group.dwellings) && group.dwellings >= 1))
    problems.push({ path: ['dwellings'], message: `is ${group.dwellings}; a number of dwellings is whole, 1 and up` });
  if (group.each !== undefined && !(group.each >= 0 && Number.isFinite(group.each)))
    problems.push({ path: ['each'], message: `is ${group.each} VA; a demand is 0 VA and up` });
  if (problems.length > 0) throw invalidInput('the group of dwellings', problems);
  return methods.map((m) => {
    const { id, title, source, assumption, unit } = m;
    const head = { method: id, title, source, assumption, unit };
    const applies = m.applies(group);
    if (applies.verdict !== 'applicable') return { ...head, ...applies };
    return { ...head, verdict: 'applicable', demand: m.demand(group, sheet.part(title)) };
  });
}
