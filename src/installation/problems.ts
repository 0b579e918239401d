import { own } from '../core/own.js';
import { invalidInput, type Problem, shown } from '../units/index.js';
import { labels } from './labels.js';
import type { Line } from './load.js';
import { NOT_COVERED, problemAt, recordProblems, type Say, type Where } from './record-problems.js';
import { runProblems } from './run-problems.js';
import type { Supply } from './supply.js';
import { type Board, type Installation, type Outlet, outletsBelow, type Run } from './tree.js';
import { isRecord } from './values.js';

/** Supplies that are refused by name, by what a document or an importer may say of them. */
const suppliesNotCovered: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  operation: { island: 'operation as an island, without the network' },
  currentKind: { dc: 'supplies and circuits of direct current' },
};

/** Each thing of a supply that is not covered, in words. */
export const notCoveredOf = (supply: object): readonly (readonly [key: string, what: string])[] =>
  Object.entries(suppliesNotCovered).flatMap(([key, kinds]) => {
    const said = own(supply as Readonly<Record<string, unknown>>, key);
    const what = typeof said === 'string' ? own(kinds, said) : undefined;
    return what === undefined ? [] : [[key, what] as const];
  });

function supplyProblems(supply: Supply, say: Say): undefined {
  recordProblems('supply', supply, say);
  if (!isRecord(supply)) return undefined;
  const { system, nominalVoltage, frequency } = supply;
  const refused = (key: string, what: string | undefined) => what && say([key], NOT_COVERED + what, 'not-covered');
  for (const [key, what] of notCoveredOf(supply)) refused(key, what);
  if (isRecord(system) && system.value === 'IT') refused('system', 'IT systems');
  // anything else than a number is named already, and may refuse to be compared
  if (typeof nominalVoltage === 'number' && nominalVoltage > 0 && nominalVoltage !== 230)
    refused('nominalVoltage', `a nominal voltage of ${nominalVoltage} V line to earth; public supplies have 230 V`);
  if (typeof frequency === 'number' && frequency > 0 && frequency !== 50)
    refused('frequency', `a frequency of ${frequency} Hz; public supplies have 50 Hz`);
  return undefined;
}

const singleLine: readonly Line[] = ['L1'];
/** Lines that the supply has; all three where their number is not known. */
export const linesOfSupply = ({ supply }: Pick<Installation, 'supply'>): readonly Line[] => {
  const phases = supply?.phases;
  return phases?.state === 'known' && phases.value === 1 ? singleLine : labels.line;
};

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
 * What is wrong between the parts of an installation that are in order otherwise: what a load control holds stands below it,
 * what a residual current device of a board serves leaves the board, and what leaves a board is on lines of its feeder: a
 * current on another line would flow through no conductor.
 */
export function partsProblems({ board }: Installation): readonly Problem[] {
  const problems: Problem[] = [];
  const open: (Met & { readonly feeder?: Run })[] = [{ board, at: ['board'], behind: 0 }];
  for (let met = open.pop(); met; met = open.pop()) {
    const here = met;
    const { feeder } = here;
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
    for (const [i, run] of runs.entries()) {
      for (const [k, line] of feeder ? run.lines.entries() : [])
        if (!feeder?.lines.includes(line))
          problems.push({
            path: [...pathOf(here), 'runs', i, 'lines', k],
            id: 'does-not-fit',
            message: `is ${line}, and ${feeder?.id}, which feeds ${here.board.id}, has ${feeder?.lines.join(', ')}`,
          });
      for (const [j, o] of run.feeds.entries())
        if (o.kind === 'board')
          open.push({ board: o, at: ['runs', i, 'feeds', j], behind: here.behind + 1, above: here, feeder: run });
    }
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
  const own = seen || found.length > 0 ? found : partsProblems(installation);
  const problems = [...own, ...besides];
  if (problems.length > 0) throw invalidInput(own.length > 0 ? 'the installation' : 'the input', problems);
  inOrder.add(installation);
}

/** An installation in which facts of a sound one are unknown instead: there is nothing in it that the other was not refused for. */
export function stillSound<T>(sound: T, unknown: T): T {
  if (isRecord(sound) && inOrder.has(sound)) inOrder.add(unknown as object);
  return unknown;
}
