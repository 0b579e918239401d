import type { Fact } from '../core/index.js';
import type { DemandOptions } from './method.js';

/** What a notification rests on beside the installation. */
export interface NotificationOptions extends DemandOptions {
  /** Day on which the work is completed, `yyyy-mm-dd`; there is no clock here. */
  readonly completed?: string;
  /** Whether it is one of several installations planned close together. */
  readonly programme?: Fact<boolean>;
  /** What the operator has to change of the supply itself, in words, such as `a larger fuse`; nothing when absent. */
  readonly supplyChange?: string;
  /** Entries of the form that are not in the survey, such as `installer` or `address`. */
  readonly particulars?: Readonly<Record<string, string>>;
}
