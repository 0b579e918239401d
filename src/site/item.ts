import type { Gap } from '../core/index.js';
import type { Run } from '../installation/index.js';

/** An item of material, in neutral words. @inline */
export interface Item {
  /** Stable key, for a price book. */
  readonly key: string;
  readonly words: string;
  /** How much, in `unit`; absent when a fact is missing. */
  readonly quantity?: number;
  /** `m`, `m³`, `each` or `set`. */
  readonly unit: 'm' | 'm³' | 'each' | 'set';
  readonly rule: string;
  /** What stands in the way of a quantity. */
  readonly gaps?: readonly Gap[];
}

/** What a circuit needs apart from its route. */
export interface ItemFacts {
  /** Whether the earthing arrangement needs an electrode. */
  readonly electrode: boolean;
  /** Whether surge protection has to be added. */
  readonly surgeProtection: boolean;
  /** Load limiters that are counted with this circuit: of each the feeders along which the cable of its sensor runs. */
  readonly limiters: readonly (readonly Run[])[];
  /** Main bonding conductors that are too small, by what they bond. */
  readonly bonding?: readonly string[];
  /** Whether the earthing conductor is too small. */
  readonly earthingConductor?: boolean;
  /** Whether its cable lies there already, so that none is bought or laid. */
  readonly cableKept?: boolean;
  /** Whether what occurs once for a job is counted with this circuit; it is when absent. */
  readonly first?: boolean;
}
