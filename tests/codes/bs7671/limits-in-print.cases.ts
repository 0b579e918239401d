import { bs7671 } from '../../../src/codes/bs7671/index.js';
import {
  amperes,
  assess,
  type CheckResult,
  known,
  type Load,
  metres,
  milliamperes,
  ohms,
  type ResidualDevice,
  type Run,
  type Supply,
  squareMillimetres,
} from '../../../src/index.js';
import { chargePoint, circuit, house, load, stretch } from '../../support/house.js';
import type { PublishedCase } from '../../support/published.js';

// Limits as guides and answers print them, read off the checks of whole circuits.

const results = (run: Run, supply: Partial<Supply> = {}): readonly CheckResult[] =>
  assess(bs7671('2018+A2:2022'), house([run], supply), run.id).results.flatMap((r) => [r, ...(r.alternatives ?? [])]);
const found = (run: Run, check: string, supply: Partial<Supply> = {}): CheckResult | undefined =>
  results(run, supply).find((r) => r.check === check);
const limit = (run: Run, check: string, supply: Partial<Supply> = {}): number =>
  found(run, check, supply)?.limit?.value ?? Number.NaN;

const residual: ResidualDevice = {
  position: 'origin-of-circuit',
  type: known('A'),
  rating: known(milliamperes(30)),
  opensAllLive: known(true),
  bidirectional: known(true),
};
const feeding = (purpose: Load['purpose'], change: Partial<Run> = {}): Run =>
  circuit({ residual: [residual], feeds: [load(10, { purpose })], ...change });
/** The last of whole numbers with which a check passes. */
const last = (from: number, to: number, passes: (n: number) => boolean): number => {
  let n = from;
  while (n < to && passes(n + 1)) n++;
  return n;
};

const blog = { document: 'Regulations explained, notes of a training provider', where: 'RCD protection at home' };
const training = { document: 'Pages of a training centre', where: 'where residual current devices are required' };
const forum = { document: 'electricians’ forum, answer to a student', where: 'thread 30878, heater of 5 kW' };
const garage = { document: 'UK newsgroup on home improvement', where: 'armoured cable to a garage 30 m away' };
const members = { document: 'members’ forum of an institution', where: 'question 23128, 50 V over 30 mA' };

const heater = (rating: number): Run =>
  circuit({
    device: { ...circuit().device, rating: known(amperes(rating)) },
    feeds: [load(5000 / 230)],
    stretches: [stretch({ length: known(metres(18)) })],
  });
const onTt = (resistance: number): Partial<Supply> => ({
  system: known('TT'),
  externalImpedance: known(ohms(21)),
  electrode: { resistance: known(ohms(resistance)) },
});

const guide = { document: 'Guide to the Wiring Regulations, 17th edition', where: 'Table E 4.6, PME' };
/** The supply of PME with a neutral of some size, and pipes to be bonded. */
const ofNeutral = (size: number): Partial<Supply> => ({
  supplyNeutral: known(squareMillimetres(size)),
  noExtraneousParts: known(false),
  bonding: [{ what: 'water', area: known(squareMillimetres(50)) }],
  earthingConductor: known(squareMillimetres(50)),
});

const row = (
  check: string,
  about: string,
  source: PublishedCase['source'],
  ours: () => number,
  published: number,
  unit: string,
  tolerance = 1e-9,
): PublishedCase => ({
  ...{ id: `limit-${check}`, about, source, provenance: 'one-source', exercises: [check] },
  ...{ ours, published, unit, tolerance },
});
const milli = (run: Run, check: string) => () => 1000 * limit(run, check);

/** Printed limits that checks compare with. */
export const cases: readonly PublishedCase[] = [
  row(
    'residual-current-socket-outlets',
    'residual current device ahead of socket-outlets, 411.3.3',
    blog,
    milli(feeding('socket-outlets'), 'residual-current-socket-outlets'),
    30,
    'mA',
  ),
  row(
    'residual-current-lighting',
    'residual current device ahead of luminaires at home, 411.3.4',
    blog,
    () =>
      1000 *
      (assess(bs7671('2018+A2:2022'), house([feeding('lighting')]), 'ev', {
        premises: { kind: known('dwelling') },
      }).results.find((r) => r.check === 'residual-current-lighting')?.limit?.value ?? Number.NaN),
    30,
    'mA',
  ),
  row(
    'residual-current-bath-or-shower',
    'residual current device of a bathroom, 701.411.3.3',
    training,
    milli(feeding('other', { bathOrShower: known(true) }), 'residual-current-bath-or-shower'),
    30,
    'mA',
  ),
  row(
    'residual-current-concealed-cable',
    'residual current device of a cable less than 50 mm deep, 522.6.202',
    training,
    milli(
      feeding('other', { stretches: [stretch({ depth: known(metres(0.04)) })] }),
      'residual-current-concealed-cable',
    ),
    30,
    'mA',
  ),
  row(
    'device-carries-load',
    'smallest rating for 5 kW at 230 V',
    forum,
    () => [16, 20, 25, 32].find((a) => found(heater(a), 'device-carries-load')?.verdict === 'pass') ?? Number.NaN,
    25,
    'A',
  ),
  row(
    'voltage-drop',
    'largest drop of a heater at 230 V',
    forum,
    () => 230 * limit(heater(25), 'voltage-drop'),
    11.5,
    'V',
  ),
  row(
    'disconnection-by-overcurrent-device',
    'largest loop impedance behind a 32 A type B breaker',
    garage,
    () => limit(circuit(), 'disconnection-by-overcurrent-device'),
    1.37,
    'Ω',
    0.005,
  ),
  row(
    'touch-voltage-at-residual-current',
    'largest electrode resistance behind 30 mA',
    members,
    () =>
      last(1600, 1800, (r) => {
        const run = feeding('other', { feeds: [chargePoint] });
        return found(run, 'touch-voltage-at-residual-current', onTt(r))?.verdict === 'pass';
      }),
    1666,
    'Ω',
    1,
  ),
  ...(
    [
      [25, 10],
      [50, 16],
      [70, 25],
      [120, 35],
      [185, 50],
    ] as const
  ).flatMap(([size, published]) =>
    (['main-bonding-conductor', 'earthing-conductor'] as const).map((check) => ({
      ...row(
        check,
        `${check === 'earthing-conductor' ? 'earthing' : 'main bonding'} conductor beside a neutral of ${size} mm² on PME`,
        guide,
        () => limit(circuit(), check, ofNeutral(size)),
        published,
        'mm²',
      ),
      id: `limit-${check}-${size}`,
    })),
  ),
];
