import { endsOf } from '../core/index.js';
import { own } from '../core/own.js';
import { invalidInput, type Problem, type ProblemId } from '../units/index.js';
import { cableOfSection } from './by-cable.js';
import type { Cable, Group, Stretch } from './cable.js';
import { labels } from './labels.js';
import type { Line } from './load.js';
import { hasResidual } from './marking.js';
import { deniesResidual } from './residual-upstream.js';
import { type Field, shapes } from './shapes.js';
import type { Supply } from './supply.js';
import { type Board, type Installation, type Outlet, outletsBelow, type Run } from './tree.js';
import { isRecord, shown, valueProblem, valueProblemId } from './values.js';

type Where = readonly (string | number)[];
type Shape = keyof typeof shapes;
/** Takes down a problem, at a place from where it is asked. */
export type Say = (at: Where, message: string, id?: ProblemId) => undefined;

/** A problem; whoever names nothing more precise says that it does not fit the rest. */
export const problemAt = (path: Where, message: string, id: ProblemId = 'does-not-fit'): Problem => ({
  path,
  id,
  message,
});

/** Records in which nothing was wrong, by their shape: a changed installation shares most of them with the one before. */
const sound = /* @__PURE__ */ new Map<string, WeakSet<object>>();

/** Runs in which nothing was wrong, for the lines that their supply has. */
const soundRuns = /* @__PURE__ */ new WeakMap<object, readonly Line[]>();

/** What is wrong with a fact. */
export function factProblems(what: string, fact: unknown, say: Say): undefined {
  const state = isRecord(fact) ? fact.state : undefined;
  const wrong = (key: string, value: unknown) => {
    // a count within a range is taken between its ends, where it need not be whole
    const problem = valueProblem(what, value, false);
    if (problem) say([key], problem, valueProblemId(what, value));
    return problem === undefined;
  };
  if (!isRecord(fact) || !['known', 'between', 'unknown'].includes(state as string))
    return say([], `is ${shown(fact)}; a fact is due: it is known, known within a range, or unknown`, 'wrong-kind');
  const { by, obtain, assumed } = fact;
  for (const [key, text] of [
    ['by', by],
    ['obtain', obtain],
    ['assumed', assumed],
  ] as const)
    if (text !== undefined && typeof text !== 'string') say([key], `is ${shown(text)}; it is text`, 'wrong-kind');
  if (state === 'known') wrong('value', fact.value);
  if (state !== 'between') return undefined;
  const { least, most } = fact;
  if (typeof least !== 'number' || typeof most !== 'number' || own(labels, what))
    return say([], 'is a range; only a quantity can lie between two values', 'wrong-kind');
  if (wrong('least', least) && wrong('most', most) && least > most)
    say([], 'is a range whose ends are the wrong way round', 'wrong-order');
}

/** Whether nothing is said while something is looked through. */
function cleanly(say: Say, look: (note: Say) => void): boolean {
  let clean = true;
  look((at, message, id) => {
    clean = false;
    return say(at, message, id);
  });
  return clean;
}

/** What is wrong with a record, apart from what it is held against. */
export function recordProblems(shape: string, value: unknown, say: Say): undefined {
  if (!isRecord(value)) return say([], `is ${shown(value)}; ${shape} is due`, 'wrong-kind');
  const known = sound.get(shape) ?? new WeakSet();
  sound.set(shape, known);
  if (known.has(value)) return undefined;
  if (cleanly(say, (note) => problemsOf(shape as Shape, value, note))) known.add(value);
}

function problemsOf(shape: Shape, value: Readonly<Record<string, unknown>>, note: Say): void {
  const plain = (what: string, item: unknown, at: Where) => {
    if (own(shapes, what))
      return recordProblems(what, item, (inner, message, id) => note([...at, ...inner], message, id));
    const problem = valueProblem(what, item);
    if (problem) note(at, problem, valueProblemId(what, item));
  };
  for (const [key, [how, what]] of Object.entries<Field>(shapes[shape])) {
    const item = value[key];
    if (item === undefined) {
      if (!how.endsWith('?')) note([key], 'is missing', 'missing');
    } else if (how.startsWith('fact')) factProblems(what, item, (at, message, id) => note([key, ...at], message, id));
    else if (how.startsWith('plain')) plain(what, item, [key]);
    else if (!Array.isArray(item)) note([key], `is ${shown(item)}; a list is due`, 'wrong-kind');
    else for (let i = 0; i < item.length; i++) plain(what, item[i], [key, i]);
  }
  if (deniesResidual(value))
    note(
      ['noResidual'],
      'says that there is no residual current device, and one is described: one of the two is wrong',
    );
}

