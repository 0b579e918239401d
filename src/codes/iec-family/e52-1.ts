import { table } from '../../core/index.js';

/** Factors for third harmonics in four- and five-core cables with four loaded cores. IEC 60364-5-52 Table E.52.1. */
export const tableE521 = /* @__PURE__ */ table({
  id: 'iec60364/e.52.1',
  title: 'Factors for third-harmonic currents in four- and five-core cables',
  axes: [
    { name: 'chosenBy', labels: ['line', 'neutral'] },
    {
      name: 'thirdHarmonic',
      unit: '1',
      between: 'next-up',
      allowedBy: 'the print has bands: up to 15 %, 15 to 33 %, 33 to 45 %, above 45 %',
      below: 'first',
    },
  ],
  rows: `
    chosenBy line neutral
    0.15        1       -
    0.33     0.86       -
    0.45        -    0.86
    1           -       1`,
  cell: 'harmonicFactor',
  unit: '1',
  source: {
    document: 'IEC 60364-5-52',
    edition: '2009',
    clause: 'Table E.52.1',
    provenance: 'one-source',
    note: 'all four factors and their bands stood in an engineer’s article that prints the table of BS 7671 Appendix 4, 5.5',
  },
  notes: [
    'Balanced three-phase circuits, neutral of the same size and material in the same cable.',
    'Third harmonic as a share of the line current; the row of 1 stands for everything above 45 %.',
  ],
});
