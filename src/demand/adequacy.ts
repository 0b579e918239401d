import {
  type CheckResult,
  type Fact,
  factValue,
  factWords,
  isMissing,
  type Known,
  type Missing,
  missing,
  notDetermined,
  type Overall,
  overall,
  type Sheet,
  silent,
  whenKnown,
} from '../core/index.js';
import {
  type Board,
  conditionally,
  foundNoFuseAhead,
  type Installation,
  type Line,
  type ResidualDevice,
  residualUnsaid,
  type Supply,
  type SupplyTransformer,
} from '../installation/index.js';
import { largestParallelLoad } from '../physics/power/parallel.js';
import { transformerCurrentOf, transformerCurrentWithHarmonics } from '../physics/power/transformers.js';
import { type Amperes, amperes, minus, type VoltAmperes, voltAmperes } from '../units/index.js';
import { changesOf, type SupplyChange } from './changes.js';
import { type Demand, demandOfCase, governingOn, type LineDemand, soundCase } from './demand.js';
import { headroomForPoint, headroomOfLine, largestFittingSetting } from './formulas.js';
import type { DemandCase, DemandPoint } from './loads.js';
import type { DemandOptions } from './method.js';
import {
  type Around,
  aheadAndBelow,
  aroundSwitch,
  boardOverload,
  endOf,
  lower,
  mainSwitchOf,
  switchOverload,
} from './overload.js';
import type { DemandRules, SupplyRules } from './rules.js';
import { parallelUnits } from './transformer.js';
import { demandWithinTransformer } from './transformer-check.js';

/** What is left on one line. @inline */
export interface LineHeadroom {
  readonly line: Line;
  /** Maximum demand, A. */
  readonly demand: Known<Amperes>;
  /** What is left up to the rating of the cut-out, A; negative where it is exceeded. */
  readonly headroom: Known<Amperes>;
  /** What is left without the charge points, A. */
  readonly headroomWithoutPoints: Known<Amperes>;
}

/** The largest setting of one charge point that fits without a load control. @inline */
export interface FittingSetting {
  readonly point: string;
  /** Largest whole-ampere setting from 6 A to 32 A, every other point at its own; 0 when not even 6 A fits. */
  readonly setting: Known<Amperes>;
}

/** Whether a limiter at the origin would help. @inline */
export interface LimiterAdvice {
  /** Limit at which it would be set, A: the least of the ratings in the way. */
  readonly limit: Known<Amperes>;
  /** `not-needed`, `helps`, or `cannot-help` where the house alone exceeds the limit. */
  readonly verdict: 'not-needed' | 'helps' | 'cannot-help' | 'not-determined';
  readonly because: string;
}

/** Whether a supply carries what is connected and wanted. */
export interface Adequacy {
  /** Demands by every method and the governing one. */
  readonly demand: Demand;
  /** What is left, line by line. */
  readonly lines: readonly LineHeadroom[];
  /**
   * Line by line: demand against cut-out and main switch, then what protects main switch, board, residual current devices
   * at the origin and tails against overload, and demand against a transformer; last, whether the service is shared.
   */
  readonly results: readonly CheckResult[];
  readonly overall: Overall;
  /** The largest setting of each charge point that fits. */
  readonly settings: readonly FittingSetting[];
  /** Whether a limiter helps. */
  readonly limiter: LimiterAdvice;
  /** What another supply would change. */
  readonly changes: readonly SupplyChange[];
}

/** The ratings that a demand has to stay within. */
interface Ratings {
  readonly cutOut: Known<Amperes>;
  readonly mainSwitch: Known<Amperes>;
  readonly tails: Known<Amperes>;
  /** Where a transformer of its own supplies it. */
  readonly transformer?: Known<Amperes>;
}

/** Residual current devices at the origin of the installation, with the circuits that they serve. */
const residualAtOrigin = (board: Board) =>
  [...(board.residual ?? []), ...board.runs.flatMap((r) => r.residual ?? [])].filter(
    (r) => r.position === 'origin-of-installation',
  );

/** A looped service, like one that may be, leaves what is not known: nothing is decided. */
function judgeService({ ownService }: SupplyRules, installation: Installation, sheet: Sheet): CheckResult {
  const looped = factValue('whether the service is looped', installation.supply.looped);
  if (looped === true)
    return sheet.result(
      notDetermined(ownService, {
        kind: 'fact',
        fact: 'what the looped service leaves for this installation',
        obtain: 'ask the distributor, who may have to unloop it',
      }),
    );
  return sheet.check(ownService, {
    holds: whenKnown([looped], (yes) => !yes),
    because: 'not looped, as surveyed',
  });
}

