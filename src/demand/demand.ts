import { endsOf, type Gap, isMissing, type Known, missing, type Sheet, type Source, silent } from '../core/index.js';
import { type Installation, isRecord, type Line, lineConductors, roleProblem } from '../installation/index.js';
import { type Amperes, amperes, type Problem, ratio, shown, type VoltAmperes } from '../units/index.js';
import { demandPowerOfLine } from './formulas.js';
import { type DemandCase, type DemandControl, type DemandLoad, type DemandPoint, demandCase } from './loads.js';
import type { Applicability, DemandMethod, DemandOptions } from './method.js';
import { connectedLoad } from './methods/factors.js';
import { generalMethods } from './methods/index.js';
import { halfHourReadings, meteredPeak } from './methods/measured.js';
import { daysCovered } from './methods/readings.js';
import type { DemandRules } from './rules.js';

/** Demand on one line by one method. @inline */
export interface LineDemand {
  readonly line: Line;
  /** Demand without the charge points, A. */
  readonly existing: Known<Amperes>;
  /** Current of the charge points at their settings, A. */
  readonly charge: Known<Amperes>;
  /** Maximum demand, A; with load controls as far as they are named and their limits known. */
  readonly demand: Known<Amperes>;
  /** Maximum demand as apparent power of the line, VA. */
  readonly power: Known<VoltAmperes>;
}

/** What one method says. @inline */
export interface MethodResult {
  readonly method: string;
  readonly title: string;
  readonly source: Source;
  /** What it assumes; to be printed beside the number. */
  readonly assumption: string;
  readonly verdict: 'applicable' | 'not-applicable' | 'not-determined';
  readonly because?: string;
  readonly gaps?: readonly Gap[];
  /** Its demand on each line of the supply; empty when it does not apply. */
  readonly lines: readonly LineDemand[];
}

/** Demands of an installation by every method, and which one governs. */
export interface Demand {
  /** Every method, applicable or not. */
  readonly methods: readonly MethodResult[];
  readonly governing: MethodResult;
  /** Why it does. */
  readonly governedBy: string;
  /** Load controls that lower a demand below the sum, by name and limit; those that could not count, and why. */
  readonly controls: readonly string[];
  readonly cautions: readonly string[];
}

const caution =
  'An estimate: methods differ by a factor of two. A competent person confirms the demand before work begins.';

/** Every method that is asked, in the order in which results are listed. */
export const methodsOf = (rules: DemandRules): readonly DemandMethod[] => [
  ...rules.methods,
  ...(rules.ofDwellings ?? []),
  ...generalMethods,
];

/** Those that are asked of an installation: of dwellings only where some are listed, or one is named. */
const askedOf = (rules: DemandRules, c: DemandCase, { governing }: DemandOptions): readonly DemandMethod[] =>
  c.loads.some((l) => l.dwellings) || rules.ofDwellings?.some((m) => m.id === governing)
    ? methodsOf(rules)
    : [...rules.methods, ...generalMethods];

const pointsOn = (points: readonly DemandPoint[], line: Line) => points.filter((p) => p.lines.includes(line));
const below = (board: string) => (x: { readonly boards: readonly string[] }) => x.boards.includes(board);
const takePoints = (
  points: readonly DemandPoint[],
  as: 'chargeCurrent' | 'existingDemand',
  why: string,
  sheet: Sheet,
) =>
  points.map((point) => {
    const part = sheet.part(`${point.id}${why}`);
    part.given(as, point.setting);
    return part;
  });

interface Asked {
  readonly rules: DemandRules;
  readonly method: DemandMethod;
  readonly c: DemandCase;
  readonly options: DemandOptions;
  readonly line: Line;
}

