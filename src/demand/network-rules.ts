import type { Sheet } from '../core/index.js';
import type { Amperes } from '../units/index.js';
import type { ConnectionDecision, ConnectionFacts } from './connection.js';
import type { FormEntry } from './form.js';

/** Rules of a country's network operators: a value. */
export interface NetworkRules {
  readonly id: string;
  readonly title: string;
  /** Country, ISO 3166. */
  readonly country: string;
  /** Largest demand on a line up to which the operator is only told, A; absent where no demand decides. */
  readonly noticeUpTo?: Amperes;
  /** Decides on these facts. */
  decide(facts: ConnectionFacts, sheet: Sheet): ConnectionDecision;
  /** Identifiers of those of its checks that are a matter of safety: the work must not go ahead while one fails. */
  readonly safety: readonly string[];
  /** What the form for the network operator asks, in this order. */
  readonly form: readonly FormEntry[];
}
