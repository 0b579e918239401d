import { type CheckResult, type Fact, isMissing, type Known } from '../core/index.js';
import { own } from '../core/own.js';
import { readMeterPoint } from '../networks/gb-network/meter-point.js';
import type { ConnectionDecision, ConnectionFacts } from '../networks/network-rules.js';
import type { Demand } from './demand.js';
import type { DemandCase } from './loads.js';
import type { NotificationOptions } from './notification-options.js';

/** A field of a notification, in a layout of our own. */
export type FormField =
  | {
      readonly id: string;
      readonly title: string;
      readonly value: string | number | boolean;
      readonly unit?: string;
      readonly by?: string;
    }
  | {
      readonly id: string;
      readonly title: string;
      readonly missing: string;
    };

type Entry = string | number | boolean;

const entry = (id: string, title: string, value: Entry, more: { unit?: string; by?: string } = {}): FormField => ({
  id,
  title,
  value,
  ...more,
});

function fromFact(id: string, title: string, fact: Fact<Entry> | undefined, obtain: string, unit?: string): FormField {
  if (fact?.state !== 'known')
    return { id, title, missing: fact?.state === 'unknown' && fact.obtain ? fact.obtain : obtain };
  return entry(id, title, fact.value, { ...(unit ? { unit } : {}), ...(fact.by ? { by: fact.by } : {}) });
}

const fromKnown = (id: string, title: string, value: Known<number>, obtain: string, unit: string): FormField =>
  isMissing(value) ? { id, title, missing: obtain } : entry(id, title, Math.round(value * 100) / 100, { unit });

function fromParticulars(id: string, title: string, options: NotificationOptions, obtain: string): FormField {
  const value = own(options.particulars, id);
  return value === undefined || value.trim() === '' ? { id, title, missing: obtain } : entry(id, title, value);
}

function meterPointFields(c: DemandCase): { readonly fields: readonly FormField[]; readonly check?: CheckResult } {
  const fact = c.installation.supply.meterPoint;
  const number = fromFact('meter-point', 'Meter-point number', fact, 'bill, or label beside the meter');
  if (fact?.state !== 'known') return { fields: [number] };
  const read = readMeterPoint(fact.value);
  const area: FormField = read.area
    ? entry('distributor-area', 'Area of the distributor', read.area, { by: 'first two digits of the number' })
    : {
        id: 'distributor-area',
        title: 'Area of the distributor',
        missing: read.result.because ?? 'look the number up',
      };
  return { fields: [number, area], check: read.result };
}

function deviceFields(facts: ConnectionFacts, options: NotificationOptions): readonly FormField[] {
  return facts.devices
    .filter((d) => d.isNew)
    .flatMap((d) => [
      entry(`${d.id}.kind`, `${d.id}: kind of device`, d.bidirectional ? `${d.kind}, feeds back` : d.kind),
      fromKnown(`${d.id}.current`, `${d.id}: rated current a line`, d.current, 'setting of the device', 'A'),
      entry(`${d.id}.lines`, `${d.id}: line conductors`, d.lines.join(', ')),
      fromKnown(
        `${d.id}.power`,
        `${d.id}: rated power`,
        isMissing(d.current) ? d.current : (d.current * facts.nominalVoltage * d.lines.length) / 1000,
        'setting of the device',
        'kVA',
      ),
      fromParticulars(`${d.id}.type`, `${d.id}: make and type reference`, options, 'label of the device'),
    ]);
}

/** The fields that the survey fills and those that are missing. */
export function formFields(
  c: DemandCase,
  facts: ConnectionFacts,
  demand: Demand,
  decision: ConnectionDecision,
  options: NotificationOptions,
): { readonly fields: readonly FormField[]; readonly meterPoint?: CheckResult } {
  const { supply } = c.installation;
  const meter = options.country === 'GB' ? meterPointFields(c) : { fields: [] };
  const fields: FormField[] = [
    fromParticulars('address', 'Address of the premises', options, 'ask the customer'),
    ...meter.fields,
    fromFact('phases', 'Number of line conductors of the supply', supply.phases, 'cut-out and meter'),
    fromFact('earthing', 'Earthing arrangement', supply.system, 'inspect the cut-out, or ask the distributor'),
    fromFact('cut-out', 'Rating of the cut-out fuse', supply.cutOut.rating, 'label on the fuse, or a letter', 'A'),
    fromFact('cut-out-sound', 'Cut-out and service sound', supply.cutOutSound, 'photograph of the cut-out'),
    fromFact('looped', 'Service looped', supply.looped, 'ask the distributor'),
    fromFact('metered', 'Supply metered', supply.metered, 'photograph of the meter'),
    ...facts.lines.map(({ line, demand: d }) =>
      fromKnown(
        `demand.${line}`,
        `Maximum demand on ${line}, charge points included`,
        d,
        'see what blocks the demand',
        'A',
      ),
    ),
    entry('demand-method', 'Method of the demand', demand.governing.title, { by: demand.governedBy }),
    ...deviceFields(facts, options),
    ...facts.jointLimits.map((j) =>
      fromKnown(`control.${j.name}`, `Limit of ${j.name}, a line`, j.limit, 'setting of the load control', 'A'),
    ),
    options.completed === undefined
      ? { id: 'completed', title: 'Day of completion', missing: 'after the work' }
      : entry('completed', 'Day of completion', options.completed),
    entry('route', 'Route', decision.route),
    fromParticulars('installer', 'Installer and registration', options, 'the firm'),
  ];
  return { fields, ...(meter.check === undefined ? {} : { meterPoint: meter.check }) };
}
