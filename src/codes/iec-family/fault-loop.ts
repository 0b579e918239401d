import { by, choose, type Line, sum } from '../../calculation/index.js';
import { missing } from '../../core/index.js';
import type { Supply } from '../../installation/index.js';
import { externalImpedanceOfElectrode } from '../../physics/definitions.js';
import { loopImpedanceOf, originImpedanceOf } from '../../physics/index.js';
import type { Ohms } from '../../units/index.js';
import { ofCircuit, type TemperaturePlace } from './places.js';

/** What a wiring code says of the earth fault loop. */
export interface LoopFigures {
  /** Clause of the loop impedance. */
  readonly loopClause: string;
  /** Earth fault path of the network on TT, without the electrode of the installation, Ω. */
  readonly networkEarth: Line<never, Ohms>;
}

const hot = ({ at }: TemperaturePlace) => at === 'operating';
const hotAhead = ({ at, own }: TemperaturePlace) => at === 'operating' && !own;
const coldOwn = ({ at, own }: TemperaturePlace) => at === 'cold' && own;

/** Whether the external impedance is surveyed, or to be had on TT from the electrode and the path of the network. */
const externalImpedanceFromOf = ({ system, externalImpedance, electrode }: Supply) => {
  const byElectrode = system.state === 'known' && system.value === 'TT' && electrode?.resistance.state !== 'unknown';
  return byElectrode && electrode && externalImpedance.state === 'unknown' ? 'electrode' : 'survey';
};

/** What there is where the system is earthed and known. */
const earthed = <L extends Line>(line: L) => choose('earthing', { TN: line, TT: line });

/**
 * The earth fault loop: from outside, ahead of the circuit and to its far end, with the conductors as warm as in normal
 * operation; and what the tests find with them cold.
 * @param figures what the code says of it
 */
export const faultLoop = ({ loopClause, networkEarth }: LoopFigures) => ({
  externalImpedanceFrom: ofCircuit((c) => externalImpedanceFromOf(c.installation.supply)),
  earthElectrode: ofCircuit(
    ({ installation: { supply } }) =>
      supply.electrode?.resistance ?? missing({ kind: 'fact', fact: 'earthElectrode', obtain: 'measure it' }),
  ),
  networkEarth,
  externalImpedance: choose('externalImpedanceFrom', {
    survey: ofCircuit((c) => c.installation.supply.externalImpedance),
    electrode: by(externalImpedanceOfElectrode),
  }),
  loopAtOrigin: earthed(
    by(originImpedanceOf, loopClause, {
      feederImpedance: sum('temperatures/segmentImpedance', { among: hotAhead }),
    }),
  ),
  loopImpedance: earthed(
    by(loopImpedanceOf, loopClause, {
      circuitImpedance: sum('temperatures/segmentImpedance', { among: hot }),
    }),
  ),
  circuitProtectiveResistance: sum('temperatures/protectiveResistance', { among: hot }),
  lineAndProtectiveCold: sum('temperatures/lineAndProtectiveResistance', { among: coldOwn }),
});
