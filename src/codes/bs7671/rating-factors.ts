import { factValue, isMissing, type Known, missing, type Sheet } from '../../core/index.js';
import type { Cable, Run, Stretch } from '../../installation/index.js';
import { amperes, metres, type Ratio, ratio } from '../../units/index.js';
import { groupFactorOf } from '../iec-family/group-factor.js';
import { isBuried, noFactor, type OverloadRules, soilFactorOf } from '../iec-family/rating-tables.js';
import { table4B1 } from './tables/4b1.js';
import { table4B2 } from './tables/4b2.js';
import { table4B3 } from './tables/4b3.js';
import { table4C1 } from './tables/4c1.js';
import { table4C2 } from './tables/4c2.js';
import { table4C3Multicore, table4C3SingleCore } from './tables/4c3.js';
import { table4C4 } from './tables/4c4.js';
import { table4C5 } from './tables/4c5.js';
import { table4FAmbient } from './tables/4f-ambient.js';
import { table4FDrum } from './tables/4f-drum.js';
import { table4F3A } from './tables/4f3a.js';
import { table52_2 } from './tables/52-2.js';

/** @internal Smallest size of the tables of flexible cables, mm²; below it there are cords. */
export const leastOfFlexible = 4;

/** @internal Whether a flexible cable is in the tables of cords. */
export const isCord = (cable: Cable): boolean =>
  cable.construction === 'flexible' && cable.area.state === 'known' && cable.area.value < leastOfFlexible;

/** Air temperature of the tables of capacity, °C. */
const referenceAir = 30;

/** Flexible cable has ambient factors of its own; no factor above the reference is taken where none is printed. */
function flexibleAmbient(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio> {
  const ambient = factValue(`ambient of ${stretch.name}`, stretch.ambient);
  if (!isMissing(ambient) && ambient <= referenceAir)
    return noFactor(sheet, 'ambientFactor', 'not above 30 °C, for which the table of capacity is');
  if (cable.insulation === 'thermosetting-90' && !isCord(cable))
    return sheet.look(table4FAmbient, { ambientTemperature: sheet.given('ambientTemperature', stretch.ambient) });
  return sheet.given(
    'ambientFactor',
    isMissing(ambient)
      ? ambient
      : missing({
          kind: 'cell',
          table: isCord(cable) ? table4F3A.id : table4FAmbient.id,
          explain: 'the factors entered above 30 °C are those of the 90 °C cables of Table 4F2A',
          source: isCord(cable) ? table4F3A.source : table4FAmbient.source,
        }),
  );
}

/** @internal Factor C_a. */
export function ambient(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio> {
  if (cable.construction === 'flexible' && !isBuried(stretch)) return flexibleAmbient(sheet, cable, stretch);
  if (cable.insulation === 'thermosetting-60')
    return sheet.given(
      'ambientFactor',
      missing({
        kind: 'cell',
        table: table4B1.id,
        explain: 'Table 4B1 has no column for 60 °C insulation',
        source: table4B1.source,
      }),
    );
  const insulation = sheet.label('insulation', cable.insulation);
  if (isBuried(stretch))
    return sheet.look(table4B2, { insulation, groundTemperature: sheet.given('groundTemperature', stretch.ambient) });
  return sheet.look(table4B1, { insulation, ambientTemperature: sheet.given('ambientTemperature', stretch.ambient) });
}

/** @internal Factor C_g. */
export const group = /* @__PURE__ */ groupFactorOf({
  touching: (sheet, arrangement, circuitsInGroup) =>
    arrangement === 'single-layer-ceiling'
      ? sheet.given(
          'groupFactor',
          missing({
            kind: 'cell',
            table: table4C1.id,
            explain: 'Table 4C1, as entered here, has no row for cables under a ceiling',
            source: table4C1.source,
          }),
        )
      : sheet.look(table4C1, {
          circuitsInGroup: circuitsInGroup(),
          arrangement: sheet.label('arrangement', arrangement),
        }),
  direct: table4C2,
  ductsOfMulticore: table4C3Multicore,
  ductsOfSingles: table4C3SingleCore,
  trays: table4C4,
  traysOfSingles: table4C5,
  drum: (sheet, drum) => sheet.look(table4FDrum, { drum: sheet.label('drum', drum) }),
  lightClause: 'BS 7671 523.5',
});

/** @internal Factor C_i. */
export function insulation(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio> {
  const length = stretch.insulated ? factValue(`insulated length of ${stretch.name}`, stretch.insulated) : metres(0);
  if (length === 0) return noFactor(sheet, 'insulationFactor', 'no length in thermal insulation');
  if (cable.area.state === 'known' && cable.area.value > 10)
    return sheet.given(
      'insulationFactor',
      missing({
        kind: 'cell',
        table: table52_2.id,
        explain: 'Table 52.2 is for conductors of up to 10 mm²',
        source: table52_2.source,
      }),
    );
  const counted = isMissing(length) ? length : metres(Math.min(length, 0.5));
  const by = !isMissing(length) && length > 0.5 ? 'from 0.5 m up the factor stays the same (523.9)' : undefined;
  return sheet.look(table52_2, { insulatedLength: sheet.given('insulatedLength', counted, by) });
}

/** @internal Factor C_s. */
export const soil = /* @__PURE__ */ soilFactorOf(table4B3, (_cable, stretch) =>
  stretch.containment === 'duct' ? 'ducts' : 'direct',
);

/** Multiples of the rated current at which a device operates within its conventional time. */
function conventionalMultiple(sheet: Sheet, run: Run): Known<Ratio> {
  const kind = factValue('kind of the overcurrent device', run.device.kind);
  if (isMissing(kind)) return sheet.given('conventionalMultiple', kind);
  switch (kind.standard) {
    case 'EN 60898':
    case 'EN 61009':
      return sheet.given('conventionalMultiple', ratio(1.45), 'EN 60898: conventional tripping current 1.45 I_n');
    case 'BS 88-2':
    case 'BS 88-3':
    case 'BS 1361':
      return sheet.given(
        'conventionalMultiple',
        ratio(1.45),
        'fuse in its enclosure counts as 1.45 I_n, BS 7671 433.1.202, from memory',
      );
    case 'BS 3036':
      return sheet.given('conventionalMultiple', ratio(2), 'BS 3036: fusing factor 2');
    default:
      return sheet.given(
        'conventionalMultiple',
        missing({
          kind: 'fact',
          fact: `conventional operating current of a device to ${kind.standard}`,
          obtain: 'the product standard',
        }),
      );
  }
}

/** @internal Whether a reference method already contains thermal insulation. */
export const containsInsulation = (method: string): boolean => /^(A[12]?|10[0-3])$/.test(method);

/** @internal How BS 7671 counts overload protection. */
export const overload: OverloadRules = {
  conventionalMultiple,
  semiEnclosed: [0.725, 'BS 3036 overload device, BS 7671 433.1.202'],
  buried: [0.9, 'in the ground with overload protection, BS 7671 Appendix 4, 5.1'],
  ring: {
    ratings: [30, 32],
    least: /* @__PURE__ */ amperes(20),
    by: 'BS 7671 433.1.204, ring final circuit behind 30 A or 32 A',
  },
  notSimultaneous: true,
};
