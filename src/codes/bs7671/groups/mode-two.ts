import { chosen, derive, each, holds } from '../../../calculation/index.js';
import { endsOf, type Known, missing, rule } from '../../../core/index.js';
import { type ChargePoint, isPlugged, type OvercurrentDevice } from '../../../installation/index.js';
import { ofPoint } from '../../iec-family/places.js';
import { bs } from '../source.js';

/** A socket-outlet from which a vehicle is charged carries the current for hours. BS 7671, 722.55.101; custom. */
export const socketForHours = /* @__PURE__ */ rule({
  id: 'socket-outlet-for-hours',
  title: 'The socket-outlet is made for the charging current over hours',
  source: /* @__PURE__ */ bs(
    '722.55.101',
    'common-practice',
    'the clause names the standards of socket-outlets, from memory; 10 A for hours from a BS 1363 socket-outlet is custom, without a source',
  ),
  caution:
    'Plug, socket-outlet and extension lead overheat when a vehicle draws its current for hours: no extension lead, no adaptor, a sound tight socket-outlet, the cable of the vehicle off the ground.',
});

/** An industrial socket-outlet has no fuse in its plug: the device of its circuit protects it. BS 7671, 512.1.2; practice. */
export const socketBehindDevice = /* @__PURE__ */ rule({
  id: 'socket-outlet-behind-its-device',
  title: 'The device protects the socket-outlet from overload',
  source: /* @__PURE__ */ bs(
    '512.1.2',
    'common-practice',
    'the clause is about the current of equipment, from memory; that the device is no larger than an industrial socket-outlet behind it is custom, without a source',
  ),
  caution: 'A plug of EN 60309 has no fuse: what the device lets through flows through the socket-outlet.',
});

/** Largest current for hours from a BS 1363 socket-outlet, A: custom. */
const HOURS_BS1363 = 10;

const largest = ({ setting }: ChargePoint): number | undefined => endsOf(setting)?.[1];

const ratingAsked = () =>
  missing({ kind: 'fact', fact: 'rating of the socket-outlet', obtain: 'its marking: 16 A or 32 A' });

/** What the socket-outlet carries for hours, A. */
function forHours({ socket, socketRating }: ChargePoint): Known<number> {
  if (socket?.state !== 'known')
    return missing({ kind: 'fact', fact: 'kind of the socket-outlet', obtain: 'BS 1363, or industrial to EN 60309' });
  if (socket.value === 'BS 1363') return HOURS_BS1363;
  if (socketRating?.state === 'known') return socketRating.value;
  return ratingAsked();
}

/** Whether the device of the circuit is no larger than the socket-outlet. */
function protectedByDevice({ socketRating }: ChargePoint, { rating }: OvercurrentDevice): Known<boolean> {
  const [socket, device] = [endsOf(socketRating), endsOf(rating)];
  if (!socket) return ratingAsked();
  const open = missing({ kind: 'fact', fact: 'rating of the device of the socket-outlet', obtain: 'its marking' });
  if (!device) return open;
  return device[1] <= socket[0] ? true : device[0] > socket[1] ? false : open;
}

/** Charge points that are plugged in: a socket-outlet, and a cable with its own control and protection. BS 7671 722.55.101. */
export const modeTwo = () => ({
  points: {
    chargingMode: ofPoint(({ point }) => point.mode),
    plugged: ofPoint(({ point }) => isPlugged(point)),
    socketCarries: ofPoint(({ point }): Known<boolean> => {
      const carries = forHours(point);
      if (typeof carries !== 'number') return carries;
      const asked = largest(point);
      return asked === undefined
        ? { missing: [{ kind: 'fact', fact: `setting of ${point.id}`, obtain: 'the cable of the vehicle' }] }
        : asked <= carries;
    }),
    industrialSocket: ofPoint(({ point }) => point.socket?.state === 'known' && point.socket.value === 'EN 60309'),
    deviceProtectsSocket: ofPoint(({ point, circuit }) => protectedByDevice(point, circuit.run.device)),
    socketWords: ofPoint(({ point }) => {
      const carries = forHours(point);
      return typeof carries === 'number'
        ? `the socket-outlet carries ${carries} A for hours`
        : 'what the socket-outlet carries for hours is not known';
    }),
  },
  checks: [
    each('points', [
      chosen('plugged', { true: [holds(socketForHours, 'socketCarries', 'socketWords')], false: [] }),
      chosen(
        derive(['plugged', 'industrialSocket'], (v) => v.plugged && v.industrialSocket),
        {
          true: [
            holds(
              socketBehindDevice,
              'deviceProtectsSocket',
              derive(['deviceProtectsSocket'], ({ deviceProtectsSocket: yes }) =>
                yes ? 'the device is no larger than the socket-outlet' : 'the device is larger than the socket-outlet',
              ),
            ),
          ],
          false: [],
        },
      ),
    ]),
  ] as const,
});
