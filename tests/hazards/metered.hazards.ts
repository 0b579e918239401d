import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { adequacyOf } from '../../src/demand/index.js';
import { amperes, known, type Purpose, type Run, ratio } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { circuit, house, load } from '../support/house.js';
import { planInBritain } from '../support/plan.js';
import { type Chapter, changedSurvey, planned, type Told } from './hazard.js';
import { breaker } from './residual-circuits.js';
import { soundCircuit } from './sound.js';

const fixed = (
  id: string,
  rating: number,
  current: number,
  purpose: Purpose,
  existing: boolean | 'not said' = true,
): Run =>
  circuit({
    id,
    ...(existing === 'not said' ? {} : { existing }),
    device: breaker(rating),
    feeds: [load(current, { id: `load of ${id}`, purpose })],
  });
/** Panel heaters and a new point behind 80 A; 25 A metered over a year. */
function metered(...besides: readonly Run[]): Told {
  const installation = house(
    [
      fixed('heaters upstairs', 32, 30, 'space-heating'),
      fixed('heaters downstairs', 32, 30, 'space-heating'),
      soundCircuit(),
      ...besides,
    ],
    {
      cutOut: { kind: known({ standard: 'BS 88-3' }), rating: known(amperes(80)) },
      meteredDemand: { current: known(amperes(25)), about: 'half-hour readings of a year' },
    },
    { mainSwitch: { rating: known(amperes(100)), noFuseAhead: known(true) }, rating: known(amperes(100)) },
  );
  const { overall, results } = adequacyOf(bs7671Demand, installation, {
    premises: 'dwelling',
    governing: 'metered-peak',
    meteredMargin: ratio(0.2),
  });
  return { verdict: overall.verdict, results };
}

/** Larch Cottage as wanted, without a limiter, by so many days of half-hours of 300 Wh. */
function byReadings(days: number): Told {
  const survey = changedSurvey('easy-home', [
    ['supply.meteredDemand', undefined],
    [
      'demand',
      {
        governing: 'half-hour-readings',
        halfHours: {
          from: '2026-01-05T00:00:00Z',
          wattHours: Array<number>(48 * days).fill(300),
          season: 'January',
          margin: '20 %',
        },
      },
    ],
  ]);
  const plan = planInBritain(readSurvey(survey), { sheets: 'none', lengths: false });
  const option = plan.options.find((o) => o.id === 'as-wanted');
  if (!option) throw new Error('nothing is planned as wanted');
  return { verdict: option.overall.verdict, results: [...option.overall.failed, ...option.overall.undetermined] };
}

const common = {
  harm: 'On the first dark day, or with an empty battery, the whole load comes from the street, and the service fuse blows.',
  clause: 'BS 7671:2018+A2:2022 311.1, from memory; a meter sees the difference of what is drawn and fed in: physics',
  mustNotSay: 'That the supply carries the point because the meter has seen little.',
} as const;

/** A house with so little on its list that the estimate is 26 A, behind 60 A. */
const seen = (amps: number): Told => {
  const installation = house(
    [fixed('heaters', 32, 26, 'space-heating')],
    {
      cutOut: { kind: known({ standard: 'BS 88-3' }), rating: known(amperes(60)) },
      meteredDemand: { current: known(amperes(amps)), about: 'half-hour readings of a year' },
    },
    { mainSwitch: { rating: known(amperes(100)), noFuseAhead: known(true) }, rating: known(amperes(100)) },
  );
  const { overall, results } = adequacyOf(bs7671Demand, installation, { premises: 'dwelling' });
  return { verdict: overall.verdict, results };
};

export const chapter: Chapter = {
  title: 'What the meter does not see',
  introduction: 'A meter at the origin knows what came through it, and nothing of what was fed in behind it.',
  hazards: [
    {
      ...common,
      id: 'metered-for-a-night',
      title: 'Half-hour readings of a single night',
      harm: 'Nobody was at home. On Sunday oven, shower and car run together, and the service fuse blows.',
      clause: 'common practice, no source: a demand is logged for a week at least',
      unsafe: { what: 'Half-hours of one day, named as what governs.', told: () => byReadings(1) },
      sound: { what: 'Half-hours of eight days in January, with a margin.', told: () => byReadings(8) },
    },
    {
      ...common,
      id: 'metered-beside-a-battery',
      title: 'A metered peak beside a battery that discharges at the peak',
      unsafe: {
        what: '25 A metered, a battery of 16 A on the board.',
        told: () => metered(fixed('battery', 16, 16, 'storage')),
      },
      sound: { what: '25 A metered, no battery.', told: () => metered() },
    },
    {
      id: 'heater-that-nobody-says-was-there',
      title: 'A heater of which nobody says that it was there when the meter looked',
      harm: 'The heater in the new room was put in with the charge point. Both run on the first cold evening, and the service fuse blows.',
      clause: 'BS 7671:2018+A2:2022 311.1, from memory; a meter knows nothing of what comes later: physics',
      mustNotSay: 'That the metered peak has the heater in it.',
      check: 'demand-within-cut-out',
      unsafe: {
        what: '25 A metered, a heater of 30 A on the list with nothing said of whether it is old or new.',
        told: () => metered(fixed('new room', 32, 30, 'space-heating', 'not said')),
      },
      sound: {
        what: 'The same heater, there when the meter looked.',
        told: () => metered(fixed('new room', 32, 30, 'space-heating')),
      },
    },
    {
      ...common,
      id: 'metered-beside-photovoltaics',
      title: 'A metered peak beside photovoltaics',
      unsafe: {
        what: '25 A metered, photovoltaics of 16 A that were there.',
        told: () => metered(fixed('roof', 16, 16, 'generation')),
      },
      sound: {
        what: 'The photovoltaics come with the point: the meter has seen every load.',
        told: () => metered(fixed('roof', 16, 16, 'generation', false)),
      },
    },
    {
      ...common,
      id: 'metered-more-than-estimated',
      title: 'A meter that has seen more than the guide gives',
      harm: 'Somebody let out the annexe. The fuse has carried more than its rating every evening since, and now it gets a car.',
      clause: 'BS 7671:2018+A2:2022 311.1, from memory; that a demand is no smaller than it was: logic',
      mustNotSay: 'That the demand is what the guide gives, when the meter has seen more.',
      check: 'demand-within-cut-out',
      unsafe: { what: '26 A by the guide, 70 A metered, behind 60 A.', told: () => seen(70) },
      sound: { what: '26 A by the guide, 50 A metered, behind 60 A.', told: () => seen(50) },
    },
    {
      ...common,
      id: 'plan-on-a-fuse-that-is-full',
      title: 'A plan for a house whose meter has seen more than its fuse is made for',
      harm: 'A limiter holds back the car and not the house. The fuse goes on being overloaded, warmer for the car.',
      clause: 'BS 7671:2018+A2:2022 311.1, from memory; that a demand is no smaller than it was: logic',
      mustNotSay: 'That a limiter makes room, when what is there fills the fuse.',
      check: 'demand-within-cut-out',
      unsafe: {
        what: 'Larch Cottage behind 80 A, 100 A metered.',
        told: () => planned('easy-home', [['supply.meteredDemand.current', { known: '100 A', by: 'smart meter' }]]),
      },
      sound: { what: '27.8 A metered.', told: () => planned('easy-home') },
    },
  ],
};
