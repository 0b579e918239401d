import { hasCode } from '../../src/index.js';
import type { Problem } from '../../src/units/index.js';

/** Everything for which an input is refused; nothing where it is taken. */
export function problemsOf(read: () => unknown): readonly Problem[] {
  try {
    read();
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems;
    throw error;
  }
  return [];
}
