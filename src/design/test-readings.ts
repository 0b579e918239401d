import { type Amount, factValue, type Gap, isMissing, type Known, missing, silent, whenKnown } from '../core/index.js';
import type { ChargePoint, ResidualDevice, Run } from '../installation/index.js';
import { ringLineNeutral, ringLineProtective } from '../physics/index.js';
import { writeExternalImpedance } from '../standards/iec-family/fault-loop.js';
import { writeRunImpedance } from '../standards/iec-family/loop-impedance.js';
import { measuredLimitByRatio } from '../standards/iec-family/measured-loop.js';
import { residualUpstream } from '../standards/iec-family/residual-position.js';
import type { TestKind, TestPlan } from '../standards/iec-family/test-plan.js';
import type { AssessmentOptions, CircuitCase, Findings } from '../standards/wiring-code.js';
import { type Celsius, type Ohms, ohms, ratio } from '../units/index.js';

/** A limit of a reading. */
export interface ReadingLimit {
  /** Which way it limits. */
  readonly kind: 'at-most' | 'at-least' | 'must-not-trip';
  /** The limit; absent where only a statement is asked. */
  readonly amount?: Amount;
  /** Where it comes from. */
  readonly by: string;
}

/** One reading of a test: what it should be and how far it may go. */
export interface PlannedReading {
  /** Name under which the reading is handed back. */
  readonly id: string;
  /** What is read, and between which points. */
  readonly what: string;
  /** What it should read. */
  readonly expected?: Amount;
  /** Limits. */
  readonly limits: readonly ReadingLimit[];
  /** Why there is no figure. */
  readonly gaps?: readonly Gap[];
  /** Why a limit that belongs to it is not there: a reading alone then decides nothing. */
  readonly limitGaps?: readonly Gap[];
  /** What a person has to know. */
  readonly note?: string;
}

/** What a test sheet is made for. */
export interface TestSheetInput {
  /** The circuit. */
  readonly circuit: CircuitCase;
  /** What its assessment found out. */
  readonly findings: Findings;
  /** The tests of the edition. */
  readonly plan: TestPlan;
  /** What has to be said of the edition. */
  readonly standing: string;
  /** Temperature of the conductors on the day, °C. */
  readonly testTemperature: Celsius;
  /** Whether electronics stay connected during the insulation test. */
  readonly electronics: 'disconnected' | 'connected';
}

const amount = (name: string, value: number, unit: string): Amount => ({ name, value, unit });
const maybe = (value: Known<number>, name: string, unit: string): Pick<PlannedReading, 'expected' | 'gaps'> =>
  isMissing(value) ? { gaps: value.missing } : { expected: amount(name, value, unit) };
const atMost = (value: Known<number>, name: string, unit: string, by: string): readonly ReadingLimit[] =>
  isMissing(value) ? [] : [{ kind: 'at-most', amount: amount(name, value, unit), by }];
const atLeast = (value: Known<number>, name: string, unit: string, by: string): readonly ReadingLimit[] =>
  isMissing(value) ? [] : [{ kind: 'at-least', amount: amount(name, value, unit), by }];

/** What a limit lacks, where it is not known. */
const lacking = (limit: Known<number>): Pick<PlannedReading, 'limitGaps'> =>
  isMissing(limit) ? { limitGaps: limit.missing } : {};

interface RunFigures {
  readonly line: Known<Ohms>;
  readonly protective: Known<Ohms>;
  readonly both: Known<Ohms>;
  readonly impedance: Known<Ohms>;
}

/** The figures of a run at a temperature, by the same lines that the assessment writes. */
function runAt(run: Run, at: Celsius | 'operating', options: AssessmentOptions): RunFigures {
  const sheet = silent();
  const impedance = writeRunImpedance(sheet, run, at, options);
  const none = missing({ kind: 'fact', fact: 'resistance of the run' });
  return {
    line: sheet.latest('lineResistance') ?? none,
    protective: sheet.latest('protectiveResistance') ?? none,
    both: sheet.latest('lineAndProtectiveResistance') ?? none,
    impedance,
  };
}

const sum = (values: readonly Known<Ohms>[]): Known<number> =>
  whenKnown(values, (...all) => all.reduce<number>((a, b) => a + b, 0));

