import { LEAST_CURRENT } from '../charging/network/network.js';
import { isMissing, known, stated } from '../core/index.js';
import { type FeederDemand, feederAdvice } from '../demand/feeder.js';
import type { Adequacy } from '../demand/index.js';
import { type Board, everythingBelow, type Line, lineConductors, pathTo, type Run } from '../installation/index.js';
import { type Amperes, amperes } from '../units/index.js';
import type { TradeWords } from './applicable.js';
import { withAllWanted } from './installed.js';
import type { BaseOptionId } from './option-id.js';
import type { Survey, WantedPoint } from './survey.js';

type Way =
  | { readonly changes: readonly string[]; readonly survey: Survey }
  | {
      readonly discarded: string;
      /** Whether only a fact that is not known stands in its way. */
      readonly subjectTo?: boolean;
    };
/** A survey changed to what an option describes, or why the option is not offered. */
export type OptionSurvey = { readonly id: BaseOptionId; readonly title: string } & Way;

const pointsOf = (survey: Survey): readonly string[] => survey.wanted.flatMap((w) => w.run.feeds.map((o) => o.id));

const withSettings = (survey: Survey, setting: (point: string) => Amperes | undefined): Survey => ({
  ...survey,
  wanted: survey.wanted.map((w): WantedPoint => {
    const feeds = w.run.feeds.map((o) => {
      const to = setting(o.id);
      return o.kind === 'charge-point' && to !== undefined ? { ...o, setting: known(to, 'largest that fits') } : o;
    });
    return { ...w, run: { ...w.run, feeds } };
  }),
});

const withBoard = (survey: Survey, board: Board): Survey => ({
  ...survey,
  installation: { ...survey.installation, board },
});

/** What the maker of a limiter that is offered states of it. */
export const limiterFacts = ({
  limiterReaction: reaction,
  limiterKeepsFuse: keepsFuse,
  limiterFallback: fallback,
}: Survey['work']) => stated({ reaction, keepsFuse, fallback });

/** Whether somebody looked, and no current sensor can be fitted on the tails. */
export const noSensor = ({ work: { sensorPossible } }: Pick<Survey, 'work'>): boolean =>
  sensorPossible?.state === 'known' && !sensorPossible.value;

/** The boards that a feeder feeds get a load control, at what the feeder carries. */
function withControlBelow(
  board: Board,
  runId: string,
  limit: Amperes,
  points: readonly string[],
  makers: Pick<NonNullable<Board['control']>, 'reaction' | 'keepsFuse' | 'fallback'>,
): Board {
  return {
    ...board,
    runs: board.runs.map((run) => ({
      ...run,
      feeds: run.feeds.map((o): typeof o => {
        if (o.kind !== 'board') return o;
        const inside = withControlBelow(o, runId, limit, points, makers);
        if (run.id !== runId) return inside;
        const name = `load limiter of ${o.id}, current sensors on ${runId}`;
        return {
          ...inside,
          control: { name, limit: known(limit, 'what the feeder carries'), controls: points, ...makers },
        };
      }),
    })),
  };
}

/** A board and every board below it. */
export const boardsOf = (board: Board): readonly Board[] => [
  board,
  ...everythingBelow(board).filter((o): o is Board => o.kind === 'board'),
];

/** Points that are fed through a feeder. */
const pointsBelow = (survey: Survey, runId: string): readonly string[] => {
  const installation = withAllWanted(survey);
  return survey.wanted
    .filter((w) => pathTo(installation, w.run.id)?.feeders.some((f) => f.id === runId))
    .flatMap((w) => w.run.feeds.map((o) => o.id));
};

/** Whether fuse, main switch and tails carry the demand as it is wanted. */
const carriesDemand = ({ limiter }: Adequacy): boolean => limiter.verdict === 'not-needed';

const whole = (value: number) => Math.round(value * 10) / 10;

/** Share of the wanted current that a lower setting keeps so that nobody misses the rest: common practice, no source. */
const SETTING_KEPT = 0.9;

