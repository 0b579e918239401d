import type { WiringCode } from '../codes/wiring-code.js';
import type { DemandRules, HeightRules, NetworkRules } from '../demand/index.js';

/** Words of the trade where the premises stand, for items of material and for records. */
export interface TradeWords {
  /** The conductors between the meter and the installation. */
  readonly tails: string;
  /** A new set of them, as an item of material. */
  readonly newTails: string;
  /** The number by which the network operator knows the connection. */
  readonly meterPoint: string;
  /** What the user is asked to do with a residual current device, as a sentence. */
  readonly userTest: string;
  /** What the rules for buildings ask of whoever adds a circuit to a dwelling, as a sentence without its stop; nothing when absent. */
  readonly circuitInDwelling?: string;
}

/** What applies where the premises stand: rules of others, handed in as values. */
export interface Applicable {
  /** The wiring code, in the edition that the survey names. */
  readonly code: WiringCode;
  /** By what a demand is found and a supply is judged. */
  readonly demand: DemandRules;
  /** Rules of the network operators of the country that the survey names. */
  readonly network: NetworkRules;
  /** Heights that are asked of charge points. */
  readonly mounting: HeightRules;
  readonly words: TradeWords;
}
