import { isMissing, known, stated, unknown } from '../../core/index.js';
import { amperes } from '../../units/index.js';
import { limiterFacts, noSensor } from '../option-survey.js';
import type { Survey } from '../survey.js';
import {
  type Change,
  isKnown,
  leastOf,
  PUT_THERE,
  type Situation,
  type SurveyRemedy,
  withBoards,
  withFirstBoard,
  withSupply,
} from './remedy.js';

const pointsOf = (survey: Survey): readonly string[] => survey.wanted.flatMap((w) => w.run.feeds.map((o) => o.id));

/** The limiter at the origin, set to this; one that is there is set lower. */
export function limited(survey: Survey, limit: number, tails: string): Survey {
  const { control } = survey.installation.board;
  return withFirstBoard(survey, {
    control: {
      name: control?.name ?? `load limiter of the charge points, current sensors on the ${tails}`,
      limit: known(amperes(limit), 'set so'),
      controls: control?.controls ?? pointsOf(survey),
      ...limiterFacts(survey.work),
      ...stated({ reaction: control?.reaction, keepsFuse: control?.keepsFuse, fallback: control?.fallback }),
    },
  });
}

/** What was metered counts in place of the estimate. */
function metered({ survey }: Situation): readonly Change[] {
  const { meteredDemand } = survey.installation.supply;
  const { current } = meteredDemand ?? {};
  if (!meteredDemand || (current?.state !== 'unknown' && current?.assumed) || survey.demand?.governing !== undefined)
    return [];
  return [
    {
      survey: { ...survey, demand: { ...survey.demand, governing: 'metered-peak' } },
      what: `demand as metered, ${meteredDemand.about}, in place of the estimate`,
    },
  ];
}

/** A limit at which the operator is only told afterwards, or at which the smallest fuse there is holds. */
function lowerLimit({ survey, plan, result, words }: Situation): readonly Change[] {
  const limit = result.check === 'demand-for-notice' ? result.limit?.value : undefined;
  const now = leastOf(survey.installation.board.control?.limit);
  if (limit === undefined || (now !== undefined && now <= limit)) return [];
  const ratings = plan.supply.lines.some((l) => isMissing(l.demand));
  if (ratings || noSensor(survey)) return [];
  return [
    {
      survey: limited(survey, limit, words.tails),
      what: `load limiter set to ${limit} A, so that the network operator is told after the work`,
    },
  ];
}

/** A larger fuse that would not carry everything, with a limiter that holds the whole within it. */
function fuseAndLimiter({ survey, plan, words }: Situation): readonly Change[] {
  const { cutOut } = survey.installation.supply;
  const main = leastOf(survey.installation.board.mainSwitch?.rating) ?? Number.POSITIVE_INFINITY;
  if (noSensor(survey)) return [];
  return plan.supply.changes
    .filter((c) => c.change === 'larger-fuse')
    .map((c) => {
      const rating = known(c.cutOutRating, 'to be agreed with the network operator');
      const then = withSupply(survey, { cutOut: { ...cutOut, rating } });
      return {
        survey: {
          ...limited(then, Math.min(c.cutOutRating, main), words.tails),
          work: { ...survey.work, supplyChange: 'larger-fuse' as const },
        },
        what: `cut-out fuse of ${c.cutOutRating} A, to be agreed with the network operator, and a load limiter set to ${Math.min(c.cutOutRating, main)} A`,
      };
    });
}

/** The operator gives the premises a service that no neighbour shares; what it gives is measured anew. */
function unlooped({ survey }: Situation): readonly Change[] {
  if (!isKnown(survey.installation.supply.looped, true)) return [];
  const anew = unknown('after the new service is connected, by measurement');
  const then = withSupply(survey, {
    looped: known(false, 'to be agreed with the network operator'),
    externalImpedance: anew,
    prospectiveCurrent: anew,
  });
  return [
    {
      survey: { ...then, work: { ...then.work, supplyChange: 'own-service' } },
      what: 'service of its own from the network operator in place of the looped one',
    },
  ];
}

/** What is unsafe at the cut-out is reported at once, and put right by the operator; it is looked at again then. */
function soundCutOut({ survey }: Situation): readonly Change[] {
  if (!isKnown(survey.installation.supply.cutOutSound, false)) return [];
  const then = withSupply(survey, {
    cutOutSound: known(true, 'to be put right by the network operator, and seen again'),
  });
  return [
    {
      survey: { ...then, work: { ...then.work, supplyChange: 'sound-cut-out' } },
      what: 'cut-out put right by the network operator, to whom it is reported at once; seen again before the work',
    },
  ];
}

/** A limiter that pauses the charge points when it loses its sensor, in place of one that leaves them running. */
function failingSafe({ survey }: Situation): readonly Change[] {
  const paused = known(amperes(0), PUT_THERE);
  let running = false;
  const then = withBoards(survey, (board) => {
    const { control } = board;
    if (!control?.fallback || isKnown<number>(control.fallback, 0)) return board;
    running = true;
    return { ...board, control: { ...control, fallback: paused } };
  });
  if (!running) return [];
  return [
    {
      survey: { ...then, work: { ...then.work, limiterFallback: paused } },
      what: 'load limiter of a make that pauses the charge points when it has lost its sensor',
    },
  ];
}

const demandChecks = ['demand-within-cut-out', 'demand-within-main-switch'];

/** Remedies about demand and supply. */
export const supplyRemedies: readonly SurveyRemedy[] = [
  {
    id: 'own-service',
    title: 'A service of its own',
    checks: ['service-of-its-own'],
    whenOpen: true,
    ways: unlooped,
  },
  {
    id: 'limiter-that-pauses',
    title: 'A limiter that pauses the charge points without its sensor',
    checks: ['load-control-fails-safe'],
    whenOpen: true,
    ways: failingSafe,
  },
  { id: 'sound-cut-out', title: 'A sound cut-out', checks: ['cut-out-is-sound'], ways: soundCutOut },
  {
    id: 'metered-demand',
    title: 'The demand that was metered',
    checks: demandChecks,
    whenOpen: true,
    ways: metered,
  },
  {
    id: 'limiter-for-notice',
    title: 'A limiter at the figure up to which the network operator is only told',
    checks: ['demand-for-notice'],
    ways: lowerLimit,
  },
  {
    id: 'larger-fuse-and-limiter',
    title: 'A larger fuse with a limiter',
    checks: demandChecks,
    whenOpen: true,
    ways: fuseAndLimiter,
  },
];
