import { endsOf, isMissing, known, stated } from '../../core/index.js';
import { feedingInto } from '../../installation/feeds-back.js';
import { type Board, isFeeder, leavesTails, outletsBelow, type Run } from '../../installation/index.js';
import { amperes, squareMillimetres } from '../../units/index.js';
import { boardsOf, noSensor } from '../option-survey.js';
import {
  type Change,
  isKnown,
  item,
  leastOf,
  PUT_THERE,
  type Situation,
  type SurveyRemedy,
  sizeFrom,
  withBoards,
  withFirstBoard,
  withWantedRuns,
} from './remedy.js';
import {
  aheadOn,
  asOnNewBoard,
  combinedLike,
  ownResidual,
  reliesNoMore,
  servingOthers,
  typeInstead,
} from './residual.js';
import { limited } from './supply.js';

/** On a way of a new board, wherever it left before. */
const ON_A_WAY = { fromTails: /* @__PURE__ */ known(false, PUT_THERE) };

/** Rated currents in which consumer units are commonly bought, A: common practice, no source. */
const boardRatings = [100, 125];

/** A board has no way left, or none for a device of today: a small board beside it, not behind the devices of that one. */
function anotherBoard({ survey }: Situation): readonly Change[] {
  if (isKnown(survey.work.newEnclosure, true)) return [];
  const boards = new Map(boardsOf(survey.installation.board).map((b) => [b.id, b]));
  const apart = withWantedRuns(survey, (run, { from }) => reliesNoMore(run, boards.get(from) as Board));
  const relied = apart.wanted.some(({ run }, i) => run !== survey.wanted[i]?.run);
  return [
    {
      survey: { ...apart, work: { ...survey.work, newEnclosure: known(true, PUT_THERE) } },
      what: `small board for the new circuit beside the one that has no way for it${relied ? ', with an RCBO of its own' : ''}`,
    },
  ];
}

/** Circuits that are out of use give up their way, and their load; a promise not to use them takes nothing out of it. */
function givenUp({ survey, result }: Situation): readonly Change[] {
  // for its way it has to be on the board of the point
  const suits = (b: Board) => result.check !== 'way-of-its-own' || survey.wanted.some((w) => w.from === b.id);
  const free = boardsOf(survey.installation.board).flatMap((b) =>
    suits(b) ? b.runs.filter((r) => isKnown(r.outOfUse, true)) : [],
  );
  return free.map((run) => ({
    survey: withBoards(survey, (board) => {
      if (!board.runs.includes(run)) return board;
      const spareWays = known((leastOf(board.spareWays) ?? 0) + 1, `the way of ${run.id}, taken over`);
      const runs = board.runs.filter((r) => r !== run);
      return { ...board, spareWays, runs, ...servingOthers(board, new Set([run.id])) };
    }),
    what: `the way of ${run.id}, which is out of use and is disconnected for good`,
    tasks: [['circuit disconnected for good', 1]] as const,
  }));
}

/** A feeder that is moved to another board: what stood ahead of it there goes with it. */
const feederMoved = (run: Run, board: Board): Run => {
  const ahead = run.residual?.length ? [] : aheadOn(board, run);
  if (ahead.length === 0) return run;
  const residual = ahead.map(({ serves: _, ...d }) => ({ ...d, position: 'origin-of-circuit' as const }));
  return { ...run, residual, noResidual: known(false, PUT_THERE) };
};

