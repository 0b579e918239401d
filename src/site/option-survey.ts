import { known } from '../core/index.js';
import type { Adequacy } from '../demand/index.js';
import type { Board, Run } from '../installation/index.js';
import type { Amperes } from '../units/index.js';
import type { OptionId } from './plan.js';
import type { Survey, WantedPoint } from './survey.js';

/** A survey changed to what an option describes, or why the option is not offered. */
export type OptionSurvey =
  | { readonly id: OptionId; readonly title: string; readonly changes: readonly string[]; readonly survey: Survey }
  | { readonly id: OptionId; readonly title: string; readonly discarded: string };

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

function withLimiter(survey: Survey, supply: Adequacy): OptionSurvey {
  const id = 'with-limiter';
  const title = 'As wanted, with a limiter that holds the points back';
  const { board } = survey.installation;
  if (board.control) return { id, title, discarded: `the survey already names a load control: ${board.control.name}` };
  const { limiter } = supply;
  if (limiter.verdict !== 'helps' || typeof limiter.limit !== 'number')
    return { id, title, discarded: limiter.because };
  const name = 'load limiter of the charge points, current sensors on the meter tails';
  const control = { name, limit: known(limiter.limit, 'least rating in the way'), controls: pointsOf(survey) };
  return {
    id,
    title,
    changes: [`${name}, set to ${limiter.limit} A`],
    survey: withBoard(survey, { ...board, control }),
  };
}

function lowerSetting(survey: Survey, supply: Adequacy): OptionSurvey {
  const id = 'lower-setting';
  const title = 'A lower setting, without a limiter';
  if (supply.overall.verdict === 'pass')
    return { id, title, discarded: 'the supply carries the settings that are wanted' };
  const fitting = new Map(supply.settings.map((s) => [s.point, s.setting] as const));
  const wanted = pointsOf(survey);
  if (wanted.length > 1)
    return {
      id,
      title,
      discarded:
        'for several points a shared control is the better way: each fitting setting is worked out with the others at full',
    };
  const value = fitting.get(wanted[0] ?? '');
  if (typeof value !== 'number')
    return { id, title, discarded: 'the setting that fits is not known: facts of the supply are missing' };
  if (value < 6) return { id, title, discarded: 'not even 6 A fits, the smallest current that a point can offer' };
  return {
    id,
    title,
    changes: [`setting of ${wanted[0]} lowered to ${value} A`],
    survey: withSettings(survey, () => value),
  };
}

function largerFuse(survey: Survey, supply: Adequacy): OptionSurvey {
  const id = 'larger-supply-fuse';
  const title = 'As wanted, with a larger fuse of the network operator';
  if (supply.overall.verdict === 'pass') return { id, title, discarded: 'the supply carries what is wanted' };
  const change = supply.changes.find((c) => c.change === 'larger-fuse' && c.fits);
  if (!change)
    return {
      id,
      title,
      discarded: 'no larger fuse of a single service would carry it, or the present one is not known',
    };
  const cutOut = {
    ...survey.installation.supply.cutOut,
    rating: known(change.cutOutRating, 'to be agreed with the network operator'),
  };
  return {
    id,
    title,
    changes: [`cut-out fuse of ${change.cutOutRating} A, to be agreed with the network operator`],
    survey: { ...survey, installation: { ...survey.installation, supply: { ...survey.installation.supply, cutOut } } },
  };
}

function threePhase(survey: Survey, supply: Adequacy): OptionSurvey {
  const id = 'three-phase-supply';
  const title = 'As wanted, on a new three-phase supply';
  const { phases } = survey.installation.supply;
  if (phases.state !== 'known' || phases.value === 3)
    return {
      id,
      title,
      discarded: phases.state === 'known' ? 'the supply has three phases' : 'the phases of the supply are not known',
    };
  if (supply.overall.verdict === 'pass') return { id, title, discarded: 'the supply carries what is wanted' };
  const change = supply.changes.find((c) => c.change === 'three-phase' && c.fits);
  if (!change)
    return { id, title, discarded: 'three phases alone would not carry it either, or the demand is not known' };
  const old = survey.installation.supply;
  const moved = survey.wanted.map((w): WantedPoint => {
    const run: Run = {
      ...w.run,
      lines: ['L2'],
      feeds: w.run.feeds.map((o) => (o.kind === 'charge-point' ? { ...o, lines: ['L2'] } : o)),
    };
    return { ...w, run };
  });
  const unknownYet = { state: 'unknown' as const, obtain: 'after the new supply is connected, by measurement' };
  return {
    id,
    title,
    changes: [
      'three-phase supply, to be applied for',
      'the points go on L2, the house stays on L1',
      'impedance and fault current have to be measured anew',
    ],
    survey: {
      ...survey,
      installation: {
        ...survey.installation,
        supply: {
          ...old,
          phases: known(3, 'new supply'),
          cutOut: { ...old.cutOut, rating: known(change.cutOutRating, 'to be agreed with the network operator') },
          externalImpedance: unknownYet,
          prospectiveCurrent: unknownYet,
        },
      },
      wanted: moved,
    },
  };
}

/**
 * The ways in which a survey can be answered, each as a changed survey or with the reason why it is not offered.
 * @param survey the survey
 * @param supply adequacy of the supply as wanted
 */
export function optionSurveys(survey: Survey, supply: Adequacy): readonly OptionSurvey[] {
  return [
    { id: 'as-wanted', title: 'As wanted', changes: [], survey },
    withLimiter(survey, supply),
    lowerSetting(survey, supply),
    largerFuse(survey, supply),
    threePhase(survey, supply),
  ];
}
