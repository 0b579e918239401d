import { chosen, derive, each, holds } from '../../../calculation/index.js';
import { type Known, statement } from '../../../core/index.js';
import type { ChargePoint } from '../../../installation/index.js';
import { ofPoint } from '../../iec-family/places.js';
import { bs } from '../source.js';

/** A socket-outlet from which a vehicle is charged carries the current for hours. BS 7671, 722.55.101; custom. */
export const socketForHours = /* @__PURE__ */ statement({
  id: 'socket-outlet-for-hours',
  title: 'The socket-outlet is made for the charging current over hours',
  weight: 'rule',
  source: /* @__PURE__ */ bs(
    '722.55.101',
    'common-practice',
    'the clause names the standards of socket-outlets, from memory; 10 A for hours from a BS 1363 socket-outlet is custom, without a source',
  ),
  caution:
    'Plug, socket-outlet and extension lead overheat when a vehicle draws its current for hours: no extension lead, no adaptor, a sound tight socket-outlet, the cable of the vehicle off the ground.',
});

/** Largest current for hours from a BS 1363 socket-outlet, A: custom. */
const HOURS_BS1363 = 10;

const largest = ({ setting }: ChargePoint): number | undefined =>
  setting.state === 'known' ? setting.value : setting.state === 'between' ? setting.most : undefined;

/** What the socket-outlet carries for hours, A. */
function forHours({ socket, socketRating }: ChargePoint): Known<number> {
  const missing = (fact: string, obtain: string) => ({ missing: [{ kind: 'fact' as const, fact, obtain }] as const });
  if (socket?.state !== 'known') return missing('kind of the socket-outlet', 'BS 1363, or industrial to EN 60309');
  if (socket.value === 'BS 1363') return HOURS_BS1363;
  if (socketRating?.state === 'known') return socketRating.value;
  return missing('rating of the socket-outlet', 'its marking: 16 A or 32 A');
}

/** Charge points of mode 2: a socket-outlet, and a cable with its own control and protection. BS 7671 722.55.101. */
export const modeTwo = () => ({
  points: {
    chargingMode: ofPoint(({ point }) => point.mode),
    socketCarries: ofPoint(({ point }): Known<boolean> => {
      const carries = forHours(point);
      if (typeof carries !== 'number') return carries;
      const asked = largest(point);
      return asked === undefined
        ? { missing: [{ kind: 'fact', fact: `setting of ${point.id}`, obtain: 'the cable of the vehicle' }] }
        : asked <= carries;
    }),
    socketWords: ofPoint(({ point }) => {
      const carries = forHours(point);
      return typeof carries === 'number'
        ? `the socket-outlet carries ${carries} A for hours`
        : 'what the socket-outlet carries for hours is not known';
    }),
  },
  checks: [
    each('points', [
      chosen(
        derive(['chargingMode'], ({ chargingMode }) => chargingMode === 2),
        { true: [holds(socketForHours, 'socketCarries', 'socketWords')], false: [] },
      ),
    ]),
  ] as const,
});
