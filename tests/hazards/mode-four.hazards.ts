import { bs7671 } from '../../src/codes/bs7671/index.js';
import { amperes, type ChargePoint, known, ohms, ratio, squareMillimetres, watts } from '../../src/index.js';
import { assessed, type Chapter, type Told } from './hazard.js';
import { metresOf, premises, soundCircuit, soundHouse, soundPoint, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const lines = ['L1', 'L2', 'L3'] as const;

/** A unit that gives 24 kW of direct current, on a supply whose earth is separate all the way. */
const told = (setting: number, point: Partial<ChargePoint> = {}): Told =>
  assessed(
    code,
    soundHouse(
      [
        soundCircuit({
          lines,
          device: {
            kind: known({ standard: 'EN 61009', type: 'B' }, 'marking'),
            rating: known(amperes(setting), 'marking'),
            breakingCapacity: known(amperes(10_000), 'marking'),
            energyClass: known(3, 'marking'),
            groupingFactor: known(1, 'data sheet'),
          },
          cable: {
            construction: 'armoured',
            material: 'copper',
            insulation: 'thermosetting-90',
            cores: 5,
            loadedCores: known(3, 'no harmonics'),
            area: known(squareMillimetres(16), 'marking'),
            protective: 'core',
          },
          stretches: [soundStretch({ length: metresOf(15) })],
          feeds: [
            soundPoint({
              lines,
              mode: 4,
              setting: known(amperes(setting), 'plate'),
              openPenDevice: known('none', 'data sheet'),
              directPower: known(watts(24_000), 'plate'),
              efficiency: known(ratio(0.94), 'data sheet'),
              powerFactor: known(ratio(0.98), 'data sheet'),
              ...point,
            }),
          ],
        }),
      ],
      {
        phases: known(3, 'seen at the survey'),
        system: known('TN-S', 'seen at the survey'),
        separateEarthConfirmed: known(true, 'letter of the operator'),
        externalImpedance: known(ohms(0.4), 'measured'),
      },
    ),
    'ev',
    premises,
  );

/** Charging with direct current from a supply of alternating current. */
export const chapter: Chapter = {
  title: 'Charging with direct current',
  introduction:
    'A charge point of mode 4 is a rectifier. Its plate says what it gives; what it takes is more, by its losses and its power factor, and for hours.',
  hazards: [
    {
      id: 'rectifier-takes-more-than-its-setting',
      title: 'A rectifier that takes more than its circuit was designed for',
      harm: '24 kW of direct current are 37.8 A on each line with the losses. A circuit that was designed for 32 A runs hot for hours, and its device trips or ages.',
      clause: 'BS 7671 311.1, 722.311 (from memory)',
      mustNotSay: 'that the setting covers the unit',
      check: 'direct-current-within-setting',
      unsafe: { what: 'A unit of 24 kW behind 32 A, said to be set to 32 A.', told: () => told(32) },
      sound: { what: 'The same unit behind 40 A, set to 40 A.', told: () => told(40) },
    },
    {
      id: 'rectifier-without-efficiency',
      title: 'A rectifier of which only the direct-current power is known',
      harm: 'Its losses are left out: 24 kW look like 34.8 A, and it takes more.',
      clause: 'BS 7671 311.1, 722.311 (from memory)',
      mustNotSay: 'that the setting covers the unit',
      check: 'direct-current-within-setting',
      unsafe: {
        what: 'A unit of 24 kW behind 40 A; nobody asked for its efficiency.',
        told: () => told(40, { efficiency: undefined as never }),
      },
      sound: { what: 'The same with 94 % from the data sheet.', told: () => told(40) },
    },
  ],
};
