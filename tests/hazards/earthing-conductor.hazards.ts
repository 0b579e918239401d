import { type Change, type Chapter, planned } from './hazard.js';

const slender: readonly Change[] = [
  ['demand', { governing: 'metered-peak' }],
  ['supply.system', 'TN-S'],
  ['supply.earthingConductor', '10 mm²'],
];

export const chapter: Chapter = {
  title: 'Earthing conductors by calculation',
  introduction:
    'A smaller earthing conductor than that of the table is good where the fuse of the cut-out is quick enough.',
  hazards: [
    {
      id: 'slender-earthing-conductor-behind-slow-fuse',
      title: 'A slender earthing conductor on a supply whose fuse is slow',
      harm: 'In an earth fault the conductor glows before the fuse melts, and every metal case of the house loses its earth.',
      clause: 'BS 7671:2018+A2:2022 542.3.1, 543.1.1, 543.1.3, Tables 54.2 and 54.7',
      mustNotSay: 'that 10 mm² is enough behind 25 mm² tails wherever the supply ends',
      check: 'earthing-conductor',
      unsafe: {
        what: '10 mm² behind a BS 1361 fuse of 80 A, the external impedance 0.8 Ω: 273 A do not melt it within 5 s',
        told: () => planned('easy-home', [...slender, ['supply.externalImpedance', '0.8 Ω']]),
      },
      sound: {
        what: 'The same at 0.28 Ω: 780 A melt it within 5 s, and 460 A for 5 s ask for 7.2 mm²',
        told: () => planned('easy-home', slender),
      },
    },
    {
      id: 'slender-earthing-conductor-where-the-fuse-may-be-slow',
      title: 'A slender earthing conductor where the fuse is quick or slow by which reading is right',
      harm: 'In an earth fault the conductor glows before the fuse melts, and every metal case of the house loses its earth.',
      clause: 'BS 7671:2018+A2:2022 542.3.1, 543.1.1, 543.1.3, Tables 54.2 and 54.7',
      mustNotSay: 'that 10 mm² is enough because it is at one end of what was measured',
      check: 'earthing-conductor',
      unsafe: {
        what: '10 mm² behind a BS 1361 fuse of 80 A, the external impedance somewhere from 0.28 Ω to 0.8 Ω: at the upper end 273 A do not melt it within 5 s',
        told: () =>
          planned('easy-home', [
            ...slender,
            ['supply.externalImpedance', { between: ['0.28 Ω', '0.8 Ω'], by: 'two readings' }],
          ]),
      },
      sound: {
        what: 'The same with 16 mm², which Table 54.7 asks for behind 25 mm² tails however slow the fuse is',
        told: () =>
          planned('easy-home', [
            ...slender,
            ['supply.earthingConductor', '16 mm²'],
            ['supply.externalImpedance', { between: ['0.28 Ω', '0.8 Ω'], by: 'two readings' }],
          ]),
      },
    },
  ],
};