/** The setting of a single point by which the operator is only told, where it is little below what is wanted. */
function settingForNotice(survey: Survey, { demand }: Adequacy, upTo: Amperes | undefined): Amperes | undefined {
  const [only, ...others] = survey.wanted.flatMap((w) => w.run.feeds);
  if (upTo === undefined || only?.kind !== 'charge-point' || others.length > 0 || only.setting.state !== 'known')
    return undefined;
  const lefts = demand.governing.lines
    .filter((l) => only.lines.includes(l.line))
    .map((l) => (isMissing(l.existing) ? 0 : Math.floor(upTo - l.existing + 1e-9)));
  const left = Math.min(...lefts);
  const { value } = only.setting;
  return left < value && left >= value * SETTING_KEPT ? amperes(left) : undefined;
}

/**
 * What is only told of afterwards, where the demand as wanted is above it, every point can run beside the other load within
 * it, and no rating that is known is less: set to it, a limiter saves the wait for the operator.
 */
function limitForNotice(survey: Survey, supply: Adequacy, upTo: Amperes | undefined): Amperes | undefined {
  const { demand, limiter } = supply;
  const { lines } = demand.governing;
  const { cutOut, cutOutSound, looped } = survey.installation.supply;
  const { rating } = cutOut;
  // where the operator is asked for another reason, nothing is won by it; what every service carries holds while none is known
  const asked = !(cutOutSound?.state === 'known' && cutOutSound.value) || !(looped.state === 'known' && !looped.value);
  if (asked && !isMissing(limiter.limit)) return undefined;
  const least = isMissing(limiter.limit) ? (rating.state === 'known' ? rating.value : undefined) : limiter.limit;
  if (upTo === undefined || (least !== undefined && least < upTo)) return undefined;
  // a setting that is a little lower does the same without one
  if (settingForNotice(survey, supply, upTo) !== undefined) return undefined;
  const above = lines.some((l) => !isMissing(l.demand) && l.demand > upTo);
  const pointsOn = (line: Line) => survey.wanted.filter((w) => w.run.lines.includes(line)).length;
  const leaves = lines.every((l) => !isMissing(l.existing) && l.existing + pointsOn(l.line) * LEAST_CURRENT <= upTo);
  return above && leaves ? upTo : undefined;
}

function withLimiter(
  survey: Survey,
  supply: Adequacy,
  feeders: readonly FeederDemand[],
  { tails }: TradeWords,
  { estimated, noticeUpTo }: OptionRules,
): Way {
  const { board } = survey.installation;
  const named = boardsOf(board).find((b) => b.control)?.control;
  if (named) return { discarded: `the survey already names a load control: ${named.name}` };
  const { limiter } = supply;
  const blind = noSensor(survey);
  const crowded = feeders.filter((f) => feederAdvice(f) !== 'carries');
  // an estimate that is above the limit does not say that a measurement would be
  // one limiter for a point is enough where only a feeder asks for it
  const forFeeder = limiter.verdict === 'not-needed' && crowded.length > 0;
  const forNotice = forFeeder ? undefined : limitForNotice(survey, supply, noticeUpTo);
  const to = forNotice ?? limiter.limit;
  const helps =
    forNotice !== undefined || limiter.verdict === 'helps' || (limiter.verdict === 'cannot-help' && estimated);
  if (helps && blind && crowded.length === 0)
    return { discarded: `no current sensor can be fitted on the ${tails} and joined to the charge points` };
  if (!helps && !forFeeder)
    return {
      discarded: limiter.because,
      ...(limiter.verdict === 'not-determined' ? { subjectTo: true } : {}),
    };
  const changes: string[] = [];
  const makers = limiterFacts(survey.work);
  let changed = board;
  for (const feeder of crowded) {
    if (isMissing(feeder.limit) || isMissing(feeder.existing) || feederAdvice(feeder) !== 'limiter-helps')
      return isMissing(feeder.limit) || isMissing(feeder.existing)
        ? {
            discarded: `what ${feeder.run} carries, or what it feeds without the charge points, is not known`,
            subjectTo: true,
          }
        : {
            discarded: `${feeder.run} carries too little already without the charge points: holding back vehicles does not cure that`,
          };
    changed = withControlBelow(changed, feeder.run, feeder.limit, pointsBelow(survey, feeder.run), makers);
    changes.push(`load limiter with current sensors on ${feeder.run}, set to ${feeder.limit} A`);
  }
  if (helps && !blind && typeof to === 'number') {
    const name = `load limiter of the charge points, current sensors on the ${tails}`;
    const limit = known(to, forNotice === undefined ? 'least rating in the way' : 'what the operator is only told of');
    changed = { ...changed, control: { name, limit, controls: pointsOf(survey), ...makers } };
    changes.push(
      `${name}, set to ${to} A${forNotice === undefined ? '' : ', so that the network operator is told after the work'}`,
    );
  }
  return { changes, survey: withBoard(survey, changed) };
}

