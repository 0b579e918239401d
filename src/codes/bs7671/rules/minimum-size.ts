import { squareMillimetres } from '../../../units/index.js';
import { minimumSizeRule } from '../../iec-family/conductor-size.js';
import type { Rule } from '../../wiring-code.js';

const source = 'BS 7671:2018+A2:2022 Table 52.3, from memory';

/** Smallest size of a conductor for its use. BS 7671 524.1, Table 52.3. */
export const minimumSize: Rule = (circuit, findings, sheet) =>
  minimumSizeRule((_, { run }) => {
    if (run.cable.material === 'aluminium') return { area: squareMillimetres(16), by: `${source}: aluminium` };
    if (run.cable.construction === 'flexible') return { area: squareMillimetres(0.75), by: `${source}: flexible` };
    const lighting = run.feeds.length > 0 && run.feeds.every((o) => o.kind === 'load' && o.purpose === 'lighting');
    return lighting
      ? { area: squareMillimetres(1), by: `${source}: copper, lighting` }
      : { area: squareMillimetres(1.5), by: `${source}: copper, power` };
  })(circuit, findings, sheet);
