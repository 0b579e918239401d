import type { NotificationOptions } from '../demand/index.js';
import type { AssumptionSet } from '../installation/index.js';
import type { Applicable } from './applicable.js';
import type { Ranking } from './ranking.js';
import type { WorkRules } from './work-rules.js';

/** What a plan rests on beside the survey: what applies where the premises stand, and choices. */
export interface PlanOptions extends Applicable {
  /** Rules for quantities and hours; common practice when absent. */
  readonly rules?: WorkRules;
  /** How options are ranked; `simplestFirst` when absent. */
  readonly ranking?: Ranking;
  /** Which options keep their calculation sheet; the first when absent. */
  readonly sheets?: 'first' | 'all' | 'none';
  /** Whether permitted lengths of the route are worked out, which takes many assessments; for up to three points when absent. */
  readonly lengths?: boolean;
  /** Whether the limits of the conditions of the best option are worked out, which takes many assessments; they are when absent. */
  readonly limits?: boolean;
  /** What stands in for facts that nobody looked at; what passes by it passes on conditions. Nothing when absent. */
  readonly assumptions?: AssumptionSet;
  /** Whether remedies are sought for what does not pass, each assessed anew; where no fact runs over a range when absent. */
  readonly remedies?: boolean;
  /** What the notification needs and the survey does not hold, such as the day of completion. */
  readonly notification?: Pick<NotificationOptions, 'completed' | 'programme' | 'particulars'>;
}
