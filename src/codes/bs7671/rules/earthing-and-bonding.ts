import {
  type CheckResult,
  comparison,
  factValue,
  isMissing,
  type Known,
  missing,
  notDetermined,
  notRequired,
  type Sheet,
  silent,
} from '../../../core/index.js';
import type { Supply } from '../../../installation/index.js';
import { halfOfEarthingConductor, tabulatedEarthing } from '../../../physics/index.js';
import { type SquareMillimetres, squareMillimetres } from '../../../units/index.js';
import { shockCaution } from '../../iec-family/disconnection-checks.js';
import { writeExternalImpedance } from '../../iec-family/fault-loop.js';
import type { CircuitCase, Rule } from '../../wiring-code.js';
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

const sized = (name: string, fact: Supply['earthingConductor'], obtain: string): Known<SquareMillimetres> =>
  fact ? factValue(name, fact) : missing({ kind: 'fact', fact: name, obtain });

/** Writes the smallest bonding conductor: Table 54.8 under PME, else half the earthing conductor between 6 and 25 mm². */
function writeMinimumBonding(sheet: Sheet, supply: Supply, pme: boolean): Known<SquareMillimetres> {
  if (pme) {
    const metal = sheet.label('metal', 'copper');
    const supplyNeutralArea = sheet.given(
      'supplyNeutralArea',
      sized('neutral of the supply', supply.supplyNeutral, 'ask the distributor, or take the service cable'),
    );
    return sheet.look(table548, { metal, supplyNeutralArea });
  }
  const conductorArea = sheet.given('conductorArea', sized('meter tails', supply.tails, 'read them off'));
  const minimumEarthingArea = sheet.step(tabulatedEarthing, { conductorArea });
  return sheet.step(halfOfEarthingConductor, { minimumEarthingArea });
}

/** Rows of Table 54.1 for conductors in the ground. */
const buried = {
  buried: 'not protected',
  'buried-against-damage': 'protected against mechanical damage only',
  'buried-against-corrosion': 'protected against corrosion only',
  'buried-protected': 'protected against corrosion and mechanical damage',
} as const;

/** Smallest size by the way in which it is laid. */
function writeAsLaid(sheet: Sheet, { earthingConductorLaid }: Supply): Known<SquareMillimetres> {
  const laid = factValue('how the earthing conductor is laid', earthingConductorLaid ?? howLaid);
  if (isMissing(laid)) return sheet.given('minimumEarthingArea', laid);
  if (laid === 'above-ground' || laid === 'above-ground-protected')
    return sheet.given(
      'minimumEarthingArea',
      squareMillimetres(laid === 'above-ground' ? 4 : 2.5),
      'BS 7671 543.1.1, conductor in no cable: 4 mm², or 2.5 mm² protected against mechanical damage, from memory',
    );
  return sheet.look(table541, {
    metal: sheet.label('metal', 'copper'),
    protection: sheet.label('protection', buried[laid]),
  });
}

const howLaid = {
  state: 'unknown',
  obtain: 'see whether it is buried, and protected against corrosion and mechanical damage: Table 54.1',
} as const;

/** External impedance from which a fault cannot heat a conductor of the smallest size, Ω. */
const slightFault = 1;

/** Whether the table by the meter tails decides: on TT only where more than a slight fault current can flow. */
function tailsDecide(sheet: Sheet, circuit: CircuitCase): Known<boolean> {
  const impedance = writeExternalImpedance(silent(), circuit, 'TT');
  if (isMissing(impedance) || impedance < slightFault) return isMissing(impedance) ? impedance : true;
  sheet.note(
    `Z_e, ${impedance} Ω, is not below ${slightFault} Ω: at most 253 A for 1 s need 1.8 mm² at k = 143, so that the way it is laid decides (On-Site Guide, TT supplies, from memory).`,
  );
  return false;
}

function earthingConductor(sheet: Sheet, circuit: CircuitCase, system: 'TN-S' | 'TN-C-S' | 'TT'): CheckResult {
  const { supply } = circuit.installation;
  const parts: Sheet[] = [];
  const laid = supply.earthingConductorLaid;
  if (system === 'TT' || laid) {
    const part = sheet.part('As it is laid');
    writeAsLaid(part, supply);
    parts.push(part);
  }
  const decide = system === 'TT' ? tailsDecide(sheet, circuit) : true;
  if (decide !== false) {
    const byTails = sheet.part('By the meter tails');
    if (isMissing(decide)) byTails.given('minimumEarthingArea', decide);
    else {
      const conductorArea = byTails.given('conductorArea', sized('meter tails', supply.tails, 'read them off'));
      byTails.step(tabulatedEarthing, { conductorArea });
    }
    parts.push(byTails);
  }
  if (system === 'TN-C-S') {
    const byBonding = sheet.part('By the bonding conductor');
    const bonding = byBonding.part('Main bonding');
    writeMinimumBonding(bonding, supply, true);
    byBonding.gather('largest', 'minimumBondingArea', 'minimumEarthingArea', [bonding]);
    parts.push(byBonding);
  }
  const minimumEarthingArea = sheet.gather('largest', 'minimumEarthingArea', 'minimumEarthingArea', parts);
  const earthingConductorArea = sheet.given(
    'earthingConductorArea',
    sized('earthing conductor', supply.earthingConductor, 'read it off at the main earthing terminal'),
  );
  return sheet.check(earthingConductorLarge, { earthingConductorArea, minimumEarthingArea });
}

/** Earthing conductor and main bonding of the installation. BS 7671 542.3, 544.1. */
export const earthingAndBonding: Rule = (circuit, _findings, sheet) => {
  const { supply } = circuit.installation;
  const system = factValue('earthing system of the supply', supply.system);
  if (isMissing(system))
    return [
      sheet.result(notDetermined(earthingConductorLarge, ...system.missing)),
      sheet.result(notDetermined(mainBondingLarge, ...system.missing)),
    ];
  const pme = system === 'TN-C-S';
  const results: CheckResult[] = [];
  if (system === 'IT')
    results.push(
      sheet.result(
        notDetermined(earthingConductorLarge, {
          kind: 'fact',
          fact: 'earthing conductor of an IT system',
          obtain: 'design it by BS 7671 411.6: the rule here is for TN and TT',
        }),
      ),
    );
  else results.push(earthingConductor(sheet.part('Earthing conductor'), circuit, system));
  if (supply.bonding === undefined)
    results.push(
      sheet.result(
        notDetermined(mainBondingLarge, {
          kind: 'fact',
          fact: 'main protective bonding conductors',
          obtain: 'find every extraneous-conductive-part and its bonding conductor',
        }),
      ),
    );
  else if (supply.bonding.length === 0)
    results.push(
      sheet.result(notRequired(mainBondingLarge, 'not-applicable', 'No extraneous-conductive-part has been found.')),
    );
  for (const [i, bond] of (supply.bonding ?? []).entries()) {
    const part = sheet.part(`Main bonding of ${bond.what || i + 1}`);
    const minimumBondingArea = writeMinimumBonding(part, supply, pme);
    const bondingArea = part.given('bondingArea', bond.area);
    results.push(part.check(mainBondingLarge, { bondingArea, minimumBondingArea }, bond.what || undefined));
  }
  return results;
};
