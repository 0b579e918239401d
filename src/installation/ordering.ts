import type { Fact } from '../core/index.js';
import { formatIn } from '../units/index.js';
import type { ResidualDevice } from './device.js';
import { curveWords, deviceName, hasResidual, isFuse } from './marking.js';
import type { Run } from './tree.js';

type Protected = Pick<Run, 'device' | 'residual' | 'lines'>;

const amps = (fact: Fact<number> | undefined, what: string): string =>
  fact?.state === 'known' ? formatIn(fact.value, 'A') : `${what} to be decided`;

/** What a residual current device is ordered by beside its rated current: 30 mA type A, double pole. */
function residualWords({ rating, type, delay, opensAllLive: all }: ResidualDevice, lines: number): string {
  const poles = lines === 1 ? ['double pole', 'single pole'] : ['four pole', 'triple pole'];
  return [
    `${amps(rating, 'rated residual current')} ${type.state === 'known' ? `type ${type.value}` : 'of a type to be decided'}`,
    ...(delay?.state === 'known' && delay.value === 'selective' ? ['time-delayed (S)'] : []),
    all?.state === 'known' ? (all.value ? poles[0] : `${poles[1]}, neutral not switched`) : 'poles to be decided',
  ].join(', ');
}

/** What is said of a device wherever it is named: RCBO 32 A, curve B, 30 mA type A, double pole. */
export function deviceWords({ device, residual = [], lines }: Protected): string {
  const rated = amps(device.rating, 'rating');
  if (device.kind.state !== 'known') return `overcurrent device ${rated}, kind to be decided`;
  const kind = device.kind.value;
  const own = residual.find((r) => r.position === 'origin-of-circuit');
  const rest = hasResidual(kind)
    ? own
      ? residualWords(own, lines.length)
      : 'rating and type of its residual current part to be decided'
    : isFuse(kind)
      ? undefined
      : lines.length === 1
        ? 'single pole'
        : 'triple pole';
  return [`${deviceName(kind)} ${rated}`, curveWords(kind), rest].filter(Boolean).join(', ');
}

/** The same as an item to order, with its breaking capacity and its standard. */
export const orderWords = (run: Protected): string =>
  [
    deviceWords(run),
    amps(run.device.breakingCapacity, 'breaking capacity'),
    ...(run.device.kind.state === 'known' ? [run.device.kind.value.standard] : []),
  ].join(', ');

/** Residual current devices to be ordered beside the overcurrent device of a run, in words: RCD 63 A, 30 mA type A, double pole. */
export function separateResidual({ device, residual = [], lines }: Protected) {
  const combined = device.kind.state === 'known' && hasResidual(device.kind.value);
  return residual
    .filter((r) => r.position === 'along-circuit' || (r.position === 'origin-of-circuit' && !combined))
    .map((r) => `RCD ${amps(r.ratedCurrent, 'rated current')}, ${residualWords(r, lines.length)}`);
}
