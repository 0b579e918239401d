import { type CheckResult, type Overall, overall, recorder, type SheetDocument, writeSheet } from '../core/index.js';
import { type Assessment, assess, circuitCase, type TestSheet, testSheet } from '../design/index.js';
import { type ChargePoint, type Installation, type Run, withRun } from '../installation/index.js';
import { bs7671 } from '../standards/bs7671/code.js';
import { type EarthingOption, earthingOptions } from '../standards/bs7671/earthing-options.js';
import { testPlan } from '../standards/bs7671/test-plan.js';
import type { WiringCode } from '../standards/wiring-code.js';
import { celsius } from '../units/index.js';
import { type ChargeTime, chargeTimeOf } from './charge-time.js';
import { type CircuitChoice, chooseCircuit } from './choose-circuit.js';
import { type Hours, hoursOf } from './hours.js';
import { withAllWanted } from './installed.js';
import { type TimeCurrentData, timeCurrentOf } from './picture-data.js';
import { type Item, quantitiesOf } from './quantities.js';
import type { Survey, WantedPoint } from './survey.js';
import { type UnknownItem, unknownFacts } from './unknown-facts.js';
import { commonPractice, type WorkRules } from './work-rules.js';

/** What is planned for one charge point. */
export interface PointPlan {
  /** Name of the point. */
  readonly point: string;
  /** The circuit with the size and rating chosen, or the last candidate tried. */
  readonly run: Run;
  /** How it was chosen: candidates in order, each with what stood in its way. */
  readonly choice: CircuitChoice;
  /** The assessment of the circuit. */
  readonly assessment: Assessment;
  /** The permitted ways to earth the point, and why the others fall out. */
  readonly earthing: readonly EarthingOption[];
  /** Readings to expect. */
  readonly tests: TestSheet;
  /** Material. */
  readonly items: readonly Item[];
  /** Hours. */
  readonly hours: Hours;
  /** Time to charge. */
  readonly chargeTime?: ChargeTime;
  /** What its time-current picture shows. */
  readonly timeCurrent?: TimeCurrentData;
}

/** A plan for a survey: plain data. */
export interface Plan {
  /** Format and version. */
  readonly format: 'plan/1';
  /** What the survey is of. */
  readonly about: Survey['about'];
  /** The code and its standing. */
  readonly code: {
    readonly name: string;
    readonly edition: string;
    readonly standing: string;
    readonly onSurveyDay: string;
  };
  /** The installation with the circuits chosen. */
  readonly installation: Installation;
  /** The charge points. */
  readonly points: readonly PointPlan[];
  /** What all results amount to. */
  readonly overall: Overall;
  /** Facts that are not known, and what each blocks. */
  readonly unknown: readonly UnknownItem[];
  /** What a person has to be told, each once. */
  readonly cautions: readonly string[];
  /** The calculation sheet, to be verified by anybody. */
  readonly sheet: SheetDocument;
}

/** What is said with every plan. */
export const planCaution =
  'This is a calculation from a survey, not an installation. It has to be checked on site and carried out, tested and certified by competent persons, to the edition in force, the network operator’s conditions and local rules.';

/** Edition of the initial tests that goes with an edition of the code. */
const testEdition = (edition: string) => (/A[2-9]/.test(edition) ? '2018+A2' : '2018');

/**
 * Plans the charge points of a survey.
 * @param survey the survey, as `readSurvey` gives it
 * @param rules rules for quantities and hours; common practice when absent
 * @returns plain, JSON-ready data; an unknown fact ends in `not-determined`
 * @throws CalculationError `unknown-definition` for an edition that is not entered
 */
export function planOf(survey: Survey, rules: WorkRules = commonPractice): Plan {
  const code = bs7671(survey.code.edition);
  const installation = withAllWanted(survey);
  const sheet = recorder(survey.about.title);
  const results: CheckResult[] = [];
  const points = survey.wanted.map((wanted) => {
    const plan = planPoint(code, survey, installation, wanted, rules, sheet);
    results.push(...plan.assessment.results);
    return plan;
  });
  const cautions = [
    ...new Set([
      planCaution,
      ...results.flatMap((r) => (r.caution && r.verdict !== 'not-required' ? [r.caution] : [])),
    ]),
  ];
  return {
    format: 'plan/1',
    about: survey.about,
    code: {
      name: code.name,
      edition: code.edition,
      standing: code.standing,
      onSurveyDay: code.inForce(survey.about.date),
    },
    installation: points.reduce((i, p) => withRun(i, p.run.id, () => p.run), installation),
    points,
    overall: overall(results),
    unknown: unknownFacts(results),
    cautions,
    sheet: writeSheet(sheet),
  };
}

function planPoint(
  code: WiringCode,
  survey: Survey,
  installation: Installation,
  wanted: WantedPoint,
  rules: WorkRules,
  sheet: ReturnType<typeof recorder>,
): PointPlan {
  const choice = chooseCircuit(code, installation, wanted, survey.options);
  const circuitSheet = sheet.part(choice.run.id);
  const assessment = assess(code, choice.installation, choice.run.id, survey.options, circuitSheet);
  const circuit = circuitCase(choice.installation, choice.run.id, survey.options);
  const point = choice.run.feeds.find((o): o is ChargePoint => o.kind === 'charge-point') as ChargePoint;
  const earthing = earthingOptions({
    supply: survey.installation.supply,
    point,
    ...(survey.options.loadStates ? { loadStates: survey.options.loadStates } : {}),
    ...(survey.options.pointNeverAlone ? { pointNeverAlone: survey.options.pointNeverAlone } : {}),
  });
  const tests = testSheet({
    circuit,
    findings: assessment.findings,
    plan: testPlan(testEdition(code.edition)),
    standing: code.standing,
    testTemperature: survey.options.testTemperature ?? celsius(20),
    electronics: 'disconnected',
  });
  const needs = {
    electrode:
      survey.work.electrode === true ||
      (point.earthing === 'tt-island' && survey.installation.supply.electrode === undefined),
    surgeProtection: assessment.results.some((r) => r.check.startsWith('surge') && r.verdict === 'fail'),
    loadControl: installation.board.control !== undefined,
  };
  const items = quantitiesOf(choice.run, survey.work, rules, needs, sheet.part(`Quantities of ${point.id}`));
  const chargeTime = wanted.vehicle
    ? chargeTimeOf(
        point,
        wanted.vehicle,
        installation.supply.nominalVoltage,
        sheet.part(`Time to charge at ${point.id}`),
      )
    : undefined;
  const timeCurrent = timeCurrentOf(choice.run, survey.installation.supply, assessment.findings);
  return {
    point: point.id,
    run: choice.run,
    choice,
    assessment,
    earthing,
    tests,
    items,
    hours: hoursOf(choice.run, survey.work, rules, needs),
    ...(chargeTime ? { chargeTime } : {}),
    ...(timeCurrent ? { timeCurrent } : {}),
  };
}