function continuity(input: TestSheetInput): readonly PlannedReading[] {
  const { run } = input.circuit;
  const cold = runAt(run, input.testTemperature, input.circuit.options);
  return [
    {
      id: 'continuity',
      what: 'R_1+R_2: line and protective conductor linked at the board, read at the farthest point',
      ...maybe(cold.both, 'continuityExpected', 'Ω'),
      limits: [],
      note: `At ${input.testTemperature} °C. A lower reading may have found a parallel path, a higher one a bad joint or another length.`,
    },
    {
      id: 'protectiveContinuity',
      what: 'R_2: protective conductor alone, with a wander lead',
      ...maybe(cold.protective, 'continuityExpected', 'Ω'),
      limits: [],
    },
  ];
}

function ring(input: TestSheetInput): readonly PlannedReading[] {
  const { run } = input.circuit;
  if (run.ring !== true) return [];
  const { line, protective } = runAt(run, input.testTemperature, input.circuit.options);
  // a run is reckoned from its board to the farthest point: a quarter of each conductor from end to end
  const ends = (quarter: Known<Ohms>): Known<Ohms> => whenKnown([quarter], (r) => ohms(4 * r));
  const lineNeutral = whenKnown([ends(line)], (r) =>
    ringLineNeutral({ ringLineResistance: r, ringNeutralResistance: r }),
  );
  const lineProtective = whenKnown([ends(line), ends(protective)], (r1, r2) =>
    ringLineProtective({ ringLineResistance: r1, ringProtectiveResistance: r2 }),
  );
  const by = 'ends of one size may differ by 0.05 Ω';
  return [
    {
      id: 'ringLine',
      what: 'r_1: ends of the line conductor',
      ...maybe(ends(line), 'ringLineResistance', 'Ω'),
      limits: [],
    },
    {
      id: 'ringNeutral',
      what: 'r_n: ends of the neutral conductor',
      ...maybe(ends(line), 'ringNeutralResistance', 'Ω'),
      limits: [],
      note: by,
    },
    {
      id: 'ringProtective',
      what: 'r_2: ends of the protective conductor',
      ...maybe(ends(protective), 'ringProtectiveResistance', 'Ω'),
      limits: [],
    },
    {
      id: 'crossLineNeutral',
      what: 'line and neutral cross-connected: the same at every point',
      ...maybe(lineNeutral, 'crossConnectedResistance', 'Ω'),
      limits: [],
    },
    {
      id: 'crossLineProtective',
      what: 'line and protective conductor cross-connected: the largest value is R_1+R_2',
      ...maybe(lineProtective, 'crossConnectedResistance', 'Ω'),
      limits: [],
    },
  ];
}

function insulation(input: TestSheetInput): readonly PlannedReading[] {
  const { disconnected, connected } = input.plan.insulation;
  const plugged = input.electronics === 'connected';
  const test = plugged ? connected : disconnected;
  const limits = atLeast(test.least, 'insulationResistanceLimit', 'Ω', `${input.plan.edition}, Table 64`);
  const note = plugged
    ? `At ${test.voltage} V d.c. with the live conductors together: electronics stay connected.`
    : `At ${test.voltage} V d.c. before electronics and surge protection are connected.`;
  const rest = { limits, note, ...lacking(test.least) };
  const toEarth = { id: 'insulationEarth', what: 'live conductors together to earth', ...rest };
  return plugged ? [toEarth] : [{ id: 'insulationLive', what: 'between live conductors', ...rest }, toEarth];
}

/** Loop impedance up to which the residual current device still holds the touch voltage, Ω; on the way to the circuit only. */
function residualLimit({ circuit }: TestSheetInput): number | undefined {
  const ratings = residualUpstream(circuit.path).flatMap((d) => (d.rating.state === 'known' ? [d.rating.value] : []));
  return ratings.length === 0 ? undefined : 50 / Math.min(...ratings);
}

