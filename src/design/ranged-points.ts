import {
  type Aspect,
  type AssessmentOptions,
  aspects,
  type CircuitCase,
  type Findings,
  type WiringCode,
} from '../codes/wiring-code.js';
import { type Check, type CheckResult, type Evidence, type Sheet, SilentSheet, type Worse } from '../core/index.js';
import type { Installation } from '../installation/index.js';
import { judgeAspect } from './assess-at.js';
import { circuitCase } from './circuit-case.js';
import { pinned } from './ranges.js';

/** A sheet that keeps nothing but the directions in which each check is worse. */
class WorseSheet extends SilentSheet {
  readonly worse: Map<string, Worse>;
  constructor(worse: Map<string, Worse>, above?: ConstructorParameters<typeof SilentSheet>[0]) {
    super(above);
    this.worse = worse;
  }
  override part(): Sheet {
    return new WorseSheet(this.worse, this.view());
  }
  override told(check: Check): void {
    if (check.worse) this.worse.set(check.id, check.worse);
  }
  override check<C extends Check>(check: C, evidence: Evidence<C>, because?: string): CheckResult {
    if (check.worse) this.worse.set(check.id, check.worse);
    return super.check(check, evidence, because);
  }
}

/** What an aspect ended in. */
interface Outcome {
  /** Its results, by aspect, check and how often that check stood before. */
  readonly byKey: ReadonlyMap<string, CheckResult>;
  /** Names of the findings that it read. */
  readonly uses: readonly string[];
  /** The findings that it made. */
  readonly made: ReadonlyMap<string, unknown>;
}

/** What an aspect asks next, a range by its place or a finding by its name, and what follows on each answer. */
interface Question {
  readonly asks: number | string;
  readonly answers: Map<unknown, Question | Outcome>;
}

/** A point within the ranges at which a circuit was judged. */
export interface RangedPoint {
  /** The value of each range. */
  readonly values: readonly number[];
  /** What each aspect ended in. */
  readonly outcomes: readonly Outcome[];
  /** Figures that the aspects worked out. */
  readonly findings: Findings;
}

/** The aspect that a key is of. */
export const aspectOf = (key: string): Aspect => key.slice(0, key.indexOf(' ')) as Aspect;

/**
 * Judges a circuit at points within its ranges, and learns what each aspect reads. Rules are pure: an aspect is judged
 * once for what it reads, and points that differ in nothing else share its outcome.
 */
export class RangedPoints {
  private readonly seen = new Map<string, RangedPoint>();
  private readonly reads = new Map<Aspect, Set<number>>(aspects.map((a) => [a, new Set<number>()]));
  private readonly remembered = new Map<Aspect, Question | Outcome>();
  private readonly worse = new Map<string, Worse>();
  private readonly code: WiringCode;
  private readonly installation: Installation;
  private readonly runId: string;
  private readonly options: AssessmentOptions;

  constructor(code: WiringCode, installation: Installation, runId: string, options: AssessmentOptions) {
    this.code = code;
    this.installation = installation;
    this.runId = runId;
    this.options = options;
  }

  at(values: readonly number[]): RangedPoint {
    const name = values.join();
    const found = this.seen.get(name) ?? this.judge(values);
    this.seen.set(name, found);
    return found;
  }

  all(): readonly RangedPoint[] {
    return [...this.seen.values()];
  }

  /** The results of all points by their keys, in the order in which they came to light. */
  keys(): readonly string[] {
    const outcomes = new Set(this.all().flatMap((p) => p.outcomes));
    return [...new Set([...outcomes].flatMap((o) => [...o.byKey.keys()]))];
  }

  /** Ranges that an aspect has read, itself or through the findings of others. */
  of(aspect: Aspect): ReadonlySet<number> {
    return this.readsOf(aspect);
  }

  /** Directions that a check declares. */
  directions(key: string): Worse {
    return this.worse.get(key.split(' ')[1] ?? '') ?? {};
  }

