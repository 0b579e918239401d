import { type Change, type Chapter, planned } from './hazard.js';

const plugged = (socket: string, setting: string): readonly Change[] => [
  ['demand', { governing: 'metered-peak' }],
  ['wanted.0.point.mode', 2],
  ['wanted.0.point.setting', setting],
  ['wanted.0.point.socket', socket],
  ['wanted.0.point.socketRating', socket === 'EN 60309' ? '16 A' : undefined],
];
const without = (changes: readonly Change[]): readonly Change[] => changes.filter(([, value]) => value !== undefined);

export const chapter: Chapter = {
  title: 'Charging from a socket-outlet',
  introduction: 'A plug in a household socket-outlet is not made for the current of a vehicle over a night.',
  hazards: [
    {
      id: 'household-socket-at-sixteen-amperes',
      title: 'A household socket-outlet that carries 16 A for hours',
      harm: 'Plug and socket-outlet overheat in the night, and the wall behind them burns.',
      clause: 'BS 7671:2018+A2:2022 722.55.101, from memory; 10 A for hours is custom, without a source',
      mustNotSay: 'that a BS 1363 socket-outlet is good for 16 A over a night',
      check: 'socket-outlet-for-hours',
      unsafe: {
        what: 'A BS 1363 socket-outlet on a circuit of its own, the cable of the vehicle set to 16 A',
        told: () => planned('easy-home', without(plugged('BS 1363', '16 A'))),
      },
      sound: {
        what: 'An industrial socket-outlet of 16 A on the same circuit',
        told: () => planned('easy-home', without(plugged('EN 60309', '16 A'))),
      },
    },
    {
      id: 'socket-outlet-of-a-kind-not-known',
      title: 'A socket-outlet of which nobody says what it is',
      harm: 'It may be a household one, which overheats.',
      clause: 'BS 7671:2018+A2:2022 722.55.101, from memory',
      mustNotSay: 'that it carries the current',
      check: 'socket-outlet-for-hours',
      unsafe: {
        what: 'A cable set to 10 A in some socket-outlet',
        told: () =>
          planned(
            'easy-home',
            without(plugged('BS 1363', '10 A')).filter(([path]) => path !== 'wanted.0.point.socket'),
          ),
      },
      sound: {
        what: 'The same, in a BS 1363 socket-outlet on a circuit of its own',
        told: () => planned('easy-home', without(plugged('BS 1363', '10 A'))),
      },
    },
  ],
};
