import { type CheckResult, type Gap, judge, notDetermined, rule } from '../core/index.js';
import { ringLineNeutral } from '../physics/index.js';
import { invalidInput, ohms, shown } from '../units/index.js';
import type { PlannedReading } from './planned-reading.js';
import type { TestSheet } from './test-sheet.js';

/** Readings that came back, by the names on the test sheet: numbers in the unit of the sheet, or yes and no. */
export type Readings = Readonly<Record<string, number | boolean>>;

/** Two readings, or a reading and a calculation, that cannot both be right. @inline */
export interface Contradiction {
  readonly id:
    | 'external-above-design'
    | 'loop-below-external'
    | 'loop-below-electrode'
    | 'parallel-path'
    | 'high-joint'
    | 'continuity-low'
    | 'continuity-high'
    | 'ring-ends-differ'
    | 'ring-cross-connection'
    | 'drop-larger-than-calculated'
    | 'fall-beyond-supply'
    | 'rise-under-load'
    | 'prospective-above-design'
    | 'prospective-and-loop'
    | 'prospective-beyond-loop';
  readonly readings: readonly string[];
  /** What it means and what to look for. */
  readonly meaning: string;
  /** Set where none of the readings proves anything before it is cleared: their verdict is open. */
  readonly opens?: true;
}

/** What the readings amount to. */
export interface Judgement {
  /** One result a limit. */
  readonly results: readonly CheckResult[];
  readonly contradictions: readonly Contradiction[];
  readonly owing: readonly string[];
}

/** Fall of the supply itself under the load of one circuit beyond which a joint is suspected, of U_0: 32 A in 0.35 Ω. Common practice, no source. */
const supplyFall = 0.05;
/** How much larger of two readings of one loop the other may be: instruments read a low loop badly. Common practice, no source. */
const twice = 2;
/** How much more than the cable gives a reading may be before it is of something else: the next smaller cable has as much. Common practice, no source. */
const smallerCable = 1.5;
const caution =
  'A reading that fails is not explained away: find the reason, mend it, and repeat every test that it may have influenced, before the circuit is put into use.';
const said = ({ source }: TestSheet, id: string, what: string) =>
  rule({ id: `reading-${id}`, title: what, source, caution });

/** Whether a reading is a yes or a no, not a number. */
const yesOrNo = (r: PlannedReading): boolean =>
  r.limits.some((l) => l.amount === undefined) ||
  (r.limits.length === 0 && r.expected === undefined && r.gaps === undefined && r.limitGaps === undefined);

/** A yes in the place of a number would count as 1, a number in the place of a yes as nothing at all. */
function kindProblem(planned: PlannedReading | undefined, name: string, value: number | boolean) {
  if (planned === undefined || (typeof value === 'boolean') === yesOrNo(planned)) return [];
  return [
    {
      path: [name],
      message: yesOrNo(planned) ? `${shown(value)} is neither yes nor no` : `${shown(value)} is no number`,
    },
  ];
}

/** Whether the reading that may stand for this one was taken. */
const replaced = ({ alternative }: PlannedReading, readings: Readings): boolean =>
  alternative !== undefined && readings[alternative] !== undefined;

/**
 * The reading that is never less than this one. Far below what is expected of this one it is of something else: bonds that
 * were still connected.
 */
function standIn({ boundedBy, expected }: PlannedReading, readings: Readings): number | undefined {
  const value = boundedBy === undefined ? undefined : readings[boundedBy];
  return typeof value === 'number' && expected !== undefined && value * twice >= expected.value ? value : undefined;
}

