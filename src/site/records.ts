import { own } from '../core/own.js';
import type { FormField } from '../demand/form.js';
import type { ConnectionDecision } from '../demand/index.js';
import { type Judgement, judgeReadings, type Readings, type TestSheet } from '../design/index.js';
import { byCable, type Run } from '../installation/index.js';
import { kindWords, sizeWords } from '../installation/marking.js';
import { formatIn } from '../units/index.js';
import { eachPoint } from './alike-plans.js';
import type { TradeWords } from './applicable.js';
import type { OptionPlan, Plan, PointPlan } from './plan.js';

/** A field of a record: plain text with its name, in a layout of our own. @inline */
export interface RecordField {
  readonly id: string;
  readonly title: string;
  /** The entry; absent where it is not known. */
  readonly value?: string;
}

/** What is recorded of one circuit. @inline */
export interface CircuitRecord {
  readonly point: string;
  /** Data for a certificate. */
  readonly fields: readonly RecordField[];
  readonly tests: TestSheet;
  /** The readings judged, where there are any. */
  readonly judgement?: Judgement;
}

/** What is recorded of a job: plain, JSON-ready. */
export interface Records {
  readonly format: 'records/1';
  readonly option: string;
  readonly code: Plan['code'];
  /** Data on supply and earthing for a certificate. */
  readonly installation: readonly RecordField[];
  /** Circuit by circuit. */
  readonly circuits: readonly CircuitRecord[];
  /** What the network operator is to be told or asked, and by when. */
  readonly operator: {
    readonly route: ConnectionDecision['route'];
    readonly duties: ConnectionDecision['duties'];
    readonly fields: readonly FormField[];
  };
  /** What the user is told, in plain words. */
  readonly handover: readonly string[];
}

type Surveyed = { readonly state: string; readonly value?: unknown } | undefined;

const text = (fact: Surveyed, unit?: string): string | undefined => {
  if (fact?.state !== 'known') return undefined;
  const { value } = fact;
  return typeof value === 'number'
    ? formatIn(value, unit ?? '', 4)
    : typeof value === 'boolean'
      ? value
        ? 'yes'
        : 'no'
      : String(value);
};
const field = (id: string, title: string, value: string | undefined): RecordField =>
  value === undefined ? { id, title } : { id, title, value };

const heading = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

function installationFields(
  { installation: { supply, board } }: OptionPlan,
  { tails, meterPoint }: TradeWords,
): readonly RecordField[] {
  const { cutOut } = supply;
  return [
    field('system', 'Earthing system', text(supply.system)),
    field('phases', 'Line conductors of the supply', text(supply.phases)),
    field('nominal-voltage', 'Nominal voltage U_0', formatIn(supply.nominalVoltage, 'V')),
    field('external-impedance', 'External loop impedance Z_e', text(supply.externalImpedance, 'Ω')),
    field('prospective-current', 'Prospective fault current I_pf', text(supply.prospectiveCurrent, 'A')),
    field(
      'cut-out',
      'Cut-out fuse',
      cutOut.kind.state === 'known' && cutOut.rating.state === 'known'
        ? `${cutOut.kind.value.standard}, ${formatIn(cutOut.rating.value, 'A')}`
        : undefined,
    ),
    field('main-switch', 'Main switch', text(board.mainSwitch?.rating, 'A')),
    field('tails', heading(tails), text(supply.tails, 'mm²')),
    field('earthing-conductor', 'Earthing conductor', text(supply.earthingConductor, 'mm²')),
    ...(supply.bonding ?? []).map((b) => field(`bonding-${b.what}`, `Main bonding, ${b.what}`, text(b.area, 'mm²'))),
    field('electrode', 'Earth electrode R_A', text(supply.electrode?.resistance, 'Ω')),
    field('meter-point', heading(meterPoint), text(supply.meterPoint)),
  ];
}

