import { chosen, holds, set } from '../../../calculation/index.js';
import {
  endsOf,
  type Fact,
  isMissing,
  type Known,
  missing,
  rule,
  type Source,
  stated,
  type UnknownFact,
} from '../../../core/index.js';
import { type ByTransformer, byTransformer } from '../../../demand/transformer.js';
import type { Supply } from '../../../installation/index.js';
import { customaryImpedances } from '../../../networks/gb-network/external-impedance.js';
import { ofCircuit } from '../../iec-family/places.js';

const practice = (clause: string): Source => ({ document: 'physics', clause, provenance: 'common-practice' });

/** External impedance and prospective current at the origin can both be right. */
export const originReadingsAgree = /* @__PURE__ */ rule({
  id: 'origin-readings-agree',
  title: 'External impedance and prospective fault current agree with each other and with the system',
  source: /* @__PURE__ */ practice('I_pf against U_0/Z_e, with room for instruments and parallel metal'),
  caution:
    'Readings that contradict each other decide nothing: every figure that rests on them is open until they are repeated.',
});

/** The external impedance is what such a supply customarily has: on TN at most the customary figure, on TT what a rod can give. ENA ER P23/1, Table 1. */
export const externalImpedanceCustomary = /* @__PURE__ */ rule({
  id: 'external-impedance-customary',
  title: 'The external impedance is what such a supply customarily has, or is confirmed',
  source: {
    document: 'ENA ER P23/1',
    edition: '1991',
    clause: 'Table 1',
    provenance: 'two-sources',
    note: 'superseded by P23/2:2018; customary figures, never guaranteed',
  },
});

/** The supply has the lines of the circuit. BS 7671, 313.1. */
export const suppliedLines = /* @__PURE__ */ rule({
  id: 'lines-of-supply',
  title: 'The supply has the line conductors that the circuit is connected to',
  source: { document: 'BS 7671', clause: '313.1', provenance: 'memory' },
});

const isAssumed = (fact: Fact<number>): boolean => 'assumed' in fact && fact.assumed !== undefined;

const unread = (fact: string, { obtain }: UnknownFact): Known<true> =>
  missing({ kind: 'fact', fact, ...stated({ obtain }) });
const again = (said: string): Known<true> =>
  missing({
    kind: 'fact',
    fact: 'readings at the origin that agree',
    obtain: `${said}: measure both anew`,
    disagree: true,
  });

/**
 * How far I_pf may lie from U_0/Z_e: a fifth below it; twice it, three lines twice that. Between three lines more flows
 * than in any loop to earth. Common practice, no source.
 */
const [BELOW, BELOW_THREE_LINES, ABOVE] = [0.8, 1, 2];
/** No electrode of a home or small site has less, Ω. Common practice, no source. */
const LEAST_OF_ELECTRODE = 1;

/** How many times more or less than its plate gives a reading at a transformer may be. Common practice, no source. */
const OF_PLATE = 2;

/** A reading that does not go with the transformer that stands there: one of the two is of another place. */
function besideTransformer(supply: Supply): Known<true> {
  const found = byTransformer(supply);
  if (!found) return true;
  const readings: readonly (readonly [
    unit: string,
    name: string,
    Fact<number>,
    ByTransformer['prospectiveCurrent'],
  ])[] = [
    ['Ω', 'Z_e', supply.externalImpedance, found.externalImpedance],
    ['A', 'I_pf', supply.prospectiveCurrent, found.prospectiveCurrent],
  ];
  for (const [unit, name, fact, span] of readings) {
    const ends = endsOf(fact);
    if (!ends || isMissing(span) || isAssumed(fact)) continue;
    if (ends[1] * OF_PLATE < span.least || ends[0] > span.most * OF_PLATE)
      return again(
        `${name} is said to be ${+ends[0].toPrecision(3)} ${unit}, and by the plate of the transformer ${+span.least.toPrecision(3)} ${unit} to ${+span.most.toPrecision(3)} ${unit} are due`,
      );
  }
  return true;
}

/** On TT the loop holds the electrode, so that it is never much below it. */
function throughElectrode([least]: readonly [number, number], electrode: Supply['electrode']): Known<true> {
  const ends = endsOf(electrode?.resistance);
  if (!electrode || !ends || isAssumed(electrode.resistance) || least >= BELOW * ends[1]) return true;
  return again(
    `the loop is said to be ${least} Ω, and the electrode that it holds ${ends[1]} Ω: with the earthing conductor disconnected from all other metal`,
  );
}

/**
 * I_pf is the larger of line-neutral and line-earth, so never much below U_0/Z_e; where neutral and earth are one conductor
 * as far as the origin, never far above it either.
 */