function lowerSetting(
  survey: Survey,
  supply: Adequacy,
  feeders: readonly FeederDemand[],
  { noticeUpTo }: OptionRules,
): Way {
  const wanted = pointsOf(survey);
  if (carriesDemand(supply) && feeders.every((f) => feederAdvice(f) === 'carries')) {
    const value = settingForNotice(survey, supply, noticeUpTo);
    if (value === undefined) return { discarded: 'supply and feeders carry the settings that are wanted' };
    const what = `setting of charge point ‘${wanted[0]}’ lowered to ${value} A, so that the network operator is told after the work`;
    return { changes: [what], survey: withSettings(survey, () => value) };
  }
  if (wanted.length > 1)
    return {
      discarded:
        'for several points a shared control is the better way: each fitting setting is worked out with the others at full',
    };
  const fitting = supply.settings.find((s) => s.point === wanted[0])?.setting;
  const rooms = feeders.map((f) =>
    isMissing(f.limit) || isMissing(f.existing) ? undefined : Math.floor(f.limit - f.existing + 1e-9),
  );
  if (typeof fitting !== 'number' || rooms.some((r) => r === undefined))
    return {
      discarded: 'the setting that fits is not known: facts of the supply or of a feeder are missing',
      subjectTo: true,
    };
  const value = amperes(Math.min(fitting, ...(rooms as readonly number[])));
  if (value < LEAST_CURRENT)
    return {
      discarded: `not even ${LEAST_CURRENT} A fits, the smallest current that a charge point can offer`,
    };
  const [now] = survey.wanted.flatMap((w) =>
    w.run.feeds.flatMap((o) => (o.kind === 'charge-point' ? [o.setting] : [])),
  );
  if (now?.state === 'known' && now.value <= value)
    return { discarded: `the setting of ${whole(now.value)} A is not what stands in the way` };
  return {
    changes: [`setting of charge point ‘${wanted[0]}’ lowered to ${value} A`],
    survey: withSettings(survey, () => value),
  };
}

function largerFuse(survey: Survey, supply: Adequacy): Way {
  if (carriesDemand(supply)) return { discarded: 'the supply carries what is wanted' };
  const change = supply.changes.find((c) => c.change === 'larger-fuse' && c.fits);
  if (!change)
    return survey.installation.supply.cutOut.rating.state === 'unknown'
      ? { discarded: 'the rating of the present fuse is not known', subjectTo: true }
      : { discarded: 'no larger fuse of a single service is known to carry it' };
  const cutOut = {
    ...survey.installation.supply.cutOut,
    rating: known(change.cutOutRating, 'to be agreed with the network operator'),
  };
  return {
    changes: [`cut-out fuse of ${change.cutOutRating} A, to be agreed with the network operator`],
    survey: {
      ...survey,
      work: { ...survey.work, supplyChange: 'larger-fuse' },
      installation: { ...survey.installation, supply: { ...survey.installation.supply, cutOut } },
    },
  };
}

