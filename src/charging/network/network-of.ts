import { endsOf, type Fact, factValue, isMissing, type Known, type Missing, stated } from '../../core/index.js';
import { own } from '../../core/own.js';
import { asOneWay } from '../../installation/beside.js';
import {
  type Board,
  type ChargePoint,
  foundNoFuseAhead,
  type Installation,
  type Line,
  leavesTails,
  lineConductors,
  type ResidualDevice,
  type Run,
  refuseUnsound,
} from '../../installation/index.js';
import { hasResidual } from '../../installation/marking.js';
import { type Amperes, amperes, invalidInput, type Problem, type Ratio } from '../../units/index.js';
import { type ChargingNetwork, LEAST_CURRENT, type NetworkNode, type NetworkPoint, type PerLine } from './network.js';
import { inspection, inspectLines, isObject } from './refuse.js';
import { currentOfTransformer } from './transformer.js';

/** What an installation does not say of its charging network. */
export interface NetworkOptions {
  /**
   * Other load on each line by node, without what is at nodes behind it, A. Where a list of circuits is complete and has points
   * alone it is none; else not stated when absent: a load control then wants a meter there.
   */
  readonly otherLoad?: Readonly<Record<string, PerLine>>;
  /**
   * Largest other load by node, with what is behind it and without the points, A: the demand of the installation for the
   * node `INTAKE` (`existingOnLines`). A metered node without one gives no current while its meter is silent.
   */
  readonly worst?: Readonly<Record<string, Known<PerLine>>>;
  /** Kept free below the rating of the service fuse, A, 0 and up; 0 when absent. */
  readonly margin?: Amperes;
  /** Largest difference between lines at the intake, A. */
  readonly unbalance?: Amperes;
  /**
   * Neutrals by node, the intake, boards and runs: the largest current of each, A, and the third harmonic over the line
   * current, which adds up in it. Of a run on three lines with a neutral it is the rating of its device and the third
   * harmonic of the run when absent: a neutral as large as the lines is overloaded by third harmonics alone.
   */
  readonly neutral?: Readonly<Record<string, { readonly limit: Amperes; readonly thirdHarmonic?: Ratio }>>;
}

/** What is wrong with what comes with an installation, each with its path. */
function optionProblems(options: NetworkOptions): readonly Problem[] {
  const found = inspection();
  if (!isObject(options)) {
    found.when(true, ['options'], 'must be an object');
    return found.problems;
  }
  const { otherLoad, worst, margin, unbalance, neutral } = options;
  for (const [key, by, least] of [
    ['otherLoad', otherLoad, undefined],
    ['worst', worst, 0],
  ] as const) {
    if (by !== undefined && !isObject(by)) found.when(true, ['options', key], 'must hold currents by name');
    else
      for (const [id, currents] of Object.entries(by ?? {}))
        if (!isMissing(currents)) inspectLines(currents, least, found, ['options', key, id]);
  }
  if (neutral !== undefined && !isObject(neutral))
    found.when(true, ['options', 'neutral'], 'must hold neutrals by name');
  else
    for (const [id, own] of Object.entries(neutral ?? {})) {
      const path = ['options', 'neutral', id];
      if (isObject(own)) {
        found.number(own.limit, [...path, 'limit'], { least: 0 });
        if (found.number(own.thirdHarmonic, [...path, 'thirdHarmonic'], { least: 0, optional: true }))
          found.when((own.thirdHarmonic ?? 0) > 1, [...path, 'thirdHarmonic'], 'must be at most 1');
      } else found.when(true, path, 'must have a limit');
    }
  found.number(margin, ['options', 'margin'], { least: 0, optional: true });
  found.number(unbalance, ['options', 'unbalance'], { least: 0, optional: true });
  return found.problems;
}

/** What nobody says of a board bounds its current all the same. */
const unread = { state: 'unknown' } as const;

/** Name of the node of the service cut-out. */
export const INTAKE = 'intake';