function loop(input: TestSheetInput): readonly PlannedReading[] {
  const { circuit, findings, plan } = input;
  const system = factValue('earthing system of the supply', circuit.installation.supply.system);
  const external = isMissing(system) ? system : writeExternalImpedance(silent(), circuit, system);
  const runs = [...circuit.path.feeders, circuit.run];
  const cold = sum(runs.map((r) => runAt(r, input.testTemperature, circuit.options).impedance));
  const hot = sum(runs.map((r) => runAt(r, 'operating', circuit.options).impedance));
  const expected = whenKnown([external, cold], (e, c) => e + c);
  const limit = findings.loopImpedanceLimit ?? missing({ kind: 'fact', fact: 'largest loop impedance' });
  const exact = whenKnown([limit, external, cold, hot], (max, e, c, h) =>
    measuredLimitByRatio({
      loopImpedanceLimit: max,
      externalImpedance: e,
      temperatureRatio: ratio(h > 0 ? c / h : 1),
    }),
  );
  // where the overcurrent device is too slow, or on TT, disconnection rests on the residual current device
  const { loopImpedance } = findings;
  const tooSlow = typeof loopImpedance === 'number' && typeof limit === 'number' && loopImpedance > limit;
  const residual = system === 'TT' || tooSlow ? residualLimit(input) : undefined;
  const seventy = runs.every((r) => r.cable.insulation === 'thermoplastic-70');
  const rule =
    isMissing(limit) || !seventy ? [] : atMost(0.8 * limit, 'measuredLimit', 'Ω', 'the 0.8 rule, for 70 °C conductors');
  return [
    {
      id: 'externalLoop',
      what: 'Z_e: at the origin, main switch open and earthing conductor disconnected from bonding',
      ...maybe(external, 'externalImpedance', 'Ω'),
      limits: [],
      note: 'Reconnect the earthing conductor before anything is energised.',
    },
    {
      id: 'loop',
      what: 'Z_s: at the farthest point, or Z_e and R_1+R_2 added',
      ...maybe(expected, 'measuredImpedance', 'Ω'),
      ...(residual === undefined ? lacking(exact) : {}),
      limits:
        residual === undefined
          ? [...atMost(exact, 'measuredLimit', 'Ω', `${plan.edition}, 411.4.4, exact in temperature`), ...rule]
          : atMost(residual, 'measuredLimit', 'Ω', `${plan.edition}, 411.4.5, 411.5.3: Z_s I_Δn at most 50 V`),
      note:
        residual !== undefined
          ? 'Disconnection rests on the residual current device: test it. A reading far from the expected one asks for a second look.'
          : seventy
            ? 'The exact limit decides; a reading beyond the 0.8 rule asks for a second look.'
            : 'The 0.8 rule does not hold here: it is made for conductors of 70 °C.',
    },
  ];
}

function prospective(input: TestSheetInput): readonly PlannedReading[] {
  const { circuit, findings } = input;
  const at =
    findings.prospectiveAtOrigin ?? factValue('prospectiveCurrent', circuit.installation.supply.prospectiveCurrent);
  const { device } = circuit.run;
  const own = device.breakingCapacity ? factValue('breaking capacity', device.breakingCapacity) : missing();
  const declared = [device.conditionalRating, circuit.board.conditionalRating].flatMap((f) =>
    f?.state === 'known' ? [f.value as number] : [],
  );
  const most = Math.max(...declared, isMissing(own) ? 0 : own);
  const notes = [
    ...(circuit.path.feeders.length > 0
      ? ['Behind a feeder the expected figure is an upper bound of what its cables let through: the reading is less.']
      : []),
    ...(circuit.phases === 3
      ? ['With a two-pole instrument twice the line-neutral reading stands for three phases: an approximation.']
      : []),
  ];
  return [
    {
      id: 'prospective',
      what: 'I_pf: at the board, the larger of line-neutral and line-earth; on three phases between lines',
      ...maybe(at, 'prospectiveCurrent', 'A'),
      limits: most > 0 ? atMost(most, 'breakingCapacity', 'A', 'breaking capacity, own or conditional') : [],
      ...(most > 0
        ? {}
        : lacking(missing({ kind: 'fact', fact: 'breaking capacity', obtain: 'marking of device and assembly' }))),
      ...(notes.length > 0 ? { note: notes.join(' ') } : {}),
    },
  ];
}

const residualDevices = (input: TestSheetInput): readonly ResidualDevice[] => {
  const { path, run } = input.circuit;
  const upstream = residualUpstream(path);
  return [
    ...upstream,
    ...(run.residual ?? []).filter((r) => !upstream.includes(r)),
    ...points(input).flatMap((p) => (p.residual ? [p.residual] : [])),
  ];
};

const points = (input: TestSheetInput): readonly ChargePoint[] =>
  input.circuit.run.feeds.filter((o): o is ChargePoint => o.kind === 'charge-point');

