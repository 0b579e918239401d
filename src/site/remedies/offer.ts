import type { Route } from '../../demand/index.js';
import type { HoursInAll } from '../hours.js';
import type { Item } from '../item.js';
import type { BaseOptionId } from '../option-id.js';
import type { Estimate } from '../work-rules.js';
import type { SurveyChange } from './changes.js';

/** A remedy as it was applied. @inline */
export interface AppliedRemedy {
  /** Identifier of the remedy. */
  readonly id: string;
  readonly title: string;
  /** What is done. */
  readonly what: string;
  /** Material beside that of the circuits. */
  readonly items: readonly Item[];
  /** Hours beside those of the circuits. */
  readonly hours: Estimate;
}

/** Remedies that were assessed together, and what they come to. @inline */
export interface RemedyOffer {
  /** The option that they are applied to. */
  readonly option: BaseOptionId;
  readonly remedies: readonly AppliedRemedy[];
  /** Verdict of the whole with them: `pass`, or what is left when only facts are open. */
  readonly verdict: 'pass' | 'not-determined';
  /** Facts that it is subject to, in words. */
  readonly subjectTo: readonly string[];
  /** Hours of the whole job with them, h. */
  readonly hours: HoursInAll;
  /** The way to the network operator with them, and without. */
  readonly route: Route;
  readonly routeBefore: Route;
  /** What they change in the survey, the option included. */
  readonly changes: readonly SurveyChange[];
}
