import { type Gap, notDetermined, statement } from '../../core/index.js';
import type { Rule } from '../wiring-code.js';

/** Conductors in parallel withstand a fault in one of them, fed from both of its ends. BS 7671 434.4. */
export const parallelConductorsWithstand = /* @__PURE__ */ statement({
  id: 'parallel-conductors-under-fault',
  title: 'Each of the conductors in parallel withstands a fault, fed from both of its ends',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.4', provenance: 'memory' },
  caution: 'A fault in one of several conductors in parallel is fed by the others from its far end as well.',
});

const noRule: Gap = {
  kind: 'fact',
  fact: 'energy in one of several conductors in parallel',
  obtain: 'there is no rule for it here: have it worked out, each conductor fed from both of its ends',
};

/**
 * A rule on thermal withstand that judges nothing where conductors lie in parallel: how a fault in one of them is fed
 * is not worked out.
 */
export const ofSingleConductors =
  (rule: Rule): Rule =>
  (circuit, findings, sheet) =>
    (circuit.run.cable.parallel ?? 1) > 1
      ? [sheet.result(notDetermined(parallelConductorsWithstand, noRule))]
      : rule(circuit, findings, sheet);
