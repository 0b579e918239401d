import type { CircuitFigures, WiringCode } from '../codes/wiring-code.js';
import { isMissing } from '../core/index.js';
import type { Assessment } from '../design/index.js';
import { type Installation, type OvercurrentDevice, pathTo, type Run, type Supply } from '../installation/index.js';
import { kindWords } from '../installation/marking.js';
import type { Envelope } from '../physics/index.js';

/** A band between the gates of a product standard: faster and slower edge as current in A and time in s. @inline */
export interface DeviceBand {
  readonly name: string;
  /** Faster edge. */
  readonly points: readonly (readonly [current: number, time: number])[];
  readonly slower: readonly (readonly [current: number, time: number])[];
}

/** What a time-current picture of a circuit shows. @inline */
export interface TimeCurrentData {
  /** Bands of the devices whose product standard has gates here. */
  readonly series: readonly DeviceBand[];
  readonly marks: readonly { readonly name: string; readonly current: number }[];
  readonly times: readonly { readonly name: string; readonly time: number }[];
}

const edges = (gates: Envelope): Pick<DeviceBand, 'points' | 'slower'> => {
  const edge = (points: Envelope['fast']) =>
    points.map((p) => [p.current, p.time] as const).sort((a, b) => a[0] - b[0]);
  return { points: edge(gates.fast), slower: edge(gates.slow) };
};

function bandOf(code: WiringCode, device: OvercurrentDevice, what: string): readonly DeviceBand[] {
  const limits = code.timeCurrentLimits(device);
  if (!limits || device.kind.state !== 'known' || device.rating.state !== 'known') return [];
  return [{ name: `${what}: ${kindWords(device.kind.value)}, ${device.rating.value} A`, ...edges(limits) }];
}

/** Bands and marks of the time-current picture of a circuit; nothing where its device has no gates here. */
export function timeCurrentOf(
  code: WiringCode,
  run: Run,
  supply: Supply,
  { figures, results }: Pick<Assessment, 'figures' | 'results'>,
): TimeCurrentData | undefined {
  const series = [...bandOf(code, run.device, run.id), ...bandOf(code, supply.cutOut, 'cut-out')];
  if (series.length === 0) return undefined;
  const { loopImpedance, prospectiveAtOrigin } = figures;
  const marks = [
    ...(typeof loopImpedance === 'number' && loopImpedance > 0
      ? [{ name: 'earth fault', current: supply.nominalVoltage / loopImpedance }]
      : []),
    ...(typeof prospectiveAtOrigin === 'number' && prospectiveAtOrigin > 0
      ? [{ name: 'prospective', current: prospectiveAtOrigin as number }]
      : []),
  ];
  // the code says in which result how soon an earth fault has to be off
  const required = results.flatMap((r) => [r, ...(r.alternatives ?? [])]).find((r) => r.limit?.name === 'requiredTime');
  return { series, marks, times: required?.limit ? [{ name: 'required', time: required.limit.value }] : [] };
}

/** What a picture of the voltage drop along a route shows. @inline */
export interface VoltageAlongData {
  /** From the origin on: distance in m, voltage drop to neutral in V. */
  readonly points: readonly (readonly [distance: number, drop: number])[];
  /** Largest permitted drop, V. */
  readonly limit?: number;
  readonly sections: readonly { readonly name: string; readonly end: number }[];
}

/** Voltage drop along the route by the tabulated drop; nothing where a length or a drop is open. */
export function voltageAlongOf(
  installation: Installation,
  runId: string,
  figures: CircuitFigures,
): VoltageAlongData | undefined {
  const { dropAlong = [], dropLimit } = figures;
  if (isMissing(dropAlong)) return undefined;
  const points: (readonly [number, number])[] = [[0, 0]];
  const sections: { name: string; end: number }[] = [];
  let [end, dropped] = [0, 0];
  for (const { run, drop } of dropAlong) {
    if (isMissing(drop)) return undefined;
    for (const { name, length } of pathTo(installation, run)?.run.stretches ?? []) {
      if (length.state !== 'known') return undefined;
      end += length.value;
      sections.push({ name: run === runId ? name : `${run}: ${name}`, end });
    }
    dropped += drop;
    points.push([end, dropped]);
  }
  if (end === 0) return undefined;
  return {
    points,
    sections,
    ...(dropLimit === undefined || isMissing(dropLimit)
      ? {}
      : { limit: installation.supply.nominalVoltage * dropLimit }),
  };
}
