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
} from '../../../core/index.js';
import type { Supply } from '../../../installation/index.js';
import { halfOfEarthingConductor, tabulatedEarthing } from '../../../physics/index.js';
import type { SquareMillimetres } from '../../../units/index.js';
import { shockCaution } from '../../iec-family/disconnection-checks.js';
import type { Rule } from '../../wiring-code.js';
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

function earthingConductor(sheet: Sheet, supply: Supply, pme: boolean): CheckResult {
  const byTails = sheet.part('By the meter tails');
  const conductorArea = byTails.given('conductorArea', sized('meter tails', supply.tails, 'read them off'));
  byTails.step(tabulatedEarthing, { conductorArea });
  const parts = [byTails];
  if (pme) {
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
  if (system === 'TT')
    results.push(
      sheet.result(
        notDetermined(earthingConductorLarge, {
          kind: 'fact',
          fact: 'how the earthing conductor is laid',
          obtain: 'whether it is buried, and protected against corrosion and mechanical damage: Table 54.1',
        }),
      ),
    );
  else results.push(earthingConductor(sheet.part('Earthing conductor'), supply, pme));
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
    results.push(part.check(mainBondingLarge, { bondingArea, minimumBondingArea }));
  }
  return results;
};
