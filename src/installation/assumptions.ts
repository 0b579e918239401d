import type { Source } from '../core/index.js';
import { own } from '../core/own.js';
import { invalidInput, type Problem, type ProblemId } from '../units/index.js';
import { deniedIn } from './denied.js';
import { type Field, shapes } from './shapes.js';
import type { Board, Installation, Outlet, Run } from './tree.js';
import { isRecord, valueProblem, valueProblemId } from './values.js';

type Shape = keyof typeof shapes;
/** A label, a number, yes or no. @inline */
type Plain = string | number | boolean;

/** A customary or declared value that may stand in for a fact nobody looked at. @inline */
export interface Assumption {
  /** Name within its set. */
  readonly id: string;
  /** The fact, by record and field: `supply.externalImpedance`, `stretch.soilResistivity`. */
  readonly fact: string;
  /** Facts that have to be known to be so, of the same thing or of what it belongs to: `{ 'supply.system': 'TN-S' }`; of several values, any. */
  readonly when?: Readonly<Record<string, Plain | readonly Plain[]>>;
  /** The value, in canonical units; a record for a fact that has several. */
  readonly value?: unknown;
  /** The smallest value that is taken for possible, in canonical units. */
  readonly least?: number;
  /** The largest. */
  readonly most?: number;
  readonly source: Source;
  /** How it is confirmed on site, as a sentence. */
  readonly confirm: string;
}

/** A named set of assumptions, chosen by whoever plans: ours for an ordinary home, or a firm's own. */
export interface AssumptionSet {
  readonly format: 'assumptions/1';
  readonly id: string;
  readonly title: string;
  /** Who stands for it. */
  readonly by: string;
  readonly entries: readonly Assumption[];
}

const fieldOf = (fact: string): Field | undefined => {
  const [shape, key] = fact.split('.') as [string, string];
  const fields: Readonly<Record<string, Field>> | undefined = own(shapes, shape);
  return fields && own(fields, key);
};

/**
 * What is wrong with a set of assumptions, each with its path; nothing where it can be used.
 * @param set the set
 * @returns problems: facts that the register does not have or that cannot be assumed, values that cannot be
 */
export function assumptionProblems(set: AssumptionSet): readonly Problem[] {
  const found: Problem[] = [];
  for (const [i, entry] of set.entries.entries()) {
    const say = (key: string, message: string, problem: ProblemId): void =>
      void found.push({ path: ['entries', i, key], id: problem, message });
    const { id, fact, value, least, most, when = {} } = entry;
    if (set.entries.findIndex((e) => e.id === id) < i) say('id', `${id} stands there twice`, 'twice');
    const field = fieldOf(fact);
    if (!field) {
      say('fact', `is ${fact}; no record of an installation has it`, 'not-allowed');
      continue;
    }
    const [how, what] = field;
    const record = how.startsWith('plain') && own(shapes, what) !== undefined;
    if (!how.startsWith('fact') && !record) {
      say('fact', `is ${fact}, which nobody can assume: it is stated or left out`, 'not-allowed');
      continue;
    }
    for (const key of Object.keys(when))
      if (!fieldOf(key)) say('when', `names ${key}; no record of an installation has it`, 'not-allowed');
    if (record) {
      if (!isRecord(value)) say('value', 'is no record', 'wrong-kind');
      continue;
    }
    const given = value !== undefined ? { value } : { least, most };
    if (value !== undefined && (least !== undefined || most !== undefined))
      say('value', 'stands beside a range', 'does-not-fit');
    for (const [key, v] of Object.entries(given)) {
      const problem = valueProblem(what, v, false);
      if (problem) say(key, problem, valueProblemId(what, v));
    }
    if (least !== undefined && most !== undefined && least > most)
      say('least', 'is above the largest value', 'wrong-order');
  }
  return found;
}

/** The records on the way to a thing, by shape: the nearest of each. */
type Around = { readonly [S in Shape]?: Readonly<Record<string, unknown>> };

/** Whether nobody looked at what a fact is of: it is left out, or said to be unknown. */
export const isUnknown = (fact: unknown): boolean => fact === undefined || (isRecord(fact) && fact.state === 'unknown');

function holds(around: Around, key: string, wanted: Plain | readonly Plain[]): boolean {
  const [shape, field] = key.split('.') as [Shape, string];
  if (!around[shape]) return false;
  const said = around[shape]?.[field];
  const value = isRecord(said) && 'state' in said ? (said.state === 'known' ? said.value : undefined) : said;
  const any = typeof wanted === 'object' ? wanted : [wanted];
  // what a plain mark is left out of is not so
  const plain = fieldOf(key)?.[0].startsWith('plain') === true;
  return any.some((w) => w === value || (plain && w === false && value === undefined));
}

const usable = ({ when = {} }: Assumption, around: Around): boolean =>
  Object.entries(when).every(([key, wanted]) => holds(around, key, wanted));

/** A fact as an assumption gives it. */
function factFrom(
  value: { readonly value?: unknown; readonly least?: unknown; readonly most?: unknown },
  assumed: string,
) {
  const by = 'assumed';
  return 'value' in value && value.value !== undefined
    ? { state: 'known', value: value.value, by, assumed }
    : { state: 'between', least: value.least, most: value.most, by, assumed };
}

/** A record as an assumption gives it: its facts marked, the rest as it stands. */
function recordFrom(shape: string, value: Readonly<Record<string, unknown>>, assumed: string): unknown {
  const fields: Readonly<Record<string, Field>> = own(shapes, shape) ?? {};
  return Object.fromEntries(
    Object.entries(value).map(([key, v]) => [
      key,
      fields[key]?.[0].startsWith('fact') ? factFrom({ value: v }, assumed) : v,
    ]),
  );
}

