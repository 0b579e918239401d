import type { TestKind } from '../codes/wiring-code.js';
import { continuity, insulation, ring } from './dead-tests.js';
import { direct, electrode, loop, prospective, residual, underLoad } from './live-tests.js';
import type { PlannedReading, TestCase } from './planned-reading.js';

const plain = (id: string, what: string): readonly PlannedReading[] => [{ id, what, limits: [] }];

/** The readings of each kind of test. @internal */
export const readingsOf: { readonly [K in TestKind]: (input: TestCase) => readonly PlannedReading[] } = {
  continuity,
  'ring-continuity': ring,
  insulation,
  polarity: () => plain('polarity', 'polarity at the board and at the point'),
  electrode,
  'loop-impedance': loop,
  'prospective-current': prospective,
  'residual-current-device': residual,
  'direct-current-detection': direct,
  'phase-sequence': (input) =>
    input.circuit.phases === 3 ? plain('phaseSequence', 'phase sequence, as intended') : [],
  functional: () => plain('functional', 'switching, interlocks, load control and the point itself'),
  'voltage-under-load': underLoad,
};
