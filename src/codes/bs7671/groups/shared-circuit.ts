import { by, chosen, compare, derive, each, holds } from '../../../calculation/index.js';
import { added, type Known, missing, rule, unknown, whenKnown } from '../../../core/index.js';
import { feedsBack } from '../../../installation/feeds-back.js';
import {
  type ChargePoint,
  currentOfOutlet,
  type Line,
  type Load,
  lineConductors,
  type Outlet,
  rising,
} from '../../../installation/index.js';
import { type Amperes, amperes } from '../../../units/index.js';
import { ofCircuit, ofResidualUpstream } from '../../iec-family/places.js';
import type { CircuitPlace } from '../../wiring-code.js';
import { bs, entered } from '../source.js';

/** A charge point has a final circuit of its own. BS 7671, 314.4, 722.533.101. */
export const ownCircuitOfPoint = /* @__PURE__ */ rule({
  id: 'own-circuit',
  title: 'The charge point has a final circuit of its own',
  source: /* @__PURE__ */ bs(
    '314.4, 722.533.101',
    'memory',
    '314.4: two sources; that each point has its own: two sources without a number, and the number recalled',
  ),
  caution: 'A charge point draws its full current for hours: what shares its circuit overloads cable and device.',
});

const infeed = {
  document: 'BS 7671',
  edition: entered,
  clause: '551.7.2',
  provenance: 'memory',
  note: 'the condition on the capacity: two sources of 2008; the others recalled; wording of 2022 not seen',
} as const;
const infeedCaution =
  'Source and supply both feed the cable, and the device sees only what comes from the supply. A circuit of its own for the source is preferred; photovoltaic generation belongs on the supply side of the devices (712); line and neutral are not earthed beyond the source.';

/** Current that a cable has to carry which a device and a source feed together, I_n + I_g. BS 7671, 551.7.2. */
export const requiredWithInfeed = /* @__PURE__ */ added({
  id: 'required-capacity-with-infeed',
  title: 'Capacity required of a circuit that supply and source feed together',
  plus: ['deviceRating', 'generationCurrent'],
  output: 'requiredCapacity',
  source: infeed,
});

/** I_z >= I_n + I_g on a final circuit with loads. BS 7671, 551.7.2. */
export const infeedWithinCapacity = /* @__PURE__ */ rule({
  id: 'infeed-within-capacity',
  title: 'The cable carries what the device and the source on its circuit can feed together',
  of: ['capacity', 'at-least', 'requiredCapacity'],
  source: infeed,
  caution: infeedCaution,
});

/** A source among loads is not connected by plug and socket-outlet. BS 7671, 551.7.2. */
export const infeedFixed = /* @__PURE__ */ rule({
  id: 'infeed-fixed',
  title: 'The source on a circuit with loads is not connected by plug and socket-outlet',
  source: infeed,
  caution: 'The pins of a plug that is pulled out may be live from the source.',
});

/** A residual current device ahead of a source among loads opens all live conductors. BS 7671, 551.7.2. */
export const infeedOpensAllLive = /* @__PURE__ */ rule({
  id: 'infeed-opens-all-live',
  title: 'The residual current device of a circuit that a source feeds opens all live conductors',
  source: infeed,
});

const isPoint = (o: Outlet) => o.kind === 'charge-point' || (o.kind === 'load' && o.purpose === 'charge-point');
const isSourceOf = (o: Outlet): o is Load | ChargePoint => o.kind !== 'board' && feedsBack(o);

/** Whether the charge point is alone on its circuit; what is declared of points that share it is for a person to judge. */
function alone({ run: { feeds, pointsShare } }: CircuitPlace): Known<boolean> {
  const [listed] = feeds.filter((o) => o.kind === 'load');
  if (feeds.length === 1 && listed)
    return missing({
      kind: 'fact',
      fact: `what charge point ${listed.id} is`,
      obtain: 'describe it as a charge point: of a load nothing is judged that is asked of one',
    });
  if (feeds.length === 1) return true;
  if (pointsShare === undefined || !feeds.every(isPoint)) return false;
  return missing({
    kind: 'fact',
    fact: 'arrangement of several charge points on one circuit',
    obtain: `declared: ${pointsShare}; whether it may take the place of a circuit for each point is for a person to judge`,
  });
}

/** What the sources of a circuit feed in on the line that they load most. */
function fedIn(feeds: readonly Outlet[]): Known<Amperes> {
  const on = (line: Line) =>
    whenKnown(
      feeds.filter((o): o is Load | ChargePoint => isSourceOf(o) && o.lines.includes(line)).map(currentOfOutlet),
      (...all) => all.reduce<number>((a, b) => a + b, 0),
    );
  return whenKnown(lineConductors.map(on), (...all) => amperes(Math.max(...(all as readonly number[]))));
}

/** What may stand on one final circuit together. BS 7671 314.4, 551.7.2, Section 722. */
export const sharedCircuit = () => ({
  circuit: {
    feedsCharging: ofCircuit(({ run }) => run.feeds.some(isPoint)),
    pointAlone: ofCircuit(alone),
    sharers: ofCircuit(({ run }) => run.feeds.map((o) => o.id).join(', ')),
    // a source alone on its circuit is met by the device like a load
    sourceAmongLoads: ofCircuit(({ run: { feeds } }) => feeds.length > 1 && feeds.some(isSourceOf)),
    generationCurrent: ofCircuit<Amperes>(({ run }) => rising(run.feeds, fedIn), { by: 'sources on the circuit' }),
    sourceFixed: ofCircuit<boolean>(({ run }) => {
      const plugs = run.feeds.filter((o) => o.kind === 'load' && isSourceOf(o)).map((o) => (o as Load).plugged);
      if (plugs.some((p) => p?.state === 'known' && p.value)) return false;
      if (plugs.every((p) => p?.state === 'known')) return true;
      return missing({
        kind: 'fact',
        fact: 'connection of the source',
        obtain: 'see whether it is wired in or connected by plug and socket-outlet',
      });
    }),
  },
  residualUpstream: {
    opensAllLive: ofResidualUpstream(({ device }) => device.opensAllLive ?? unknown('the marking of the device'), {
      called: 'poles of the residual current device',
    }),
  },
  checks: [
    chosen('feedsCharging', {
      true: [
        holds(
          ownCircuitOfPoint,
          'pointAlone',
          derive(['pointAlone', 'sharers'], ({ pointAlone, sharers }) =>
            pointAlone ? 'Nothing else is on the circuit.' : `One circuit feeds ${sharers}.`,
          ),
        ),
      ],
      false: [],
    }),
    chosen('sourceAmongLoads', {
      true: [
        compare(infeedWithinCapacity, { as: { requiredCapacity: by(requiredWithInfeed, '551.7.2') } }),
        holds(
          infeedFixed,
          'sourceFixed',
          derive(['sourceFixed'], ({ sourceFixed }) =>
            sourceFixed ? 'It is wired in.' : 'It is connected by plug and socket-outlet.',
          ),
        ),
        each('residualUpstream', [
          holds(
            infeedOpensAllLive,
            'opensAllLive',
            derive(['opensAllLive'], ({ opensAllLive }) =>
              opensAllLive ? 'It opens them.' : 'The neutral stays connected to the source.',
            ),
          ),
        ]),
      ],
      false: [],
    }),
  ] as const,
});