/** A new board in place of the one at the origin: an RCBO for every circuit, main switch, surge protection; feeders as they are. */
function newBoard({ survey, result }: Situation): readonly Change[] {
  const aheadOf = result.alternatives?.find((r) => r.check === 'board-behind-device');
  const asked = (result.check === 'board-rating' ? result : aheadOf)?.limit?.value ?? 0;
  const size = sizeFrom(boardRatings, asked);
  if (size === undefined) return [];
  const { board } = survey.installation;
  const { residual: _, ...rest } = board;
  const { fuseAhead, noFuseAhead } = board.mainSwitch ?? {};
  const onIt = board.runs.filter((run) => !leavesTails(run));
  const circuits = onIt.filter((run) => !isFeeder(run));
  const typeOf = (run: Run) => typeInstead(run, aheadOn(board, run));
  const moved = (run: Run): Run => ({
    ...run,
    device: {
      kind: known(combinedLike(run.device), PUT_THERE),
      rating: run.device.rating,
      breakingCapacity: known(amperes(6000), PUT_THERE),
      energyClass: known(3 as const, PUT_THERE),
    },
    residual: [
      ownResidual(undefined, typeOf(run)),
      ...(run.residual ?? []).filter((r) => r.position === 'inside-equipment'),
    ],
    noResidual: known(false, PUT_THERE),
  });
  const runs = board.runs.map((run) => {
    if (!onIt.includes(run)) return run;
    return { ...(isFeeder(run) ? feederMoved(run, board) : moved(run)), ...ON_A_WAY };
  });
  const rating = known(amperes(size), PUT_THERE);
  const others = [...new Set(circuits.map(typeOf))].filter((type) => type !== 'A');
  const added = survey.wanted.filter((w) => w.from === board.id).length;
  const ways = onIt.length + added;
  const then: Board = {
    ...rest,
    // what stands in the tails ahead of it stays there
    mainSwitch: { ...stated({ fuseAhead, noFuseAhead }), rating },
    rating,
    conditionalRating: known(amperes(16000), PUT_THERE),
    surgeProtection: known(true, PUT_THERE),
    spareWays: known(added, PUT_THERE),
    noResidual: known(true, PUT_THERE),
    runs,
  };
  const wanted = withWantedRuns(survey, (run, w) => (w.from === board.id ? asOnNewBoard(run, board) : run));
  return [
    {
      survey: {
        ...wanted,
        work: { ...survey.work, ...(survey.work.devicesToBeHad ? { devicesToBeHad: known(true, PUT_THERE) } : {}) },
        installation: { ...survey.installation, board: then },
      },
      what: `new board of ${ways} ways: main switch ${size} A, an RCBO 30 mA type A for each circuit${others.map((t) => `, type ${t} where there was one or is asked for`).join('')}, surge protection, 16 kA conditional`,
      items: [
        item('board', `consumer unit of ${ways} ways, main switch ${size} A, surge protection`, 1, 'set'),
        item('protective-device', 'RCBO 30 mA type A, double pole, rated as the circuit', circuits.length),
      ],
      tasks: [
        ['new board with its circuits moved over', 1],
        ['dead and live tests', onIt.length],
      ],
    },
  ];
}

/** Fuses in which switch-fuses for homes are commonly bought, A: common practice, no source. */
const switchFuses = [80, 63];

/** A switch-fuse in the tails, so that what feeds the board from both sides stays within its rating. */
function fuseAhead({ survey, result, plan, words }: Situation): readonly Change[] {
  const { board, supply } = survey.installation;
  const ahead = Math.min(
    leastOf(supply.cutOut.rating) ?? Number.NaN,
    leastOf(board.mainSwitch?.fuseAhead) ?? Number.POSITIVE_INFINITY,
  );
  const demands = plan.supply.lines.flatMap((l) => (isMissing(l.demand) ? [] : [l.demand]));
  const room = (result.value?.value ?? Number.NaN) - ((result.limit?.value ?? Number.NaN) - ahead);
  if (!board.mainSwitch || survey.wanted.some((w) => w.from !== board.id)) return [];
  const { mainSwitch } = board;
  const fits = (d: number) => switchFuses.filter((r) => r < ahead && r <= room + 1e-9 && d <= r + 1e-9);
  const put = (rating: number): Change => ({
    survey: withFirstBoard(survey, {
      mainSwitch: { ...mainSwitch, fuseAhead: known(amperes(rating), PUT_THERE), noFuseAhead: known(false, PUT_THERE) },
    }),
    what: `switch-fuse of ${rating} A in the tails ahead of ${board.id}`,
    items: [item('switch-fuse', `switch-fuse ${rating} A in an enclosure`, 1, 'set')],
    tasks: [['new enclosure with main switch', 1]],
  });
  const [alone] = fits(Math.max(...demands));
  if (alone !== undefined) return [put(alone)];
  // what is there without the charge points fits, and they are held back
  const existing = plan.supply.demand.governing.lines.flatMap((l) => (isMissing(l.existing) ? [] : [l.existing]));
  const [held] = existing.length > 0 && !noSensor(survey) ? fits(Math.max(...existing)) : [];
  if (held === undefined) return [];
  const change = put(held);
  return [
    {
      ...change,
      survey: limited(change.survey, held, words.tails),
      what: `${change.what}, and a load limiter set to ${held} A`,
    },
  ];
}

