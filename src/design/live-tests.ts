import type { LoopRuleOfThumb } from '../codes/wiring-code.js';
import { factValue, isMissing, type Known, missing, whenKnown } from '../core/index.js';
import { byCable, type ChargePoint, type ResidualDevice, type Run, residualUpstream } from '../installation/index.js';
import { type Ohms, ratio } from '../units/index.js';
import {
  aboveZero,
  amount,
  atLeast,
  atMost,
  lacking,
  maybe,
  type PlannedReading,
  type ReadingLimit,
  runAt,
  sum,
  type TestCase,
} from './planned-reading.js';

function residualLimit({ circuit, plan }: TestCase): number | undefined {
  const ratings = residualUpstream(circuit.path).flatMap((d) => (d.rating.state === 'known' ? [d.rating.value] : []));
  return ratings.length === 0 ? undefined : plan.touchVoltage / Math.min(...ratings);
}

/** What a rule of thumb allows, where it is made for such conductors, and what has to be said of it. */
function byThumb(rule: LoopRuleOfThumb | undefined, runs: readonly Run[], limit: Known<Ohms>) {
  if (!rule) return { limits: [] };
  const made = `${rule.temperature} °C`;
  if (runs.flatMap(byCable).some((r) => r.cable.insulation !== rule.insulation))
    return { limits: [], note: `The ${rule.name} does not hold here: it is made for conductors of ${made}.` };
  const most = whenKnown([limit], (loopImpedanceLimit) => rule.limitOf({ loopImpedanceLimit }));
  return {
    limits: atMost(most, 'measuredLimit', 'Ω', `the ${rule.name}, for ${made} conductors`).map(
      (l): ReadingLimit => ({ ...l, thumb: true }),
    ),
    note: `The exact limit decides; a reading beyond the ${rule.name} asks for a second look.`,
  };
}

export function loop(input: TestCase): readonly PlannedReading[] {
  const { circuit, figures, plan } = input;
  const system = factValue('earthing system of the supply', circuit.installation.supply.system);
  const external = figures.externalImpedance ?? missing({ kind: 'fact', fact: 'external earth fault loop impedance' });
  const runs = [...circuit.path.feeders, circuit.run];
  const cold = sum(runs.map((r) => runAt(input, r, 'test').impedance));
  const hot = sum(runs.map((r) => runAt(input, r, 'operating').impedance));
  const expected = whenKnown([external, cold], (e, c) => e + c);
  const limit = figures.loopImpedanceLimit ?? missing({ kind: 'fact', fact: 'largest loop impedance' });
  const exact = whenKnown([limit, external, cold, hot], (max, e, c, h) =>
    plan.loop.limitOf({
      loopImpedanceLimit: max,
      externalImpedance: e,
      temperatureRatio: ratio(h > 0 ? c / h : 1),
    }),
  );
  // where the overcurrent device is too slow, or on TT, disconnection rests on the residual current device
  const { loopImpedance } = figures;
  const tooSlow = typeof loopImpedance === 'number' && typeof limit === 'number' && loopImpedance > limit;
  const residual = system === 'TT' || tooSlow ? residualLimit(input) : undefined;
  // metal in parallel lowers the way back to earth, never the line conductor
  const line = sum(runs.map((r) => runAt(input, r, 'test').line));
  const lowest = isMissing(line)
    ? aboveZero('measuredImpedance', 0.001, 'Ω')
    : atLeast(line / plan.farFactor, 'measuredLeast', 'Ω', 'the line conductor alone resists more');
  const thumb = byThumb(plan.loop.ruleOfThumb, runs, limit);
  // on a TT supply the electrode of the installation may be the one of the point
  const onTt = points(input).filter((p) => p.earthing === 'tt-earthing' && (system !== 'TT' || p.electrode));
  return [
    {
      id: 'externalLoop',
      what: 'Z_e: at the origin, main switch open and earthing conductor disconnected from bonding',
      ...maybe(external, 'externalImpedance', 'Ω'),
      limits: aboveZero('externalImpedance', 0.001, 'Ω'),
      note: 'Reconnect the earthing conductor before anything is energised.',
    },
    {
      id: 'loop',
      what:
        onTt.length > 0
          ? 'Z_s: at the end of the cable, on its own protective conductor, or Z_e and R_1+R_2 added'
          : 'Z_s: at the farthest point, or Z_e and R_1+R_2 added',
      ...maybe(expected, 'measuredImpedance', 'Ω'),
      ...(residual === undefined ? lacking(exact) : {}),
      ...(residual === undefined && !isMissing(limit) ? { tabulated: amount('loopImpedanceLimit', limit, 'Ω') } : {}),
      limits:
        residual === undefined
          ? [
              ...atMost(exact, 'measuredLimit', 'Ω', `${plan.edition}, ${plan.loop.clause}, exact in temperature`),
              ...thumb.limits,
              ...lowest,
            ]
          : [...atMost(residual, 'measuredLimit', 'Ω', touch(input, plan.loop.residualClause, 'Z_s')), ...lowest],
      ...(residual !== undefined
        ? {
            note: 'Disconnection rests on the residual current device: test it. A reading far from the expected one asks for a second look.',
          }
        : thumb.note === undefined
          ? {}
          : { note: thumb.note }),
    },
    ...onTt.map(
      (p): PlannedReading => ({
        id: `loop-${p.id}`,
        what: `Z_s: at charge point ‘${p.id}’, on the electrode of its own`,
        ...onElectrode(input, 'measuredLimit', 'Z_s'),
        note: 'Little more than R_A is to be expected. A far lower reading asks for a second look: the earth of the supply may reach the charge point.',
      }),
    ),
  ];
}

