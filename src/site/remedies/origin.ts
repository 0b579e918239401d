import { endsOf, isMissing, known } from '../../core/index.js';
import { feedingInto } from '../../installation/feeds-back.js';
import { type Board, outletsBelow, RCBO_B, type Run } from '../../installation/index.js';
import { amperes, squareMillimetres } from '../../units/index.js';
import { eachFeeder } from '../alike-plans.js';
import { boardsOf, noSensor } from '../option-survey.js';
import {
  boardsTo,
  type Change,
  isKnown,
  item,
  leastOf,
  PUT_THERE,
  type Situation,
  type SurveyRemedy,
  sizeFrom,
  withBoards,
  withExistingRun,
  withFirstBoard,
  withSupply,
} from './remedy.js';
import { largestAsked } from './residual.js';
import { limited } from './supply.js';

/** Sizes of copper conductors in which earthing and bonding conductors and tails are bought, mm². */
const conductorSizes = [2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95];
/** Largest earthing conductor that is put in unasked, mm²: what tails of 50 mm² call for by Table 54.7. */
const LARGEST_EARTHING = 25;
/** Rated currents in which consumer units are commonly bought, A: common practice, no source. */
const boardRatings = [100, 125];
/** Ratings in which main switches are commonly bought, A: common practice, no source. */
const switchRatings = [63, 80, 100, 125];

/** Main bonding conductors that are smaller than what is asked, or of a size that nobody knows, are replaced. */
function bonding({ survey, plan, result }: Situation): readonly Change[] {
  const asked = plan.points.flatMap(({ assessment }) =>
    assessment.results.flatMap((r) => (r.check === result.check && r.limit ? [r.limit.value] : [])),
  );
  const size = sizeFrom(conductorSizes, Math.max(0, ...asked));
  const bonds = survey.installation.supply.bonding ?? [];
  if (asked.length === 0 || size === undefined) return [];
  const small = bonds.filter(({ area }) => area.state !== 'unknown' && (leastOf(area) as number) < size);
  if (small.length === 0) return [];
  const area = known(squareMillimetres(size), PUT_THERE);
  return [
    {
      survey: withSupply(survey, { bonding: bonds.map((b) => (small.includes(b) ? { ...b, area } : b)) }),
      what: `main bonding conductor of ${size} mm²: ${small.map((b) => b.what).join(', ')}`,
      items: small.map((b) => item('bonding', `main bonding conductor ${size} mm² with clamp: ${b.what}`, 1, 'set')),
      tasks: [['main bonding conductor, each', small.length]],
    },
  ];
}

/** The conductor that bonds the metal of another building is replaced. */
function outbuildingBonding({ survey, result }: Situation): readonly Change[] {
  const size = result.limit && sizeFrom(conductorSizes, result.limit.value);
  if (size === undefined) return [];
  const asked: string[] = [];
  const ways = boardsTo(survey);
  const then = withBoards(survey, (board) => {
    if (!ways.has(board.id) || (leastOf(board.bonding) ?? size) >= size) return board;
    asked.push(board.id);
    return { ...board, bonding: known(squareMillimetres(size), PUT_THERE) };
  });
  if (asked.length === 0) return [];
  return [
    {
      survey: then,
      what: `bonding conductor of ${size} mm² to the building of ${asked.join(', ')}`,
      items: asked.map((b) => item('bonding', `main bonding conductor ${size} mm² with clamp: ${b}`, 1, 'set')),
      tasks: [['main bonding conductor, each', asked.length]],
    },
  ];
}

/** The size that is asked for; where that is not known, the next ones above what is there. */
function earthingConductor({ survey, result }: Situation): readonly Change[] {
  const now = leastOf(survey.installation.supply.earthingConductor);
  const asked = result.limit && sizeFrom(conductorSizes, result.limit.value);
  const larger = conductorSizes.filter((size) => now !== undefined && size > now && size <= LARGEST_EARTHING);
  return (asked === undefined ? larger : [asked]).map((size) => ({
    survey: withSupply(survey, { earthingConductor: known(squareMillimetres(size), PUT_THERE) }),
    what: `earthing conductor of ${size} mm²`,
    items: [item('earthing-conductor', `earthing conductor ${size} mm²`, 1, 'set')],
    tasks: [['earthing conductor', 1]],
  }));
}