/** Names under which something is said of a node that there is not: what is misspelt is not left out. */
function refuseStrays({ otherLoad, worst, neutral }: NetworkOptions, nodes: readonly NetworkNode[]) {
  const ids = nodes.map((n) => n.id);
  const strays = (key: string, by: object | undefined): readonly Problem[] =>
    Object.keys(by ?? {})
      .filter((id) => !ids.includes(id))
      .map((id) => ({ path: ['options', key, id], message: `there is no node '${id}'; known are ${ids.join(', ')}` }));
  const problems = [...strays('otherLoad', otherLoad), ...strays('worst', worst), ...strays('neutral', neutral)];
  if (problems.length > 0) throw invalidInput('The charging network', problems);
}

/**
 * The charging network of an installation: a node for the service fuse, for each board and for each run with charge
 * points, and for each residual current device with a part of a board behind it, each with the smallest of the ratings
 * and settings that bound its current: fuses, that of a switch-fuse among them, transformer, switches, busbars, residual
 * current devices, load controls. Cables are not among them: the devices protect them.
 * @param installation the installation
 * @param options other load by board, its worst by node, and margin below the fuse, A
 * @returns the network, or every fact that is not known and stands in the way
 * @throws CalculationError `invalid-input` with the path of each problem
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { amperes, isMissing, squareMillimetres } from 'ohmwright';
 * import { bs7671Demand } from 'ohmwright/bs7671';
 * import { INTAKE, networkOf } from 'ohmwright/charging';
 * import { demandOf, existingOnLines } from 'ohmwright/demand';
 * import { readSurvey } from 'ohmwright/io';
 * import { decidedRun, withAddedRun } from 'ohmwright/site';
 *
 * const { installation, wanted } = readSurvey(survey);
 * const [point] = wanted;
 * if (!point) throw new Error('no point is wanted');
 * const run = decidedRun(point, point.run.cable, squareMillimetres(6), amperes(32));
 * const demand = demandOf(bs7671Demand, installation, { premises: 'dwelling' });
 * const network = networkOf(withAddedRun(installation, point.from, run), {
 *   margin: amperes(5),
 *   worst: { [INTAKE]: existingOnLines(demand) },
 * });
 * isMissing(network) ? network.missing : network.points.map((p) => p.id); // => ['drive']
 * ```
 */
