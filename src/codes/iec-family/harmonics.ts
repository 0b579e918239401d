import { type Fact, isMissing, type Known, type Sheet } from '../../core/index.js';
import type { Amperes, Ratio } from '../../units/index.js';
import { harmonicCurrentOfLine, harmonicCurrentOfNeutral, neutralOfThirdHarmonics } from './capacity.js';
import { tableE521 } from './e52-1.js';

/**
 * Writes the current from which a four- or five-core cable is chosen with third harmonics: by its lines up to 33 %, by
 * its neutral above.
 */
export function writeHarmonics(sheet: Sheet, designCurrent: Known<Amperes>, content: Fact<Ratio>): Known<Amperes> {
  const thirdHarmonic = sheet.given('thirdHarmonic', content);
  const byLine = isMissing(thirdHarmonic) || tableE521.find({ chosenBy: 'line', thirdHarmonic }) !== undefined;
  const chosenBy = sheet.label('chosenBy', byLine ? 'line' : 'neutral', 'the one that the table has a factor for');
  const harmonicFactor = sheet.look(tableE521, { chosenBy, thirdHarmonic });
  if (byLine) return sheet.step(harmonicCurrentOfLine, { designCurrent, harmonicFactor });
  const harmonicNeutralCurrent = sheet.step(neutralOfThirdHarmonics, { designCurrent, thirdHarmonic });
  return sheet.step(harmonicCurrentOfNeutral, { harmonicNeutralCurrent, harmonicFactor });
}
