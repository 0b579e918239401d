import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allocate, type ChargingNetwork } from '../../src/charging/index.js';
import { seedOf } from '../support/seed.js';
import { networks, rowsOf } from './networks.js';

const fits = (network: ChargingNetwork, x: readonly number[]) =>
  rowsOf(network).every(({ who, sign, room }) => who.reduce((s, i, k) => s + sign[k]! * x[i]!, 0) <= room + 1e-9);

test('those served are the first set in the order of the queue, of all sets of smallest currents that fit', () => {
  fc.assert(
    fc.property(networks({ nodes: 4, points: 8, whole: true, overload: true }), (network) => {
      const result = allocate(network, { rule: 'max-min-amperes' });
      const queue = network.points
        .flatMap((p, i) => (p.connected === false ? [] : [i]))
        .sort((a, b) => {
          const [p, q] = [network.points[a]!, network.points[b]!];
          return p.waitingSince! - q.waitingSince! || (p.id < q.id ? -1 : 1);
        });
      // bit strings in the order of the queue, the largest that fits
      let best = '';
      for (let set = 0; set < 2 ** queue.length; set++) {
        const bits = queue.map((_, k) => (set >> k) & 1);
        const x = network.points.map(() => 0);
        queue.forEach((i, k) => {
          x[i] = bits[k]! * 6;
        });
        if (bits.join('') > best && fits(network, x)) best = bits.join('');
      }
      expect(queue.map((i) => (result.points[i]!.current > 0 ? 1 : 0)).join('')).toBe(best);
    }),
    { numRuns: 300, seed: seedOf(11) },
  );
});

test('whole amperes on one line each are the best of all whole currents of those served, by their sorted list', () => {
  fc.assert(
    fc.property(networks({ nodes: 3, points: 5, whole: true, singlePhase: true }), (network) => {
      const small = {
        ...network,
        points: network.points.map((p) => ({ ...p, most: (p.most % 7) + 6 })),
      } as unknown as ChargingNetwork;
      const x = allocate(small, { rule: 'max-min-amperes' }).points.map((p) => p.current as number);
      const served = x.flatMap((value, i) => (value > 0 ? [i] : []));
      const sorted = (list: readonly number[]) =>
        served
          .map((i) => String(list[i]).padStart(2, '0'))
          .sort()
          .join(' ');
      let best = sorted(x);
      const walk = (k: number, trial: number[]): void => {
        if (k === served.length) {
          if (sorted(trial) > best && fits(small, trial)) best = sorted(trial);
          return;
        }
        const i = served[k]!;
        for (let value = 6; value <= small.points[i]!.most; value++) {
          trial[i] = value;
          walk(k + 1, trial);
        }
        trial[i] = 0;
      };
      walk(
        0,
        x.map(() => 0),
      );
      expect(sorted(x)).toBe(best);
    }),
    { numRuns: 150, seed: seedOf(12) },
  );
});
