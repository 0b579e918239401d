import {
  alternatives,
  type CheckResult,
  comparison,
  type Fact,
  factValue,
  isMissing,
  judge,
  type Known,
  missing,
  notDetermined,
  type Sheet,
} from '../../core/index.js';
import type { OvercurrentDevice, OvercurrentKind } from '../../installation/index.js';
import { operatingCurrentFromMultiple, prospectiveBehindFeeders } from '../../physics/index.js';
import { ggGates } from '../../products/bs88/gg-gates.js';
import { oldInstantaneousBands } from '../../products/bs3871/instantaneous-bands.js';
import { instantaneousBands } from '../../products/en60898/instantaneous-bands.js';
import { type Amperes, celsius, ohms } from '../../units/index.js';
import type { CircuitCase, Findings, Rule } from '../wiring-code.js';
import { writeFeederResistance, writeLeastResistance } from './line-neutral.js';

/** I_cn >= I_pf. BS 7671, 434.5.1. */
export const ownBreakingCapacity = /* @__PURE__ */ comparison({
  id: 'own-breaking-capacity',
  title: 'The device breaks the prospective current at its place by itself',
  kind: 'at-least',
  value: 'breakingCapacity',
  limit: 'maximumFaultCurrent',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.1', provenance: 'two-sources' },
  worse: { prospectiveCurrent: 'up', length: 'down' },
});

/** Conditional rating of the assembly, or back-up by the device ahead. BS 7671, 434.5.1, 536.5. */
export const conditionalBreakingCapacity = /* @__PURE__ */ comparison({
  id: 'conditional-breaking-capacity',
  title: 'The assembly, or the device ahead as back-up, is declared for the prospective current',
  kind: 'at-least',
  value: 'breakingLimit',
  limit: 'maximumFaultCurrent',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.1, 536.5', provenance: 'two-sources' },
  worse: { prospectiveCurrent: 'up', length: 'down' },
});

/** By itself or with what stands ahead. BS 7671, 434.5.1. */
export const breakingCapacityCheck = /* @__PURE__ */ alternatives({
  id: 'breaking-capacity',
  title: 'The prospective current at the device is broken safely',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.1', provenance: 'two-sources' },
  caution:
    'A device that breaks more than it is made for can burst. The motor contribution of connected machines is not counted.',
  worse: { prospectiveCurrent: 'up', length: 'down' },
});

/** The fuse ahead holds while the circuit-breaker of the circuit trips. BS 7671, 536.4. */
export const discriminationCheck = /* @__PURE__ */ comparison({
  id: 'discrimination-with-cut-out',
  title: 'A fault in the circuit does not melt the fuse ahead',
  kind: 'at-most',
  value: 'maximumFaultCurrent',
  limit: 'fuseHoldCurrent',
  weight: 'advice',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '536.4', provenance: 'one-source' },
  worse: { prospectiveCurrent: 'up', length: 'down' },
});

/** The device of a feeder ahead holds while the circuit-breaker of the circuit trips. BS 7671, 536.4. */
export const discriminationWithFeeder = /* @__PURE__ */ comparison({
  id: 'discrimination-with-feeder-device',
  title: 'A fault in the circuit does not trip the device of the feeder ahead',
  kind: 'at-most',
  value: 'maximumFaultCurrent',
  limit: 'fuseHoldCurrent',
  weight: 'advice',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '536.4', provenance: 'one-source' },
  worse: { prospectiveCurrent: 'up', length: 'down' },
});

/**
 * Writes the largest prospective current at the origin of a run, from that at the origin of the installation and the
 * feeders ahead, cold, and adds to the findings.
 */