function residual(input: TestSheetInput): readonly PlannedReading[] {
  return residualDevices(input).flatMap((device, i) => {
    const rating = factValue('rating of the residual current device', device.rating);
    const delay = device.delay?.state === 'known' ? device.delay.value : 'general';
    return input.plan.residual
      .filter((t) => t.delay === delay)
      .filter((t) => t.only30mA !== true || (!isMissing(rating) && rating <= 0.03))
      .map((t): PlannedReading => {
        const current = isMissing(rating) ? 'its rated current' : `${t.multiple} × ${rating * 1000} mA`;
        const by = `${input.plan.edition}, residual current devices`;
        return {
          id: `residual${i + 1}At${t.multiple}`,
          what: `device ${i + 1} (${device.position}): ${t.mustHold ? 'holds' : 'break time'} at ${current} a.c.`,
          limits: t.mustHold
            ? [{ kind: 'must-not-trip', by }]
            : [
                ...(t.least === undefined ? [] : atLeast(t.least, 'residualTimeLeast', 's', by)),
                ...(t.most === undefined ? [] : atMost(t.most, 'residualTimeLimit', 's', by)),
              ],
          note: 'And its test button. The connected vehicle or load is unplugged.',
        };
      });
  });
}

function direct(input: TestSheetInput): readonly PlannedReading[] {
  const detecting = points(input).filter(
    (p) => p.directCurrentDetection?.state === 'known' && p.directCurrentDetection.value,
  );
  const { least, most, time } = input.plan.directCurrent;
  const by = 'IEC 62955';
  return detecting.flatMap((p): PlannedReading[] => [
    {
      id: `directTrip-${p.id}`,
      what: `${p.id}: direct residual current, rising slowly, at which it trips`,
      limits: [...atLeast(least, 'directTripLeast', 'A', by), ...atMost(most, 'directTripMost', 'A', by)],
    },
    {
      id: `directTime-${p.id}`,
      what: `${p.id}: break time at ${most * 1000} mA d.c.`,
      limits: atMost(time, 'residualTimeLimit', 's', by),
    },
  ]);
}

function electrode(input: TestSheetInput): readonly PlannedReading[] {
  const { supply } = input.circuit.installation;
  if (!supply.electrode) return [];
  const devices = residualDevices(input).flatMap((d) => (d.rating.state === 'known' ? [d.rating.value as number] : []));
  const smallest = devices.length > 0 ? 50 / Math.max(...devices) : undefined;
  return [
    {
      id: 'electrode',
      what: 'R_A: earth electrode',
      ...maybe(factValue('resistance of the earth electrode', supply.electrode.resistance), 'electrodeResistance', 'Ω'),
      ...(smallest === undefined
        ? lacking(missing({ kind: 'fact', fact: 'rating of the residual current device', obtain: 'its marking' }))
        : {}),
      limits:
        smallest === undefined
          ? []
          : atMost(smallest, 'electrodeResistance', 'Ω', `${input.plan.edition}, 411.5.3: R_A I_Δn at most 50 V`),
      note: 'Above 200 Ω it may not be stable.',
    },
  ];
}

function underLoad(input: TestSheetInput): readonly PlannedReading[] {
  const { circuit, findings, plan } = input;
  const u = circuit.nominalVoltage;
  const drop =
    findings.totalDrop ?? missing({ kind: 'fact', fact: 'voltage drop', obtain: 'from the rule of voltage drop' });
  const by = 'statutory range of the supply voltage in Great Britain, from memory';
  return [
    {
      id: 'voltage',
      what: 'voltage at the point without load',
      expected: amount('loadedVoltage', u, 'V'),
      limits: [
        ...atLeast(plan.voltage.least * u, 'loadedVoltageLeast', 'V', by),
        ...atMost(plan.voltage.most * u, 'loadedVoltageMost', 'V', by),
      ],
    },
    {
      id: 'loadedVoltage',
      what: 'voltage at the point under its design current',
      ...maybe(isMissing(drop) ? drop : u - drop, 'loadedVoltage', 'V'),
      limits: [],
      note: 'Reckoned from the nominal voltage: subtract the calculated drop from the voltage that is found without load.',
    },
  ];
}

const plain = (id: string, what: string): readonly PlannedReading[] => [{ id, what, limits: [] }];

/** The readings of each kind of test. @internal */
export const readingsOf: { readonly [K in TestKind]: (input: TestSheetInput) => readonly PlannedReading[] } = {
  continuity,
  'ring-continuity': ring,
  insulation,
  polarity: () => plain('polarity', 'polarity at the board and at the point'),
  electrode,
  'loop-impedance': loop,
  'prospective-current': prospective,
  'residual-current-device': residual,
  'direct-current-detection': direct,
  'phase-sequence': (input) =>
    input.circuit.phases === 3 ? plain('phaseSequence', 'phase sequence, as intended') : [],
  functional: () => plain('functional', 'switching, interlocks, load control and the point itself'),
  'voltage-under-load': underLoad,
};
