import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { notificationOf } from '../../src/demand/index.js';
import { amperes, known } from '../../src/index.js';
import { germany } from '../../src/networks/index.js';
import { point, premises } from '../demand/premises.js';
import type { PublishedCase } from '../support/published.js';

const decision = (current: number) =>
  notificationOf(
    bs7671Demand,
    germany,
    premises([], [point('ev', current, ['L1', 'L2', 'L3'])], { phases: known(3) }),
    { premises: 'other', completed: '2026-11-25' },
  ).decision;
const check = (current: number, id: string) => decision(current).results.find((r) => r.check === id);

/** Two points of 11 kVA, and what a common cap leaves of them: as the page counts them. */
const two = (cap?: number) =>
  notificationOf(
    bs7671Demand,
    germany,
    premises(
      [],
      ['left', 'right'].map((id) => point(id, 11_000 / 3 / 230, ['L1', 'L2', 'L3'])),
      { phases: known(3) },
      cap === undefined ? {} : { control: { name: 'cap', limit: known(amperes(cap)), controls: ['left', 'right'] } },
    ),
    { premises: 'other', completed: '2026-11-25' },
  ).decision.results.find((r) => r.check === 'de-below-consent');

/** Limits of German network operators as authorities and clubs print them. */
export const cases: readonly PublishedCase[] = [
  {
    id: 'de-controllable-above',
    about: 'power above which a charge point has to be controllable',
    source: { document: 'Questions and answers of the German network agency', where: 'charge points, § 14a EnWG' },
    provenance: 'one-source',
    exercises: ['de-below-controllable'],
    ours: () => (check(16, 'de-below-controllable')?.limit?.value ?? Number.NaN) / 1000,
    published: 4.2,
    unit: 'kW',
    tolerance: 1e-9,
  },
  {
    id: 'de-without-consent',
    about: 'the larger of 11 and 22 kW that needs no consent',
    source: { document: 'Advice of a German automobile club', where: 'registering a charge point' },
    provenance: 'one-source',
    exercises: ['de-below-consent'],
    ours: () => [22, 11].find((kW) => check(kW === 22 ? 32 : 16, 'de-below-consent')?.verdict === 'pass') ?? Number.NaN,
    published: 11,
    unit: 'kW',
    tolerance: 1e-9,
  },
  ...(
    [
      ['unmanaged', undefined, 22],
      ['managed', 11_000 / 3 / 230, 11],
    ] as const
  ).map(
    ([name, cap, published]): PublishedCase => ({
      id: `de-two-points-${name}`,
      about: `power that counts of two ${name} points of 11 kVA`,
      source: { document: 'Page of a German network operator on charge points', where: 'examples 1 and 2' },
      provenance: 'one-source',
      exercises: ['de-below-consent'],
      ours: () => (two(cap)?.value?.value ?? Number.NaN) / 1000,
      published,
      unit: 'kVA',
      tolerance: 1e-9,
    }),
  ),
];
