import { type Source, span, table } from '../../core/index.js';
import type { HeightRules } from '../../demand/mounting.js';

const source: Source = {
  document: 'PAS 1899',
  edition: '2022',
  clause: '5.2 of the draft',
  provenance: 'one-source',
  note: 'figures of the draft; see the published text',
};

/** Heights of accessible charge points. PAS 1899. */
export const accessibleHeights = /* @__PURE__ */ table({
  id: 'pas1899/heights',
  title: 'Heights of accessible charge points',
  axes: [
    { name: 'end', labels: ['least', 'greatest'] },
    { name: 'part', labels: ['outlet', 'controls', 'display'] },
  ],
  rows: [
    ['outlet', 750, 1000],
    ['controls', 800, 1000],
    ['display', 1100, 1300],
  ],
  cell: 'mountingHeight',
  unit: 'mm',
  source,
});

/** Heights of accessible points. PAS 1899, 5.2 of the draft. */
export const accessibleHeight = /* @__PURE__ */ span({
  id: 'accessible-height',
  title: 'Height of an accessible charge point',
  value: 'mountingHeight',
  least: 'leastHeight',
  most: 'greatestHeight',
  weight: 'advice',
  source,
  caution: 'The figures are those of a draft: see the published text.',
});

/** Heights of accessible charge points. */
export const accessibleMounting: HeightRules = {
  check: accessibleHeight,
  heightsOf: (part) => [
    accessibleHeights.get({ part, end: 'least' }),
    accessibleHeights.get({ part, end: 'greatest' }),
  ],
};
