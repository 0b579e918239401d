import { factValue, isMissing, notDetermined, notRequired, statement } from '../../../core/index.js';
import type { Rule } from '../../wiring-code.js';

/** Surge protection where overvoltage would be serious, or where the owner has not declined it. BS 7671, 443.4. */
export const surgeProtected = /* @__PURE__ */ statement({
  id: 'surge-protection',
  title: 'Surge protection stands at the board, or it is not asked for',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '443.4', provenance: 'one-source' },
});

/** Protection against transient overvoltage. BS 7671 443.4. */
export const surgeProtection: Rule = (circuit, _findings, sheet) => {
  const there = circuit.path.boards.map((b) => b.surgeProtection).find((f) => f?.state === 'known' && f.value);
  if (there) return [sheet.check(surgeProtected, { holds: true, because: 'it is fitted' })];
  const premises = circuit.options.premises;
  const unknownFitted = circuit.path.boards.some((b) => b.surgeProtection?.state !== 'known');
  const fitted = {
    kind: 'fact',
    fact: 'surge protection at the board',
    obtain: 'look for it at the boards on the way',
  } as const;
  const serious = factValue(
    'whether overvoltage could be serious',
    premises?.overvoltageSerious ?? { state: 'unknown', obtain: 'injury, safety services, heavy loss: ask the owner' },
  );
  if (isMissing(serious)) return [sheet.result(notDetermined(surgeProtected, ...serious.missing))];
  if (serious)
    return unknownFitted
      ? [sheet.result(notDetermined(surgeProtected, fitted))]
      : [sheet.check(surgeProtected, { holds: false, because: 'overvoltage could be serious here' })];
  const declined = factValue(
    'whether the owner declines surge protection',
    premises?.surgeProtectionDeclined ?? { state: 'unknown', obtain: 'a declaration that the loss can be borne' },
  );
  if (isMissing(declined)) return [sheet.result(notDetermined(surgeProtected, ...declined.missing))];
  if (declined)
    return [
      sheet.result(notRequired(surgeProtected, 'not-applicable', 'The owner has declared that the loss can be borne.')),
    ];
  return unknownFitted
    ? [sheet.result(notDetermined(surgeProtected, fitted))]
    : [sheet.check(surgeProtected, { holds: false, because: 'the owner has not declined it' })];
};