/** How a problem begins that is none of the input: what it asks for is well said, and not covered. */
export const NOT_COVERED = 'not covered: ';

/** Supplies that are refused by name, by what a document or an importer may say of them. */
export const suppliesNotCovered: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  operation: { island: 'operation as an island, without the network' },
  currentKind: { dc: 'supplies and circuits of direct current' },
};

function supplyProblems(supply: Supply, say: Say): undefined {
  recordProblems('supply', supply, say);
  if (!isRecord(supply)) return undefined;
  const { system, nominalVoltage, frequency } = supply;
  const refused = (key: string, what: string | undefined) => what && say([key], NOT_COVERED + what, 'not-covered');
  for (const [key, kinds] of Object.entries(suppliesNotCovered)) refused(key, own(kinds, String(own(supply, key))));
  if (isRecord(system) && system.value === 'IT') refused('system', 'IT systems');
  if (nominalVoltage > 0 && nominalVoltage !== 230)
    refused('nominalVoltage', `a nominal voltage of ${nominalVoltage} V line to earth; public supplies have 230 V`);
  if (frequency > 0 && frequency !== 50)
    refused('frequency', `a frequency of ${frequency} Hz; public supplies have 50 Hz`);
  return undefined;
}

const singleLine: readonly Line[] = ['L1'];
/** Lines that the supply has; all three where their number is not known. */
export const linesOfSupply = ({ supply }: Pick<Installation, 'supply'>): readonly Line[] => {
  const phases = supply?.phases;
  return phases?.state === 'known' && phases.value === 1 ? singleLine : labels.line;
};

function lineProblems(
  lines: readonly Line[],
  of: readonly Line[],
  within: readonly Line[] | undefined,
  say: Say,
): undefined {
  if (!Array.isArray(lines) || lines.length === 0) return say(['lines'], 'names no line conductor', 'empty');
  const seen = new Set<Line>();
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i] as Line;
    if (!of.includes(line)) say(['lines', i], `is ${shown(line)}; the supply has ${of.join(', ')}`);
    else if (within && !within.includes(line)) say(['lines', i], `is ${line}, which its circuit does not have`);
    else if (seen.has(line)) say(['lines', i], `names ${line} twice`, 'twice');
    seen.add(line);
  }
  // between two lines stands another voltage than U_0: nothing here is worked out for it
  if (seen.size !== 2) return undefined;
  return say(
    ['lines'],
    'are two line conductors: between two lines nothing is covered; a load from two lines to neutral is two loads',
  );
}

/** What is wrong with the number of cores of a cable for the lines of a run, a neutral and a protective core. */
export function coresProblem(cable: Cable, { lines, feeds }: Run): string | undefined {
  const { cores, construction } = cable;
  const single = construction === 'single-core';
  // a motor or heater on three lines may do without a neutral; of single cores those that carry load are counted
  const bare = lines.length === 3 && (single || feeds.every((o) => o.kind === 'load' && o.lines.length === 3));
  const own = cable.protective === 'core' && !single ? 1 : 0;
  const needed = lines.length + (bare ? 0 : 1) + own;
  if (!labels.coresOfCable.includes(cores) || cores >= needed) return undefined;
  const conductors = lines.length === 1 ? 'one line conductor' : 'three line conductors';
  return `is ${cores}; ${conductors}${bare ? '' : ' and neutral'}${own ? ', and a protective core,' : ''} need ${needed}`;
}

/** Below it no load of an installation stays: common practice, no source. Nearly nought would take the drop of a cable away. */
const LEAST_POWER_FACTOR = 0.1;

