import { choose, compare, derive, each, set } from '../../../calculation/index.js';
import { rule } from '../../../core/index.js';
import { squareMillimetres } from '../../../units/index.js';
import { ofCircuit } from '../../iec-family/places.js';
import { bs } from '../source.js';

/** S >= S_min. BS 7671, 524.1, Table 52.3. */
export const areaNotBelowMinimum = /* @__PURE__ */ rule({
  id: 'minimum-size',
  title: 'The conductor is not smaller than the smallest size for its use',
  of: ['conductorArea', 'at-least', 'minimumArea'],
  source: /* @__PURE__ */ bs('524.1, Table 52.3', 'memory'),
});

const table = 'BS 7671 Table 52.3, from memory';

/** Smallest size of a conductor for its use. BS 7671 524.1, Table 52.3. */
export const minimumSize = () => ({
  circuit: {
    lightingOnly: ofCircuit(
      ({ run }) => run.feeds.length > 0 && run.feeds.every((o) => o.kind === 'load' && o.purpose === 'lighting'),
    ),
  },
  cables: {
    conductorUse: derive(['cable', 'lightingOnly'], ({ cable, lightingOnly }) =>
      cable.material === 'aluminium'
        ? 'aluminium'
        : cable.construction === 'flexible'
          ? 'flexible'
          : lightingOnly
            ? 'lighting'
            : 'power',
    ),
    minimumArea: choose('conductorUse', {
      aluminium: set(squareMillimetres(16), `${table}: aluminium`),
      flexible: set(squareMillimetres(0.75), `${table}: flexible`),
      lighting: set(squareMillimetres(1), `${table}: copper, lighting`),
      power: set(squareMillimetres(1.5), `${table}: copper, power`),
    }),
  },
  checks: [each('cables', [compare(areaNotBelowMinimum, { because: 'cableName' })])],
});