export function prospective(input: TestCase): readonly PlannedReading[] {
  const { circuit, figures } = input;
  const at =
    figures.prospectiveAtOrigin ?? factValue('prospectiveCurrent', circuit.installation.supply.prospectiveCurrent);
  const { device } = circuit.run;
  const own = device.breakingCapacity ? factValue('breaking capacity', device.breakingCapacity) : missing();
  const declared = input.calculation.things('conditionalRatings').flatMap((r) => {
    const limit = r.figure('breakingLimit');
    return r.figure('ratingDeclared') === true && typeof limit === 'number' ? [limit] : [];
  });
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
      limits: [
        ...(most > 0 ? atMost(most, 'breakingCapacity', 'A', 'breaking capacity, own or conditional') : []),
        ...aboveZero('prospectiveCurrent', 1, 'A'),
      ],
      ...(most > 0
        ? {}
        : lacking(missing({ kind: 'fact', fact: 'breaking capacity', obtain: 'marking of device and assembly' }))),
      ...(notes.length > 0 ? { note: notes.join(' ') } : {}),
    },
  ];
}

const residualDevices = (input: TestCase): readonly ResidualDevice[] => {
  const { path, run } = input.circuit;
  const upstream = residualUpstream(path);
  return [
    ...upstream,
    ...(run.residual ?? []).filter((r) => !upstream.includes(r)),
    ...points(input).flatMap((p) => (p.residual ? [p.residual] : [])),
  ];
};

const points = (input: TestCase): readonly ChargePoint[] =>
  input.circuit.run.feeds.filter((o): o is ChargePoint => o.kind === 'charge-point');