export function writeProspective(sheet: Sheet, circuit: CircuitCase, findings: Findings): Known<Amperes> {
  const { supply } = circuit.installation;
  const single = supply.phases.state === 'known' && supply.phases.value === 1;
  const earthed = !(supply.system.state === 'known' && supply.system.value === 'TT');
  const parts = circuit.path.feeders.map((feeder) => {
    const part = sheet.part(`Cold resistance of ${feeder.id}`);
    if (single) writeLeastResistance(part, feeder, earthed);
    else writeFeederResistance(part, feeder, false, celsius(20));
    return part;
  });
  const counted = sheet.gather('sum', 'segmentImpedance', 'feederImpedance', parts);
  // without its impedance a feeder is left out: the current is then not understated
  const feederImpedance = isMissing(counted)
    ? sheet.given('feederImpedance', ohms(0), 'not known, and left out: the largest current is sought')
    : counted;
  const nominalVoltage = sheet.given('nominalVoltage', circuit.nominalVoltage);
  const prospectiveCurrent = sheet.given('prospectiveCurrent', supply.prospectiveCurrent);
  const current = sheet.step(prospectiveBehindFeeders, { nominalVoltage, prospectiveCurrent, feederImpedance });
  findings.prospectiveAtOrigin = isMissing(counted) ? counted : current;
  return current;
}

/** What stands in the way of a verdict that rests on a feeder left out: it can acquit, not condemn. */
function acquitBehindFeeder(sheet: Sheet, result: CheckResult, findings: Findings): CheckResult {
  const exact = findings.prospectiveAtOrigin;
  if (result.verdict !== 'fail' || exact === undefined || !isMissing(exact)) return result;
  return sheet.result(notDetermined(breakingCapacityCheck, ...exact.missing));
}

const fact = <T>(name: string, given: Fact<T> | undefined, obtain: string): Known<T> =>
  given ? factValue(name, given) : missing({ kind: 'fact', fact: name, obtain });

/** Judges the breaking capacity of the device of a run, own or conditional; `maximumFaultCurrent` stands on the sheet. */
export function judgeBreaking(sheet: Sheet, circuit: CircuitCase, current: Known<Amperes>): CheckResult {
  const { device } = circuit.run;
  const own = sheet.part('By itself');
  const breakingCapacity = own.given(
    'breakingCapacity',
    fact('breaking capacity of the device', device.breakingCapacity, 'in the rectangle on its front'),
  );
  const results = [own.check(ownBreakingCapacity, { breakingCapacity, maximumFaultCurrent: current })];
  const declared = [device.conditionalRating, circuit.board.conditionalRating].filter((f) => f !== undefined);
  const conditional = sheet.part('With the assembly or the device ahead');
  if (declared.length === 0) {
    results.push(
      conditional.result(
        notDetermined(conditionalBreakingCapacity, {
          kind: 'fact',
          fact: 'conditional short-circuit rating',
          obtain: 'from the label of the assembly, or back-up by the fuse ahead as the maker declares it',
        }),
      ),
    );
  }
  declared.forEach((f, i) => {
    const part = conditional.part(
      i === 0 && device.conditionalRating ? 'Declared for the device' : 'Declared for the assembly',
    );
    const breakingLimit = part.given('breakingLimit', factValue('conditional short-circuit rating', f));
    results.push(part.check(conditionalBreakingCapacity, { breakingLimit, maximumFaultCurrent: current }));
  });
  return sheet.check(breakingCapacityCheck, { results }, circuit.path.feeders.length > 0 ? behindFeeder : undefined);
}

/** What the current behind a feeder is, said with every verdict that rests on it. */
const behindFeeder =
  'The prospective current behind a feeder is an upper bound of what its cables let through: conductors at 20 °C, the feeder at right angles to the source. Other metal that joins the boards to earth is not counted: measure at the board.';

const isBreaker = (k: OvercurrentKind): k is Extract<OvercurrentKind, { readonly type: string }> =>
  k.standard.startsWith('EN') || k.standard === 'BS 3871';
/** Fuses to which the gates of gG apply; BS 1361, BS 1362 and BS 3036 have none. */
const hasGates = (k: OvercurrentKind): boolean => k.standard === 'BS 88-2' || k.standard === 'BS 88-3';