/** What is wrong with a load or charge point on a run; false where it is not known what it is, or on which lines. */
function outletProblems(outlet: Outlet, of: readonly Line[], within: readonly Line[] | undefined, say: Say): boolean {
  if (!isRecord(outlet)) say([], `is ${shown(outlet)}; a board, a load or a charge point is due`, 'wrong-kind');
  else if (!['board', 'load', 'charge-point'].includes(outlet.kind))
    say(['kind'], `is ${shown(outlet.kind)}; known are board, load, charge-point`, 'not-allowed');
  else if (outlet.kind === 'board') return true;
  else {
    recordProblems(outlet.kind === 'load' ? 'load' : 'chargePoint', outlet, say);
    lineProblems(outlet.lines, of, within, say);
    if (outlet.kind === 'load' && outlet.dwellings !== undefined && outlet.purpose !== 'dwellings')
      say(['dwellings'], 'belongs to a load whose purpose is dwellings');
    if (outlet.kind === 'load' && outlet.powerFactor !== undefined && outlet.powerFactor < LEAST_POWER_FACTOR)
      say(
        ['powerFactor'],
        `is ${outlet.powerFactor}; a load takes active power: ${LEAST_POWER_FACTOR} and up`,
        'out-of-range',
      );
    if (outlet.kind === 'charge-point') {
      for (const key of ['directPower', 'efficiency', 'powerFactor'] as const)
        if (outlet.mode !== 4 && outlet[key] !== undefined) say([key], 'is of charge points of mode 4 alone');
      const most = endsOf(isRecord(outlet.setting) ? outlet.setting : undefined)?.[1];
      if (outlet.minimum !== undefined && most !== undefined && outlet.minimum > most)
        say(['minimum'], `is ${outlet.minimum} A, and the point is set to ${most} A`);
      for (const key of ['value', 'least', 'most'])
        if (isRecord(outlet.setting) && own(outlet.setting, key) === 0)
          say(['setting', key], 'is 0 A; a point is set above that', 'out-of-range');
    }
    return Array.isArray(outlet.lines);
  }
  return false;
}

/** Loads that are tapped beyond the end of their run, where one of the two lengths is wrong, and routes without length. */
function tapProblems({ stretches, feeds, ring }: Run, say: Say): void {
  const ends = (Array.isArray(stretches) ? stretches : []).map(
    (s: Stretch) => endsOf(s?.length) ?? ([0, Number.POSITIVE_INFINITY] as const),
  );
  if (ends.length > 0 && ends.every(([, l]) => l === 0)) say(['stretches'], 'come to 0 m; a route has a length');
  const most = ends.reduce((sum, [, l]) => sum + l, 0);
  const least = ends.reduce((sum, [l]) => sum + l, 0);
  for (const [j, o] of feeds.entries()) {
    if (o.kind === 'charge-point' || o.at === undefined || ends.length === 0) continue;
    if (o.at > most) say(['feeds', j, 'at'], `is ${o.at} m, and the run is ${most} m long`);
    // the run to a board ends there, where nothing else hangs on it
    else if (o.kind === 'board' && !ring && feeds.length === 1 && o.at < least)
      say(['feeds', j, 'at'], `is ${o.at} m, and the run, which feeds nothing else, is ${least} m long`);
  }
}

/** What of ways side by side is not worked out. */
function besideProblems({ ring, feeds, residual, device, beside = [] }: Run, say: Say): void {
  const refused = (at: Where, what: string) => say(at, NOT_COVERED + what, 'not-covered');
  const [board, ...more] = feeds;
  if (ring) refused(['ring'], 'a ring beside which other ways run');
  if (!isRecord(board) || board.kind !== 'board' || board.at !== undefined || more.length > 0)
    refused(['feeds'], 'ways side by side that feed anything but one board at their end');
  const kinds = [device, ...beside.map((way) => (isRecord(way) ? way.device : undefined))].map((d) => d?.kind);
  if (
    (residual?.length ?? 0) > 0 ||
    kinds.some((k) => k?.state === 'known' && isRecord(k.value) && hasResidual(k.value))
  )
    refused(
      ['residual'],
      'residual current devices in ways side by side: neutrals do not share as lines do, and they operate without a fault',
    );
}

/** What is wrong with a run and what it feeds, boards apart: in itself, and for the lines that the supply has. */
export function runProblems(run: Run, of: readonly Line[], say: Say): undefined {
  if (soundRuns.get(run) === of) return undefined;
  if (cleanly(say, (note) => problemsWithin(run, of, note)) && isRecord(run)) soundRuns.set(run, of);
}

