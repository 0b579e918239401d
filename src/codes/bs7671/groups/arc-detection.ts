import { chosen, derive, holds, missingOf, weigh } from '../../../calculation/index.js';
import { isMissing, statement, unknown } from '../../../core/index.js';
import { ofCircuit } from '../../iec-family/places.js';

const source = {
  document: 'BS 7671',
  clause: '421.1.7',
  provenance: 'memory',
  note: 'houses in multiple occupation and the limit of 32 A: one source',
} as const;
const title = 'An arc fault detection device to EN 62606 stands at the origin of the circuit';

/** Arc detection in premises where it is required. BS 7671, 421.1.7. */
export const arcDetectionRequired = /* @__PURE__ */ statement({ id: 'arc-detection', title, weight: 'rule', source });

/** Arc detection elsewhere. BS 7671, 421.1.7. */
export const arcDetectionAdvised = /* @__PURE__ */ statement({
  id: 'arc-detection-advised',
  title,
  weight: 'advice',
  source,
});

/** Arc fault detection: required in some premises, recommended in the others. BS 7671 421.1.7. */
export const arcDetection = () => ({
  circuit: {
    premises: ofCircuit(({ options }) => options.premises?.kind ?? unknown('ask the owner'), {
      called: 'kind of premises',
    }),
    arcDetection: ofCircuit(
      ({ options }) => options.premises?.arcDetection ?? unknown('look at the origin of the circuit'),
      { called: 'arc fault detection device' },
    ),
    upTo32: derive(['deviceRating'], ({ deviceRating }) => deviceRating <= 32, { direction: { deviceRating: -1 } }),
    arcRuleApplies: weigh(
      ['finalSockets', 'singlePhase', 'upTo32', 'arcDetection', 'premises'],
      ({ finalSockets, singlePhase, upTo32, arcDetection, premises }) => {
        if (finalSockets !== true || singlePhase !== true || upTo32 === false)
          return 'It is not a single-phase final circuit of up to 32 A with socket-outlets.';
        return arcDetection !== true && (isMissing(premises) || isMissing(upTo32))
          ? missingOf([premises, upTo32])
          : true;
      },
    ),
    arcRule: weigh(['arcRuleApplies', 'arcDetection', 'premises'], ({ arcRuleApplies, arcDetection, premises }) => {
      const elsewhere = premises === 'dwelling' || premises === 'other';
      return arcRuleApplies === true && arcDetection !== true && elsewhere ? 'recommended' : 'required';
    }),
  },
  checks: [
    chosen('arcRule', {
      required: [
        holds(
          arcDetectionRequired,
          'arcDetection',
          weigh(['arcDetection', 'premises'], ({ arcDetection, premises }) =>
            arcDetection === true ? 'it is fitted' : `it is required here: ${premises}`,
          ),
          { applies: 'arcRuleApplies' },
        ),
      ],
      recommended: [
        holds(
          arcDetectionAdvised,
          'arcDetection',
          derive(['premises'], ({ premises }) => `it is recommended here: ${premises}`),
        ),
      ],
    }),
  ],
});