/** Fuses in which switch-fuses for a board of sources are commonly bought, A: common practice, no source. */
const sourceFuses = [80, 63, 45, 32];
/** Rated current in which boards for sources are commonly bought, A: common practice, no source. */
const boardRating = 100;
/** Conductors between the tails and an enclosure beside the meter, as for the board that is there. */
const asTails = {
  construction: 'single-core',
  material: 'copper',
  insulation: 'thermoplastic-70',
  cores: 2,
  protective: 'separate',
  protectiveArea: /* @__PURE__ */ known(/* @__PURE__ */ squareMillimetres(16), PUT_THERE),
} as const;

/** What feeds in goes on a board of its own behind a switch-fuse in the tails, so that it does not pass the board that is there. */
function ownBoardForSources({ survey }: Situation): readonly Change[] {
  const { board, supply } = survey.installation;
  const sources = feedingInto(board).filter((r) => !survey.wanted.some((w) => w.run.id === r.id));
  const infeed = sources.reduce((sum, r) => sum + (endsOf(r.device.rating)?.[1] ?? Number.NaN), 0);
  const currents = sources
    .flatMap(outletsBelow)
    .map((o) => (o.kind === 'load' ? (endsOf(o.current)?.[1] ?? Number.NaN) : Number.NaN));
  const together = currents.reduce((sum, current) => sum + current, 0);
  const fuse = sourceFuses.find(
    (r) => r < (leastOf(supply.cutOut.rating) ?? 0) && r + infeed <= boardRating && r >= together,
  );
  const id = 'board of the sources';
  if (sources.length === 0 || fuse === undefined || boardsOf(board).some((b) => b.id === id)) return [];
  const rating = known(amperes(boardRating), PUT_THERE);
  const feeder: Run = {
    id: `feeder of ${id}`,
    lines: [...new Set(sources.flatMap((r) => r.lines))],
    device: { kind: supply.cutOut.kind, rating: known(amperes(fuse), PUT_THERE) },
    noResidual: known(true, PUT_THERE),
    fromTails: known(true, PUT_THERE),
    cable: { ...asTails, area: known(squareMillimetres(25), PUT_THERE) },
    stretches: [],
    feeds: [
      {
        kind: 'board',
        id,
        mainSwitch: { rating, noFuseAhead: known(true, PUT_THERE) },
        rating,
        complete: known(true, PUT_THERE),
        noResidual: known(true, PUT_THERE),
        runs: sources.map((run) => ({ ...reliesNoMore(run, board), ...ON_A_WAY })),
      },
    ],
  };
  return [
    {
      survey: withFirstBoard(survey, {
        runs: [...board.runs.filter((r) => !sources.includes(r)), feeder],
        ...servingOthers(board, new Set(sources.map((r) => r.id))),
      }),
      what: `board of their own for ${sources.map((r) => r.id).join(' and ')}, behind a switch-fuse of ${fuse} A in the tails`,
      items: [
        item('switch-fuse', `switch-fuse ${fuse} A in an enclosure`, 1, 'set'),
        item('board', `enclosure ${boardRating} A with main switch for the circuits of the sources`, 1, 'set'),
      ],
      tasks: [
        ['new enclosure with main switch', 1],
        ['dead and live tests', sources.length],
      ],
    },
  ];
}

/** Remedies at the board. */
export const boardRemedies: readonly SurveyRemedy[] = [
  {
    id: 'way-given-up',
    title: 'A circuit that is out of use disconnected for good',
    checks: ['way-of-its-own', 'demand-within-cut-out', 'demand-within-main-switch', 'demand-for-notice'],
    whenOpen: true,
    ways: givenUp,
  },
  {
    id: 'second-board',
    title: 'A second, small board',
    checks: ['way-of-its-own'],
    ways: anotherBoard,
  },
  { id: 'fuse-ahead', title: 'A smaller fuse ahead of the board', checks: ['board-rating'], ways: fuseAhead },
  {
    id: 'own-board-for-sources',
    title: 'A board of their own for what feeds in',
    checks: ['board-rating'],
    ways: ownBoardForSources,
  },
  {
    id: 'new-board',
    title: 'A new board in place of the one that is there',
    checks: [
      'way-of-its-own',
      'main-switch-overload',
      'residual-device-at-origin-overload',
      'residual-current-device-overload',
      'smooth-current-upstream',
      'board-rating',
      'board-overload',
      'breaking-capacity',
    ],
    ways: newBoard,
  },
];