/** A run with all that it feeds, on one line of a new supply. */
const onLine = (line: Line, run: Run): Run => ({
  ...run,
  lines: [line],
  feeds: run.feeds.map((o) =>
    o.kind === 'board' ? { ...o, runs: o.runs.map((r) => onLine(line, r)) } : { ...o, lines: [line] },
  ),
});

function threePhase(survey: Survey, supply: Adequacy): Way {
  const { phases } = survey.installation.supply;
  if (phases.state !== 'known' || phases.value === 3)
    return phases.state === 'known'
      ? { discarded: 'the supply has three phases' }
      : { discarded: 'the phases of the supply are not known', subjectTo: true };
  if (carriesDemand(supply)) return { discarded: 'the supply carries what is wanted' };
  const change = supply.changes.find((c) => c.change === 'three-phase' && c.fits);
  if (!change)
    return supply.changes.length === 0
      ? { discarded: 'the demand, or the rating of the present fuse, is not known', subjectTo: true }
      : { discarded: 'three phases alone would not carry it either' };
  const { supply: old, board } = survey.installation;
  const [first, second] = lineConductors;
  const moved = survey.wanted.map((w): WantedPoint => ({ ...w, run: onLine(second, w.run) }));
  // a board behind a feeder has the line of its feeder
  const from = new Set(survey.wanted.map((w) => w.from));
  const withPoints = new Set(
    board.runs.filter((r) => everythingBelow(r).some((o) => o.kind === 'board' && from.has(o.id))),
  );
  const feedersToo = [...withPoints].map(({ id }) => `, with ${id} and all that it feeds`).join('');
  const unknownYet = { state: 'unknown' as const, obtain: 'after the new supply is connected, by measurement' };
  return {
    changes: [
      'three-phase supply, to be applied for',
      'new tails, and an enclosure with a main switch for three phases',
      `the charge points go on ${second}${feedersToo}, the house stays on ${first}`,
      'impedance and fault current have to be measured anew',
    ],
    survey: {
      ...survey,
      work: { ...survey.work, supplyChange: 'three-phase', replaceTails: true },
      installation: {
        supply: {
          ...old,
          phases: known(3, 'new supply'),
          cutOut: { ...old.cutOut, rating: known(change.cutOutRating, 'to be agreed with the network operator') },
          externalImpedance: unknownYet,
          prospectiveCurrent: unknownYet,
        },
        board: { ...board, runs: board.runs.map((r) => (withPoints.has(r) ? onLine(second, r) : r)) },
      },
      wanted: moved,
    },
  };
}

/** What the ways to answer a survey depend on beside it. */
export interface OptionRules {
  /** Whether the demand is an estimate, which a measurement may lower. */
  readonly estimated: boolean;
  /** Largest demand on a line up to which the operator is only told, A; absent where no limiter is to be set to it. */
  readonly noticeUpTo?: Amperes;
}

/** The ways in which a survey can be answered, each as a changed survey or with the reason why it is not offered. */
export function optionSurveys(
  survey: Survey,
  supply: Adequacy,
  feeders: readonly FeederDemand[],
  words: TradeWords,
  rules: OptionRules,
): readonly OptionSurvey[] {
  return [
    { id: 'as-wanted', title: 'As wanted', changes: [], survey },
    {
      id: 'with-limiter',
      title: 'As wanted, with a load limiter that holds the charge points back',
      ...withLimiter(survey, supply, feeders, words, rules),
    },
    {
      id: 'lower-setting',
      title: 'A lower setting, without a limiter',
      ...lowerSetting(survey, supply, feeders, rules),
    },
    {
      id: 'larger-supply-fuse',
      title: 'As wanted, with a larger fuse of the network operator',
      ...largerFuse(survey, supply),
    },
    { id: 'three-phase-supply', title: 'As wanted, on a new three-phase supply', ...threePhase(survey, supply) },
  ];
}
