import { formatIn } from '../units/index.js';
import type { Cable } from './cable.js';
import type { OvercurrentKind } from './device.js';

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