export function residual(input: TestCase): readonly PlannedReading[] {
  return residualDevices(input).flatMap((device, i) => {
    const rating = factValue('rating of the residual current device', device.rating);
    const delay = device.delay?.state === 'known' ? device.delay.value : 'general';
    return input.plan.residual
      .filter((t) => t.delay === delay)
      .filter((t) => t.upTo === undefined || (!isMissing(rating) && rating <= t.upTo))
      .map((t): PlannedReading => {
        const current = isMissing(rating) ? 'its rated current' : `${t.multiple} × ${rating * 1000} mA`;
        const by = `${input.plan.edition}, residual current devices`;
        return {
          id: `residual${i + 1}At${t.multiple}`,
          what: `device ${i + 1} (${device.position.replaceAll('-', ' ')}): ${t.mustHold ? 'holds' : 'break time'} at ${current} a.c.`,
          limits: t.mustHold
            ? [{ kind: 'must-not-trip', by }]
            : [
                ...(t.least === undefined ? [] : atLeast(t.least, 'residualTimeLeast', 's', by)),
                ...(t.most === undefined ? [] : atMost(t.most, 'residualTimeLimit', 's', by)),
                ...(t.least === undefined ? aboveZero('residualTimeLeast', 0.001, 's') : []),
              ],
          note: 'And its test button. The connected vehicle or load is unplugged.',
        };
      });
  });
}

export function direct(input: TestCase): readonly PlannedReading[] {
  const detecting = points(input).filter(
    (p) => p.directCurrentDetection?.state === 'known' && p.directCurrentDetection.value,
  );
  const { least, most, time, by } = input.plan.directCurrent;
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

const touch = ({ plan }: TestCase, clause: string, symbol: string) =>
  `${plan.edition}, ${clause}: ${symbol} I_Δn at most ${plan.touchVoltage} V`;

/** Limit of what lies on an electrode, by the largest of the residual current devices. */
function onElectrode(input: TestCase, role: 'electrodeResistance' | 'measuredLimit', symbol: 'R_A' | 'Z_s') {
  const devices = residualDevices(input).flatMap((d) => (d.rating.state === 'known' ? [d.rating.value as number] : []));
  if (devices.length === 0) {
    const gap = { kind: 'fact', fact: 'rating of the residual current device', obtain: 'its marking' } as const;
    return { ...lacking(missing(gap)), limits: [] };
  }
  const { touchVoltage, electrode } = input.plan;
  const by = touch(input, electrode.clause, symbol);
  return { limits: [...atMost(touchVoltage / Math.max(...devices), role, 'Ω', by), ...aboveZero(role, 0.01, 'Ω')] };
}

export function electrode(input: TestCase): readonly PlannedReading[] {
  const { supply } = input.circuit.installation;
  const electrodes = [
    ...(supply.electrode ? [{ id: 'electrode', of: '', resistance: supply.electrode.resistance }] : []),
    ...points(input).flatMap((p) =>
      p.electrode ? [{ id: `electrode-${p.id}`, of: ` of ${p.id}`, resistance: p.electrode.resistance }] : [],
    ),
  ];
  return electrodes.map(({ id, of, resistance }) => ({
    id,
    what: `R_A: earth electrode${of}`,
    ...maybe(factValue(`resistance of the earth electrode${of}`, resistance), 'electrodeResistance', 'Ω'),
    ...onElectrode(input, 'electrodeResistance', 'R_A'),
    // the loop from outside runs through the electrode of the installation
    ...(id === 'electrode' && supply.system.state === 'known' && supply.system.value === 'TT'
      ? { boundedBy: 'externalLoop' }
      : {}),
    note: `Above ${input.plan.electrode.unstableAbove} Ω it may not be stable.`,
  }));
}

export function underLoad(input: TestCase): readonly PlannedReading[] {
  const { circuit, figures, plan } = input;
  const u = circuit.nominalVoltage;
  const drop =
    figures.totalDrop ?? missing({ kind: 'fact', fact: 'voltage drop', obtain: 'from the rule of voltage drop' });
  return [
    {
      id: 'voltage',
      what: 'voltage at the point without load',
      expected: amount('loadedVoltage', u, 'V'),
      limits: [
        ...atLeast(plan.voltage.least * u, 'loadedVoltageLeast', 'V', plan.voltage.by),
        ...atMost(plan.voltage.most * u, 'loadedVoltageMost', 'V', plan.voltage.by),
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