/** Larger tails; what is counted once for a job counts them. */
function tails({ survey, words }: Situation): readonly Change[] {
  const now = leastOf(survey.installation.supply.tails) ?? 0;
  return conductorSizes
    .filter((size) => size > now && size >= 25 && size <= 50)
    .map((size) => {
      const then = withSupply(survey, { tails: known(squareMillimetres(size), PUT_THERE) });
      return {
        survey: { ...then, work: { ...then.work, replaceTails: true } },
        what: `${words.tails} of ${size} mm²`,
      };
    });
}

/** A larger main switch where one is too small: at the origin, or at a board behind a feeder. */
function mainSwitch({ survey, result, plan }: Situation): readonly Change[] {
  const asked = result.limit?.name === 'mainSwitchRating' ? result.value?.value : largestAsked(result.alternatives);
  const rating = asked === undefined ? undefined : sizeFrom(switchRatings, asked);
  if (rating === undefined) return [];
  const isOpen = (r: Situation['result']) => r.check === result.check && r.verdict === result.verdict;
  const feeder = plan.supply.results.some(isOpen)
    ? undefined
    : eachFeeder(plan.feeders).find((f) => f.demand.results.some(isOpen))?.run;
  const replaced: string[] = [];
  const larger = (board: Board): Board => {
    if ((leastOf(board.mainSwitch?.rating) ?? 0) >= rating) return board;
    replaced.push(board.id);
    return { ...board, mainSwitch: { ...board.mainSwitch, rating: known(amperes(rating), PUT_THERE) } };
  };
  const then =
    feeder === undefined
      ? { ...survey, installation: { ...survey.installation, board: larger(survey.installation.board) } }
      : withExistingRun(survey, feeder, (run) => ({
          ...run,
          feeds: run.feeds.map((o) => (o.kind === 'board' ? larger(o) : o)),
        }));
  if (replaced.length === 0) return [];
  return [
    {
      survey: then,
      what: `main switch of ${rating} A${feeder === undefined ? '' : ` at ${replaced.join(', ')}`}`,
      items: [item('main-switch', `main switch ${rating} A, as the maker of the board provides`, replaced.length)],
      tasks: [['main switch, replaced', replaced.length]],
    },
  ];
}

function surgeProtection({ survey }: Situation): readonly Change[] {
  if (isKnown(survey.installation.board.surgeProtection, true)) return [];
  return [
    {
      survey: withFirstBoard(survey, { surgeProtection: known(true, PUT_THERE) }),
      what: `surge protective device at ${survey.installation.board.id}`,
      items: [item('surge-protection', 'surge protective device')],
      tasks: [['surge protection', 1]],
    },
  ];
}

/** A board has no way left, or none for a device of today: a small board beside it. */
function anotherBoard({ survey }: Situation): readonly Change[] {
  if (isKnown(survey.work.newEnclosure, true)) return [];
  return [
    {
      survey: { ...survey, work: { ...survey.work, newEnclosure: known(true, PUT_THERE) } },
      what: 'small board for the new circuit beside the one that has no way for it',
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
      // what stood ahead of it serves the others
      const residual = board.residual?.flatMap((d) => {
        const serves = d.serves?.filter((id) => id !== run.id);
        return serves === undefined ? [d] : serves.length > 0 ? [{ ...d, serves }] : [];
      });
      const runs = board.runs.filter((r) => r !== run);
      return { ...board, spareWays, runs, ...(residual ? { residual } : {}) };
    }),
    what: `the way of ${run.id}, which is out of use and is disconnected for good`,
    tasks: [['circuit disconnected for good', 1]] as const,
  }));
}

