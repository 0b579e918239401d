import { formatIn } from '../units/index.js';
import type { Cable } from './cable.js';
import type { OvercurrentKind } from './device.js';
import type { ChargePointEarthing } from './load.js';

/** What a device is called. */
export const deviceName = (kind: OvercurrentKind): string => {
  if (!isFuse(kind)) return hasResidual(kind) ? 'RCBO' : 'MCB';
  return kind.standard === 'BS 3036' ? 'rewirable fuse' : 'fuse';
};

/** Its curve, which is not called a type: a type B is ordered as a residual current device. Old circuit-breakers have types 1 to 3. */
export const curveWords = (kind: OvercurrentKind): string | undefined =>
  'type' in kind ? `${kind.standard === 'BS 3871' ? 'type' : 'curve'} ${kind.type}` : undefined;

/** Name, standard and curve of a device: RCBO EN 61009, curve B. */
export const kindWords = (kind: OvercurrentKind): string =>
  [`${deviceName(kind)} ${kind.standard}`, curveWords(kind)].filter(Boolean).join(', ');

/** Whether it is a fuse: every circuit-breaker is of a type. */
export const isFuse = (kind: OvercurrentKind): boolean => !('type' in kind);

/** Whether there is a residual current device in it. */
export const hasResidual = (kind: OvercurrentKind): boolean => kind.standard === 'EN 61009';

/** Size of the line conductors by its name, or by its area; undefined where it is not known. */
export const sizeWords = ({ area, sizeName }: Cable): string | undefined =>
  area.state === 'known' ? (sizeName ?? formatIn(area.value, 'mm²')) : undefined;

/** Ways to earth a charge point, as the trade calls them. */
export const earthingWords: Readonly<Record<ChargePointEarthing, string>> = {
  'balanced-three-phase': 'earth of the supply, with a balanced three-phase load',
  'low-electrode': 'earth of the supply, with an electrode beside it',
  'open-pen-detection-touch-voltage': 'open-PEN detection by touch voltage',
  'open-pen-detection-window': 'open-PEN detection by the voltage of line to neutral',
  'open-pen-detection-other': 'open-PEN detection of another kind',
  'tt-earthing': 'TT earthing for the charge point',
  'electrical-separation': 'electrical separation',
  'supply-earth': 'earth of the supply alone',
};
