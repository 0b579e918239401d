import type { EarthingOption } from '../codes/wiring-code.js';
import type { CheckResult, Overall, SheetDocument } from '../core/index.js';
import type { FeederDemand } from '../demand/feeder.js';
import type { Adequacy, Notification } from '../demand/index.js';
import type { Assessment, Design, TestSheet } from '../design/index.js';
import type { AssumptionSet, Installation, Run } from '../installation/index.js';
import type { TradeWords } from './applicable.js';
import type { BeforeWork } from './before-work.js';
import type { UnsuitableCable } from './cables.js';
import type { ChargeTime } from './charge-time.js';
import type { Hours, HoursInAll } from './hours.js';
import type { Item } from './item.js';
import type { LetThroughFirst } from './let-through-first.js';
import type { MeasureFirst } from './measure.js';
import type { Night } from './night.js';
import type { Observation } from './observations.js';
import type { BaseOptionId, OptionId } from './option-id.js';
import type { TimeCurrentData, VoltageAlongData } from './picture-data.js';
import type { AppliedRemedy, RemedyOffer } from './remedies/offer.js';
import type { SanityQuestion } from './sanity-question.js';
import type { StageDemand } from './stages.js';
import type { Survey, WorkFacts } from './survey.js';
import type { ToConfirm } from './to-confirm.js';
import type { UnknownItem } from './unknown-facts.js';

/** Points that the plan of another one is for as well. @inline */
export interface AlikePoints {
  /** Each with the name of its circuit. */
  readonly points: readonly { readonly point: string; readonly run: string }[];
  /** Material of each: what occurs once for the job, or once for a board, is counted with the first. */
  readonly items: readonly Item[];
  readonly hours: Hours;
}

/** What is planned for one charge point, or for one that stands for several. */
export interface PointPlan {
  readonly point: string;
  /** The circuit with the size and rating chosen; without them where no candidate remains. */
  readonly run: Run;
  /** Set where its cable lies there already, so that none is bought or laid. */
  readonly cableKept?: true;
  /** How it was chosen: candidates in order, each with what stood in its way, and the permitted lengths. */
  readonly design: Design;
  /** A smaller cable for which the maker's let-through energy is to be asked for first. */
  readonly letThroughFirst?: LetThroughFirst;
  readonly assessment: Assessment;
  /** Cables that may be used and are not for the route, each with the reason. */
  readonly unsuitable?: readonly UnsuitableCable[];
  /** What is said where none is for it. */
  readonly cableResults: readonly CheckResult[];
  /** The permitted ways to earth the point, and why the others fall out. */
  readonly earthing: readonly EarthingOption[];
  /** Readings to expect. */
  readonly tests: TestSheet;
  readonly items: readonly Item[];
  readonly hours: Hours;
  /** Further points that are alike in every fact but their names: all of this is theirs too, but material and hours. */
  readonly alike?: AlikePoints;
  /** Time to charge at full current. */
  readonly chargeTime?: ChargeTime;
  /** What its time-current picture shows. */
  readonly timeCurrent?: TimeCurrentData;
  /** What its picture of the voltage drop along the route shows. */
  readonly voltageAlong?: VoltageAlongData;
}

/** What is found of a feeder on the way to a charge point. @inline */
export interface FeederPlan {
  readonly run: string;
  /** Further feeders that are alike in every fact but their names: all of this is theirs too. */
  readonly alike?: readonly string[];
  readonly demand: FeederDemand;
  /** Its assessment, at that demand. */
  readonly assessment: Assessment;
  /** Material of a feeder that is yet to be installed. */
  readonly items?: readonly Item[];
  /** Hours of a feeder that is yet to be installed. */
  readonly hours?: Hours;
  readonly overall: Overall;
}

/** One complete way to do the job. */
export interface OptionPlan {
  readonly id: OptionId;
  readonly title: string;
  /** What it changes against the survey. */
  readonly changes: readonly string[];
  /** What is put right, or done another way, beside that; none where nothing is. */
  readonly remedies?: readonly AppliedRemedy[];
  /** Choices by which it is judged, the survey's or its own: the demand method that governs, the drop at the real temperature. */
  readonly judgedBy?: {
    readonly governing?: string;
    readonly dropTemperature?: NonNullable<Survey['options']['dropTemperature']>;
  };
  /** The installation with the circuits chosen. */
  readonly installation: Installation;
  /** What the work is in this option. */
  readonly work: WorkFacts;
  /** Whether the supply carries it. */
  readonly supply: Adequacy;
  /** What a measurement of the demand has to show where only an estimate says that there is too much. */
  readonly measure?: readonly MeasureFirst[];
  /** Whether the fuse of the supply carries what a load control at the origin lets through; none without such a control. */
  readonly control: readonly CheckResult[];
  /** Whom to tell or to ask, and by when. */
  readonly notification: Notification;
  /** Feeders on the way to the charge points, each once: they carry more than before. */
  readonly feeders: readonly FeederPlan[];
  /** Demand by stage where dwellings are listed: every riser, floor and feeder, whether new points hang on it or not. */
  readonly stages?: readonly StageDemand[];
  readonly points: readonly PointPlan[];
  /** A night in which all vehicles charge, where the survey states any. */
  readonly night?: Night;
  /** What all results of circuits, feeders, supply and mounting amount to. */
  readonly overall: Overall;
  /** Assumed facts that results rest on: what to confirm on site. */
  readonly conditions: readonly ToConfirm[];
  /** Facts that are not known, and what each blocks. */
  readonly unknown: readonly UnknownItem[];
  /** Hours of all charge points and new feeders, h. */
  readonly hours: HoursInAll;
  /** What to settle before the day of the work, beside the rules: consent, who makes the tails dead, whether the lead reaches. */
  readonly beforeWork: readonly BeforeWork[];
  readonly cautions: readonly string[];
  /** The calculation sheet, to be verified by anybody. */
  readonly sheet?: SheetDocument;
}

/** A way that was not worked out, or not kept, and why. @inline */
export interface DiscardedOption {
  readonly id: BaseOptionId;
  /** What it would have been. */
  readonly title: string;
  readonly because: string;
  /** Whether only a fact that is not known stands in its way. */
  readonly subjectTo?: boolean;
}

/** A plan for a survey: plain, JSON-ready data. */
export interface Plan {
  readonly format: 'plan/1';
  readonly about: Survey['about'];
  /** The code and its standing. */
  readonly code: {
    readonly name: string;
    readonly edition: string;
    readonly standing: string;
    readonly onSurveyDay: string;
  };
  /** Words of the trade where the premises stand. */
  readonly words: TradeWords;
  /** Assumptions that stand in for facts that nobody looked at. */
  readonly assumptions?: AssumptionSet;
  /** The options worked out, best first by the rule that is stated. */
  readonly options: readonly OptionPlan[];
  readonly rankedBy: string;
  /** The options not offered, each with its reason. */
  readonly discarded: readonly DiscardedOption[];
  /** Remedies that were assessed and pass, or are open at most, cheapest first; of each option those that were found. */
  readonly remedies: readonly RemedyOffer[];
  /** Figures of the survey that are outside what is customary: to be asked about, nothing is refused. */
  readonly questions: readonly SanityQuestion[];
  /** Existing circuits that do not meet rules of today, apart from the verdict on the new work. */
  readonly observations: readonly Observation[];
}
