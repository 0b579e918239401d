// Invented houses, one after another, each made from its number alone: nothing is held in memory.
import { amperes, hertz, known, ratio, squareMillimetres, unknown, volts } from 'ohmwright';
import { bs7671Demand } from 'ohmwright/bs7671';
import { adequacyOf } from 'ohmwright/demand';

const cable = {
  construction: 'flat-twin-and-earth',
  material: 'copper',
  insulation: 'thermoplastic-70',
  cores: 2,
  area: unknown(),
  protective: 'bare-core',
};
const circuit = (id, outlet, existing = true) => ({
  id,
  existing,
  lines: ['L1'],
  device: { kind: known({ standard: 'EN 60898', type: 'B' }), rating: known(amperes(32)) },
  cable,
  stretches: [],
  feeds: [outlet],
});
const load = (id, purpose, current, more = {}) =>
  circuit(id, { kind: 'load', id: `${id}-load`, purpose, current: known(amperes(current)), lines: ['L1'], ...more });

/** A house with lights, two rings and a cooker, perhaps a shower and a heat pump, and a charge point that is wanted. */
export function house(n) {
  const pick = (of, salt) => of[(Math.imul(n + salt, 2654435761) >>> 16) % of.length];
  const shower = pick([0, 0, 37, 41.3], 1);
  const pump = pick([0, 0, 0, 16], 2);
  const runs = [
    load('lights', 'lighting', pick([4, 6, 8], 3)),
    load('ring-1', 'socket-outlets', pick([20, 32], 4)),
    load('ring-2', 'socket-outlets', 32),
    load('cooker', 'cooking', pick([26, 31.3, 43.5], 5), { withSocket: pick([true, false], 6) }),
    ...(shower > 0 ? [load('shower', 'instantaneous-water-heating', shower)] : []),
    ...(pump > 0 ? [load('pump', 'heat-pump', pump)] : []),
    circuit(
      'ev',
      {
        kind: 'charge-point',
        id: 'point',
        lines: ['L1'],
        setting: known(amperes(pick([16, 32], 7))),
        outdoors: known(true),
        mode: 3,
      },
      false,
    ),
  ];
  return {
    supply: {
      system: known('TN-C-S'),
      phases: known(1),
      nominalVoltage: volts(230),
      frequency: hertz(50),
      externalImpedance: unknown(),
      prospectiveCurrent: unknown(),
      cutOut: {
        kind: unknown(),
        rating: pick([known(amperes(60)), known(amperes(80)), known(amperes(100)), unknown()], 8),
      },
      cutOutSound: known(true),
      looped: known(false),
      tails: known(squareMillimetres(25)),
      meteredDemand: { current: known(amperes(pick([14, 22, 30, 41], 9))), about: 'invented logger' },
    },
    board: {
      kind: 'board',
      noResidual: known(true, 'seen at the survey'),
      id: 'consumer unit',
      mainSwitch: { rating: known(amperes(100)), noFuseAhead: known(true) },
      rating: known(amperes(100)),
      runs,
    },
  };
}

const options = { premises: 'dwelling', meteredMargin: ratio(0.25), governing: 'metered-peak' };

/** Judges the houses from `first` on and counts what becomes of them. */
export default function judgeHouses({ first, count }) {
  const found = { pass: 0, fail: 0, 'not-determined': 0, limiterHelps: 0 };
  for (let n = first; n < first + count; n++) {
    const { overall, limiter } = adequacyOf(bs7671Demand, house(n), options);
    found[overall.verdict]++;
    if (limiter.verdict === 'helps') found.limiterHelps++;
  }
  return found;
}