/** Demand on a line with load controls of which none stands behind another: what none sees, and what each holds to its limit. */
function withControls(
  controls: readonly DemandControl[],
  { rules, method, c, options, line }: Asked,
  sheet: Sheet,
): Sheet {
  const points = pointsOn(c.points, line);
  const behind = controls.map(({ board }) => below(board));
  const beside = controls.length > 1 ? ', beside others' : '';
  const side = (
    title: string,
    inside: (x: DemandLoad | DemandPoint) => boolean,
    held: readonly string[],
    on: Sheet,
  ) => {
    const part = on.part(title);
    const own = part.part('loads');
    method.existing(c.loads.filter(inside), line, c, options, own);
    const free = points.filter((p) => inside(p) && !held.includes(p.id));
    const others = takePoints(free, 'existingDemand', ', not under this control', part);
    part.gather('sum', 'existingDemand', 'existingDemand', [own, ...others]);
    return part;
  };
  const unseen = (x: DemandLoad | DemandPoint) => behind.every((isBelow) => !isBelow(x));
  /** The first of them so many: the last of these holds its own on top of what those before it leave to pass. */
  const first = (count: number, on: Sheet): Sheet => {
    const control = controls[count - 1] as DemandControl;
    const bound = on.part(`load control ${control.name} at ${control.board}${beside}`);
    const whole = control.board === c.installation.board.id;
    const restDemand =
      count > 1
        ? bound.gather('sum', 'demand', 'restDemand', [first(count - 1, bound)])
        : bound.gather(
            'sum',
            'existingDemand',
            'restDemand',
            whole ? [] : [side('what the control does not see', unseen, control.controls, bound)],
          );
    const here = side('at its board', behind[count - 1] as (typeof behind)[number], control.controls, bound);
    const existingDemand = bound.gather('sum', 'existingDemand', 'existingDemand', [here]);
    const held = takePoints(
      points.filter((p) => control.controls.includes(p.id)),
      'chargeCurrent',
      ', under this control',
      bound,
    );
    const chargeCurrent = bound.gather('sum', 'chargeCurrent', 'chargeCurrent', held);
    const controlLimit = bound.given('controlLimit', control.limit, control.name);
    bound.step(rules.withControl, { existingDemand, chargeCurrent, controlLimit, restDemand });
    return bound;
  };
  return first(controls.length, sheet);
}

/** Sets of load controls that count together: each alone, the outermost side by side, and the innermost. */
function controlSets(controls: readonly DemandControl[], c: DemandCase): readonly (readonly DemandControl[])[] {
  const alone = controls.map((control) => [control]);
  if (controls.length < 2) return alone;
  const wayTo = ({ controls: held }: DemandControl) => c.points.find((p) => held.includes(p.id))?.boards ?? [];
  const stands = (inner: DemandControl, outer: DemandControl) => {
    const way = wayTo(inner);
    return way.includes(outer.board) && way.indexOf(outer.board) < way.indexOf(inner.board);
  };
  const outermost = controls.filter((x) => !controls.some((y) => stands(x, y)));
  const innermost = controls.filter((x) => !controls.some((y) => stands(y, x)));
  return [...alone, ...[outermost, innermost].filter((set) => set.length > 1)];
}

/** Whether a control can lower the demand by this method; a text says why not. */
function standsInTheWay(control: DemandControl, method: DemandMethod, c: DemandCase): string | undefined {
  if (control.limit.state !== 'known') return `the limit of ${control.name} is not known`;
  if (control.controls.length === 0) return `${control.name} controls no charge point`;
  if (!method.divisible && control.board !== c.installation.board.id)
    return `${control.name} acts at ${control.board}, and ${method.id} knows the whole installation only`;
  return undefined;
}

function demandOnLine(asked: Asked, sheet: Sheet): LineDemand {
  const { rules, method, c, options, line } = asked;
  const full = sheet.part('charge points at 100 %');
  const loads = full.part('loads');
  method.existing(c.loads, line, c, options, loads);
  const existing = full.gather('sum', 'existingDemand', 'existingDemand', [loads]);
  const points = takePoints(pointsOn(c.points, line), 'chargeCurrent', '', full);
  const charge = full.gather('sum', 'chargeCurrent', 'chargeCurrent', points);
  full.step(rules.withPoints, { existingDemand: existing, chargeCurrent: charge });
  const able = c.controls.filter((control) => standsInTheWay(control, method, c) === undefined);
  const bounds = controlSets(able, c).map((set) => withControls(set, asked, sheet));
  const demand = sheet.gather('smallest', 'demand', 'demand', [full, ...bounds]);
  const nominalVoltage = sheet.given('nominalVoltage', c.installation.supply.nominalVoltage);
  const power = sheet.step(demandPowerOfLine, { demand, nominalVoltage });
  return { line, existing, charge, demand, power };
}

