import { factValue, isMissing, type Known, notDetermined, notRequired, statement } from '../../../core/index.js';
import { outletsBelow } from '../../../installation/index.js';
import type { Rule } from '../../wiring-code.js';

const source = {
  document: 'BS 7671',
  edition: '2018+A2:2022',
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

/** Arc fault detection. BS 7671 421.1.7. */
export const arcDetection: Rule = (circuit, _findings, sheet) => {
  const outlets = outletsBelow(circuit.run);
  const sockets = outlets.some((o) => o.kind === 'load' && (o.purpose === 'socket-outlets' || o.withSocket === true));
  const final = circuit.run.feeds.every((o) => o.kind !== 'board');
  const { rating } = circuit.run.device;
  const over = rating.state === 'known' && rating.value > 32;
  if (!sockets || !final || circuit.phases === 3 || over)
    return [
      sheet.result(
        notRequired(
          arcDetectionRequired,
          'not-applicable',
          'It is not a single-phase final circuit of up to 32 A with socket-outlets.',
        ),
      ),
    ];
  const { premises } = circuit.options;
  const kind = factValue('kind of premises', premises?.kind ?? { state: 'unknown', obtain: 'ask the owner' });
  const amps = factValue('rating of the overcurrent device', rating);
  const holds: Known<boolean> = factValue(
    'arc fault detection device',
    premises?.arcDetection ?? { state: 'unknown', obtain: 'look at the origin of the circuit' },
  );
  if (holds === true) return [sheet.check(arcDetectionRequired, { holds, because: 'it is fitted' })];
  if (isMissing(kind) || isMissing(amps))
    return [
      sheet.result(
        notDetermined(
          arcDetectionRequired,
          ...(isMissing(kind) ? kind.missing : []),
          ...(isMissing(amps) ? amps.missing : []),
        ),
      ),
    ];
  const required = kind !== 'dwelling' && kind !== 'other';
  const because = required ? `it is required here: ${kind}` : `it is recommended here: ${kind}`;
  return [sheet.check(required ? arcDetectionRequired : arcDetectionAdvised, { holds, because })];
};
