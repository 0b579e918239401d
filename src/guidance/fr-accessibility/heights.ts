import { type Source, span, table } from '../../core/index.js';
import type { HeightRules } from '../../demand/mounting.js';

const source: Source = {
  document: 'French order of 1 August 2006',
  clause: 'accessible equipment',
  provenance: 'one-source',
};

/** Heights of accessible equipment in France. Order of 1 August 2006. */
export const frenchHeights = /* @__PURE__ */ table({
  id: 'fr-accessibility/heights',
  title: 'Heights of accessible equipment in France',
  axes: [
    { name: 'end', labels: ['least', 'greatest'] },
    { name: 'part', labels: ['outlet'] },
  ],
  rows: [['outlet', 900, 1300]],
  cell: 'mountingHeight',
  unit: 'mm',
  source,
});

/** Heights of accessible equipment in France. French order of 1 August 2006. */
export const frenchHeight = /* @__PURE__ */ span({
  id: 'french-height',
  title: 'Height of accessible equipment in France',
  value: 'mountingHeight',
  least: 'leastHeight',
  most: 'greatestHeight',
  weight: 'advice',
  source,
});

/** Heights of accessible equipment in France, which are asked of the outlet alone. */
export const frenchMounting: HeightRules = {
  check: frenchHeight,
  heightsOf: (part) =>
    part === 'outlet'
      ? [frenchHeights.get({ part, end: 'least' }), frenchHeights.get({ part, end: 'greatest' })]
      : undefined,
};