/** One line, named in the results where there are three. */
function judgeLine(rules: SupplyRules, found: LineDemand, installation: Installation, phases: 1 | 3, sheet: Sheet) {
  const { supply, board } = installation;
  const subject = phases === 3 ? found.line : undefined;
  const demand = sheet.given('demand', found.demand, 'governing method');
  const fuse = lower(supply.cutOut.rating, 'label on the fuse, or a letter of the distributor');
  const cutOutRating = sheet.given('cutOutRating', fuse);
  const cutOut = sheet.check(rules.cutOut, { demand, cutOutRating }, subject);
  const headroom = sheet.step(headroomOfLine, { cutOutRating, demand });
  const { own, least } = mainSwitchOf(board);
  const mainSwitchRating = sheet.given('mainSwitchRating', least);
  const mainSwitch = sheet.check(rules.mainSwitch, { demand, mainSwitchRating }, subject);
  const tailsEnd: Around = { line: found.line, ahead: supply.cutOut.rating, aheadName: 'cut-out', board };
  const around = aroundSwitch(tailsEnd);
  const ofSwitch = sheet.part('Overload of the main switch');
  const switchProtected = switchOverload(
    rules.mainSwitchOverload,
    {
      mainSwitchRating: foundNoFuseAhead(board.mainSwitch) ? mainSwitchRating : ofSwitch.given('mainSwitchRating', own),
    },
    board.mainSwitch?.overloadDeclared,
    around,
    ofSwitch,
    subject,
  );
  const ofBoard = boardOverload(rules.boardOverload, around, sheet, subject);
  const unsaid = residualUnsaid(board);
  const residual = [...residualAtOrigin(board), ...(unsaid ? [unsaid] : [])].map((device) =>
    judgeResidual(rules, device, around, sheet, subject),
  );
  const tailsCapacity = rules.tailsCapacity(supply, phases, sheet);
  const tails = judgeTails(rules, supply, tailsCapacity, tailsEnd, sheet.part('Overload of the tails'), subject);
  const transformer = supply.transformer && judgeTransformer(supply.transformer, found, sheet, subject);
  const ratings: Ratings = {
    cutOut: cutOutRating,
    mainSwitch: mainSwitchRating,
    tails: tailsCapacity,
    ...(transformer ? { transformer: transformer.current } : {}),
  };
  const results = [
    cutOut,
    mainSwitch,
    switchProtected,
    ...ofBoard,
    ...residual,
    tails,
    ...(transformer ? [transformer.result] : []),
  ];
  return { headroom, ratings, results };
}

/** The demand of a line against the rated current of the transformer, or of all that work in parallel. */
function judgeTransformer(
  transformer: SupplyTransformer,
  { line, demand: found }: LineDemand,
  sheet: Sheet,
  subject: string | undefined,
): { readonly current: Known<Amperes>; readonly result: CheckResult } {
  const { rating, voltage, parallel = 1, beside, harmonicLossFactor } = transformer;
  const part = sheet.part(`Transformer, ${line}`);
  const least = lower(rating, 'plate of the transformer');
  const together = parallel === 1 ? least : timesOf(least, parallel);
  const by = parallel === 1 ? 'plate of the transformer' : `${parallel} of the same plate in parallel`;
  const transformerRating = beside?.length
    ? part.given(
        'transformerRating',
        part.run(largestParallelLoad, parallelUnits(transformer, part)),
        'of unlike transformers in parallel: the one that is full first sets the load of all',
      )
    : part.given('transformerRating', together, by);
  const transformerVoltage = part.given('transformerVoltage', endOf(voltage, 'most'), 'plate of the transformer');
  const demand = part.given('demand', found, 'governing method');
  const sinusoidal = part.step(transformerCurrentOf, { transformerRating, transformerVoltage });
  const current = harmonicLossFactor
    ? part.step(transformerCurrentWithHarmonics, {
        transformerCurrent: sinusoidal,
        harmonicLossFactor: part.given(
          'harmonicLossFactor',
          endOf(harmonicLossFactor, 'most'),
          'harmonics of the load',
        ),
      })
    : sinusoidal;
  return { current, result: part.check(demandWithinTransformer, { demand, transformerCurrent: current }, subject) };
}

const timesOf = (fact: Fact<VoltAmperes>, times: number): Fact<VoltAmperes> =>
  fact.state === 'known' ? { ...fact, value: voltAmperes(fact.value * times) } : fact;

