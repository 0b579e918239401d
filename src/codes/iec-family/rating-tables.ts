import {
  type Axis,
  factValue,
  isMissing,
  type Known,
  type KnownKeys,
  type Missing,
  missing,
  type Sheet,
  type Source,
  type Table,
} from '../../core/index.js';
import type { Cable, Run, Stretch } from '../../installation/index.js';
import { type Amperes, type Ratio, ratio } from '../../units/index.js';

/** What a wiring code of the IEC family says of ratings: its tables, read on the part of the sheet of one stretch. */
export interface RatingTables {
  /** Tabulated capacity of a cable in a stretch with this many loaded conductors. */
  tabulated(sheet: Sheet, cable: Cable, stretch: Stretch, loaded: '2' | '3'): Known<Amperes>;
  /** Factor for the temperature of air or ground. */
  ambient(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio>;
  /** Factor for the circuits beside it, three-phase ones or not. */
  group(sheet: Sheet, cable: Cable, stretch: Stretch, three: boolean): Known<Ratio>;
  /** Factor for thermal insulation over a length, for methods that do not contain it. */
  insulation(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio>;
  /** Factor for the soil. */
  soil(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio>;
  /** Whether a method already contains thermal insulation. */
  containsInsulation(method: string): boolean;
  /** How overload protection is counted. */
  readonly overload: OverloadRules;
}

/** What a wiring code says of overload protection, beyond I_b <= I_n <= I_z. */
export interface OverloadRules {
  /** Multiple of the rated current at which the device operates within its conventional time. */
  conventionalMultiple(sheet: Sheet, run: Run): Known<Ratio>;
  /** Factor for a semi-enclosed fuse and where it stands, if the code has one. */
  readonly semiEnclosed?: readonly [factor: number, by: string];
  /** Factor for cables in the ground and where it stands, if the code has one. */
  readonly buried?: readonly [factor: number, by: string];
  /** Rule for ring final circuits, if the code has one: ratings of the device, least capacity, and where it stands. */
  readonly ring?: { readonly ratings: readonly number[]; readonly least: Amperes; readonly by: string };
  /** Whether the code has a rule for groups that are not overloaded together; else they count as overloaded together. */
  readonly notSimultaneous: boolean;
}

/** Whether a stretch is in the ground. */
export const isBuried = (stretch: Stretch): boolean =>
  stretch.method.state === 'known' && /^D/.test(stretch.method.value);

/** Writes the factor that needs no table: 1, with the reason. */
export const noFactor = <
  N extends 'groupFactor' | 'insulationFactor' | 'soilFactor' | 'ambientFactor' | 'deviceFactor' | 'fuseFactor',
>(
  sheet: Sheet,
  name: N,
  because: string,
): Known<Ratio> => sheet.given(name, ratio(1), because);

/** Largest depth for which the figures of cables in the ground are, m. */
const deepest = 0.8;

/**
 * Why a cable in the ground cannot be rated for its depth, or undefined: deeper than 0.8 m it carries less than the
 * tables say, and the factors for it are not entered.
 */
function tooDeep(stretch: Stretch, table: { readonly id: string; readonly source: Source }): Missing | undefined {
  if (!stretch.depth) return undefined;
  const depth = factValue(`depth of ${stretch.name}`, stretch.depth);
  if (isMissing(depth)) return depth;
  return depth <= deepest
    ? undefined
    : missing({
        kind: 'cell',
        table: table.id,
        explain: `the figures for cables in the ground hold down to ${deepest} m; factors for greater depth, here ${depth} m, are not entered`,
        source: table.source,
      });
}

const soilNotStated = {
  state: 'unknown',
  obtain: 'assume 2.5 K·m/W by stating it, or have the soil measured',
} as const;

/** How a code's table gives the factor for the soil around cables in the ground. */
export const soilFactorOf =
  (
    table: Table<readonly Axis[], 'soilFactor'>,
    layingOf: (cable: Cable, stretch: Stretch) => Known<'ducts' | 'direct'>,
  ) =>
  (sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio> => {
    if (!isBuried(stretch)) return noFactor(sheet, 'soilFactor', 'not in the ground');
    const deep = tooDeep(stretch, table);
    if (deep) return sheet.given('soilFactor', deep);
    if (!stretch.depth) sheet.note('Depth not stated: the figures hold down to 0.8 m.');
    const lying = layingOf(cable, stretch);
    if (isMissing(lying)) return sheet.given('soilFactor', lying);
    const keys: Record<string, Known<number | string>> = {
      laying: sheet.label('laying', lying),
      soilResistivity: sheet.given('soilResistivity', stretch.soilResistivity ?? soilNotStated),
    };
    return sheet.look(table, keys as KnownKeys<readonly Axis[]>);
  };
