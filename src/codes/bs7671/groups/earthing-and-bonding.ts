import {
  by,
  choose,
  chosen,
  compare,
  derive,
  each,
  fact,
  factOf,
  largest,
  none,
  orElse,
  same,
  set,
  unjudged,
  weigh,
  when,
} from '../../../calculation/index.js';
import { type Gap, isMissing, type Known, known, missing, rule, unknown } from '../../../core/index.js';
import { squareMillimetres as mm2, seconds } from '../../../units/index.js';
import { ofBond, ofCircuit } from '../../iec-family/places.js';
import type { CircuitPlace } from '../../wiring-code.js';
import { shockCaution } from '../disconnection-checks.js';
import { calculatedEarthing, halfOfEarthingConductor, tabulatedEarthing } from '../earthing-conductor.js';
import { bs } from '../source.js';
import { table541 } from '../tables/54-1.js';
import { table548 } from '../tables/54-8.js';
import { fuseOperatingCurrents } from '../tables/fuse-operating-currents.js';

/**
 * The earthing conductor against the table and, under PME, against the bonding conductor. BS 7671, 542.3, 543.1,
 * 544.1.1.
 */
export const earthingConductorLarge = /* @__PURE__ */ rule({
  id: 'earthing-conductor',
  title: 'The earthing conductor is large enough',
  of: ['earthingConductorArea', 'at-least', 'minimumEarthingArea'],
  source: /* @__PURE__ */ bs('542.3, 543.1, 544.1.1'),
  caution: shockCaution,
});

/** A main protective bonding conductor against its smallest size. BS 7671, 544.1.1, Table 54.8. */
export const mainBondingLarge = /* @__PURE__ */ rule({
  id: 'main-bonding-conductor',
  title: 'The main protective bonding conductor is large enough',
  of: ['bondingArea', 'at-least', 'minimumBondingArea'],
  source: /* @__PURE__ */ bs('544.1.1, Table 54.8'),
  caution: shockCaution,
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

const ofSizing = /* @__PURE__ */ factOf<SizingPlace>();

/** C_min of BS 7671 411.4.4, from 230 V: the least that a fault to earth is driven by. */
const LEAST_VOLTAGE = 0.95;

/** A fuse of BS 88-2 is taken as made to the edition whose currents are the larger. */
const cutOutStandardOf = ({ circuit }: SizingPlace) => {
  const { kind } = circuit.installation.supply.cutOut;
  if (kind.state !== 'known') return unknown('the label of the cut-out');
  const { standard } = kind.value;
  return known(standard === 'BS 88-2' ? ('BS 88-2.2' as const) : standard);
};

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
/** By calculation where the cut-out clears an earth fault at the origin within 5 s, else by the table. */
const byTailsOrFuse = () =>
  when('byTable', byTails(), by(calculatedEarthing, '543.1.1, 543.1.3', { conductorArea: 'tailsArea' }));
const byTails = () => by(tabulatedEarthing, '543.1.4, Table 54.7', { conductorArea: 'tailsArea' });
const buried = () =>
  by(table541, 'Table 54.1', {
    metal: set('copper'),
    protection: derive(['earthingConductorLaid'], (v) => rows[v.earthingConductorLaid]),
  });

/** A neutral of the supply, and an earthing conductor, for which the least bonding is asked. */
const leastNeutral = /* @__PURE__ */ mm2(35);
const leastEarthing = /* @__PURE__ */ mm2(6);
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
    cutOutStandard: ofSizing(cutOutStandardOf, { called: 'standard of the cut-out fuse' }),
    cutOutRating: ofSizing(({ circuit }) => circuit.installation.supply.cutOut.rating, { called: 'cutOutRating' }),
    slowOperatingCurrent: by(fuseOperatingCurrents, 'Appendix 3', {
      device: 'cutOutStandard',
      operatingTime: set(seconds(5)),
      deviceRating: 'cutOutRating',
    }),
    cutOutClears: derive(
      ['externalImpedance', 'nominalVoltage', 'slowOperatingCurrent'],
      (v) => LEAST_VOLTAGE * v.nominalVoltage >= v.externalImpedance * v.slowOperatingCurrent,
      { direction: { externalImpedance: -1, nominalVoltage: 1, slowOperatingCurrent: -1 } },
    ),
    tableMet: derive(
      ['earthingConductorArea', 'tailsArea'],
      (v) => v.earthingConductorArea >= tabulatedEarthing({ conductorArea: v.tailsArea }),
      { direction: { earthingConductorArea: 1, tailsArea: -1 } },
    ),
    // what the table asks for is enough in any case: whether less would do is not asked then
    byTable: weigh(
      ['cutOutClears', 'tableMet'],
      ({ cutOutClears, tableMet }): Known<boolean> =>
        isMissing(cutOutClears) ? (tableMet === true ? true : cutOutClears) : !cutOutClears,
    ),
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
          'TN-S': byTailsOrFuse(),
          'TN-C-S': byTailsOrFuse(),
          // on TT only where more than a slight fault current can flow
          TT: when(
            weigh(
              ['earthElectrode', 'externalImpedance'],
              // what flows in the earthing conductor flows through the electrode
              ({ earthElectrode: electrode, externalImpedance: loop }): Known<boolean> =>
                !isMissing(electrode) ? electrode < 1 : isMissing(loop) ? loop : loop < 1,
              { direction: { earthElectrode: -1, externalImpedance: -1 } },
            ),
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
    // what is below the least that is ever asked for is too small whatever is not known
    leastBondingArea: when(
      'pme',
      by(table548, '544.1.1, Table 54.8', {
        metal: set('copper'),
        supplyNeutralArea: set(leastNeutral, 'the first band of the table: a larger neutral asks for more'),
      }),
      by(halfOfEarthingConductor, '544.1.1', {
        minimumEarthingArea: set(leastEarthing, 'a small one: a larger one asks for no less'),
      }),
    ),
    bondingAreaAsked: orElse(
      'minimumBondingArea',
      when(
        weigh(
          ['leastBondingArea', 'bondingArea'],
          ({ leastBondingArea: least, bondingArea: area }) =>
            typeof least === 'number' && typeof area === 'number' && area < least,
        ),
        same('leastBondingArea'),
        same('minimumBondingArea'),
      ),
    ),
  },
  checks: [
    compare(earthingConductorLarge, {
      applies: derive(['system'], ({ system }) => (system === 'IT' ? missing(itSystem) : true)),
    }),
    chosen('bondsFound', {
      some: [
        each('bonds', [
          compare(mainBondingLarge, { because: 'bondName', as: { minimumBondingArea: 'bondingAreaAsked' } }),
        ]),
      ],
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