function judgeResidual(
  rules: SupplyRules,
  device: (ResidualDevice & { readonly serves?: readonly string[] }) | Missing,
  around: Around,
  sheet: Sheet,
  subject: string | undefined,
): CheckResult {
  const part = sheet.part('Overload of the residual current device at the origin');
  // one that nobody looked for may stand before all of it
  if (isMissing(device)) {
    const open = { residualRatedCurrent: part.given('residualRatedCurrent', device) };
    return switchOverload(rules.residualOverload, open, undefined, around, part, subject);
  }
  const rating = lower(device.ratedCurrent, 'rated current on the residual current device');
  const residualRatedCurrent = part.given('residualRatedCurrent', rating);
  const { serves } = device;
  const own: Around = serves ? { ...around, serves: (run) => serves.includes(run.id) } : around;
  return switchOverload(rules.residualOverload, { residualRatedCurrent }, device.overloadDeclared, own, part, subject);
}

/** By the fuse ahead; or at their load end by the devices of the circuits together, while the fuse protects them against fault. */
function judgeTails(
  { tails }: SupplyRules,
  supply: Supply,
  tailsCapacity: Known<Amperes>,
  around: Around,
  sheet: Sheet,
  subject: string | undefined,
): CheckResult {
  const { ahead, below } = aheadAndBelow(tails, { tailsCapacity }, around, sheet);
  const fault = supply.tailsFaultProtected ?? {
    state: 'unknown',
    obtain: 'let-through energy of the fuse against k²S² of the tails, and a letter of the distributor',
  };
  const faultProtected = sheet.check(tails.declared, {
    holds: factValue('whether the fuse ahead protects the tails against fault current', fault),
    because: 'as surveyed, the distributor agreeing',
  });
  // the devices below protect against overload alone
  const atLoadEnd = below.verdict === 'pass' ? faultProtected : below;
  return sheet.check(tails.protected, { results: [ahead, atLoadEnd] }, subject);
}

/** The least of the ratings in the way. */
const weakest = ({ cutOut, mainSwitch, tails, transformer }: Ratings): Known<Amperes> =>
  whenKnown([cutOut, mainSwitch, tails, ...(transformer === undefined ? [] : [transformer])], (...all) =>
    amperes(Math.min(...(all as readonly number[]))),
  );

/** What is missing, in words: each fact once. */
const missingWords = ({ missing: gaps }: Missing): string => {
  const facts = new Set(gaps.map((g) => (g.kind === 'fact' ? factWords(g.fact) : g.explain)));
  return `${[...facts].join(', ')} ${facts.size === 1 ? 'is' : 'are'}`;
};

/** Current of the other points on a line, at their settings. */
function othersOn(c: DemandCase, line: Line, point: DemandPoint): Known<Amperes> {
  const others = c.points.filter((p) => p !== point && p.lines.includes(line));
  const lacking = others.filter((p) => p.setting.state !== 'known');
  if (lacking.length > 0)
    return missing(...lacking.map((p) => ({ kind: 'fact' as const, fact: `setting of ${p.id}` })));
  return amperes(others.reduce((sum, p) => sum + (p.setting.state === 'known' ? p.setting.value : 0), 0));
}

function settingOf(
  point: DemandPoint,
  c: DemandCase,
  demand: Demand,
  limit: Known<Amperes>,
  sheet: Sheet,
): FittingSetting {
  const own = sheet.part(point.id);
  const headrooms = point.lines.map((line) => {
    const part = own.part(line);
    const controlLimit = part.given('controlLimit', limit, 'least rating in the way');
    const existingDemand = part.given('existingDemand', governingOn(demand, line).existing, 'governing method');
    const chargeCurrent = part.given(
      'chargeCurrent',
      othersOn(c, line, point),
      'other points on this line, at their settings',
    );
    return part.step(headroomForPoint, { controlLimit, existingDemand, chargeCurrent });
  });
  const input = whenKnown(headrooms, (...left) => ({
    headrooms: left.map(Number),
    least: Number(own.given('leastSetting', amperes(Math.max(6, point.minimum ?? 6)), 'smallest running current')),
    most: Number(own.given('chargeCurrent', amperes(32), 'largest setting that is looked for')),
  }));
  return { point: point.id, setting: own.run(largestFittingSetting, input) };
}

