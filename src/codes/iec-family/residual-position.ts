import { contradicted } from '../../core/contradicted.js';
import { endsOf, type Fact, known, unknown } from '../../core/index.js';
import type { ResidualDevice } from '../../installation/index.js';
import { type Seconds, seconds } from '../../units/index.js';

export { residualUpstream } from '../../installation/index.js';

/** Largest rated residual current of which no selective device exists, A: EN 61008-1, from memory. */
export const neverSelective = 0.03;

const disagreeing = /* @__PURE__ */ contradicted(
  'read the marking again: up to 30 mA there is no delayed device, and on a general one no delay is set',
);
const neverDelayed = ({ rating }: ResidualDevice): boolean => {
  const ends = endsOf(rating);
  return ends !== undefined && ends[1] <= neverSelective;
};

/** Delay that is set on a residual current device: none on a general one, nor up to 30 mA; else as it is stated. */
export function setDelayOf(device: ResidualDevice): Fact<Seconds> {
  const { delay, delayTime } = device;
  const general = delay ? delay.state === 'known' && delay.value === 'general' : neverDelayed(device);
  if (!general) return delayTime ?? unknown('read the setting; 0 s where it is not adjustable');
  if (delayTime?.state === 'unknown') return delayTime;
  const none = !delayTime || (delayTime.state === 'known' && delayTime.value === 0);
  return none ? known(seconds(0)) : disagreeing;
}
/** Whether it is known that none is set. */
export function isSetToNone(device: ResidualDevice): boolean {
  const set = setDelayOf(device);
  return set.state === 'known' && set.value === 0;
}

/** Delay that a residual current device is judged by: as marked, else the slower one that it may have. */
export function delayOf(device: ResidualDevice): {
  readonly delay: Fact<'general' | 'selective'>;
  readonly by?: string;
} {
  const { delay } = device;
  const small = neverDelayed(device);
  const least = endsOf(device.rating)?.[0] ?? Number.POSITIVE_INFINITY;
  if (least <= neverSelective && delay?.state === 'known' && delay.value === 'selective') return { delay: disagreeing };
  if (delay !== undefined) return { delay };
  return small
    ? { delay: known('general'), by: 'no delay stated; up to 30 mA there is no selective device' }
    : { delay: known('selective'), by: 'no delay stated: the slower kind is taken' };
}