function problemsWithin(run: Run, of: readonly Line[], say: Say): undefined {
  recordProblems('run', run, say);
  if (!isRecord(run)) return undefined;
  const within = Array.isArray(run.lines) && run.lines.every((l) => of.includes(l)) ? run.lines : undefined;
  lineProblems(run.lines, of, undefined, say);
  if (!Array.isArray(run.feeds)) return say(['feeds'], `is ${shown(run.feeds)}; a list is due`, 'wrong-kind');
  let whole = within !== undefined && run.lines.length !== 2 && isRecord(run.cable);
  for (const [j, outlet] of run.feeds.entries()) {
    const good = outletProblems(outlet, of, within, (at, message, id) => say(['feeds', j, ...at], message, id));
    whole &&= good;
  }
  for (const [i, stretch] of (Array.isArray(run.stretches) ? run.stretches : []).entries()) {
    const group = (isRecord(stretch) ? stretch.group : undefined) as Group | undefined;
    const circuits = group?.circuits?.state === 'known' ? group.circuits.value : Number.POSITIVE_INFINITY;
    const light = group?.lightlyLoaded ?? 0;
    if (light > circuits)
      say(['stretches', i, 'group', 'lightlyLoaded'], `is ${light} in a group of ${circuits} circuits`);
  }
  for (const [j, o] of run.ring === true ? run.feeds.entries() : [])
    if (isRecord(o) && o.kind === 'board' && o.at === undefined)
      say(
        ['feeds', j, 'at'],
        `${NOT_COVERED}a ring to a board of which nobody says where along it the board stands: after how many metres from one end; two cables to one board are no ring, but parallel, or beside each other behind devices of their own`,
        'not-covered',
      );
  if (Array.isArray(run.beside) && run.beside.length > 0) besideProblems(run, say);
  if (whole) tapProblems(run, say);
  const cores = whole ? coresProblem(run.cable, run) : undefined;
  if (cores) say(['cable', 'cores'], cores);
  return whole ? joinProblems(run, say) : undefined;
}

/** What is wrong with a change of cable along a run. */
function joinProblems(run: Run, say: Say): undefined {
  const stretches = (Array.isArray(run.stretches) ? run.stretches : []).filter(isRecord) as unknown as Stretch[];
  for (const [i, { cable, jointAccessible }] of stretches.entries()) {
    const cores = isRecord(cable) ? coresProblem(cable as unknown as Cable, run) : undefined;
    if (cores) say(['stretches', i, 'cable', 'cores'], cores);
    if (i === 0 && jointAccessible !== undefined)
      say(
        ['stretches', i, 'jointAccessible'],
        'is of the first section, which begins at the device: there is no joint',
      );
  }
  // what is chosen, varied or read for the run would be none of any section
  if (stretches.length > 0 && stretches.every(({ cable }) => cable !== undefined))
    say(['cable'], 'is the cable of no section: each states one of its own');
  if (
    run.ring === true &&
    stretches.some((s) => cableOfSection(run, s) !== run.cable || s.jointAccessible !== undefined)
  )
    say(['ring'], `${NOT_COVERED}a ring whose cable changes along the route`, 'not-covered');
}

/** Names that were used: unique by kind, a circuit may be called what its load is called. */
export class Names {
  private readonly used = { board: new Set<string>(), run: new Set<string>(), outlet: new Set<string>() };

  note(kind: 'board' | 'run' | 'outlet', of: unknown, say: Say): void {
    const id = isRecord(of) ? of.id : undefined;
    if (typeof id !== 'string' || id === '') return;
    if (this.used[kind].has(id)) say(['id'], `'${id}' is used twice; a name may be used once`, 'twice');
    this.used[kind].add(id);
  }

  of(kind: 'board' | 'run' | 'outlet'): ReadonlySet<string> {
    return this.used[kind];
  }
}

/** A board with the way to it; a path is put together only where something is wrong. */
interface Met {
  readonly board: Board;
  readonly at: Where;
  /** How many boards stand before it. */
  readonly behind: number;
  readonly above?: Met;
}

const pathOf = (met: Met): Where => {
  const parts: Where[] = [];
  for (let m: Met | undefined = met; m; m = m.above) parts.push(m.at);
  return parts.reverse().flat();
};

/**
 * Everything for which an installation is refused, each with its path.
 * @param names names that are used elsewhere
 * @param mostBehind how many boards may stand one behind another
 */
