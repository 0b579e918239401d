import type { WiringCode } from '../wiring-code.js';
import { earthingOptions } from './earthing-options.js';
import { islandResidual } from './rules/charge-point-earthing.js';

/** The arrangements of 722.411.4.1 for a point: none indoors, nor on a supply without a PEN conductor to lose. */
export const pointEarthing: WiringCode['earthingOptions'] = ({ installation: { supply }, path, options }, point) => {
  const { loadStates, pointNeverAlone } = options;
  const indoors = point.outdoors.state === 'known' && !point.outdoors.value;
  const noPen = supply.system.state === 'known' && ['TT', 'TN-S'].includes(supply.system.value);
  return indoors || noPen
    ? []
    : earthingOptions({
        supply,
        point,
        residualRating: islandResidual(path),
        ...(loadStates ? { loadStates } : {}),
        ...(pointNeverAlone ? { pointNeverAlone } : {}),
      });
};
