import { type Fact, known } from '../../core/index.js';
import type { ResidualDevice } from '../../installation/index.js';

export { residualUpstream } from '../../installation/index.js';

/** Largest rated residual current of which no selective device exists, A: EN 61008-1, from memory. */
export const neverSelective = 0.03;

/** Delay that a residual current device is judged by: as marked, else the slower one that it may have. */
export function delayOf(device: ResidualDevice): {
  readonly delay: Fact<'general' | 'selective'>;
  readonly by?: string;
} {
  if (device.delay !== undefined) return { delay: device.delay };
  return device.rating.state === 'known' && device.rating.value <= neverSelective
    ? { delay: known('general'), by: 'no delay stated; up to 30 mA there is no selective device' }
    : { delay: known('selective'), by: 'no delay stated: the slower kind is taken' };
}
