import type { Envelope } from '../../physics/index.js';
import type { Amperes } from '../../units/index.js';
import { ggConventional, ggConventionalTimes } from './conventional-currents.js';
import { ggGates } from './gg-gates.js';

/**
 * The zone of gG fuses of a rating between the gates of their standard: never one curve. All its points are recalled
 * figures.
 * @param deviceRating rated current, A, one that the gates list
 * @returns points that bound the zone below and above
 * @throws CalculationError `no-cell` for a rating without gates
 * @example
 * ```ts
 * import { amperes } from 'ohmwright';
 * import { ggEnvelope } from 'ohmwright/products';
 *
 * ggEnvelope(amperes(100)).slow.length; // => 3
 * ```
 */
export function ggEnvelope(deviceRating: Amperes): Envelope {
  const gate = (name: 'least-10s' | 'most-5s' | 'least-0.1s' | 'most-0.1s') =>
    ggGates.get({ gate: name, deviceRating });
  const time = ggConventionalTimes.get({ edge: 'fusing', deviceRating });
  const conventional = (edge: 'fusing' | 'non-fusing') => ({
    current: ggConventional.get({ edge, deviceRating }) * deviceRating,
    time,
  });
  return {
    fast: [
      conventional('non-fusing'),
      { current: gate('least-10s'), time: 10 },
      { current: gate('least-0.1s'), time: 0.1 },
    ],
    slow: [conventional('fusing'), { current: gate('most-5s'), time: 5 }, { current: gate('most-0.1s'), time: 0.1 }],
  };
}
