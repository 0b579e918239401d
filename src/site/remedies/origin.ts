import { known } from '../../core/index.js';
import type { Board } from '../../installation/index.js';
import { amperes, squareMillimetres } from '../../units/index.js';
import { eachFeeder } from '../alike-plans.js';
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

/** Sizes of copper conductors in which earthing and bonding conductors and tails are bought, mm². */
const conductorSizes = [2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95];
/** Largest earthing conductor that is put in unasked, mm²: half of tails of 50 mm². */
const LARGEST_EARTHING = 25;
/** What is put in where more than 6 mm² is asked for, mm²: it holds with a larger fuse too. Common practice, no source. */
const USUAL_EARTHING = 16;
/** Ratings in which main switches are commonly bought, A: common practice, no source. */
const switchRatings = [63, 80, 100, 125];
/** What a main switch may fail by. */
const ofSwitch = ['main-switch-overload', 'board-overload', 'demand-within-main-switch'];

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
  // what is open on one of the usual size is found out, not replaced
  if (result.verdict !== 'fail' && (now ?? 0) >= USUAL_EARTHING) return [];
  const least = result.limit?.value ?? Number.NaN;
  const asked = sizeFrom(conductorSizes, least > 6 ? Math.max(least, USUAL_EARTHING) : least);
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

/**
 * A larger main switch where one is too small: at the origin, or at a board behind a feeder. It is one that the maker of the
 * board provides, who rates the board by it.
 */
function mainSwitch({ survey, result, plan }: Situation): readonly Change[] {
  const isOpen = (r: Situation['result']) => r.check === result.check && r.verdict === result.verdict;
  const found = plan.supply.results.some(isOpen)
    ? undefined
    : eachFeeder(plan.feeders).find((f) => f.demand.results.some(isOpen));
  const feeder = found?.run;
  // one that carries the demand is large enough for what else fails of it
  const failing = (found?.demand ?? plan.supply).results.filter(
    (r) => ofSwitch.includes(r.check) && r.verdict === 'fail',
  );
  const asked = [result, ...failing].flatMap(
    (r) => (r.limit?.name === 'mainSwitchRating' ? r.value?.value : largestAsked(r.alternatives)) ?? [],
  );
  const rating = asked.length > 0 ? sizeFrom(switchRatings, Math.max(...asked)) : undefined;
  if (rating === undefined) return [];
  const replaced: string[] = [];
  const fused: string[] = [];
  const now = known(amperes(rating), PUT_THERE);
  const withFuse = (board: Board): Board => {
    const { mainSwitch } = board;
    if (!mainSwitch || (leastOf(mainSwitch.fuseAhead) ?? rating) >= rating) return board;
    fused.push(board.id);
    return { ...board, mainSwitch: { ...mainSwitch, fuseAhead: now } };
  };
  const larger = (before: Board): Board => {
    const board = withFuse(before);
    if ((leastOf(board.mainSwitch?.rating) ?? 0) >= rating) return board;
    replaced.push(board.id);
    const rated = board.rating && (leastOf(board.rating) ?? 0) < rating ? { rating: now } : {};
    return { ...board, ...rated, mainSwitch: { ...board.mainSwitch, rating: now } };
  };
  const then =
    feeder === undefined
      ? { ...survey, installation: { ...survey.installation, board: larger(survey.installation.board) } }
      : withExistingRun(survey, feeder, (run) => ({
          ...run,
          feeds: run.feeds.map((o) => (o.kind === 'board' ? larger(o) : o)),
        }));
  if (replaced.length + fused.length === 0) return [];
  const [switches, fuses] = [`main switch of ${rating} A`, `switch-fuse of ${rating} A`];
  return [
    {
      survey: then,
      what: [
        ...(replaced.length > 0 ? [`${switches}${feeder === undefined ? '' : ` at ${replaced.join(', ')}`}`] : []),
        ...(fused.length > 0 ? [`${fuses} ahead of ${fused.join(', ')} in place of the one that is there`] : []),
      ].join('; '),
      items: [
        ...replaced.map(() => item('main-switch', `main switch ${rating} A, as the maker of the board provides`)),
        ...fused.map(() => item('switch-fuse', `switch-fuse ${rating} A in an enclosure`, 1, 'set')),
      ],
      tasks: [
        ['main switch, replaced', replaced.length],
        ['new enclosure with main switch', fused.length],
      ],
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

/** Remedies at the origin of the installation. */
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
    checks: ofSwitch,
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
];
