import { table } from '../../core/index.js';

/** Heights of charge points. IET Code of Practice for charging equipment, 4th edition, 4.4. */
export const codeOfPracticeHeights = /* @__PURE__ */ table({
  id: 'charging-code-of-practice/heights',
  title: 'Heights of charge points',
  axes: [
    { name: 'end', labels: ['least', 'greatest'] },
    { name: 'part', labels: ['outlet', 'display'] },
  ],
  columns: [['least'], ['greatest']],
  rows: [
    ['outlet', 750, 1200],
    ['display', 1200, 1400],
  ],
  cell: 'mountingHeight',
  unit: 'mm',
  source: {
    document: 'IET Code of Practice for Electric Vehicle Charging Equipment Installation',
    edition: '4th',
    clause: '4.4',
    provenance: 'one-source',
  },
});
