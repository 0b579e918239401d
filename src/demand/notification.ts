import { type Fact, factValue, type Known, missing, type Sheet, silent } from '../core/index.js';
import { conditionally, factProblems, type Installation, problemAt, withoutAssumed } from '../installation/index.js';
import type { Problem } from '../units/index.js';
import type { ConnectedDevice, ConnectionDecision, ConnectionFacts } from './connection.js';
import { type Demand, demandOfCase, governingOn, soundCase } from './demand.js';
import type { FormField } from './form.js';
import type { DemandCase } from './loads.js';
import type { NetworkRules } from './network-rules.js';
import type { NotificationOptions } from './notification-options.js';
import type { DemandRules } from './rules.js';

/** Whom to tell, when, and with what. */
export interface Notification {
  /** The demand that the decision rests on. */
  readonly demand: Demand;
  /** The route, the conditions that decided, the duties and their days. */
  readonly decision: ConnectionDecision;
  /** Fields of the form, filled from the survey or still missing. */
  readonly fields: readonly FormField[];
}

const stated = (fact: Fact<boolean> | undefined, name: string, obtain: string): Known<boolean> =>
  fact === undefined || (fact.state === 'unknown' && fact.obtain === undefined)
    ? missing({ kind: 'fact', fact: name, obtain })
    : factValue(name, fact);

/** Charge points, heat pumps, generation and storage. */
function devicesOf(c: DemandCase): readonly ConnectedDevice[] {
  const points = c.points.map(
    (p): ConnectedDevice => ({
      id: p.id,
      kind: 'charge-point',
      lines: p.lines,
      current: factValue(`setting of ${p.id}`, p.setting),
      bidirectional:
        p.bidirectional ??
        missing({
          kind: 'fact',
          fact: 'whether the charge point can feed back from the vehicle',
          obtain: 'its data sheet',
        }),
      isNew: p.isNew,
    }),
  );
  const pumps = c.loads.filter((l) => l.purpose === 'heat-pump');
  const others = [...pumps, ...c.sources].map(
    (l): ConnectedDevice => ({
      id: l.id,
      kind: l.purpose as 'heat-pump' | 'generation' | 'storage',
      lines: l.lines,
      current: factValue(`current of ${l.id}`, l.current),
      bidirectional: false,
      isNew: l.isNew,
    }),
  );
  return [...points, ...others];
}

/** What is wrong with what is said of other installations nearby. */
function programmeProblems({ programme }: NotificationOptions): readonly Problem[] {
  const problems: Problem[] = [];
  if (programme !== undefined)
    factProblems(
      'yes',
      programme,
      (at, message, id) => void problems.push(problemAt(['programme', ...at], message, id)),
    );
  return problems;
}

/** What the network operator's rules decide on, taken from a projection and its demand. */
function connectionFacts(c: DemandCase, demand: Demand, options: NotificationOptions): ConnectionFacts {
  const { supply } = c.installation;
  return {
    lines: c.lines.map((line) => ({ line, demand: governingOn(demand, line).demand })),
    nominalVoltage: supply.nominalVoltage,
    phases: factValue('line conductors of the supply', supply.phases),
    cutOutRating: factValue('cutOutRating', supply.cutOut.rating),
    cutOutSound: stated(
      supply.cutOutSound,
      'whether the cut-out and its service are sound',
      'photograph of the cut-out and its service',
    ),
    looped: stated(
      supply.looped,
      'whether the service is looped',
      'cut-out with more than one service cable, or ask the distributor',
    ),
    metered: stated(supply.metered, 'whether the supply is metered', 'photograph of the meter'),
    programme: stated(
      options.programme,
      'whether more installations are planned nearby',
      'ask the customer and the distributor',
    ),
    devices: devicesOf(c),
    jointLimits: c.controls.map((j) => ({
      name: j.name,
      limit: factValue(`limit of ${j.name}`, j.limit),
      devices: j.controls,
    })),
    ...(options.supplyChange === undefined ? {} : { supplyChange: options.supplyChange }),
    ...(options.completed === undefined ? {} : { completed: options.completed }),
  };
}

/** Notification of a projection whose demand is known already. */
function notificationOfCase(
  network: NetworkRules,
  c: DemandCase,
  demand: Demand,
  options: NotificationOptions,
  sheet: Sheet,
): Notification {
  const facts = connectionFacts(c, demand, options);
  const decision = network.decide(facts, sheet);
  const form = { installation: c.installation, facts, demand, decision, options };
  return { demand, decision, fields: network.form.flatMap((entry) => entry(form)) };
}

/**
 * Whether the network operator is told after the work or asked before it, the duties with their days, and the fields of
 * the form that the survey fills. A fact that is not known ends in `not-determined`, never in a usual value; one that is
 * assumed decides no route.
 * @param rules methods, formulas and checks by which demand is found, from a wiring code
 * @param network rules of the network operators of the country
 * @param installation the installation with the charge points wanted
 * @param options premises, day of completion, entries of the form
 * @param sheet where the calculation is written; nowhere when absent
 * @returns plain data
 * @throws CalculationError `invalid-input` with the path of each problem
 * @example
 * ```ts
 * import { amperes, hertz, type Installation, known, unknown, volts } from 'ohmwright';
 * import { bs7671Demand } from 'ohmwright/bs7671';
 * import { notificationOf } from 'ohmwright/demand';
 * import { greatBritain } from 'ohmwright/networks';
 *
 * const house: Installation = {
 *   supply: {
 *     system: unknown(), phases: known(1), nominalVoltage: volts(230), frequency: hertz(50),
 *     externalImpedance: unknown(), prospectiveCurrent: unknown(),
 *     cutOut: { kind: unknown(), rating: known(amperes(80)) }, cutOutSound: known(true),
 *     looped: known(true, 'two service cables in the cut-out'), metered: known(true),
 *   },
 *   board: { kind: 'board', id: 'consumer unit', runs: [] },
 * };
 * notificationOf(bs7671Demand, greatBritain, house, { premises: 'dwelling' }).decision.route; // => 'apply-first'
 * ```
 */
export function notificationOf(
  rules: DemandRules,
  network: NetworkRules,
  installation: Installation,
  options: NotificationOptions,
  sheet: Sheet = silent(),
): Notification {
  const found = (of: Installation, on: Sheet) => notificationAsSaid(rules, network, of, options, on);
  const said = found(installation, sheet);
  const { results } = said.decision;
  const now = conditionally(installation, results, (bare) => found(bare, sheet.silent()).decision.results);
  if (now === results) return said;
  // whom to tell is decided by what somebody looked at
  const bare = found(withoutAssumed(installation), sheet.silent());
  const { route } = said.decision;
  const onceConfirmed = route === bare.decision.route ? {} : { onceConfirmed: route };
  return { ...bare, decision: { ...bare.decision, ...onceConfirmed, results: now } };
}

/** The same by the facts as they are said, assumed ones like known ones. */
export function notificationAsSaid(
  rules: DemandRules,
  network: NetworkRules,
  installation: Installation,
  options: NotificationOptions,
  sheet: Sheet,
): Notification {
  const c = soundCase(rules, installation, options, programmeProblems(options));
  return notificationOfCase(network, c, demandOfCase(rules, c, options, sheet), options, sheet);
}
