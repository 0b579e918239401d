import { chosen, compare, derive, each, factOf, unjudged, weigh } from '../../../calculation/index.js';
import { type Gap, isMissing, type Known, missing, rule, unknown } from '../../../core/index.js';
import type { Board } from '../../../installation/index.js';
import type { CircuitPlace } from '../../wiring-code.js';
import { shockCaution } from '../disconnection-checks.js';

/** The bonding of another building that takes its earth from the origin. BS 7671, 411.3.1.2, 544.1.1, Table 54.8. */
export const outbuildingBonded = /* @__PURE__ */ rule({
  id: 'outbuilding-bonding',
  title: 'Extraneous metal of another building is bonded by a conductor that is large enough',
  of: ['bondingArea', 'at-least', 'minimumBondingArea'],
  source: { document: 'BS 7671', clause: '411.3.1.2, 544.1.1, Table 54.8', provenance: 'one-source' },
  caution: shockCaution,
});

/** A board behind a distribution circuit: on the way to the circuit, or fed by it. */
export interface OutbuildingPlace {
  readonly circuit: CircuitPlace;
  readonly board: Board;
}
export const outbuildingScope = {
  within: 'circuit',
  things: (circuit: CircuitPlace): readonly OutbuildingPlace[] =>
    [...circuit.path.boards.slice(1), ...circuit.run.feeds.filter((o) => o.kind === 'board')].map((board) => ({
      circuit,
      board,
    })),
  title: ({ board }: OutbuildingPlace) => `Building of ${board.id}`,
} as const;
const metalDenied: Gap = {
  kind: 'fact',
  fact: 'extraneous-conductive-parts of the building of the origin',
  obtain: 'it is said that there are none, and of a board in the same building that there are: look for them again',
  disagree: true,
};
const ofOutbuilding = /* @__PURE__ */ factOf<OutbuildingPlace>();

/** Boards in other buildings: main bonding is due in each of them, whatever the system. BS 7671 411.3.1.2, 544.1.1. */
export const outbuildings = () => ({
  outbuildings: {
    detached: ofOutbuilding(({ board }) => board.detached ?? unknown('say whether it stands in another building'), {
      called: ({ board }) => `building of ${board.id}`,
    }),
    extraneousParts: ofOutbuilding(
      ({ board }) => board.extraneousParts ?? unknown('look for pipes and steelwork that come out of the ground there'),
      { called: ({ board }) => `extraneous-conductive-parts at ${board.id}` },
    ),
    bondingArea: ofOutbuilding(
      ({ board }) =>
        board.bonding ??
        unknown('read off the bonding conductor to that building, or the protective conductor in its place'),
      { called: ({ board }) => `bonding conductor to the building of ${board.id}` },
    ),
    outbuildingAsked: weigh(
      ['system', 'detached', 'extraneousParts', 'bondsFound'],
      ({ system, detached, extraneousParts, bondsFound }): Known<true | string> => {
        if (system === 'IT') return 'IT systems are judged by their own rules.';
        // metal in the building of the origin, in which somebody is said to have found none
        if (detached === false && extraneousParts === true && bondsFound === 'none') return missing(metalDenied);
        if (detached === false) return 'The board stands in the building of the origin.';
        if (extraneousParts === false) return 'No extraneous-conductive-part has been found there.';
        const gaps = [system, detached, extraneousParts].flatMap((f) => (isMissing(f) ? f.missing : []));
        return gaps.length > 0 ? missing(...gaps) : true;
      },
    ),
    outbuildingJudged: derive(['outbuildingAsked'], ({ outbuildingAsked }) => outbuildingAsked === true),
  },
  checks: [
    each('outbuildings', [
      chosen('outbuildingJudged', {
        true: [compare(outbuildingBonded)],
        false: [unjudged(outbuildingBonded, 'outbuildingAsked')],
      }),
    ]),
  ],
});
