import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../src/codes/wiring-code.js';
import { amperes, celsius, known, ohms, type Supply, squareMillimetres } from '../../src/index.js';
import type { Chapter, Told } from './hazard.js';
import { dwelling, flat, told } from './residual-circuits.js';
import { soundCircuit } from './sound.js';

const code = bs7671('2018+A2:2022');
const supply: Partial<Supply> = {
  system: known('TN-S', 'seen at the survey'),
  externalImpedance: known(ohms(0.1), 'measured'),
  prospectiveCurrent: known(amperes(5000), 'measured'),
};
/** 4/1.5 mm² behind 32 A: 1.5 mm² withstands 115² x 1.5² = 29 756 A²s from 70 °C, and 143² x 1.5² = 46 010 A²s from 30 °C. */
const of = (options: AssessmentOptions): Told =>
  told(
    code,
    [soundCircuit({ cable: { ...flat(4), protectiveArea: known(squareMillimetres(1.5), 'marking') } })],
    supply,
    {},
    { ...dwelling, ...options },
  );

export const chapter: Chapter = {
  title: 'Conductors that are warmer than stated',
  introduction: 'How much a conductor bears in a fault hangs on how warm it is when the fault comes.',
  hazards: [
    {
      id: 'fault-in-a-warm-cable-that-was-taken-for-cold',
      title: 'A cable at full load that is taken for 30 °C before the fault',
      harm: 'The protective conductor melts in the fault, and the metal that it should have kept dead stays live.',
      clause:
        'BS 7671:2018+A2:2022 543.1.3, Tables 54.2 to 54.4, two sources: k from the operating temperature of the insulation',
      mustNotSay: 'That 1.5 mm² withstand 40 000 A²s, because somebody stated 30 °C.',
      check: 'protective-conductor',
      unsafe: {
        what: '40 000 A²s let through, 30 °C before the fault stated.',
        told: () => of({ makersLetThrough: 40_000, initialTemperature: celsius(30) }),
      },
      sound: { what: '20 000 A²s let through, 70 °C by the table.', told: () => of({ makersLetThrough: 20_000 }) },
    },
  ],
};