/** A list of loads that may not be the whole gives no demand, unless a meter has seen what is not on it. */
const withList = (method: DemandMethod, c: DemandCase, applies: Applicability): Applicability =>
  applies.verdict === 'applicable' && method.metered !== true && c.unlisted.length > 0
    ? { verdict: 'not-determined', because: 'nobody says that every circuit is listed', gaps: c.unlisted }
    : applies;

function ask(
  rules: DemandRules,
  method: DemandMethod,
  c: DemandCase,
  options: DemandOptions,
  sheet: Sheet,
): MethodResult {
  const { id, title, source, assumption } = method;
  const applies = withList(method, c, method.applies(c, options));
  const { verdict } = applies;
  if (verdict !== 'applicable') {
    const { because } = applies;
    const gaps = verdict === 'not-determined' ? applies.gaps : undefined;
    // spelt out: spreads take a fifth of the time of a planner's batch
    return gaps
      ? { method: id, title, source, assumption, verdict, because, gaps, lines: [] }
      : { method: id, title, source, assumption, verdict, because, lines: [] };
  }
  const part = sheet.part(title);
  part.note(assumption);
  const lines = c.lines.map((line) => demandOnLine({ rules, method, c, options, line }, part.part(line)));
  return { method: id, title, source, assumption, verdict, lines };
}

function governs(
  rules: DemandRules,
  methods: readonly MethodResult[],
  options: DemandOptions,
): { readonly result: MethodResult; readonly why: string } {
  const named = (id: string) => methods.find((m) => m.method === id) as MethodResult;
  if (options.governing !== undefined) return { result: named(options.governing), why: 'named by the user' };
  const metered = named(halfHourReadings.id);
  const year = options.readings !== undefined && daysCovered(options.readings) >= 365;
  const guide = rules.governing?.methods.map((m) => named(m.id)).find((m) => m && m.verdict !== 'not-applicable');
  const result = metered.verdict === 'applicable' && year ? metered : (guide ?? named(connectedLoad.id));
  const titles = [...(rules.governing ? [rules.governing.title] : []), 'the connected load'];
  const why = `half-hour readings that cover a whole year govern; otherwise ${titles.join('; otherwise ')}`;
  return { result, why };
}

/**
 * What the meter has seen, where that is more than the governing method gives for what was there: no estimate makes a demand
 * smaller than it was. Undefined where it is not more, or either is not known.
 */
function seenMore(
  rules: DemandRules,
  c: DemandCase,
  { lines }: MethodResult,
  options: DemandOptions,
  sheet: Sheet,
): MethodResult | undefined {
  const seen = (on: Sheet) =>
    ask(rules, meteredPeak, c, { ...options, meteredMargin: ratio(0), marginBy: 'none: what was seen' }, on);
  const there = c.points.filter((p) => !p.isNew);
  const charge = (line: Line) =>
    pointsOn(there, line).reduce((sum, p) => sum + (endsOf(p.setting)?.[1] ?? Infinity), 0);
  const estimate = lines.map((l) => (isMissing(l.existing) ? Infinity : l.existing + charge(l.line)));
  const peak = seen(silent()).lines.map((l) => (isMissing(l.existing) ? 0 : l.existing));
  return lines.length > 0 && Math.max(0, ...peak) > Math.max(...estimate) ? seen(sheet) : undefined;
}

