import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import type { AssessmentOptions, WiringCode } from '../../src/codes/wiring-code.js';
import type { Verdict } from '../../src/core/index.js';
import { adequacyOf, type DemandOptions } from '../../src/demand/index.js';
import { assess, type CheckResult, hasCode, type Installation } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { planInBritain } from '../support/plan.js';
import { type Json, surveyDocument } from '../support/surveys.js';

/** What an installation is told: what all of it amounts to, and the results behind that. */
export interface Told {
  readonly verdict: Verdict;
  readonly results: readonly CheckResult[];
  /** Why it is not judged at all, where it cannot be as it is described. */
  readonly refused?: string;
}

/** An installation, in words, and what it is told. */
export interface Case {
  /** What is built, in a sentence. */
  readonly what: string;
  /** What the library says of it. */
  told(): Told;
}

/** A way in which people are hurt or property burns, and the sound installation beside it. */
export interface Hazard {
  /** Unique, in lower case with hyphens: its anchor in the book. */
  readonly id: string;
  readonly title: string;
  /** What happens, to whom, in plain words. */
  readonly harm: string;
  /** Document, edition and clause, and how well it is known. */
  readonly clause: string;
  /** What must not be said. */
  readonly mustNotSay: string;
  /** The check that has to object, where it is one: it must not pass. */
  readonly check?: string;
  /** Must not pass. */
  readonly unsafe: Case;
  /** Must pass. */
  readonly sound: Case;
}

/** Hazards of one kind: a chapter of the book. A file `*.hazards.ts` exports it as `chapter`. */
export interface Chapter {
  readonly title: string;
  readonly introduction: string;
  readonly hazards: readonly Hazard[];
}

/** What one circuit is told by a code. */
export const assessed = (
  code: WiringCode,
  installation: Installation,
  run: string,
  options: AssessmentOptions = {},
): Told => {
  try {
    const { overall, results } = assess(code, installation, run, options);
    return { verdict: overall.verdict, results };
  } catch (error) {
    if (!hasCode(error, 'invalid-input')) throw error;
    return { verdict: 'not-determined', results: [], refused: error.detail.problems.map((p) => p.message).join('; ') };
  }
};

/** A change of a document: the path with dots (`board.runs.3.cable.area`) and what stands there; undefined leaves it out. */
export type Change = readonly [path: string, value: Json | undefined];

/** One of the invented surveys with changes. */
export function changedSurvey(name: string, changes: readonly Change[]): Json {
  const document = surveyDocument(name);
  for (const [path, value] of changes) {
    const keys = path.split('.');
    const last = keys.pop() as string;
    let at = document as Record<string, Json>;
    for (const key of keys) {
      const next = at[key];
      if (typeof next !== 'object' || next === null) throw new Error(`${name} has nothing at ${path}`);
      at = next as Record<string, Json>;
    }
    if (value === undefined) delete at[last];
    else at[last] = value;
  }
  return document;
}

/** What a supply is told of the demand that is put on it. */
export const supplied = (installation: Installation, options: DemandOptions = { premises: 'dwelling' }): Told => {
  const { overall, results } = adequacyOf(bs7671Demand, installation, options);
  return { verdict: overall.verdict, results };
};

/** What a changed survey is told as a whole: by the best of the plans for it, with nothing put right. */
export function planned(name: string, changes: readonly Change[] = []): Told {
  const plan = planInBritain(readSurvey(changedSurvey(name, changes)), {
    sheets: 'none',
    lengths: false,
  });
  const [best] = plan.options;
  if (!best) throw new Error(`${name} has no plan`);
  const { verdict, failed, undetermined, advice } = best.overall;
  return { verdict, results: [...failed, ...undetermined, ...advice] };
}
