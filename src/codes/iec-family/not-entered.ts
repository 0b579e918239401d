import type { NotEntered } from '../../calculation/index.js';
import type { Gap, Source } from '../../core/index.js';
import { type Aspect, aspects } from '../wiring-code.js';

/**
 * Groups of checks whose text could not be had: nothing is judged by them.
 * @param source where they would stand
 * @param notEntered what stands in the way
 */
export const notEnteredGroups = (source: Source, notEntered: Gap): Readonly<Record<Aspect, NotEntered>> =>
  Object.fromEntries(aspects.map((aspect) => [aspect, { notEntered, source }])) as Record<Aspect, NotEntered>;