export function networkOf(installation: Installation, options: NetworkOptions = {}): Known<ChargingNetwork> {
  refuseUnsound(installation, optionProblems(options));
  const gaps: Missing['missing'][number][] = [];
  const found = <T>(value: Known<T>): T | undefined => {
    if (!isMissing(value)) return value;
    gaps.push(...value.missing);
    return undefined;
  };
  const read = <T>(name: string, fact: Fact<T>): T | undefined => found(factValue(name, fact));
  const nodes: NetworkNode[] = [];
  const points: NetworkPoint[] = [];
  const limitOn = (lines: readonly Line[], limits: readonly (Amperes | undefined)[]): PerLine | undefined => {
    const known = limits.filter((value) => value !== undefined);
    if (known.length === 0) return undefined;
    const most = Math.min(...known);
    const [one, two, three] = lineConductors.map((line) => amperes(lines.includes(line) ? most : 0));
    return [one!, two!, three!];
  };

  const worstOf = (id: string): PerLine | undefined => {
    const worst = own(options.worst, id);
    return worst && found(worst);
  };

  const neutralOf = (id: string, through?: Run, rating?: Amperes) => {
    const said = own(options.neutral, id);
    if (said || !through || through.lines.length !== 3) return said;
    const thirdHarmonic = endsOf(through.thirdHarmonic)?.[1];
    if (thirdHarmonic === undefined) read(`${through.id}.thirdHarmonic`, through.thirdHarmonic ?? unread);
    const counts = thirdHarmonic !== undefined && thirdHarmonic > 0 && rating !== undefined;
    return counts ? { limit: rating, thirdHarmonic } : undefined;
  };
  const ownOf = (id: string, through?: Run, rating?: Amperes) => {
    const neutral = neutralOf(id, through, rating);
    return { worst: worstOf(id), neutralLimit: neutral?.limit, thirdHarmonic: neutral?.thirdHarmonic };
  };
  /** Where none is listed, one that nobody looked for may bound the current. */
  const seekResidual = ({ id, residual = [], noResidual = unread }: Board | Run): void => {
    if (residual.length === 0 && read(`${id}.noResidual`, noResidual) === false) read(`${id}.residual`, unread);
  };
  const ratedOf = (of: string, { ratedCurrent = unread }: ResidualDevice) =>
    read(`${of}.residual.ratedCurrent`, ratedCurrent);

  const { supply } = installation;
  const phases = read('line conductors of the supply', supply.phases);
  const all: readonly Line[] = phases === 1 ? [lineConductors[0]] : lineConductors;
  const fuse = read('cutOutRating', supply.cutOut.rating);
  const rated = supply.transformer && found(currentOfTransformer(supply.transformer));
  const most =
    fuse === undefined ? undefined : amperes(Math.max(0, Math.min(fuse, rated ?? fuse) - (options.margin ?? 0)));
  nodes.push(nodeOf(INTAKE, undefined, limitOn(all, [most]), { unbalance: options.unbalance, ...ownOf(INTAKE) }));

  const addBoard = (board: Board, parent: string, lines: readonly Line[], run?: Run, feeder?: Amperes) => {
    const { mainSwitch, residual = [] } = board;
    seekResidual(board);
    const limit = limitOn(lines, [
      feeder,
      read(`${board.id}.mainSwitch.rating`, mainSwitch?.rating ?? unread),
      foundNoFuseAhead(mainSwitch)
        ? undefined
        : read(`${board.id}.mainSwitch.fuseAhead`, mainSwitch?.fuseAhead ?? unread),
      read(`${board.id}.rating`, board.rating ?? unread),
      board.control && read(`${board.id}.control.limit`, board.control.limit),
      ...residual.filter((r) => r.serves === undefined).map((r) => ratedOf(board.id, r)),
    ]);
    const load = own(options.otherLoad, board.id) ?? (feedsNodesAlone(board, board.runs) ? NONE : undefined);
    nodes.push(nodeOf(board.id, parent, limit, { load, ...ownOf(board.id, run, feeder) }));
    const behind = new Map<string, string>();
    for (const { runs, devices } of partsOf(board)) {
      const id = `${board.id}: ${runs.join(', ')}`;
      const rated = devices.map((r) => ratedOf(board.id, r));
      const served = board.runs.filter((run) => runs.includes(run.id));
      const load = own(options.otherLoad, id) ?? (feedsNodesAlone(board, served) ? NONE : undefined);
      nodes.push(nodeOf(id, board.id, limitOn(lines, rated), { load, ...ownOf(id) }));
      for (const served of runs) behind.set(served, id);
    }
    for (const run of board.runs) addRun(run, behind.get(run.id) ?? (leavesTails(run) ? parent : board.id), lines);
    return limit;
  };
  /** Loads beside the points of a run, in full. */
  const loadsOf = (run: Run): PerLine | undefined => {
    const on = (line: Line) =>
      run.feeds.reduce((sum, o) => {
        if (o.kind !== 'load' || !o.lines.includes(line)) return sum;
        return sum + (endsOf(o.current)?.[1] ?? read(`${o.id}.current`, o.current) ?? 0);
      }, 0);
    if (!run.feeds.some((o) => o.kind === 'load')) return undefined;
    const [one, two, three] = lineConductors.map((line) => amperes(on(line)));
    return [one!, two!, three!];
  };
  const addRun = (run: Run, parent: string, lines: readonly Line[]): void => {
    const fed = run.feeds.filter((outlet): outlet is ChargePoint => outlet.kind === 'charge-point');
    const further = run.feeds.filter((outlet) => outlet.kind === 'board');
    if (fed.length === 0 && further.length === 0) return;
    const rating = read(`${run.id}.device.rating`, asOneWay(run).device.rating);
    if (run.existing) seekResidual(run);
    const used = lines.filter((line) => run.lines.includes(line));
    // several boards along a run share what its device carries
    const shared = fed.length > 0 || further.length > 1;
    const apart = residualApart(run).flatMap((r) => ratedOf(run.id, r) ?? []);
    const carried = rating && amperes(Math.min(rating, ...apart));
    const load = own(options.otherLoad, run.id) ?? loadsOf(run);
    if (shared) nodes.push(nodeOf(run.id, parent, limitOn(used, [carried]), { load, ...ownOf(run.id, run, carried) }));
    for (const board of further) addBoard(board, shared ? run.id : parent, used, run, carried);
    for (const point of fed) {
      const setting = read(`${point.id}.setting`, point.setting);
      if (setting === undefined || carried === undefined) continue;
      const least = point.minimum ?? LEAST_CURRENT;
      // a point that cannot run at all is left out of the network, not offered less than it can use
      if (Math.min(setting, carried) < least) continue;
      points.push({
        id: point.id,
        node: run.id,
        lines: point.lines,
        most: amperes(Math.min(setting, carried)),
        ...stated({ least: point.minimum }),
      });
    }
  };
  const ofBoard = addBoard(installation.board, INTAKE, all);
  // where all that passes the intake passes the board, a meter there is one of the board; a load control sees it anyway
  const [intake] = nodes;
  const { runs, control } = installation.board;
  const held = runs.some(leavesTails) ? limitOn(all, [endsOf(control?.limit)?.[0]]) : ofBoard;
  if (intake?.limit && held) {
    const [one, two, three] = intake.limit.map((a, k) => amperes(Math.min(a, held[k]!)));
    nodes[0] = { ...intake, limit: [one!, two!, three!] };
  }
  refuseStrays(options, nodes);
  return gaps.length > 0 ? { missing: gaps } : { nodes, points };
}