  private readsOf(aspect: Aspect): Set<number> {
    return this.reads.get(aspect) as Set<number>;
  }

  private judge(values: readonly number[]): RangedPoint {
    const findings: Record<string, unknown> = {};
    const maker = new Map<string, Aspect>();
    const answer = (asks: number | string) => (typeof asks === 'number' ? values[asks] : findings[asks]);
    const judging = this.judging(values, findings);
    const outcomes = aspects.map((aspect): Outcome => {
      const outcome = this.recall(aspect, answer) ?? judging(aspect);
      const reads = this.readsOf(aspect);
      for (const name of outcome.uses) {
        const from = maker.get(name);
        if (from) for (const place of this.readsOf(from)) reads.add(place);
      }
      for (const [name, value] of outcome.made) {
        findings[name] = value;
        maker.set(name, aspect);
      }
      return outcome;
    });
    return { values, outcomes, findings: findings as Findings };
  }

  private recall(aspect: Aspect, answer: (asks: number | string) => unknown): Outcome | undefined {
    let node = this.remembered.get(aspect);
    while (node && 'asks' in node) node = node.answers.get(answer(node.asks));
    return node;
  }

  /** Judges aspects at a point, and remembers what each read and what it ended in. */
  private judging(values: readonly number[], findings: Readonly<Record<string, unknown>>) {
    let reading = (_asked: number | string): void => undefined;
    let circuit: CircuitCase | undefined;
    const caseHere = (): CircuitCase => {
      const { code: _, installation, runId, options } = this;
      const at = pinned(installation, values, (place) => reading(place));
      return {
        ...circuitCase(at, runId, options),
        // who watches wants to see which aspect reads the load
        get designCurrent() {
          return circuitCase(at, runId, options).designCurrent;
        },
      };
    };
    return (aspect: Aspect): Outcome => {
      circuit ??= caseHere();
      const asked = new Map<number | string, unknown>();
      const made = new Map<string, unknown>();
      reading = (what) => {
        if (!asked.has(what)) asked.set(what, typeof what === 'number' ? values[what] : findings[what]);
      };
      const watched = new Proxy(findings, {
        get: (_, name: string) => {
          if (made.has(name)) return made.get(name);
          reading(name);
          return findings[name];
        },
        set: (_, name: string, value) => {
          made.set(name, value);
          return true;
        },
      });
      const { results } = judgeAspect(this.code, aspect, circuit, watched as Findings, new WorseSheet(this.worse));
      const byKey = new Map<string, CheckResult>();
      const count = new Map<string, number>();
      for (const result of results) {
        const nth = count.get(result.check) ?? 0;
        count.set(result.check, nth + 1);
        byKey.set(`${aspect} ${result.check} ${nth}`, result);
      }
      const outcome: Outcome = { byKey, uses: [...asked.keys()].filter((k) => typeof k === 'string'), made };
      this.remember(aspect, asked, outcome);
      const reads = this.readsOf(aspect);
      for (const what of asked.keys()) if (typeof what === 'number') reads.add(what);
      return outcome;
    };
  }

  private remember(aspect: Aspect, asked: ReadonlyMap<number | string, unknown>, outcome: Outcome): void {
    const steps = [...asked];
    const step = (i: number): Question | Outcome => {
      const next = steps[i];
      return next ? { asks: next[0], answers: new Map() } : outcome;
    };
    let node = this.remembered.get(aspect) ?? step(0);
    this.remembered.set(aspect, node);
    steps.forEach(([, value], i) => {
      const { answers } = node as Question; // what is read next depends only on what was read before
      node = answers.get(value) ?? step(i + 1);
      answers.set(value, node);
    });
  }
}

/** What a check ended in at a point. */
export const resultAt = (point: RangedPoint, key: string): CheckResult | undefined =>
  point.outcomes[aspects.indexOf(aspectOf(key))]?.byKey.get(key);