/** The result of one limit; the limit's own role says what unit it is in. */
function judgeLimit(sheet: TestSheet, reading: PlannedReading, value: number | boolean, at: number): CheckResult {
  const limit = reading.limits[at] as PlannedReading['limits'][number];
  const title = `${reading.what} (${limit.by})`;
  if (limit.kind === 'must-not-trip' || limit.amount === undefined)
    return judge(said(sheet, reading.id, title), {
      holds: value === true,
      because: value === true ? 'as it should' : 'not as it should',
    });
  const { name, value: bound, unit } = limit.amount;
  const thumb = limit.thumb === true;
  const found = Number(value);
  const fits = limit.kind === 'at-most' ? found <= bound : found >= bound;
  const slack = limit.kind === 'at-most' ? bound - found : found - bound;
  return {
    check: `reading-${reading.id}-${thumb ? 'rule-of-thumb' : limit.kind}`,
    title,
    verdict: fits && Number.isFinite(found) ? 'pass' : 'fail',
    weight: thumb ? 'advice' : 'rule',
    source: sheet.source,
    caution,
    value: { name: reading.id, value: found, unit },
    limit: { name, value: bound, unit },
    ...(bound === 0 ? {} : { margin: slack / Math.abs(bound) }),
  };
}

/**
 * Judges readings that came back against the test sheet, and against each other.
 * @param sheet the test sheet
 * @param readings the readings by name; a reading that was not taken is left out
 * @returns results by limit, contradictions between readings, and what is still owing
 * @throws CalculationError `invalid-input` for names that the sheet does not have and numbers that are no readings
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { judgeReadings } from 'ohmwright';
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { planOf } from 'ohmwright/site';
 *
 * const sheet = planOf(readSurvey(survey), inGreatBritain('2018+A2:2022')).options[0]?.points[0]?.tests;
 * sheet && judgeReadings(sheet, {}).contradictions; // => []
 * ```
 */
export function judgeReadings(sheet: TestSheet, readings: Readings): Judgement {
  const planned = sheet.tests.flatMap((t) => t.readings);
  const names = new Map(planned.map((p) => [p.id, p] as const));
  const problems = Object.entries(readings).flatMap(([name, value]) => [
    ...(names.has(name) ? [] : [{ path: [name], message: `the test sheet has no such reading` }]),
    ...kindProblem(names.get(name), name, value),
    ...(typeof value === 'boolean' || (Number.isFinite(value) && value >= 0)
      ? []
      : [{ path: [name], message: `${value} is no reading` }]),
  ]);
  if (problems.length > 0) throw invalidInput('the readings', problems);

  const found = contradictions(sheet, names, readings);
  const disputed = ({ id, what }: PlannedReading): CheckResult[] => {
    const against = found.filter((c) => c.opens && c.readings.includes(id));
    if (against.length === 0) return [];
    const gaps = against.map(
      (c): Gap => ({
        kind: 'fact',
        fact: `readings that agree: ${c.readings.join(', ')}`,
        obtain: c.meaning,
        disagree: true,
      }),
    );
    return [notDetermined(said(sheet, id, what), ...gaps)];
  };
  const read = (of: PlannedReading) => readings[of.id] ?? standIn(of, readings);
  const results = planned.flatMap((reading): CheckResult[] => {
    const value = read(reading);
    if (value === undefined)
      return !replaced(reading, readings) &&
        (reading.limits.length > 0 || reading.limitGaps !== undefined || reading.expected === undefined)
        ? [
            notDetermined(said(sheet, reading.id, reading.what), {
              kind: 'fact',
              fact: reading.id,
              obtain: reading.what,
            }),
          ]
        : [];
    if (typeof value === 'boolean' && reading.limits.length === 0)
      return [
        judge(said(sheet, reading.id, reading.what), {
          holds: value,
          because: value ? 'as it should be' : 'not as it should be',
        }),
      ];
    const judged = [...reading.limits.map((_, i) => judgeLimit(sheet, reading, value, i)), ...disputed(reading)];
    // without the limit that belongs to it the reading proves nothing
    return reading.limitGaps
      ? [...judged, notDetermined(said(sheet, reading.id, reading.what), ...reading.limitGaps)]
      : judged;
  });
  const untested = sheet.gaps ? [notDetermined(said(sheet, 'tests', 'the tests of the edition'), ...sheet.gaps)] : [];
  return {
    results: [...untested, ...results],
    contradictions: found,
    owing: planned.filter((p) => read(p) === undefined && !replaced(p, readings)).map((p) => p.id),
  };
}