function limiterAdvice(lines: readonly LineDemand[], limit: Known<Amperes>): LimiterAdvice {
  const found = whenKnown([limit, ...lines.flatMap((l) => [l.existing, l.demand])], (l, ...figures) => {
    const alone = Math.max(0, ...figures.filter((_, i) => i % 2 === 0));
    const all = Math.max(0, ...figures.filter((_, i) => i % 2 === 1));
    const round = (x: number) => Math.round(x * 10) / 10;
    if (all <= l)
      return { verdict: 'not-needed' as const, because: `the demand of ${round(all)} A is within ${round(l)} A` };
    return alone <= l
      ? {
          verdict: 'helps' as const,
          because: `without the charge points ${round(alone)} A, so that a limiter at ${round(l)} A can hold the whole there; at the busiest time ${round(l - alone)} A are left${l - alone < 6 ? ', less than the 6 A that charging needs: it pauses' : ' for charging'}`,
        }
      : {
          verdict: 'cannot-help' as const,
          because: `without the charge points ${round(alone)} A already, above ${round(l)} A: holding back vehicles does not cure that`,
        };
  });
  return isMissing(found)
    ? { limit, verdict: 'not-determined', because: `${missingWords(found)} not known` }
    : { limit, ...found };
}

/** Adequacy of a projection whose demand is known already. */
function adequacyOfCase(rules: SupplyRules, c: DemandCase, demand: Demand, sheet: Sheet): Adequacy {
  const part = sheet.part('Adequacy of the supply');
  const lines = c.lines.map((line) => governingOn(demand, line));
  const judged = lines.map((l) => judgeLine(rules, l, c.installation, lines.length > 1 ? 3 : 1, part.part(l.line)));
  const service = judgeService(rules, c.installation, part);
  const limit = service.gaps
    ? missing(...service.gaps)
    : judged[0]
      ? weakest(judged[0].ratings)
      : missing({ kind: 'fact', fact: 'line conductors of the supply' });
  const cutOut = judged[0]?.ratings.cutOut ?? missing({ kind: 'fact', fact: 'cutOutRating' });
  const results = [...judged.flatMap((j) => j.results), service];
  const chosen = part.part('Settings of the charge points');
  return {
    demand,
    lines: lines.map((l, i) => ({
      line: l.line,
      demand: l.demand,
      headroom: judged[i]?.headroom ?? missing({ kind: 'fact', fact: 'cutOutRating' }),
      headroomWithoutPoints: whenKnown([cutOut, l.existing], (fuse, d) => minus(fuse, d)),
    })),
    results,
    overall: overall(results),
    settings: c.points.map((p) => settingOf(p, c, demand, limit, chosen)),
    limiter: limiterAdvice(lines, limit),
    changes: changesOf(rules, c, lines, cutOut),
  };
}

/**
 * Whether the supply carries the demand, line by line, and what protects main switch and tails against overload; what is left; the largest
 * setting that fits; whether a limiter helps; what another supply would change. A rating that is not known ends in
 * `not-determined`, never in a usual value; so does a service that is looped with a neighbour's, or may be.
 * @param rules methods, formulas and checks by which demand is found and judged, from a wiring code
 * @param installation the installation
 * @param options premises and what else changes a demand
 * @param sheet where the calculation is written; nowhere when absent
 * @returns plain data
 * @throws CalculationError `invalid-input` with the path of each problem
 * @example
 * ```ts
 * import { amperes, hertz, type Installation, known, unknown, volts } from 'ohmwright';
 * import { bs7671Demand } from 'ohmwright/bs7671';
 * import { adequacyOf } from 'ohmwright/demand';
 *
 * const empty: Installation = {
 *   supply: {
 *     system: unknown(), phases: known(1), nominalVoltage: volts(230), frequency: hertz(50),
 *     externalImpedance: unknown(), prospectiveCurrent: unknown(),
 *     cutOut: { kind: unknown(), rating: unknown('label on the fuse') }, looped: unknown(),
 *   },
 *   board: { kind: 'board', id: 'consumer unit', mainSwitch: { rating: known(amperes(100)) }, runs: [] },
 * };
 * adequacyOf(bs7671Demand, empty, { premises: 'dwelling' }).overall.verdict; // => 'not-determined'
 * ```
 */
export function adequacyOf(
  rules: DemandRules,
  installation: Installation,
  options: DemandOptions,
  sheet: Sheet = silent(),
): Adequacy {
  const said = adequacyAsSaid(rules, installation, options, sheet);
  const results = conditionally(
    installation,
    said.results,
    (bare) => adequacyAsSaid(rules, bare, options, sheet.silent()).results,
  );
  return results === said.results ? said : { ...said, results, overall: overall(results) };
}

/** The same by the facts as they are said, assumed ones like known ones. */
export function adequacyAsSaid(
  rules: DemandRules,
  installation: Installation,
  options: DemandOptions,
  sheet: Sheet,
): Adequacy {
  const c = soundCase(rules, installation, options);
  return adequacyOfCase(rules.supply, c, demandOfCase(rules, c, options, sheet), sheet);
}