/** Writes the edge of the instantaneous band of a circuit-breaker, or the gate of a gG fuse, at 0.1 s. */
function writeAtTenth(
  sheet: Sheet,
  kind: OvercurrentKind,
  rating: Known<Amperes>,
  side: 'holds' | 'clears',
): Known<Amperes> {
  const holds = side === 'holds';
  const by = holds ? 'device ahead' : 'device of the circuit';
  if (!isBreaker(kind)) {
    const gate = sheet.label('gate', holds ? 'least-0.1s' : 'most-0.1s');
    return sheet.look(ggGates, { gate, deviceRating: sheet.given('deviceRating', rating, by) });
  }
  const edge = sheet.label('edge', holds ? 'lower' : 'upper');
  const deviceMultiple =
    kind.standard === 'BS 3871'
      ? sheet.look(oldInstantaneousBands, { edge, type: sheet.label('type', kind.type) })
      : sheet.look(instantaneousBands, { edge, type: sheet.label('type', kind.type) });
  return sheet.step(operatingCurrentFromMultiple, {
    deviceMultiple,
    deviceRating: sheet.given('deviceRating', rating, by),
  });
}

/**
 * Judges whether one device ahead holds while that of the circuit clears the largest fault: certain where the one needs
 * at least 0.1 s and the other less.
 */
function discrimination(
  sheet: Sheet,
  check: typeof discriminationCheck,
  circuit: CircuitCase,
  ahead: OvercurrentDevice,
  current: Known<Amperes>,
): CheckResult {
  const data = (obtain: string) =>
    sheet.result(notDetermined(check, { kind: 'fact', fact: 'discrimination with the device ahead', obtain }));
  const kind = factValue('kind of the overcurrent device', circuit.run.device.kind);
  const own = factValue('rating of the overcurrent device', circuit.run.device.rating);
  const first = factValue('kind of the device ahead', ahead.kind);
  const rating = factValue('rating of the device ahead', ahead.rating);
  for (const known of [kind, first, own, rating])
    if (isMissing(known)) return sheet.result(notDetermined(check, ...known.missing));
  if (isMissing(kind) || isMissing(first)) return data('the kinds of both devices');
  const gated = [kind, first].filter((k) => !isBreaker(k));
  if (!gated.every(hasGates))
    return data(
      'the pre-arcing energy of the one ahead against the total energy of the other, from their makers: fuses to BS 1361, BS 1362 and BS 3036 have no gates',
    );
  if (gated.length > 0 && circuit.options.acceptMemoryFigures !== true)
    return data('tables of the makers; the gates of gG fuses here are recalled figures and have to be accepted');
  const holding = sheet.part('Device ahead');
  const held = writeAtTenth(holding, first, rating, 'holds');
  const cleared = writeAtTenth(sheet.part('Device of the circuit'), kind, own, 'clears');
  if (isMissing(held) || isMissing(cleared)) return data('a rating without a gate here: tables of the makers');
  const fuseHoldCurrent = sheet.gather('sum', 'operatingCurrent', 'fuseHoldCurrent', [holding]);
  // above the gate the device ahead may still hold: the makers' tables decide
  if (judge(check, { maximumFaultCurrent: current, fuseHoldCurrent }).verdict === 'fail')
    return data('above the certain range: tables of the makers at the prospective current');
  if (!isMissing(current) && current < cleared)
    return data(
      'the largest fault current is too small to open the device of the circuit at once: curves of the makers',
    );
  const because = [
    'Weaker faults and overloads are not judged: compare the curves of the makers.',
    gated.length > 0
      ? 'Rests on gates of gG fuses from memory (grade C).'
      : 'Rests on the edges of the instantaneous bands of both devices.',
  ];
  return sheet.check(check, { maximumFaultCurrent: current, fuseHoldCurrent }, because.join(' '));
}

/**
 * The rule that a device breaks the prospective current at its place, for a wiring code of the IEC family; with it
 * the verdict on discrimination with the cut-out.
 */
export const breakingCapacityRule: Rule = (circuit, findings, sheet) => {
  const current = writeProspective(sheet, circuit, findings);
  const results = [acquitBehindFeeder(sheet, judgeBreaking(sheet, circuit, current), findings)];
  const cutOut = sheet.part('Discrimination with the cut-out');
  results.push(discrimination(cutOut, discriminationCheck, circuit, circuit.installation.supply.cutOut, current));
  for (const feeder of circuit.path.feeders) {
    const part = sheet.part(`Discrimination with the device of ${feeder.id}`);
    results.push(discrimination(part, discriminationWithFeeder, circuit, feeder.device, current));
  }
  return results;
};
