import { choose, compare, derive, set } from '../../../calculation/index.js';
import { squareMillimetres } from '../../../units/index.js';
import { areaNotBelowMinimum } from '../../iec-family/conductor-size.js';
import { ofCircuit } from '../../iec-family/places.js';

const table = 'BS 7671:2018+A2:2022 Table 52.3, from memory';

/** Smallest size of a conductor for its use. BS 7671 524.1, Table 52.3. */
export const minimumSize = () => ({
  circuit: {
    lightingOnly: ofCircuit(
      ({ run }) => run.feeds.length > 0 && run.feeds.every((o) => o.kind === 'load' && o.purpose === 'lighting'),
    ),
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
  checks: [compare(areaNotBelowMinimum)],
});
