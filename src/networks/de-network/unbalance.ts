import { table } from '../../core/index.js';

/** Largest difference between lines that charge points may cause, by country. National connection rules, unbalance. */
export const unbalanceCaps = /* @__PURE__ */ table({
  id: 'de-network/unbalance',
  title: 'Largest difference between the currents of lines caused by charge points',
  axes: [
    { name: 'cap', labels: ['charge points'] },
    { name: 'country', labels: ['DE', 'AT', 'CH'] },
  ],
  rows: [
    ['DE', 20],
    ['AT', 16],
    ['CH', 16],
  ],
  cell: 'unbalanceLimit',
  unit: 'A',
  source: { document: 'national connection rules', clause: 'unbalance', provenance: 'one-source' },
  provenanceOf: { DE: 'two-sources' },
  notes: ['Great Britain has no fixed figure (from memory): balance, and the cut-out of each line.'],
});
