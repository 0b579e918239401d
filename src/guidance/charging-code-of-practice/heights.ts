import { type Source, span, table } from '../../core/index.js';
import type { HeightRules } from '../../demand/mounting.js';

const source: Source = {
  document: 'IET Code of Practice for Electric Vehicle Charging Equipment Installation',
  edition: '4th',
  clause: '4.4',
  provenance: 'one-source',
  note: 'a 5th edition was published in 2023; its heights were not seen',
};

/** Heights of charge points. IET Code of Practice for charging equipment, 4th edition, 4.4. */
export const codeOfPracticeHeights = /* @__PURE__ */ table({
  id: 'charging-code-of-practice/heights',
  title: 'Heights of charge points',
  axes: [
    { name: 'end', labels: ['least', 'greatest'] },
    { name: 'part', labels: ['outlet', 'display'] },
  ],
  rows: [
    ['outlet', 750, 1200],
    ['display', 1200, 1400],
  ],
  cell: 'mountingHeight',
  unit: 'mm',
  source,
});

/**
 * Heights that a code of practice asks of outlet and display. IET Code of Practice for Electric Vehicle Charging
 * Equipment Installation, 4.4.
 */
export const generalHeight = /* @__PURE__ */ span({
  id: 'mounting-height',
  title: 'Height within the code of practice',
  value: 'mountingHeight',
  least: 'leastHeight',
  most: 'greatestHeight',
  weight: 'advice',
  source,
});

/** Heights of the code of practice; controls count as the outlet does. */
export const codeOfPracticeMounting: HeightRules = {
  check: generalHeight,
  heightsOf: (part) => {
    const at = part === 'controls' ? 'outlet' : part;
    return [
      codeOfPracticeHeights.get({ part: at, end: 'least' }),
      codeOfPracticeHeights.get({ part: at, end: 'greatest' }),
    ];
  },
};