function contradictions(
  sheet: TestSheet,
  names: ReadonlyMap<string, PlannedReading>,
  readings: Readings,
): readonly Contradiction[] {
  const found: Contradiction[] = [];
  const { basis } = sheet;
  if (!basis) return found;
  const read = (name: string) => (typeof readings[name] === 'number' ? (readings[name] as number) : undefined);
  const expected = (name: string) => names.get(name)?.expected?.value;
  const say = (id: Contradiction['id'], of: readonly string[], meaning: string, opens = false) =>
    found.push({ id, readings: of, meaning, ...(opens ? { opens } : {}) });
  const { deviation, ringDifference } = basis;
  // a few hundredths are lost in leads and the last digit of the instrument
  const slack = (of: number) => Math.max(deviation * of, ringDifference);

  const external = read('externalLoop');
  const loop = read('loop');
  const both = read('continuity');
  const designed = expected('externalLoop');
  if (external !== undefined && designed !== undefined && external > designed + slack(designed))
    say(
      'external-above-design',
      ['externalLoop'],
      `Z_e reads ${external} Ω and the circuit is designed with ${designed} Ω: a poor connection in the supply, or a figure that was never true of it. Ask the network operator where it is more than is customary of the earthing system, and work the circuit out again with what was read.`,
      true,
    );
  if (external !== undefined && loop !== undefined && loop < external)
    say(
      'loop-below-external',
      ['externalLoop', 'loop'],
      'Z_s at the point is below Z_e at the origin: bonding or another path was in parallel at the point, or Z_e was read with a higher supply impedance. Neither reading can be relied on before that is cleared.',
      true,
    );
  const electrode = read('electrode');
  if (
    basis.byElectrode === true &&
    external !== undefined &&
    electrode !== undefined &&
    external < electrode - slack(electrode)
  )
    say(
      'loop-below-electrode',
      ['electrode', 'externalLoop'],
      `The electrode reads ${electrode} Ω, and the loop through it ${external} Ω: bonding or another earth was in parallel while the loop was read, or the electrode was read badly. Read both with the earthing conductor disconnected from everything else.`,
      true,
    );
  if (external !== undefined && loop !== undefined && both !== undefined) {
    const added = external + both;
    if (loop < added - slack(both))
      say(
        'parallel-path',
        ['externalLoop', 'continuity', 'loop'],
        'Z_s is less than Z_e and R_1+R_2: metal or another earth lies in parallel with the protective conductor. The sum of both counts, not the lower reading.',
      );
    if (loop > added + slack(both))
      say(
        'high-joint',
        ['externalLoop', 'continuity', 'loop'],
        'Z_s is more than Z_e and R_1+R_2: a joint, a residual current device in the path of the instrument, or a warm cable.',
        // instruments read a low loop badly, and not so badly
        loop > twice * added,
      );
  }
  for (const name of ['continuity', 'protectiveContinuity', 'ringLine', 'ringNeutral', 'ringProtective'] as const) {
    const [r, e] = [read(name), expected(name)];
    if (r === undefined || e === undefined) continue;
    if (r < e - slack(e))
      say(
        'continuity-low',
        [name],
        `Lower than the cable can be, ${r} Ω where ${Number(e.toPrecision(2))} Ω is due: a parallel path, a shorter route, or a larger cable than designed.`,
        true,
      );
    if (r > e + slack(e))
      say(
        'continuity-high',
        [name],
        `Higher than the cable should be, ${r} Ω where ${Number(e.toPrecision(2))} Ω is due: a joint, a longer route, or a smaller cable than designed.`,
        r > smallerCable * e + ringDifference,
      );
  }
  ringContradictions(basis.ringDifference, read, say);

  const [open, loaded] = [read('voltage'), read('loadedVoltage')];
  const drop = basis.expectedDrop;
  if (open !== undefined && loaded !== undefined && drop !== undefined && open - loaded > drop * (1 + deviation))
    say(
      'drop-larger-than-calculated',
      ['voltage', 'loadedVoltage'],
      'The voltage falls more than the circuit accounts for: the supply itself falls, a joint is poor, or the load is larger than designed.',
    );
  if (
    open !== undefined &&
    loaded !== undefined &&
    open - loaded > (drop ?? 0) * (1 + deviation) + supplyFall * basis.nominalVoltage
  )
    say(
      'fall-beyond-supply',
      ['voltage', 'loadedVoltage'],
      `Under load the voltage falls from ${open} V to ${loaded} V, more than circuit and supply together account for: a joint is about to burn, or one of the two was read wrong.`,
      true,
    );
  if (open !== undefined && loaded !== undefined && drop !== undefined && loaded - open > drop)
    say(
      'rise-under-load',
      ['voltage', 'loadedVoltage'],
      `Under load the voltage rises from ${open} V to ${loaded} V: a poor neutral, the supply that moved between the two, or two readings in the wrong places.`,
      true,
    );
  const current = read('prospective');
  const reckoned = expected('prospective');
  if (current !== undefined && reckoned !== undefined && current > reckoned * (1 + deviation))
    say(
      'prospective-above-design',
      ['prospective'],
      `I_pf reads ${current} A and the circuit is designed with ${Math.round(reckoned)} A: what its conductors have to bear until a device opens was worked out for less. Work the circuit out again with what was read.`,
      true,
    );
  if (current !== undefined && external !== undefined && external > 0) {
    const earth = basis.nominalVoltage / external;
    const gives = `Z_e of ${external} Ω gives ${Math.round(earth)} A to earth, and I_pf reads ${current} A`;
    if (current < earth * (1 - deviation))
      say(
        'prospective-and-loop',
        ['prospective', 'externalLoop'],
        `The prospective current is less than the earth fault current that Z_e gives: the larger of both has to be recorded. ${gives}.`,
        // behind a distribution circuit less flows than at the origin
        basis.behindFeeder !== true,
      );
    // where neutral and earth of the supply are one conductor, a fault between line and neutral meets the same loop
    const lines = basis.phases === 3 || basis.supplyPhases === 3 ? 2 : 1;
    if (basis.combined === true && current > lines * twice * earth)
      say(
        'prospective-beyond-loop',
        ['prospective', 'externalLoop'],
        `Neutral and earth of the supply are one conductor, and the two readings are of the same loop. ${gives}: one of them is wrong.`,
        true,
      );
  }
  return found;
}

