import type { DwellingHeating } from '../../installation/index.js';
import type { Ratio, VoltAmperes, WattHours, Watts } from '../../units/index.js';

/** Like dwellings on one riser or in one building. */
export interface DwellingGroup {
  /** Number of dwellings, whole, 1 and up. */
  readonly dwellings: number;
  /** Demand or contracted power of one dwelling, VA. */
  readonly each?: VoltAmperes;
  readonly electricWaterHeating?: boolean;
  readonly storageHeating?: boolean;
  /** How the dwellings are heated. */
  readonly heating?: DwellingHeating;
  /** Constants of the user's own for demand after diversity; there are no built-in ones. */
  readonly afterDiversity?: {
    /** Demand of one of very many dwellings, W. */
    readonly demand: Watts;
    /** Constant term, W. */
    readonly constant: Watts;
    /** Allowance for unbalance, 1 and up. */
    readonly unbalance: Ratio;
  };
  /** Constants of the user's own for a coincidence that falls with the root of the number. */
  readonly coincidence?: {
    /** Largest demand of one dwelling, W. */
    readonly largest: Watts;
    /** Coincidence of very many, 0 to 1. */
    readonly limit: Ratio;
  };
  /** Energy and coefficients of the user's own. */
  readonly energy?: {
    /** Energy of all dwellings in a year, Wh. */
    readonly annual: WattHours;
    /** Coefficient k_1, kW per kWh. */
    readonly linear: Ratio;
    /** Coefficient k_2, kW per root of kWh. */
    readonly root: Ratio;
  };
}
