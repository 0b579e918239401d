/**
 * The whole job, from the survey to options, quantities and records.
 *
 * @module ohmwright/site
 */
export type { Applicable, TradeWords } from './applicable.js';
export { assumeSurvey } from './assumed-survey.js';
export * from './collections.js';
export { type Decision, decisionOf } from './decision.js';
export { decidedRun, withAddedRun, withAllWanted } from './installed.js';
export { type NextQuestion, nextQuestions } from './next-question.js';
export {
  type BuildStage,
  compareOverYears,
  type FleetVehicle,
  type SiteWay,
  type WayOverYears,
  type YearOfWay,
  type YearsQuestion,
} from './over-years.js';
export { type OnOneLine, type Placement, placeOnLines } from './place-on-lines.js';
export type { OptionPlan, Plan, PointPlan } from './plan.js';
export { planOf } from './plan-of.js';
export type { PlanOptions } from './plan-options.js';
export { type PriceBook, type Quotation, quotationOf } from './price.js';
export { type Ranking, simplestFirst } from './ranking.js';
export { type Records, recordsOf } from './records.js';
export { type SurveyChange, withChanges } from './remedies/changes.js';
export type { AppliedRemedy, RemedyOffer } from './remedies/offer.js';
export { sanityQuestions } from './sanity.js';
export type { SanityQuestion } from './sanity-question.js';
export { type Finding, type Settlement, settle } from './settle.js';
export type { Survey, VehicleNeed, WantedPoint, WorkFacts } from './survey.js';
export type { ConditionLimit, ToConfirm } from './to-confirm.js';
export { commonPractice, type WorkRules } from './work-rules.js';
