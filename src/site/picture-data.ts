import type { CircuitFigures, WiringCode } from '../codes/wiring-code.js';
import { isMissing } from '../core/index.js';
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
  figures: CircuitFigures,
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
  return { series, marks, times: [] };
}

/** What a picture of the voltage along the route shows: distances in m, voltages to neutral in V. @inline */
export interface VoltageAlongData {
  /** A line for each supply voltage. */
  readonly series: readonly {
    readonly name: string;
    readonly points: readonly (readonly [distance: number, voltage: number])[];
  }[];
  readonly limits: readonly { readonly name: string; readonly voltage: number }[];
  readonly stretches: readonly { readonly name: string; readonly end: number }[];
}

/**
 * Voltage along the route by the tabulated drop, from the nominal and from the smallest supply voltage; nothing where a
 * length or a drop is open.
 */
export function voltageAlongOf(
  installation: Installation,
  runId: string,
  figures: CircuitFigures,
): VoltageAlongData | undefined {
  const { dropAlong = [], dropLimit, lowestSupply } = figures;
  if (isMissing(dropAlong)) return undefined;
  const along: (readonly [number, number])[] = [[0, 0]];
  const stretches: { name: string; end: number }[] = [];
  let [end, dropped] = [0, 0];
  for (const { run, drop } of dropAlong) {
    if (isMissing(drop)) return undefined;
    for (const { name, length } of pathTo(installation, run)?.run.stretches ?? []) {
      if (length.state !== 'known') return undefined;
      end += length.value;
      stretches.push({ name: run === runId ? name : `${run}: ${name}`, end });
    }
    dropped += drop;
    along.push([end, dropped]);
  }
  if (end === 0) return undefined;
  const from = (name: string, voltage: number) => ({ name, points: along.map(([d, u]) => [d, voltage - u] as const) });
  const { nominalVoltage } = installation.supply;
  return {
    series: [
      from('from the nominal voltage', nominalVoltage),
      ...(typeof lowestSupply !== 'number' ? [] : [from('from the smallest supply voltage', lowestSupply)]),
    ],
    limits:
      dropLimit === undefined || isMissing(dropLimit)
        ? []
        : [{ name: 'limit of the drop', voltage: nominalVoltage * (1 - dropLimit) }],
    stretches,
  };
}
