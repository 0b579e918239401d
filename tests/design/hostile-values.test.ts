/** Whatever stands at whatever place of an installation: it is judged, or refused with the place of what is wrong. */
import { describe, expect, test } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { assess, CalculationError, type Installation } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { hostileValues, placesOf, put } from '../support/hostile.js';
import { circuit, house } from '../support/house.js';
import { surveyDocument } from '../support/surveys.js';

const code = bs7671('2018+A2:2022');
const { control: _, ...workshop } = readSurvey(surveyDocument('workshop')).installation.board;
const installations: Readonly<Record<string, Installation>> = {
  'a house': house([circuit()]),
  'a workshop': { ...readSurvey(surveyDocument('workshop')).installation, board: workshop },
};

describe.each(Object.entries(installations))('%s', (_, installation) => {
  const { id } = installation.board.runs[0] ?? { id: '' };

  test('is judged as it stands', () => {
    expect(() => assess(code, installation, id)).not.toThrow();
  });

  test('with anything at any place ends in no raw error of the language', () => {
    const raw: string[] = [];
    let refused = 0;
    for (const path of placesOf(installation))
      for (const value of hostileValues)
        try {
          assess(code, put(installation, path, value), id);
        } catch (error) {
          if (error instanceof CalculationError) refused++;
          else raw.push(`${path.join('.')}: ${error}`);
        }
    expect(raw).toEqual([]);
    expect(refused).toBeGreaterThan(500);
  });
});