/** What is said where the method that the user names gives less than the one that would govern. */
function loweredBy(
  rules: DemandRules,
  methods: readonly MethodResult[],
  named: MethodResult,
  options: DemandOptions,
): string | undefined {
  if (options.governing === undefined) return undefined;
  const { governing: _, ...others } = options;
  const { result } = governs(rules, methods, others);
  const less = result.lines.filter(({ line, demand }) => {
    const own = named.lines.find((l) => l.line === line)?.demand;
    return own !== undefined && !isMissing(own) && !isMissing(demand) && own < demand;
  });
  if (less.length === 0) return undefined;
  const lines = less.map((l) => `${l.line} ${+(l.demand as number).toPrecision(3)} A`).join(', ');
  return `The method was named by the user and gives less than the one that would govern (${result.title}: ${lines}): who named it answers for that.`;
}

/** Everything for which the options of a demand are refused, each with its path. */
export function demandProblems(rules: DemandRules, options: DemandOptions): readonly Problem[] {
  if (!isRecord(options)) return [{ path: [], message: `is ${shown(options)}; the options of a demand are due` }];
  const known = methodsOf(rules).map((m) => m.id);
  const problems: Problem[] = [];
  const say = (path: Problem['path'], message: string | undefined) => {
    if (message !== undefined) problems.push({ path, message });
  };
  const { premises, governing, meteredMargin, assembly, readings, factors } = options;
  if (!['dwelling', 'small-shop', 'small-hotel', 'other'].includes(premises))
    say(['premises'], `${shown(premises)} is not known; known are dwelling, small-shop, small-hotel, other`);
  if (governing !== undefined && !known.includes(governing))
    say(['governing'], `${governing} is no method; there are ${known.join(', ')}`);
  if (meteredMargin !== undefined) say(['meteredMargin'], roleProblem('demandMargin', meteredMargin));
  if (assembly !== undefined && !['IEC 61439-2', 'IEC 61439-3'].includes(assembly))
    say(['assembly'], `is ${shown(assembly)}; known are IEC 61439-2, IEC 61439-3`);
  if (readings !== undefined) {
    if (!isRecord(readings) || !Array.isArray(readings.readings))
      say(['readings'], `is ${shown(readings)}; half-hour readings are due`);
    else say(['readings', 'margin'], roleProblem('demandMargin', readings.margin));
  }
  if (factors === undefined) return problems;
  for (const [kind, role] of [
    ['utilisation', 'utilisationFactor'],
    ['simultaneity', 'simultaneityFactor'],
  ] as const) {
    const of = isRecord(factors) ? factors[kind] : undefined;
    if (!isRecord(of)) say(['factors', kind], `is ${shown(of)}; an object is due`);
    else for (const [name, factor] of Object.entries(of)) say(['factors', kind, name], roleProblem(role, factor));
  }
  return problems;
}

/** What is sound of an installation and of the options of its demand; both are refused together. */
export const soundCase = (
  rules: DemandRules,
  installation: Installation,
  options: DemandOptions,
  besides: readonly Problem[] = [],
): DemandCase => demandCase(installation, [...demandProblems(rules, options), ...besides]);

/** Demand of a projection that has been made already. */
export function demandOfCase(rules: DemandRules, c: DemandCase, options: DemandOptions, sheet: Sheet): Demand {
  const asked = askedOf(rules, c, options);
  const methods = asked.map((m) => ask(rules, m, c, options, sheet));
  const chosen = governs(rules, methods, options);
  const seen = seenMore(rules, c, chosen.result, options, sheet);
  const { result, why } = seen
    ? { result: seen, why: `the meter has seen more than ${chosen.result.title} gives` }
    : chosen;
  const governor = methodsOf(rules).find((m) => m.id === result.method) as DemandMethod;
  const controls = c.controls.map((control) => {
    const hindrance = standsInTheWay(control, governor, c);
    return hindrance === undefined && control.limit.state === 'known'
      ? `${control.name}, limit ${control.limit.value} A a line at ${control.board}, holds ${control.controls.join(', ')}; it must be able to pause them`
      : `${hindrance}: charge points count at 100 %`;
  });
  const lower = loweredBy(rules, methods, result, options);
  return {
    methods,
    governing: result,
    governedBy: why,
    controls,
    cautions: [caution, ...rules.cautions, ...(lower === undefined ? [] : [lower])],
  };
}

