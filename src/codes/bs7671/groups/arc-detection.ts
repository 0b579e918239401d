import { chosen, holds, missingOf, set, weigh } from '../../../calculation/index.js';
import { advice, isMissing, rule, unknown } from '../../../core/index.js';
import { ofCircuit } from '../../iec-family/places.js';

const source = {
  document: 'BS 7671',
  clause: '421.1.7',
  provenance: 'memory',
  note: 'houses in multiple occupation and the limit of 32 A, which is that of the socket-outlet: one source',
} as const;
const title = 'An arc fault detection device to EN 62606 stands at the origin of the circuit';

/** Arc detection in premises where it is required. BS 7671:2018+A2:2022, 421.1.7. */
export const arcDetectionRequired = /* @__PURE__ */ rule({
  id: 'arc-detection',
  title,
  source,
});

/** Arc detection elsewhere, and by the editions that recommend it alone. BS 7671, 421.1.7. */
export const arcDetectionAdvised = /* @__PURE__ */ advice({
  id: 'arc-detection-advised',
  title,
  source,
});

const noSuchCircuit = 'It is not a single-phase circuit with socket-outlets of up to 32 A.';

/** Arc fault detection as 2018 has it: recommended. BS 7671:2018, 421.1.7. */
export const arcDetection = () => ({
  circuit: {
    premises: ofCircuit(({ options }) => options.premises?.kind ?? unknown('ask the owner'), {
      called: 'kind of premises',
    }),
    arcDetection: ofCircuit(
      ({ options }) => options.premises?.arcDetection ?? unknown('look at the origin of the circuit'),
      { called: 'arc fault detection device' },
    ),
  },
  checks: [
    holds(arcDetectionAdvised, 'arcDetection', set('it is recommended in all premises'), {
      applies: weigh(['finalSockets', 'singlePhase'], ({ finalSockets, singlePhase }) => {
        if (finalSockets === false || singlePhase === false) return noSuchCircuit;
        return isMissing(finalSockets) ? finalSockets : true;
      }),
    }),
  ],
});

/** Arc fault detection since A2: required in some premises, recommended in the others. BS 7671:2018+A2:2022, 421.1.7. */
export const arcDetectionByPremises = () => ({
  circuit: {
    arcRuleApplies: weigh(
      ['finalSockets', 'singlePhase', 'arcDetection', 'premises'],
      ({ finalSockets, singlePhase, arcDetection, premises }) => {
        if (finalSockets === false || singlePhase === false) return noSuchCircuit;
        return arcDetection !== true && (isMissing(premises) || isMissing(finalSockets))
          ? missingOf([premises, finalSockets])
          : true;
      },
    ),
    arcRule: weigh(['arcRuleApplies', 'arcDetection', 'premises'], ({ arcRuleApplies, arcDetection, premises }) => {
      const elsewhere = premises === 'dwelling' || premises === 'other';
      return typeof arcRuleApplies !== 'string' && arcDetection !== true && elsewhere ? 'recommended' : 'required';
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
          weigh(['premises'], ({ premises }) => `it is recommended here: ${premises}`),
          { applies: 'arcRuleApplies' },
        ),
      ],
    }),
  ],
});
