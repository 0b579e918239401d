import { table } from '../../../core/index.js';
import { soilFactors } from '../../iec-family/factor-forms.js';

/** Rating factor for soil thermal resistivities other than 2.5 K·m/W. IEC 60364-5-52 Table B.52.16. */
export const tableB5216 = /* @__PURE__ */ table(soilFactors, {
  id: 'iec60364/b.52.16',
  title: 'Rating factor for soil thermal resistivity',
  rows: `
    laying ducts direct
    0.5     1.28   1.88
    0.7      1.2   1.62
    1       1.18    1.5
    1.5      1.1   1.28
    2       1.05   1.12
    2.5        1      1
    3       0.96    0.9`,
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Table B.52.16', provenance: 'memory' },
});
