import { endsOf, type Fact, factValue, isMissing, type Known, type Missing, stated } from '../../core/index.js';
import { own } from '../../core/own.js';
import { asOneWay } from '../../installation/beside.js';
import {
  type Board,
  type ChargePoint,
  type Installation,
  type Line,
  lineConductors,
  type Run,
  refuseUnsound,
} from '../../installation/index.js';
import { type Amperes, amperes, type Problem, type Ratio } from '../../units/index.js';
import { type ChargingNetwork, LEAST_CURRENT, type NetworkNode, type NetworkPoint, type PerLine } from './network.js';
import { inspection, inspectLines, isObject } from './refuse.js';

/** What an installation does not say of its charging network. */
export interface NetworkOptions {
  /** Other load on each line by board, without what is behind boards further on, A; none when absent. */
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
   * current, which adds up in it. Of a run on three lines whose third harmonic is stated it is the rating of its device
   * when absent: a neutral as large as the lines is overloaded by third harmonics alone.
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

/**
 * The charging network of an installation: a node for the service fuse, for each board and for each run with charge
 * points, each with the smallest of the ratings and settings that bound its current.
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
  const read = <T>(name: string, fact: Fact<T>): T | undefined => {
    const value = factValue(name, fact);
    if (!isMissing(value)) return value;
    gaps.push(...value.missing);
    return undefined;
  };
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
    if (worst === undefined || !isMissing(worst)) return worst;
    gaps.push(...worst.missing);
    return undefined;
  };

  const ownOf = (id: string, through?: Run, rating?: Amperes) => {
    const thirdHarmonic = through?.lines.length === 3 ? endsOf(through.thirdHarmonic)?.[1] : undefined;
    const counts = thirdHarmonic !== undefined && thirdHarmonic > 0 && rating !== undefined;
    const neutral = own(options.neutral, id) ?? (counts ? { limit: rating, thirdHarmonic } : undefined);
    return { worst: worstOf(id), neutralLimit: neutral?.limit, thirdHarmonic: neutral?.thirdHarmonic };
  };

  const { supply } = installation;
  const phases = read('line conductors of the supply', supply.phases);
  const all: readonly Line[] = phases === 1 ? [lineConductors[0]] : lineConductors;
  const fuse = read('cutOutRating', supply.cutOut.rating);
  const most = fuse === undefined ? undefined : amperes(Math.max(0, fuse - (options.margin ?? 0)));
  nodes.push(nodeOf(INTAKE, undefined, limitOn(all, [most]), { unbalance: options.unbalance, ...ownOf(INTAKE) }));

  const addBoard = (board: Board, parent: string, lines: readonly Line[], run?: Run, feeder?: Amperes): void => {
    const limit = limitOn(lines, [
      feeder,
      read(`${board.id}.mainSwitch.rating`, board.mainSwitch?.rating ?? unread),
      read(`${board.id}.rating`, board.rating ?? unread),
      board.control && read(`${board.id}.control.limit`, board.control.limit),
    ]);
    nodes.push(
      nodeOf(board.id, parent, limit, { load: own(options.otherLoad, board.id), ...ownOf(board.id, run, feeder) }),
    );
    for (const run of board.runs) addRun(run, board.id, lines);
  };
  const addRun = (run: Run, parent: string, lines: readonly Line[]): void => {
    const fed = run.feeds.filter((outlet): outlet is ChargePoint => outlet.kind === 'charge-point');
    const boards = run.feeds.filter((outlet) => outlet.kind === 'board');
    if (fed.length === 0 && boards.length === 0) return;
    const rating = read(`${run.id}.device.rating`, asOneWay(run).device.rating);
    const used = lines.filter((line) => run.lines.includes(line));
    // several boards along a run share what its device carries
    const shared = fed.length > 0 || boards.length > 1;
    if (shared) nodes.push(nodeOf(run.id, parent, limitOn(used, [rating]), ownOf(run.id, run, rating)));
    for (const board of boards) addBoard(board, shared ? run.id : parent, used, run, rating);
    for (const point of fed) {
      const setting = read(`${point.id}.setting`, point.setting);
      if (setting === undefined || rating === undefined) continue;
      const least = point.minimum ?? LEAST_CURRENT;
      // a point that cannot run at all is left out of the network, not offered less than it can use
      if (Math.min(setting, rating) < least) continue;
      points.push({
        id: point.id,
        node: run.id,
        lines: point.lines,
        most: amperes(Math.min(setting, rating)),
        ...stated({ least: point.minimum }),
      });
    }
  };
  addBoard(installation.board, INTAKE, all);
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
