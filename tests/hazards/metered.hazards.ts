import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { adequacyOf } from '../../src/demand/index.js';
import { amperes, known, type Purpose, type Run, ratio } from '../../src/index.js';
import { circuit, house, load } from '../support/house.js';
import type { Chapter, Told } from './hazard.js';
import { breaker } from './residual-circuits.js';
import { soundCircuit } from './sound.js';

const fixed = (id: string, rating: number, current: number, purpose: Purpose, existing = true): Run =>
  circuit({
    id,
    existing,
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
    { mainSwitch: { rating: known(amperes(100)) } },
  );
  const { overall, results } = adequacyOf(bs7671Demand, installation, {
    premises: 'dwelling',
    governing: 'metered-peak',
    meteredMargin: ratio(0.2),
  });
  return { verdict: overall.verdict, results };
}

const common = {
  harm: 'On the first dark day, or with an empty battery, the whole load comes from the street, and the service fuse blows.',
  clause: 'BS 7671:2018+A2:2022 311.1, from memory; a meter sees the difference of what is drawn and fed in: physics',
  mustNotSay: 'That the supply carries the point because the meter has seen little.',
} as const;

export const chapter: Chapter = {
  title: 'What the meter does not see',
  introduction: 'A meter at the origin knows what came through it, and nothing of what was fed in behind it.',
  hazards: [
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
  ],
};
