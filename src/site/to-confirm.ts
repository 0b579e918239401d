import type { Source } from '../core/index.js';
import type { Condition } from '../design/index.js';

/** How far a condition may be from what was assumed, with everything else as assumed. @inline */
export interface ConditionLimit {
  /** Circuit whose check ends it. */
  readonly run: string;
  /** Last value by which every rule of the circuit is met; it was assessed. */
  readonly value: number;
  /** First value by which one is not met; it was assessed. */
  readonly beyond: number;
  /** What is not met there, or open: the requirement. */
  readonly because: string;
  /** Set where every rule is still met there, and advice alone is no longer followed. */
  readonly advice?: true;
  /** What would have to be built beyond it; absent where no cable on offer and no device passes. */
  readonly instead?: { readonly construction: string; readonly area: number; readonly rating: number };
}

/** What to confirm on site, and how far it may be from what was assumed. */
export interface ToConfirm extends Condition {
  /** What it is, in words. */
  readonly title: string;
  /** What was assumed, in words. */
  readonly words: string;
  /** How it is confirmed. */
  readonly confirm: string;
  /** What the assumption rests on; absent where the survey itself marks the fact. */
  readonly source?: Source;
  /** Smallest value by which the design stands; absent where none that was examined is too small, or none was asked for. */
  readonly atLeast?: ConditionLimit;
  /** Largest value by which the design stands. */
  readonly atMost?: ConditionLimit;
}