export function installationProblems(
  installation: Installation,
  names = new Names(),
  mostBehind = Number.POSITIVE_INFINITY,
): readonly Problem[] {
  const problems: Problem[] = [];
  const sayAt =
    (at: () => Where): Say =>
    (inner, message, id) =>
      void problems.push(problemAt([...at(), ...inner], message, id));
  if (!isRecord(installation))
    return [{ path: [], id: 'wrong-kind', message: `is ${shown(installation)}; an installation is due` }];
  supplyProblems(
    installation.supply,
    sayAt(() => ['supply']),
  );
  const of = linesOfSupply(installation);
  const boards = new Set<unknown>();
  const open: Met[] = [{ board: installation.board, at: ['board'], behind: 0 }];
  for (let met = open.pop(); met; met = open.pop()) {
    const here = met;
    const { board } = here;
    const say = sayAt(() => pathOf(here));
    if (boards.has(board)) {
      say([], 'is a board that stands elsewhere in the tree as well');
      continue;
    }
    recordProblems('board', board, say);
    if (!isRecord(board)) continue;
    boards.add(board);
    if (here.behind > mostBehind) {
      say([], `${NOT_COVERED}more than ${mostBehind} boards one behind another`, 'not-covered');
      continue;
    }
    if (board.kind !== 'board') say(['kind'], `is ${shown(board.kind)}; it is board`, 'not-allowed');
    names.note('board', board, say);
    if (!Array.isArray(board.runs)) {
      say(['runs'], `is ${shown(board.runs)}; a list is due`, 'wrong-kind');
      continue;
    }
    const below: Met[] = [];
    board.runs.forEach((run: Run, i) => {
      const inRun: Say = (at, message, id) => say(['runs', i, ...at], message, id);
      runProblems(run, of, inRun);
      names.note('run', run, inRun);
      for (const [k, way] of (isRecord(run) && Array.isArray(run.beside) ? run.beside : []).entries())
        names.note('run', way, (at, message, id) => inRun(['beside', k, ...at], message, id));
      if (!isRecord(run) || !Array.isArray(run.feeds)) return;
      run.feeds.forEach((o: Outlet, j) => {
        if (isRecord(o) && o.kind === 'board')
          below.push({ board: o, at: ['runs', i, 'feeds', j], behind: here.behind + 1, above: here });
        else names.note('outlet', o, (at, message, id) => inRun(['feeds', j, ...at], message, id));
      });
    });
    open.push(...below.reverse());
  }
  return problems;
}

/**
 * What is wrong with names in an installation that is in order otherwise: what a load control holds stands below it, and
 * what a residual current device of a board serves leaves the board.
 */
export function nameProblems({ board }: Installation): readonly Problem[] {
  const problems: Problem[] = [];
  const open: Met[] = [{ board, at: ['board'], behind: 0 }];
  for (let met = open.pop(); met; met = open.pop()) {
    const here = met;
    const { control, runs } = here.board;
    const below = control ? outletsBelow(here.board) : [];
    const held = new Set(below.flatMap((o) => (o.kind === 'charge-point' || o.purpose === 'charge-point' ? o.id : [])));
    for (const [i, id] of (control?.controls ?? []).entries())
      if (!held.has(id))
        problems.push({
          path: [...pathOf(here), 'control', 'controls', i],
          id: 'does-not-fit',
          message: `${id} is no charge point below this board`,
        });
    const leaving = new Set(runs.map((r) => r.id));
    for (const [i, device] of (here.board.residual ?? []).entries())
      for (const [j, id] of (device.serves ?? []).entries())
        if (!leaving.has(id))
          problems.push({
            path: [...pathOf(here), 'residual', i, 'serves', j],
            id: 'does-not-fit',
            message: `${id} is no circuit of this board`,
          });
    for (const [i, run] of runs.entries())
      for (const [j, o] of run.feeds.entries())
        if (o.kind === 'board')
          open.push({ board: o, at: ['runs', i, 'feeds', j], behind: here.behind + 1, above: here });
  }
  return problems;
}

const inOrder = /* @__PURE__ */ new WeakSet<object>();

/**
 * Refuses an installation that cannot be, or is not covered. It is looked through once: what is given is not changed
 * afterwards.
 * @param installation an installation, from whatever hand
 * @param besides problems of what comes with it
 * @throws CalculationError `invalid-input` with the path of each problem
 */
export function refuseUnsound(installation: Installation, besides: readonly Problem[] = []): void {
  const seen = isRecord(installation) && inOrder.has(installation);
  const found = seen ? [] : installationProblems(installation);
  const own = seen || found.length > 0 ? found : nameProblems(installation);
  const problems = [...own, ...besides];
  if (problems.length > 0) throw invalidInput(own.length > 0 ? 'the installation' : 'the input', problems);
  inOrder.add(installation);
}

/** An installation in which facts of a sound one are unknown instead: there is nothing in it that the other was not refused for. */
export function stillSound<T>(sound: T, unknown: T): T {
  if (isRecord(sound) && inOrder.has(sound)) inOrder.add(unknown as object);
  return unknown;
}
