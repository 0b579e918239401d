import type { AssessmentOptions } from '../../src/codes/wiring-code.js';
import {
  amperes,
  type ChargePoint,
  type Installation,
  known,
  metres,
  ohms,
  type Run,
  type Stretch,
  type Supply,
  squareMillimetres,
} from '../../src/index.js';
import { barePoint, circuit, house, stretch } from '../support/house.js';

const looked = 'seen at the survey';

/** What is known of its premises and of the owner's wishes. */
export const premises: AssessmentOptions = {
  premises: {
    kind: known('dwelling', looked),
    overvoltageSerious: known(false, looked),
    surgeProtectionDeclined: known(true, 'letter of the owner'),
    arcDetection: known(false, looked),
  },
};

/** A charge point outdoors that is sound on a TN-C-S supply: with direct-current detection and a measure against an open PEN. */
export const soundPoint = (change: Partial<ChargePoint> = {}): ChargePoint => ({
  ...barePoint,
  directCurrentDetection: known(true, looked),
  residual: {
    position: 'inside-equipment',
    type: known('A', looked),
    rating: known(amperes(0.03), looked),
    opensAllLive: known(true, looked),
    pointsServed: 1,
  },
  openPenDevice: known('open-pen-detection-window', looked),
  feedSeparated: known(true, looked),
  standingLeakage: known(amperes(0.001), 'data sheet'),
  ...change,
});

/** A route of which everything is said. */
export const soundStretch = (change: Partial<Stretch> = {}): Stretch =>
  stretch({
    containment: 'clipped',
    concealedShallow: known(false, looked),
    insulated: known(metres(0), looked),
    ...change,
  });

/** The circuit of that point: 6 mm² flat cable over 20 m behind a 32 A RCBO, 30 mA, of type A. */
export const soundCircuit = (change: Partial<Run> = {}, point: Partial<ChargePoint> = {}): Run =>
  circuit({
    residual: [
      {
        position: 'origin-of-circuit',
        type: known('A', looked),
        rating: known(amperes(0.03), looked),
        ratedCurrent: known(amperes(63), looked),
        opensAllLive: known(true, looked),
      },
    ],
    bathOrShower: known(false, looked),
    stretches: [soundStretch()],
    feeds: [soundPoint(point)],
    ...change,
  });

/** An invented house on TN-C-S in which nothing is amiss, with these circuits on its board. */
export const soundHouse = (
  runs: readonly Run[] = [soundCircuit()],
  supply: Partial<Supply> = {},
  board: Parameters<typeof house>[2] = {},
): Installation =>
  house(
    runs,
    {
      externalImpedance: known(ohms(0.28), 'measured'),
      prospectiveCurrent: known(amperes(860), 'measured'),
      bonding: [
        { what: 'water', area: known(squareMillimetres(10), looked) },
        { what: 'gas', area: known(squareMillimetres(10), looked) },
      ],
      ...supply,
    },
    {
      mainSwitch: { rating: known(amperes(100), looked), noFuseAhead: known(true, looked) },
      rating: known(amperes(100), looked),
      conditionalRating: known(amperes(16000), looked),
      ...board,
    },
  );

/** A longer or shorter route. */
export const metresOf = (length: number) => known(metres(length), 'measured');