function circuitFields({ run, point, assessment }: PointPlan): readonly RecordField[] {
  const { device } = run;
  const cables = byCable(run);
  const from = (part: Run) => (cables.length > 1 ? ` from ${part.stretches[0]?.name}` : '');
  const kind = device.kind.state === 'known' ? device.kind.value : undefined;
  const { loopImpedanceLimit, capacity, totalDrop } = assessment.figures;
  const number = (value: unknown, unit: string) => (typeof value === 'number' ? formatIn(value, unit, 4) : undefined);
  return [
    field('circuit', 'Circuit', run.id),
    field('serves', 'Serves', `charge point ‘${point}’`),
    field('lines', 'Line conductors', run.lines.join(', ')),
    field('device', 'Overcurrent device', kind && kindWords(kind)),
    field('rating', 'Rated current I_n', text(device.rating, 'A')),
    field('breaking-capacity', 'Breaking capacity I_cn', text(device.breakingCapacity, 'A')),
    ...(run.residual ?? []).map((r, i) =>
      field(
        `residual-${i + 1}`,
        'Residual current device',
        r.type.state === 'known' && r.rating.state === 'known'
          ? `${formatIn(r.rating.value, 'A')} type ${r.type.value}, ${r.position.replaceAll('-', ' ')}`
          : undefined,
      ),
    ),
    field(
      'cable',
      'Cable',
      cables
        .map(
          (part) =>
            `${part.cable.construction.replaceAll('-', ' ')}, ${part.cable.cores}-core, ${part.cable.insulation.replaceAll('-', ' ')} °C${from(part)}`,
        )
        .join('; '),
    ),
    field(
      'line-area',
      'Line conductor',
      cables.some((part) => sizeWords(part.cable) === undefined)
        ? undefined
        : cables.map((part) => `${sizeWords(part.cable)}${from(part)}`).join('; '),
    ),
    field(
      'methods',
      'Reference methods',
      run.stretches.map((s) => (s.method.state === 'known' ? s.method.value : '?')).join(', '),
    ),
    field('capacity', 'Capacity I_z', number(capacity, 'A')),
    field('drop', 'Voltage drop from the origin', number(totalDrop, 'V')),
    field(
      'loop-limit',
      'Largest Z_s by the table, conductors warm (not for the meter)',
      number(loopImpedanceLimit, 'Ω'),
    ),
  ];
}

function handover(option: OptionPlan, { userTest }: TradeWords): readonly string[] {
  const lines: string[] = [];
  for (const { run, point, chargeTime } of eachPoint(option.points)) {
    const setting = run.feeds.flatMap((o) =>
      o.kind === 'charge-point' && o.setting.state === 'known' ? [o.setting.value] : [],
    )[0];
    lines.push(
      `Your charge point ‘${point}’ is set to at most ${setting === undefined ? 'a current that is still to be set' : formatIn(setting, 'A')}. Do not have the setting raised without asking: the supply was judged with it.`,
    );
    if (chargeTime?.seconds !== undefined)
      lines.push(
        `A charge such as the one you described takes about ${formatIn(chargeTime.seconds, 's', 2)} at full current; ${chargeTime.inTime ? 'that is within the time your car stands there' : 'that is longer than your car stands there'}.`,
      );
    const busy = option.night?.vehicles.find((v) => v.point === point)?.busy;
    if (busy && chargeTime?.inTime && busy.after === undefined)
      lines.push(
        `If everything else on the supply ran at its most all the time, it would still lack ${formatIn(busy.missing / 1000, '1', 2)} kWh when you leave.`,
      );
  }
  const { control } = option.installation.board;
  if (control)
    lines.push(
      `A ${control.name} watches your supply${control.limit.state === 'known' ? ` and keeps it at or below ${formatIn(control.limit.value, 'A')}` : ''}. While the house draws much, the car charges slowly or waits; that is as intended.`,
    );
  lines.push(
    `${userTest} If the device or the point switches off and does not come back, leave it off and call an electrician.`,
  );
  lines.push('Tell the electrician before another large load (shower, heat pump, oven, second charge point) is added.');
  return lines;
}

/**
 * Records of a job that was carried out by one option of a plan: data for certificates and for the network operator, test
 * sheets with their readings judged, and a hand-over in plain words.
 * @param plan the plan
 * @param place place of the option that was carried out, from 0
 * @param readings readings by name of the charge point, each by its identifier on the test sheet
 * @returns plain data; fields that are not known have no value
 * @throws CalculationError `invalid-input` for readings that the test sheet does not have and numbers that are none
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { planOf, recordsOf } from 'ohmwright/site';
 *
 * recordsOf(planOf(readSurvey(survey), inGreatBritain('2018+A2:2022')))?.format; // => 'records/1'
 * ```
 */
export function recordsOf(
  plan: Plan,
  place = 0,
  readings: Readonly<Record<string, Readings>> = {},
): Records | undefined {
  const option = plan.options[place];
  if (!option) return undefined;
  const { decision, fields } = option.notification;
  return {
    format: 'records/1',
    option: option.title,
    code: plan.code,
    installation: installationFields(option, plan.words),
    circuits: eachPoint(option.points).map((p): CircuitRecord => {
      const read = own(readings, p.point);
      return {
        point: p.point,
        fields: circuitFields(p),
        tests: p.tests,
        ...(read ? { judgement: judgeReadings(p.tests, read) } : {}),
      };
    }),
    operator: { route: decision.route, duties: decision.duties, fields },
    handover: handover(option, plan.words),
  };
}
