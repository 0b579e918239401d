import {
  by,
  choose,
  chosen,
  compare,
  derive,
  each,
  fact,
  largest,
  none,
  same,
  set,
  unjudged,
  weigh,
  when,
} from '../../../calculation/index.js';
import { comparison, type Gap, isMissing, missing, unknown } from '../../../core/index.js';
import { squareMillimetres as mm2 } from '../../../units/index.js';
import { shockCaution } from '../../iec-family/disconnection-checks.js';
import { ofBond, ofCircuit } from '../../iec-family/places.js';
import type { CircuitPlace } from '../../wiring-code.js';
import { halfOfEarthingConductor, tabulatedEarthing } from '../earthing-conductor.js';
import { table541 } from '../tables/54-1.js';
import { table548 } from '../tables/54-8.js';

/**
 * The earthing conductor against the table and, under PME, against the bonding conductor. BS 7671, 542.3, 543.1,
 * 544.1.1.
 */
export const earthingConductorLarge = /* @__PURE__ */ comparison({
  id: 'earthing-conductor',
  title: 'The earthing conductor is large enough',
  kind: 'at-least',
  value: 'earthingConductorArea',
  limit: 'minimumEarthingArea',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '542.3, 543.1, 544.1.1', provenance: 'two-sources' },
  caution: shockCaution,
  worse: { earthingConductorArea: 'down' },
});

/** A main protective bonding conductor against its smallest size. BS 7671, 544.1.1, Table 54.8. */
export const mainBondingLarge = /* @__PURE__ */ comparison({
  id: 'main-bonding-conductor',
  title: 'The main protective bonding conductor is large enough',
  kind: 'at-least',
  value: 'bondingArea',
  limit: 'minimumBondingArea',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '544.1.1, Table 54.8', provenance: 'two-sources' },
  caution: shockCaution,
  worse: { bondingArea: 'down' },
});

const itSystem: Gap = {
  kind: 'fact',
  fact: 'earthing conductor of an IT system',
  obtain: 'design it by BS 7671 411.6: the rule here is for TN and TT',
};

/** What the size of the earthing conductor is found by; the largest of them counts. */
export interface SizingPlace {
  readonly circuit: CircuitPlace;
  readonly sizedBy: 'as it is laid' | 'by the meter tails' | 'by the main bonding';
}
export const earthingSizeScope = {
  within: 'circuit',
  things: (circuit: CircuitPlace): readonly SizingPlace[] =>
    (['as it is laid', 'by the meter tails', 'by the main bonding'] as const).map((sizedBy) => ({ circuit, sizedBy })),
  title: ({ sizedBy }: SizingPlace) => `Earthing conductor ${sizedBy}`,
} as const;

/** Rows of Table 54.1 for conductors in the ground. */
const rows = {
  'above-ground': '',
  'above-ground-protected': '',
  buried: 'not protected',
  'buried-against-damage': 'protected against mechanical damage only',
  'buried-against-corrosion': 'protected against corrosion only',
  'buried-protected': 'protected against corrosion and mechanical damage',
} as const;

const inNoCable =
  'BS 7671 543.1.1, conductor in no cable: 4 mm², or 2.5 mm² protected against mechanical damage, from memory';
const byTails = () => by(tabulatedEarthing, '543.1.4, Table 54.7', { conductorArea: 'tailsArea' });
const buried = () =>
  by(table541, 'Table 54.1', {
    metal: set('copper'),
    protection: derive(['earthingConductorLaid'], (v) => rows[v.earthingConductorLaid]),
  });

/** Earthing conductor and main bonding of the installation. BS 7671 542.3, 544.1. */
export const earthingAndBonding = () => ({
  circuit: {
    pme: derive(['system'], ({ system }) => system === 'TN-C-S'),
    tailsArea: ofCircuit((c) => c.installation.supply.tails ?? unknown('read them off'), { called: 'meter tails' }),
    // main bonding
    supplyNeutralArea: ofCircuit(
      (c) => c.installation.supply.supplyNeutral ?? unknown('ask the distributor, or take the service cable'),
      { called: 'neutral of the supply' },
    ),
    minimumBondingArea: when(
      'pme',
      by(table548, '544.1.1, Table 54.8', { metal: set('copper') }),
      by(halfOfEarthingConductor, '544.1.1', { minimumEarthingArea: byTails() }),
    ),
    bonding: ofCircuit(
      ({ installation: { supply } }) => {
        const { bonding, noExtraneousParts: none } = supply;
        const looked = none?.state === 'known' && none.value;
        return bonding && (bonding.length > 0 || looked)
          ? bonding
          : looked
            ? []
            : unknown(
                'find every extraneous-conductive-part and its bonding conductor, or say who found that there is none',
              );
      },
      { called: 'main protective bonding conductors' },
    ),
    bondsFound: weigh(['system', 'bonding'], ({ system, bonding }) =>
      isMissing(system) || isMissing(bonding) ? 'not known' : bonding.length > 0 ? 'some' : 'none',
    ),
    // earthing conductor
    earthingConductorLaid: ofCircuit(
      (c) =>
        c.installation.supply.earthingConductorLaid ??
        unknown('see whether it is buried, and protected against corrosion and mechanical damage: Table 54.1'),
      { called: 'how the earthing conductor is laid' },
    ),
    minimumEarthingArea: largest('earthingSizes/minimumEarthingArea'),
    earthingConductorArea: ofCircuit(
      (c) => c.installation.supply.earthingConductor ?? unknown('read it off at the main earthing terminal'),
      { called: 'earthing conductor' },
    ),
  },
  earthingSizes: {
    minimumEarthingArea: choose(
      fact((s: SizingPlace) => s.sizedBy),
      {
        'as it is laid': choose('earthingConductorLaid', {
          'above-ground': set(mm2(4), inNoCable),
          'above-ground-protected': set(mm2(2.5), inNoCable),
          buried: buried(),
          'buried-against-damage': buried(),
          'buried-against-corrosion': buried(),
          'buried-protected': buried(),
        }),
        'by the meter tails': choose('system', {
          'TN-S': byTails(),
          'TN-C-S': byTails(),
          // on TT only where more than a slight fault current can flow
          TT: when(
            derive(['externalImpedance'], (v) => v.externalImpedance < 1, { direction: { externalImpedance: -1 } }),
            byTails(),
            none(
              'Z_e is not below 1 Ω: at most 253 A for 1 s need 1.8 mm² at k = 143, so that the way it is laid decides (On-Site Guide, TT supplies, from memory).',
            ),
          ),
          IT: none('IT systems are judged by their own rules.'),
        }),
        'by the main bonding': when('pme', same('minimumBondingArea'), none('It is asked under PME alone.')),
      },
    ),
  },
  bonds: {
    bondName: ofBond((b) => b.what || undefined),
    bondingArea: ofBond((b) => b.area),
  },
  checks: [
    compare(earthingConductorLarge, {
      applies: derive(['system'], ({ system }) => (system === 'IT' ? missing(itSystem) : true)),
    }),
    chosen('bondsFound', {
      some: [each('bonds', [compare(mainBondingLarge, { because: 'bondName' })])],
      none: [unjudged(mainBondingLarge, set('No extraneous-conductive-part has been found.'))],
      'not known': [
        unjudged(
          mainBondingLarge,
          weigh(['system', 'bonding'], ({ system, bonding }) => (isMissing(system) ? system : bonding)),
        ),
      ],
    }),
  ],
});
