import { formula } from '../../core/index.js';

/** Voltage drop of a run from the tabulated drop per ampere and metre. BS 7671 Appendix 4, 6.1. */
export const voltageDropTabulated = /* @__PURE__ */ formula({
  id: 'voltage-drop-tabulated',
  title: 'Voltage drop from the tabulated drop per ampere and metre',
  inputs: ['dropRate', 'designCurrent', 'length'],
  output: 'voltageDrop',
  expression: 'dropRate * designCurrent * length',
  compute: ({ dropRate, designCurrent, length }) => dropRate * designCurrent * length,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Appendix 4, 6.1', provenance: 'two-sources' },
});