/** Fills the facts of a record that nobody looked at, and of the records in it. */
function filled<T>(set: AssumptionSet, shape: Shape, record: T, above: Around): T {
  const own_ = record as Readonly<Record<string, unknown>>;
  let around: Around = { ...above, [shape]: own_ };
  const now: Record<string, unknown> = { ...own_ };
  let changed = false;
  for (const entry of set.entries) {
    const [of, key] = entry.fact.split('.') as [string, string];
    if (of !== shape || !isUnknown(now[key]) || !usable(entry, around)) continue;
    const assumed = `${set.id}/${entry.id}`;
    const [how, what] = fieldOf(entry.fact) as Field;
    const value = how.startsWith('fact')
      ? factFrom(entry, assumed)
      : recordFrom(what, entry.value as Readonly<Record<string, unknown>>, assumed);
    // what somebody described is there, whatever is usual
    if (deniedIn({ ...now, [key]: value })) continue;
    now[key] = value;
    changed = true;
    around = { ...above, [shape]: now };
  }
  for (const [key, [how, what]] of Object.entries<Field>(shapes[shape])) {
    const inner = now[key];
    if (how.startsWith('fact') || own(shapes, what) === undefined || inner === undefined) continue;
    const next = Array.isArray(inner)
      ? inner.map((item) => filled(set, what as Shape, item, around))
      : filled(set, what as Shape, inner, around);
    now[key] = next;
    changed = true;
  }
  return changed ? (now as T) : record;
}

const within = <S extends Shape>(above: Around, shape: S, record: object): Around => ({
  ...above,
  [shape]: record as Readonly<Record<string, unknown>>,
});

/** A run with the facts filled that nobody looked at. */
export function assumeRun(set: AssumptionSet, run: Run, above: Around): Run {
  const now = filled(set, 'run', run, above);
  return { ...now, feeds: run.feeds.map((outlet) => assumeOutlet(set, outlet, within(above, 'run', now))) };
}

const assumeOutlet = (set: AssumptionSet, outlet: Outlet, around: Around): Outlet =>
  outlet.kind === 'board'
    ? assumeBoard(set, outlet, around)
    : filled(set, outlet.kind === 'load' ? 'load' : 'chargePoint', outlet, around);

/** Boards nest as deep as they may: they are filled from the outside in, and put together from the inside out. */
function assumeBoard(set: AssumptionSet, top: Board, above: Around): Board {
  const found: { readonly board: Board; readonly now: Board; readonly runs: readonly (readonly [Run, Around])[] }[] =
    [];
  const open: (readonly [Board, Around])[] = [[top, above]];
  for (let next = open.pop(); next; next = open.pop()) {
    const [board, outside] = next;
    const now = filled(set, 'board', board, outside);
    const around = within(outside, 'board', now);
    const runs = board.runs.map((run): readonly [Run, Around] => {
      const filledRun = filled(set, 'run', run, around);
      return [filledRun, within(around, 'run', filledRun)];
    });
    found.push({ board, now, runs });
    board.runs.forEach((run, i) => {
      for (const outlet of run.feeds) if (outlet.kind === 'board') open.push([outlet, (runs[i] as [Run, Around])[1]]);
    });
  }
  const done = new Map<Board, Board>();
  for (const { board, now, runs } of found.reverse()) {
    const filledRuns = runs.map(([run, around], i) => ({
      ...run,
      feeds: (board.runs[i] as Run).feeds.map((outlet) =>
        outlet.kind === 'board' ? (done.get(outlet) as Board) : assumeOutlet(set, outlet, around),
      ),
    }));
    done.set(board, { ...now, runs: filledRuns });
  }
  return done.get(top) as Board;
}

/** Where a run of an installation stands that is not in it yet. */
export const aroundOf = ({ supply }: Pick<Installation, 'supply'>): Around => ({
  supply: supply as unknown as Readonly<Record<string, unknown>>,
});

/** A set of assumptions that can be used, or an error with the path of each problem. */
export function refuseAssumptions(set: AssumptionSet): void {
  const problems = assumptionProblems(set);
  if (problems.length > 0) throw invalidInput('the set of assumptions', problems);
}

/**
 * An installation in which facts that nobody looked at are taken from a set of assumptions, each marked with set and entry;
 * what is known, or known within a range, stays as it is. What passes by such a fact is `conditional`.
 * @param installation the installation
 * @param set the assumptions
 * @returns the installation with facts filled
 * @throws CalculationError `invalid-input` with the path of each problem of the set
 * @example
 * ```ts
 * import { amperes, assume, hertz, type Installation, known, unknown, volts } from 'ohmwright';
 * import { ordinaryHome } from 'ohmwright/great-britain';
 *
 * const house: Installation = {
 *   supply: {
 *     system: known('TN-C-S'), phases: known(1), nominalVoltage: volts(230), frequency: hertz(50),
 *     externalImpedance: unknown(), prospectiveCurrent: unknown(),
 *     cutOut: { kind: unknown(), rating: known(amperes(80)) }, looped: unknown(),
 *   },
 *   board: { kind: 'board', id: 'consumer unit', runs: [] },
 * };
 * assume(house, ordinaryHome).supply.externalImpedance.state; // => 'known'
 * ```
 */
export function assume(installation: Installation, set: AssumptionSet): Installation {
  refuseAssumptions(set);
  const supply = filled(set, 'supply', installation.supply, {});
  return { supply, board: assumeBoard(set, installation.board, aroundOf({ supply })) };
}