/**
 * The maximum demand of an installation by every method that applies, per line, with the assumption beside each number.
 * Charge points count at 100 % unless a load control with a name and a known limit holds them.
 * @param rules methods, formulas and checks by which demand is found and judged, from a wiring code
 * @param installation the installation
 * @param options premises and what else changes a demand
 * @param sheet where the calculation is written; nowhere when absent
 * @returns plain data: every method's result, the governing one and the rule that chose it
 * @throws CalculationError `invalid-input` with the path of each problem
 * @example
 * ```ts
 * import { amperes, hertz, type Installation, known, type Run, unknown, volts } from 'ohmwright';
 * import { bs7671Demand } from 'ohmwright/bs7671';
 * import { demandOf } from 'ohmwright/demand';
 *
 * const ring: Run = {
 *   id: 'ring', lines: ['L1'],
 *   device: { kind: known({ standard: 'EN 60898', type: 'B' }), rating: known(amperes(32)) },
 *   cable: {
 *     construction: 'flat-twin-and-earth', material: 'copper', insulation: 'thermoplastic-70', cores: 2,
 *     area: unknown(), protective: 'bare-core',
 *   },
 *   stretches: [],
 *   feeds: [{ kind: 'load', id: 'sockets', purpose: 'socket-outlets', current: known(amperes(32)), lines: ['L1'] }],
 * };
 * const house: Installation = {
 *   supply: {
 *     system: unknown(), phases: known(1), nominalVoltage: volts(230), frequency: hertz(50),
 *     externalImpedance: unknown(), prospectiveCurrent: unknown(),
 *     cutOut: { kind: unknown(), rating: known(amperes(60)) }, looped: known(false),
 *   },
 *   board: { kind: 'board', id: 'consumer unit', complete: known(true), runs: [ring] },
 * };
 * const { governing } = demandOf(bs7671Demand, house, { premises: 'dwelling' });
 * governing.method; // => 'on-site-guide-dwelling'
 * governing.lines[0]!.demand; // => 32
 * ```
 */
export function demandOf(
  rules: DemandRules,
  installation: Installation,
  options: DemandOptions,
  sheet: Sheet = silent(),
): Demand {
  return demandOfCase(rules, soundCase(rules, installation, options), options, sheet);
}

/** Demand without the charge points on a line, A: none on a line that the supply does not have. */
export function existingOn(demand: Demand, line: Line): Known<Amperes> {
  const { lines } = demand.governing;
  return lines.length > 0 && !lines.some((l) => l.line === line) ? amperes(0) : governingOn(demand, line).existing;
}

/**
 * Demand without the charge points on every line by the governing method: what a load control has to keep free when its
 * meter is silent.
 * @param demand the demand of an installation, or of a feeder
 * @returns L1, L2 and L3, A; 0 on a line that the supply does not have; or every fact that is missing
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { bs7671Demand } from 'ohmwright/bs7671';
 * import { demandOf, existingOnLines } from 'ohmwright/demand';
 * import { readSurvey } from 'ohmwright/io';
 *
 * existingOnLines(demandOf(bs7671Demand, readSurvey(survey).installation, { premises: 'dwelling' })); // => [70.15, 0, 0]
 * ```
 */
export function existingOnLines(demand: Demand): Known<readonly [Amperes, Amperes, Amperes]> {
  const lines = lineConductors.map((line) => existingOn(demand, line));
  const gaps = lines.filter(isMissing).flatMap((line) => line.missing);
  if (gaps.length > 0) return missing(...(gaps as [Gap, ...Gap[]]));
  const [one = 0, two = 0, three = 0] = lines as readonly number[];
  return [amperes(one), amperes(two), amperes(three)];
}

/** Demand on a line by the governing method, or why there is none. */
export function governingOn(demand: Demand, line: Line): LineDemand {
  const found = demand.governing.lines.find((l) => l.line === line);
  if (found) return found;
  const { gaps, because, method } = demand.governing;
  const none = missing(
    ...(gaps ?? [{ kind: 'fact' as const, fact: `demand by ${method}`, obtain: because ?? 'choose another method' }]),
  );
  return { line, existing: none, charge: none, demand: none, power: none };
}