function ringContradictions(
  limit: number,
  read: (name: string) => number | undefined,
  say: (id: Contradiction['id'], of: readonly string[], meaning: string, opens?: boolean) => void,
) {
  const [line, neutral, protective] = [read('ringLine'), read('ringNeutral'), read('ringProtective')];
  if (line !== undefined && neutral !== undefined && Math.abs(line - neutral) > limit)
    say(
      'ring-ends-differ',
      ['ringLine', 'ringNeutral'],
      'Line and neutral of one size differ: the ring is open, bridged, or a joint is poor.',
      true,
    );
  const cross = (name: string, other: number | undefined, otherName: string) => {
    const at = read(name);
    if (at === undefined || line === undefined || other === undefined) return;
    const expected = ringLineNeutral({ ringLineResistance: ohms(line), ringNeutralResistance: ohms(other) });
    if (Math.abs(at - expected) > limit)
      say(
        'ring-cross-connection',
        ['ringLine', otherName, name],
        'The cross-connected reading is not a quarter of both conductors: a spur, a bridged ring, or ends that were not crossed.',
        // on a spur the way to earth may read more
        otherName === 'ringNeutral',
      );
  };
  cross('crossLineNeutral', neutral, 'ringNeutral');
  cross('crossLineProtective', protective, 'ringProtective');
}
