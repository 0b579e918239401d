import { type CheckResult, type Fact, isMissing, type Known } from '../core/index.js';
import { own } from '../core/own.js';
import type { Installation } from '../installation/index.js';
import type { ConnectionDecision, ConnectionFacts } from './connection.js';
import type { Demand } from './demand.js';
import type { NotificationOptions } from './notification-options.js';

/** A field of a notification. @inline */
export type FormField =
  | {
      readonly id: string;
      readonly title: string;
      readonly value: string | number | boolean;
      readonly unit?: string;
      readonly by?: string;
      /** Whether the entry is plausible, where that can be judged. */
      readonly result?: CheckResult;
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

/** Devices of one kind up to which each has its own entries. */
const FEW = 3;

function deviceFields(facts: ConnectionFacts, options: NotificationOptions): readonly FormField[] {
  const ofOne = (d: ConnectionFacts['devices'][number]) => [
    entry(`${d.id}.kind`, `${d.id}: kind of device`, d.bidirectional === true ? `${d.kind}, feeds back` : d.kind),
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
  ];
  // one set of entries for many of a kind: what they are is the same, but for the line that each is on
  const kinds = new Map<string, ConnectionFacts['devices'][number][]>();
  for (const d of facts.devices.filter((o) => o.isNew)) {
    const alike = JSON.stringify([
      d.kind,
      d.bidirectional,
      d.current,
      d.lines.length,
      own(options.particulars, `${d.id}.type`),
    ]);
    kinds.set(alike, [...(kinds.get(alike) ?? []), d]);
  }
  return [...kinds.values()].flatMap((all): readonly FormField[] => {
    const [first] = all;
    if (!first || all.length <= FEW) return all.flatMap(ofOne);
    const lines = [...new Set(all.map((d) => d.lines.join(', ')))].sort();
    return [
      entry(`${first.id}.count`, `${first.id} and others of its kind: how many in all`, all.length),
      ...ofOne(first).map((f) =>
        f.id === `${first.id}.lines`
          ? entry(f.id, f.title, lines.length > 1 ? `each one of ${lines.join('; ')}` : (lines[0] ?? ''))
          : f,
      ),
    ];
  });
}

/** What the entries of a form are filled from. @inline */
export interface FormCase {
  /** The installation with the charge points wanted. */
  readonly installation: Installation;
  /** What the decision rests on. */
  readonly facts: ConnectionFacts;
  readonly demand: Demand;
  /** What the network operator's rules ask. */
  readonly decision: ConnectionDecision;
  /** What the notification rests on beside the installation. */
  readonly options: NotificationOptions;
}

/** An entry of a form: the fields that the survey fills, and those that are missing. @inline */
export type FormEntry = (c: FormCase) => readonly FormField[];

/** Entries that forms of network operators have in common. */
export const formEntries = {
  address: ({ options }) => [fromParticulars('address', 'Address of the premises', options, 'ask the customer')],
  meterPoint: ({ installation: { supply } }) => [
    fromFact('meter-point', 'Meter-point number', supply.meterPoint, 'bill, or label beside the meter'),
  ],
  supply: ({ installation: { supply } }) => [
    fromFact('phases', 'Number of line conductors of the supply', supply.phases, 'cut-out and meter'),
    fromFact('earthing', 'Earthing arrangement', supply.system, 'inspect the cut-out, or ask the distributor'),
    fromFact('cut-out', 'Rating of the cut-out fuse', supply.cutOut.rating, 'label on the fuse, or a letter', 'A'),
    fromFact('cut-out-sound', 'Cut-out and service sound', supply.cutOutSound, 'photograph of the cut-out'),
    fromFact('looped', 'Service looped', supply.looped, 'ask the distributor'),
    fromFact('metered', 'Supply metered', supply.metered, 'photograph of the meter'),
  ],
  demand: ({ facts, demand }) => [
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
  ],
  devices: ({ facts, options }) => deviceFields(facts, options),
  loadControls: ({ facts: { jointLimits } }) =>
    // those of one limit in one entry, where they are many
    jointLimits
      .filter((j, i) => jointLimits.length <= FEW || jointLimits.findIndex((o) => o.limit === j.limit) === i)
      .map((j) => {
        const others = jointLimits.length <= FEW ? 0 : jointLimits.filter((o) => o.limit === j.limit).length - 1;
        const title = `Limit of ${j.name}${others > 0 ? ` and ${others} more load controls` : ''}, a line`;
        return fromKnown(`control.${j.name}`, title, j.limit, 'setting of the load control', 'A');
      }),
  completed: ({ options: { completed } }) => [
    completed === undefined
      ? { id: 'completed', title: 'Day of completion', missing: 'after the work' }
      : entry('completed', 'Day of completion', completed),
  ],
  route: ({ decision }) => [entry('route', 'Route', decision.route)],
  installer: ({ options }) => [fromParticulars('installer', 'Installer and registration', options, 'the firm')],
} satisfies Readonly<Record<string, FormEntry>>;
