import fc from 'fast-check';
import { allocate } from '../../src/charging/index.js';
import { type CrossCheck, counted } from '../support/cross-check.js';
import { expectLexicographic } from './lexicographic.js';
import { networks } from './networks.js';

const holds = (claim: () => void): boolean => {
  try {
    claim();
    return true;
  } catch {
    return false;
  }
};

export const crossChecks: readonly CrossCheck[] = [
  {
    id: 'max-min-linear-programme',
    about: 'max-min fair sharing of current between charge points in trees with limits, mixed phases and weights',
    against: 'linear programmes for each level, solved by a general solver (highs)',
    topic: 'charging',
    demanded: 'every limit kept to 1e-7 A, every level the highest possible to 1e-6 A',
    leastShare: 1,
    run: () =>
      counted(fc.sample(networks({ nodes: 6, points: 12, weights: true }), { numRuns: 100, seed: 6 }), (network) =>
        holds(() =>
          expectLexicographic(
            network,
            allocate(network, { rule: 'max-min-amperes', stage: 'continuous' }).points.map((p) => p.current as number),
            network.points.map((p) => p.weight as number),
          ),
        ),
      ),
  },
];
