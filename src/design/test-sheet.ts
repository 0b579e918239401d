import type { TestKind } from '../codes/wiring-code.js';
import { type Gap, isMissing, type Source } from '../core/index.js';

import type { PlannedReading, TestSheetInput } from './planned-reading.js';
import { readingsOf } from './test-readings.js';

/** One test in its place. @inline */
export interface PlannedTest {
  readonly kind: TestKind;
  /** Place in the order, from 1. */
  readonly place: number;
  /** Before or after energising. */
  readonly state: 'dead' | 'live';
  readonly clause: string;
  readonly readings: readonly PlannedReading[];
}

/** What the dead and live tests of a circuit should read, in their order. Plain data. */
export interface TestSheet {
  readonly format: 'test-sheet/1';
  readonly circuit: string;
  /** Edition that the list follows. */
  readonly edition: string;
  /** Where the code speaks of verification. */
  readonly source: Source;
  /** Temperature of the conductors at the tests, °C. */
  readonly testTemperature: number;
  /** Whether connected electronics are in place. */
  readonly electronics: 'disconnected' | 'connected';
  /** Figures that the judgement of contradictions needs; absent where there are no tests. */
  readonly basis?: {
    readonly ring: boolean;
    readonly expectedDrop?: number;
    readonly nominalVoltage: number;
    readonly deviation: number;
    readonly ringDifference: number;
    readonly phases: 1 | 3;
    /** Whether the supply has three lines, between which a fault current may be twice that of one. */
    readonly supplyPhases?: 1 | 3;
    /** Set where neutral and earth of the supply are one conductor. */
    readonly combined?: true;
    /** Set where an earth fault returns by the electrode of the installation alone. */
    readonly byElectrode?: true;
    /** Set where the circuit leaves a board behind a distribution circuit. */
    readonly behindFeeder?: true;
  };
  readonly tests: readonly PlannedTest[];
  /** Why there are none: what the edition asks for is not entered. */
  readonly gaps?: readonly Gap[];
  readonly cautions: readonly string[];
}

/**
 * What each dead and live test of a designed circuit should read, with limits, in the order of its edition.
 * @param input wiring code, circuit, temperature of the day, electronics
 * @returns the test sheet, plain data
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { amperes, celsius, circuitCase, squareMillimetres, testSheet } from 'ohmwright';
 * import { bs7671 } from 'ohmwright/bs7671';
 * import { readSurvey } from 'ohmwright/io';
 * import { decidedRun, withAddedRun } from 'ohmwright/site';
 *
 * const { installation, wanted } = readSurvey(survey);
 * const [point] = wanted;
 * if (!point) throw new Error('no point is wanted');
 * const run = decidedRun(point, point.run.cable, squareMillimetres(6), amperes(32));
 * const house = withAddedRun(installation, point.from, run);
 * const code = bs7671('2018+A2:2022');
 *
 * const sheet = testSheet({
 *   code,
 *   circuit: circuitCase(house, run.id),
 *   testTemperature: celsius(15),
 *   electronics: 'disconnected',
 * });
 * sheet.tests.length; // => 9
 * ```
 */
export function testSheet(input: TestSheetInput): TestSheet {
  const { code, circuit, testTemperature } = input;
  const head = {
    format: 'test-sheet/1',
    circuit: circuit.run.id,
    testTemperature,
    electronics: input.electronics,
  } as const;
  const plan = code.tests;
  if ('notEntered' in plan)
    return {
      ...head,
      edition: `${code.name}:${code.edition}`,
      source: { document: code.name, edition: code.edition, provenance: 'memory', note: 'text not available' },
      tests: [],
      gaps: [plan.notEntered],
      cautions: [code.standing],
    };
  const calculation = code.calculator.of({ ...circuit, options: { ...circuit.options, testTemperature } });
  const figures = code.figures(calculation);
  const tests = plan.order
    .map(({ kind, state, clause }) => ({
      kind,
      state,
      clause,
      readings: readingsOf[kind]({ ...input, plan, calculation, figures }),
    }))
    .filter((t) => t.readings.length > 0)
    .map(
      (t, i): PlannedTest => ({ kind: t.kind, place: i + 1, state: t.state, clause: t.clause, readings: t.readings }),
    );
  const drop = figures.totalDrop;
  const { phases, system } = circuit.installation.supply;
  return {
    ...head,
    edition: plan.edition,
    source: plan.source,
    basis: {
      ring: circuit.run.ring === true,
      ...(drop === undefined || isMissing(drop) ? {} : { expectedDrop: drop }),
      nominalVoltage: circuit.nominalVoltage,
      deviation: plan.deviation,
      ringDifference: plan.ringDifference,
      phases: circuit.phases,
      ...(phases.state === 'known' && phases.value === 1 ? {} : { supplyPhases: 3 as const }),
      ...(system.state === 'known' && system.value === 'TN-C-S' ? { combined: true as const } : {}),
      ...(system.state === 'known' && system.value === 'TT' ? { byElectrode: true as const } : {}),
      ...(circuit.path.feeders.length > 0 ? { behindFeeder: true as const } : {}),
    },
    tests,
    cautions: [
      code.standing,
      'Dead tests are finished, and in order, before anything is energised. If one fails, mend it and repeat every test that it may have influenced.',
      'Live testing can kill: competent persons only, with instruments and leads made for it. Expected figures are calculated, and no reading is replaced by them.',
    ],
  };
}
