import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Rating factor C_i for cable surrounded by thermal insulation over a length. BS 7671 Table 52.2. */
export const table52_2 = /* @__PURE__ */ table({
  id: 'bs7671/52.2',
  title: 'Rating factor for cable surrounded by thermal insulation',
  axes: [{ name: 'insulatedLength', unit: 'm', between: 'next-up', allowedBy: 'the safe side', below: 'first' }],
  rows: `
    0.05 0.88
    0.1  0.78
    0.2  0.63
    0.4  0.51
    0.5   0.5`,
  cell: 'insulationFactor',
  unit: '1',
  source: /* @__PURE__ */ bs(
    'Table 52.2, 523.9',
    'memory',
    '0.78 and 0.50 seen in one text; an older edition printed 0.89, 0.81, 0.68, 0.55',
  ),
  notes: [
    'From 0.5 m up the factor stays 0.5.',
    'Method 103 already contains the insulation; with A and 100 to 102 the factor counts on the capacity clipped direct.',
  ],
});
