import { holds, weigh } from '../../../calculation/index.js';
import { isMissing, known, rule, unknown } from '../../../core/index.js';
import { ofCircuit } from '../../iec-family/places.js';
import { bs } from '../source.js';

/** Surge protection where overvoltage would be serious, or where the owner has not declined it. BS 7671, 443.4. */
export const surgeProtected = /* @__PURE__ */ rule({
  id: 'surge-protection',
  title: 'Surge protection stands at the board, or it is not asked for',
  source: /* @__PURE__ */ bs('443.4', 'one-source'),
});

/** Protection against transient overvoltage. BS 7671 443.4. */
export const surgeProtection = () => ({
  circuit: {
    surgeProtection: ofCircuit(
      ({ path }) => {
        const said = path.boards.map((b) => b.surgeProtection);
        if (said.some((f) => f?.state === 'known' && f.value)) return known(true);
        return said.every((f) => f?.state === 'known') ? known(false) : unknown('look for it at the boards on the way');
      },
      { called: 'surge protection at the board' },
    ),
    overvoltageSerious: ofCircuit(
      ({ options }) =>
        options.premises?.overvoltageSerious ?? unknown('injury, safety services, heavy loss: ask the owner'),
      { called: 'whether overvoltage could be serious' },
    ),
    surgeProtectionDeclined: ofCircuit(
      ({ options }) => options.premises?.surgeProtectionDeclined ?? unknown('a declaration that the loss can be borne'),
      { called: 'whether the owner declines surge protection' },
    ),
    surgeRuleApplies: weigh(
      ['surgeProtection', 'overvoltageSerious', 'surgeProtectionDeclined'],
      ({ surgeProtection, overvoltageSerious, surgeProtectionDeclined: declined }) => {
        if (surgeProtection === true || overvoltageSerious === true) return true;
        if (isMissing(overvoltageSerious)) return overvoltageSerious;
        if (isMissing(declined)) return declined;
        return declined ? 'The owner has declared that the loss can be borne.' : true;
      },
    ),
  },
  checks: [
    holds(
      surgeProtected,
      'surgeProtection',
      weigh(['surgeProtection', 'overvoltageSerious'], ({ surgeProtection, overvoltageSerious }) => {
        if (surgeProtection === true) return 'it is fitted';
        return overvoltageSerious === true ? 'overvoltage could be serious here' : 'the owner has not declined it';
      }),
      { applies: 'surgeRuleApplies' },
    ),
  ],
});
