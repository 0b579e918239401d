import { rule } from '../core/index.js';

/** The demand on a line is within the rated current of the transformer. IEC 60076-1, rated power. */
export const demandWithinTransformer = /* @__PURE__ */ rule({
  id: 'demand-within-transformer',
  title: 'Maximum demand is at most the rated current of the transformer',
  of: ['demand', 'at-most', 'transformerCurrent'],
  source: { document: 'IEC 60076-1', clause: 'rated power', provenance: 'memory' },
  caution:
    'Rated power holds for the cooling medium of the standard and a sinusoidal load. Loading beyond it for hours, and what it costs in ageing, is for the owner to decide by IEC 60076-7.',
});