const nodeOf = (
  id: string,
  parent: string | undefined,
  limit: PerLine | undefined,
  more: {
    readonly load?: PerLine | undefined;
    readonly worst?: PerLine | undefined;
    readonly unbalance?: Amperes | undefined;
    readonly neutralLimit?: Amperes | undefined;
    readonly thirdHarmonic?: Ratio | undefined;
  },
): NetworkNode => ({ id, ...stated({ parent, limit, ...more }) });

const NONE: PerLine = /* @__PURE__ */ (() => [amperes(0), amperes(0), amperes(0)] as const)();

/** Whether nothing but what is in the network leaves a board, or a part of it: points, and boards further on. */
const feedsNodesAlone = ({ complete }: Board, runs: readonly Run[]): boolean =>
  complete?.state === 'known' && complete.value && runs.every(({ feeds }) => feeds.some((o) => o.kind !== 'load'));

/** Residual current devices of a run that are no part of its overcurrent device, which is rated for itself. */
function residualApart({ residual = [], device: { kind } }: Run): readonly ResidualDevice[] {
  const part = kind.state === 'known' && hasResidual(kind.value);
  const first = part && residual.find(({ position }) => position === 'origin-of-circuit');
  return residual.filter((r) => r !== first && r.position !== 'inside-equipment');
}

/** Circuits of a board behind residual current devices that serve a part of it; those that share a circuit are taken together. */
function partsOf({ residual = [] }: Board) {
  let parts: { readonly runs: readonly string[]; readonly devices: readonly ResidualDevice[] }[] = [];
  for (const device of residual) {
    if (device.serves === undefined || device.serves.length === 0) continue;
    const mine = new Set(device.serves);
    const meets = parts.filter((part) => part.runs.some((id) => mine.has(id)));
    const one = {
      runs: [...new Set([...meets.flatMap((part) => part.runs), ...mine])],
      devices: [...meets.flatMap((part) => part.devices), device],
    };
    parts = [...parts.filter((part) => !meets.includes(part)), one];
  }
  return parts;
}