/** A new board in place of the one at the origin: an RCBO for every circuit, main switch, surge protection. */
function newBoard({ survey, result }: Situation): readonly Change[] {
  const asked = result.check === 'board-rating' ? (result.limit?.value ?? 0) : 0;
  const size = sizeFrom(boardRatings, asked);
  if (size === undefined) return [];
  const { board } = survey.installation;
  const { residual: _, ...rest } = board;
  const residual = {
    position: 'origin-of-circuit',
    type: known('A', PUT_THERE),
    rating: known(amperes(0.03), PUT_THERE),
    delay: known('general', PUT_THERE),
    opensAllLive: known(true, PUT_THERE),
    bidirectional: known(true, PUT_THERE),
  } as const;
  const runs = board.runs.map((run) => ({
    ...run,
    device: {
      kind: known(RCBO_B, PUT_THERE),
      rating: run.device.rating,
      breakingCapacity: known(amperes(6000), PUT_THERE),
      energyClass: known(3 as const, PUT_THERE),
    },
    residual: [residual, ...(run.residual ?? []).filter((r) => r.position === 'inside-equipment')],
    noResidual: known(false, PUT_THERE),
  }));
  const rating = known(amperes(size), PUT_THERE);
  const circuits = board.runs.length + survey.wanted.filter((w) => w.from === board.id).length;
  const then: Board = {
    ...rest,
    mainSwitch: { rating },
    rating,
    conditionalRating: known(amperes(16000), PUT_THERE),
    surgeProtection: known(true, PUT_THERE),
    spareWays: known(circuits - board.runs.length, PUT_THERE),
    noResidual: known(true, PUT_THERE),
    runs,
  };
  return [
    {
      survey: {
        ...survey,
        work: { ...survey.work, ...(survey.work.devicesToBeHad ? { devicesToBeHad: known(true, PUT_THERE) } : {}) },
        installation: { ...survey.installation, board: then },
      },
      what: `new board of ${circuits} ways: main switch ${size} A, an RCBO 30 mA type A for each circuit, surge protection, 16 kA conditional`,
      items: [
        item('board', `consumer unit of ${circuits} ways, main switch ${size} A, surge protection`, 1, 'set'),
        item('protective-device', 'RCBO curve B, 30 mA type A, double pole, rated as the circuit', board.runs.length),
      ],
      tasks: [
        ['new board with its circuits moved over', 1],
        ['dead and live tests', board.runs.length],
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
      mainSwitch: { ...mainSwitch, fuseAhead: known(amperes(rating), PUT_THERE) },
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
  protectiveArea: known(squareMillimetres(16), PUT_THERE),
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
        mainSwitch: { rating },
        rating,
        complete: known(true, PUT_THERE),
        noResidual: known(true, PUT_THERE),
        runs: sources,
      },
    ],
  };
  return [
    {
      survey: withFirstBoard(survey, { runs: [...board.runs.filter((r) => !sources.includes(r)), feeder] }),
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

/** Remedies at the origin and at the board. */
export const originRemedies: readonly SurveyRemedy[] = [
  { id: 'main-bonding', title: 'Main bonding brought up to size', checks: ['main-bonding-conductor'], ways: bonding },
  {
    id: 'outbuilding-bonding',
    title: 'Bonding of the other building brought up to size',
    checks: ['outbuilding-bonding'],
    ways: outbuildingBonding,
  },
  {
    id: 'earthing-conductor',
    title: 'A larger earthing conductor',
    checks: ['earthing-conductor'],
    // where the fuse that would let the smaller one stay cannot be read off
    whenOpen: true,
    ways: earthingConductor,
  },
  { id: 'tails', title: 'Larger tails', checks: ['tails-overload'], whenOpen: true, ways: tails },
  {
    id: 'main-switch',
    title: 'A larger main switch',
    checks: ['main-switch-overload', 'demand-within-main-switch'],
    // where only the maker of the switch could still accept it
    whenOpen: true,
    ways: mainSwitch,
  },
  {
    id: 'surge-protection',
    title: 'Surge protection is fitted',
    checks: ['surge-protection'],
    whenOpen: true,
    ways: surgeProtection,
  },
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
      'breaking-capacity',
    ],
    ways: newBoard,
  },
];
