import { type Source, span, table } from '../../core/index.js';
import type { HeightRules } from '../../demand/mounting.js';

const source: Source = { document: 'Approved Document M', clause: '4.30', provenance: 'two-sources' };

/** Heights of controls and socket-outlets in buildings. Approved Document M, 4.30. */
export const buildingHeights = /* @__PURE__ */ table({
  id: 'approved-document-m/heights',
  title: 'Heights of controls and socket-outlets in buildings',
  axes: [
    { name: 'end', labels: ['least', 'greatest'] },
    { name: 'part', labels: ['controls', 'socket-outlet'] },
  ],
  rows: [
    ['controls', 750, 1200],
    ['socket-outlet', 400, 1000],
  ],
  cell: 'mountingHeight',
  unit: 'mm',
  source,
});

/** Heights of controls in buildings. Approved Document M, 4.30. */
export const buildingHeight = /* @__PURE__ */ span({
  id: 'building-height',
  title: 'Height of controls in a building',
  value: 'mountingHeight',
  least: 'leastHeight',
  most: 'greatestHeight',
  weight: 'advice',
  source,
});

/** Heights in buildings, which are asked of controls alone. */
export const buildingMounting: HeightRules = {
  check: buildingHeight,
  heightsOf: (part) =>
    part === 'controls'
      ? [buildingHeights.get({ part, end: 'least' }), buildingHeights.get({ part, end: 'greatest' })]
      : undefined,
};
