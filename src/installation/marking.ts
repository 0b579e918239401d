import { formatIn } from '../units/index.js';
import type { Cable } from './cable.js';
import type { OvercurrentKind } from './device.js';
import type { ChargePointEarthing } from './load.js';

/** Standard and type, as a device is marked. */
export const kindWords = (kind: OvercurrentKind): string =>
  `${kind.standard}${'type' in kind ? ` type ${kind.type}` : ''}`;

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
