import { formula } from '../../core/index.js';

/**
 * Demand of a group whose first amperes count in full and whose rest counts in part, such as household cooking. On-
 * Site Guide, Table A2.
 */
export const firstAndShare = /* @__PURE__ */ formula({
  id: 'first-and-share',
  title: 'First amperes in full, a share of the rest, and an addition for socket-outlets',
  inputs: ['connectedCurrent', 'firstCurrent', 'demandFactor', 'socketAllowance'],
  output: 'demand',
  expression:
    'min(connectedCurrent, firstCurrent) + (connectedCurrent - min(connectedCurrent, firstCurrent)) * demandFactor + socketAllowance',
  compute: ({ connectedCurrent, firstCurrent, demandFactor, socketAllowance }) => {
    const first = Math.min(connectedCurrent, firstCurrent);
    return first + (connectedCurrent - first) * demandFactor + socketAllowance;
  },
  source: { document: 'On-Site Guide', clause: 'Table A2', provenance: 'two-sources' },
});

/**
 * Demand of a dwelling's circuits by one rule: the largest in full, a share of every other. On-Site Guide, Table A2,
 * standard circuits.
 */
export const largestAndShare = /* @__PURE__ */ formula({
  id: 'largest-and-share',
  title: 'Largest circuit in full and a share of every other',
  inputs: ['largestCurrent', 'allCurrents', 'demandFactor'],
  output: 'existingDemand',
  expression: 'largestCurrent + (allCurrents - largestCurrent) * demandFactor',
  compute: ({ largestCurrent, allCurrents, demandFactor }) =>
    largestCurrent + (allCurrents - largestCurrent) * demandFactor,
  source: { document: 'On-Site Guide', clause: 'Table A2, standard circuits', provenance: 'two-sources' },
});
