import { by, choose, derive, orElse, set } from '../../calculation/index.js';
import { unknown } from '../../core/index.js';
import type { CircuitPlace } from '../wiring-code.js';
import { harmonicCurrentOfLine, harmonicCurrentOfNeutral, neutralOfThirdHarmonics } from './capacity.js';
import { tableE521 } from './e52-1.js';
import { ofCircuit } from './places.js';

/** Whether a circuit has three phases and a neutral: harmonics add up in it. */
export const withNeutral = ({ phases, run }: Pick<CircuitPlace, 'phases' | 'run'>) =>
  phases === 3 && run.cable.cores >= 4;

/**
 * The current from which a four- or five-core cable is chosen with third harmonics: by its lines up to 33 %, by its
 * neutral above.
 */
export const thirdHarmonics = () => ({
  harmonicsKnown: ofCircuit(({ run }) => run.thirdHarmonic !== undefined && run.thirdHarmonic.state !== 'unknown'),
  thirdHarmonic: ofCircuit(
    ({ run }) => run.thirdHarmonic ?? unknown('ask the maker of the load; 0 where there is none'),
  ),
  chosenBy: orElse(
    derive(
      ['thirdHarmonic'],
      ({ thirdHarmonic }) => (tableE521.find({ chosenBy: 'line', thirdHarmonic }) === undefined ? 'neutral' : 'line'),
      { direction: { thirdHarmonic: 1 } },
    ),
    set('line'),
  ),
  harmonicFactor: by(tableE521),
  harmonicNeutralCurrent: by(neutralOfThirdHarmonics),
  harmonicCurrent: choose('chosenBy', {
    line: by(harmonicCurrentOfLine),
    neutral: by(harmonicCurrentOfNeutral),
  }),
});
