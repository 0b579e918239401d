import { type CheckResult, type Known, overall, type Sheet } from '../../core/index.js';
import type { Cable } from '../../installation/index.js';
import type { AdiabaticFactor } from '../../units/index.js';
import type { CircuitCase } from '../wiring-code.js';
import type { DeviceEnergy } from './device-energy.js';
import type { FuseCurrent } from './operating-current.js';

/** Heat of a fault, said with every verdict on it. */
export const heatCaution =
  'A conductor that does not withstand the fault burns its insulation or parts before the device has cleared: the next fault is then without protection.';

/** What a protective path is made of and where it lies: the table of k that holds for it. */
export type FactorCase = 'line' | 'protective-in-cable' | 'armour' | 'conduit';

/** What a wiring code says of thermal withstand. */
export interface WithstandFigures {
  /** Writes the factor k of a conductor; `adiabaticFactor` is the latest value of the sheet afterwards. */
  factor(sheet: Sheet, cable: Cable, of: FactorCase, circuit: CircuitCase): Known<AdiabaticFactor>;
  /** Current that operates a fuse. */
  readonly fuseCurrent: FuseCurrent;
  /** Largest and smallest voltage factor and where they stand. */
  readonly voltageFactors: { readonly most: readonly [number, string]; readonly least: readonly [number, string] };
}

/** The result that decides among several that all have to pass. */
export const decidingResult = (results: readonly CheckResult[]): CheckResult => {
  const { failed, undetermined } = overall(results);
  const tightest = results.reduce<CheckResult | undefined>(
    (best, r) => (r.margin !== undefined && (best?.margin === undefined || r.margin < best.margin) ? r : best),
    undefined,
  );
  return failed[0] ?? undetermined[0] ?? tightest ?? (results[results.length - 1] as CheckResult);
};

/** A bound that a conductor does not withstand condemns nothing: the maker's figure decides. */
export function acquitOnly(sheet: Sheet, result: CheckResult, energy: DeviceEnergy): CheckResult {
  if (result.verdict !== 'fail' || !energy.bound) return result;
  const { check, title, weight, source, caution } = result;
  return sheet.result({
    check,
    title,
    weight,
    source,
    ...(caution === undefined ? {} : { caution }),
    verdict: 'not-determined',
    because: energy.because,
    gaps: [
      {
        kind: 'fact',
        fact: 'let-through energy of the device',
        obtain:
          'at the prospective current, from its maker: the bound that is known is more than the conductor withstands',
      },
    ],
  });
}
