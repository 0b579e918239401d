import { bs7671 } from '../../src/codes/bs7671/index.js';
import { known, ohms } from '../../src/index.js';
import { assessed, type Chapter } from './hazard.js';
import { metresOf, premises, soundCircuit, soundHouse, soundPoint, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const { residual: _none, ...bare } = soundPoint();

export const chapter: Chapter = {
  title: 'Faults that are not cleared in time',
  introduction:
    'A fault to earth makes exposed metal live until a device disconnects it. Whoever touches it meanwhile carries part of the fault.',
  hazards: [
    {
      id: 'high-external-impedance-without-residual-device',
      title: 'An external impedance that a circuit-breaker alone cannot disconnect',
      harm: 'The case of the charge point stays at more than 100 V to earth for minutes. Somebody who unplugs the vehicle barefoot is killed.',
      clause: 'BS 7671:2018+A2:2022, 411.3.2.2 with 411.4.4, from memory',
      mustNotSay: 'That the fault is disconnected in 0.4 s.',
      check: 'automatic-disconnection',
      unsafe: {
        what: '20 m of 6 mm² flat cable behind a 32 A type B circuit-breaker without a residual current device, Z_e 1.6 Ω.',
        told: () =>
          assessed(
            code,
            soundHouse([soundCircuit({ residual: [], feeds: [bare] })], {
              externalImpedance: known(ohms(1.6), 'measured'),
            }),
            'ev',
            premises,
          ),
      },
      sound: {
        what: 'The same behind a 32 A RCBO of 30 mA, Z_e 0.28 Ω.',
        told: () =>
          assessed(
            code,
            soundHouse([soundCircuit({ stretches: [soundStretch({ length: metresOf(20) })] })]),
            'ev',
            premises,
          ),
      },
    },
  ],
};