function readingsAgree(supply: Supply): Known<true> {
  const plate = besideTransformer(supply);
  if (isMissing(plate)) return plate;
  const { externalImpedance, prospectiveCurrent, nominalVoltage, system, phases, electrode } = supply;
  const [z, i] = [endsOf(externalImpedance), endsOf(prospectiveCurrent)];
  // on TT a loop that was not measured is taken from the electrode
  if (!z && system.state === 'known' && system.value === 'TT' && electrode) return true;
  if (!z) return unread('externalImpedance', externalImpedance as UnknownFact);
  if (!i) return unread('prospectiveCurrent', prospectiveCurrent as UnknownFact);
  const said = (ohms: number, amperes: number) =>
    again(
      `Z_e of ${ohms} Ω gives ${Math.round(nominalVoltage / ohms)} A to earth, I_pf is said to be ${Math.round(amperes)} A`,
    );
  // what is assumed is the worst that may be, each for itself: it contradicts nothing
  if (isAssumed(prospectiveCurrent)) return true;
  // but for an impedance that lets more flow than was read
  if (isAssumed(externalImpedance)) return i[1] * z[1] < BELOW * nominalVoltage ? said(z[1], i[1]) : true;
  if (i[0] * z[0] < BELOW * nominalVoltage) return said(z[0], i[0]);
  if (system.state !== 'known') return unread('earthing system of the supply', system as UnknownFact);
  const three = phases.state === 'known' && phases.value === 3;
  if (system.value === 'TT') return throughElectrode(z, electrode);
  const lessThanThree = i[0] * z[0] < BELOW_THREE_LINES * nominalVoltage;
  if (lessThanThree && phases.state !== 'known') return unread('phases of the supply', phases as UnknownFact);
  if (three && lessThanThree)
    return again(
      `I_pf of ${Math.round(i[0])} A is less than the ${Math.round(nominalVoltage / z[0])} A to earth that Z_e of ${z[0]} Ω gives: between three lines more flows, about twice as much`,
    );
  if (system.value !== 'TN-C-S') return true;
  const lines = three ? 2 : 1;
  return i[1] * z[1] > ABOVE * lines * nominalVoltage ? said(z[1], i[1]) : true;
}

function customary({ externalImpedance, system, externalImpedanceConfirmed, electrode }: Supply): Known<true | string> {
  if (system.state !== 'known') return unread('earthing system of the supply', system as UnknownFact);
  const z = endsOf(externalImpedance);
  const confirmed = externalImpedanceConfirmed?.state === 'known' && externalImpedanceConfirmed.value;
  if (system.value === 'TT') {
    // the loop holds the electrode, so that neither may be less
    const read = [z, endsOf(electrode?.resistance)].flatMap((ends) => ends?.[0] ?? []);
    const least = Math.min(...read);
    if (least >= LEAST_OF_ELECTRODE || confirmed) return 'There is no customary figure for the system.';
    return missing({
      kind: 'fact',
      fact: 'whether the supply is TT',
      obtain: `${least} Ω is less than an electrode gives: see where the earthing conductor goes, and measure with it disconnected from all other metal`,
      disagree: true,
    });
  }
  if (system.value !== 'TN-C-S' && system.value !== 'TN-S') return 'There is no customary figure for the system.';
  if (!z) return unread('externalImpedance', externalImpedance as UnknownFact);
  const most = customaryImpedances.get({ supply: 'up to 100 A', system: system.value });
  // what is assumed is measured before it is relied on: how far it may be off is the limit of the design itself
  if (z[1] <= most || confirmed || isAssumed(externalImpedance)) return true;
  return missing({
    kind: 'fact',
    fact: 'whether the external impedance is right',
    obtain: `${z[1]} Ω is above the customary ${most} Ω of ${system.value}: measure it anew, then ask the distributor`,
    disagree: true,
  });
}

/** Whether what is said of the origin can be true together. */
export const originFacts = () => ({
  circuit: {
    originAgrees: ofCircuit((c) => readingsAgree(c.installation.supply), { called: 'readings at the origin' }),
    // a line of which nobody knows whether it is there
    linesThere: ofCircuit<true>(({ installation: { supply } }) =>
      supply.phases.state === 'known' ? true : unread('phases of the supply', supply.phases as UnknownFact),
    ),
    linesAsked: ofCircuit(
      ({ run, installation: { supply } }) => supply.phases.state !== 'known' && run.lines.some((l) => l !== 'L1'),
    ),
    impedanceCustomary: ofCircuit((c) => customary(c.installation.supply), { called: 'external impedance' }),
  },
  checks: [
    holds(originReadingsAgree, 'originAgrees', set('nothing that is known contradicts the rest')),
    chosen('linesAsked', { true: [holds(suppliedLines, 'linesThere', set('they are there'))], false: [] }),
    holds(externalImpedanceCustomary, set(true), set('customary, or confirmed by the distributor'), {
      applies: 'impedanceCustomary',
    }),
  ],
});
