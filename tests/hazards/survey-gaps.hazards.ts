import { bs7671 } from '../../src/codes/bs7671/index.js';
import { ordinaryHome } from '../../src/great-britain.js';
import {
  amperes,
  assume,
  type Board,
  between,
  celsius,
  known,
  type Line,
  ohms,
  ratio,
  type Supply,
  squareMillimetres,
  unknown,
  voltAmperes,
  volts,
  watts,
} from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Change, type Chapter, planned } from './hazard.js';
import { armoured, breaker, dwelling, garageFeeder } from './residual-circuits.js';
import { premises, soundCircuit, soundHouse } from './sound.js';

const code = bs7671('2018+A2:2022');
const read = 'measured';
const at = (supply: Partial<Supply>) => assessed(code, soundHouse([soundCircuit()], supply), 'ev', premises);
const readings = (z: number, i: number): Partial<Supply> => ({
  externalImpedance: known(ohms(z), read),
  prospectiveCurrent: known(amperes(i), read),
});
const rod: Partial<Supply> = {
  system: known('TT', 'rod seen'),
  earthingConductorLaid: known('above-ground-protected', 'seen'),
};
/** The loop that was read, and the rod. */
const onRod = (loop: number, electrode: number): Partial<Supply> => ({
  externalImpedance: known(ohms(loop), read),
  electrode: { resistance: known(ohms(electrode), read) },
});
/** The rod of a house, as an ordinary home is assumed to be where nobody looked. */
const assumedRod = (supply: Partial<Supply>) => {
  const { earthingConductor: _size, ...house } = soundHouse([soundCircuit()], rod).supply;
  const whole = { ...soundHouse([soundCircuit()]), supply: { ...house, ...supply } };
  return assessed(code, assume(whole, ordinaryHome), 'ev', premises);
};
const three = (supply: Partial<Supply>) => at({ ...supply, phases: known(3, 'seen') });
/** A transformer at whose terminals the origin stands, kVA. */
const atOrigin = (kVA: number): NonNullable<Supply['transformer']> => ({
  rating: known(voltAmperes(kVA * 1e3), 'plate'),
  voltage: known(volts(433), 'plate'),
  impedanceVoltage: known(ratio(0.045), 'plate'),
  loss: known(watts(kVA * 15), 'plate'),
  gridFaultPower: known(voltAmperes(100e6), 'letter of the distributor'),
  owner: 'customer',
  atOrigin: known(true, 'seen'),
});
/** PME, the loop not read, and taken from the assumptions of an ordinary home. */
const assumedLoop = (current: number) => {
  const house = soundHouse([soundCircuit()], {
    externalImpedance: unknown(),
    prospectiveCurrent: known(amperes(current), read),
  });
  return assessed(code, assume(house, ordinaryHome), 'ev', premises);
};
const lines: readonly Line[] = ['L1', 'L2', 'L3'];
/** A heater on three lines. */
const threeLines = (phases: Supply['phases']) => {
  const run = soundCircuit({
    lines,
    device: breaker(32),
    residual: [],
    cable: { ...armoured(6), cores: 4 },
    terminalTemperature: known(celsius(70), 'instructions'),
    feeds: [load(30, { id: 'heater', purpose: 'space-heating', lines })],
  });
  return assessed(code, soundHouse([run], { ...readings(0.25, 2000), phases }), run.id, dwelling);
};
/** A garage board in the house, and whether there is metal; the supply says that there is none. */
const inOneBuilding = (metal: boolean) => {
  const feeder = garageFeeder();
  const [garage] = feeder.feeds;
  const board = { ...garage, detached: known(false, 'seen'), extraneousParts: known(metal, 'seen') } as Board;
  const none = { bonding: [], noExtraneousParts: known(true, 'seen') };
  return assessed(code, soundHouse([{ ...feeder, feeds: [board] }], none), feeder.id, dwelling);
};
const agree = 'I_pf against U_0/Z_e; the room that is left is common practice, no source';

/** The house by its metered peak, with storage heaters besides. */
const storing = (current: string): readonly Change[] => [
  ['demand', { governing: 'metered-peak' }],
  [
    'board.runs.4',
    {
      id: 'storage heaters',
      lines: ['L1'],
      existing: true,
      device: { kind: { standard: 'EN 60898', type: 'B' }, rating: '50 A', breakingCapacity: '6 kA' },
      feeds: [{ kind: 'load', id: 'heaters', purpose: 'storage-heating', current, lines: ['L1'] }],
    },
  ],
];

export const chapter: Chapter = {
  title: 'Facts that cannot be true together, and facts nobody stated',
  introduction:
    'A survey is only as good as its readings. Two that contradict each other mean that one is wrong, and nobody knows which.',
  hazards: [
    {
      id: 'rod-that-nobody-measured',
      title: 'An earth rod that nobody measured',
      harm: 'The rod has rotted away. Whatever fails in the charge point makes the car live, and the residual current device sees nothing.',
      clause: 'BS 7671:2018+A2:2022, 411.5.3 and Table 41.5, note, two sources; what is assumed is common practice',
      mustNotSay: 'That the circuit passes by a resistance that is assumed.',
      unsafe: {
        what: 'TT, no reading of the rod or of the loop; both taken from the assumptions of an ordinary home.',
        told: () => assumedRod({ externalImpedance: unknown() }),
      },
      sound: {
        what: 'TT, the rod measured at 80 Ω, the loop at 101 Ω, its conductor of 16 mm² seen.',
        told: () =>
          at({
            ...rod,
            ...readings(101, 860),
            electrode: { resistance: known(ohms(80), read) },
            earthingConductor: known(squareMillimetres(16), 'seen'),
          }),
      },
    },
    {
      id: 'rod-too-high-for-what-is-assumed',
      title: 'A rod of 1,800 Ω in a house that is otherwise taken as ordinary',
      harm: 'At 30 mA the case of the charge point stands at 54 V, and stays there.',
      clause: 'BS 7671:2018+A2:2022, 411.5.3: R_A times I_Δn at most 50 V, two sources; 1,800 Ω × 0.03 A = 54 V',
      mustNotSay: 'That 200 Ω may be taken where a reading says otherwise.',
      check: 'automatic-disconnection',
      unsafe: {
        what: 'TT, the rod measured at 1,800 Ω, all else from the assumptions of an ordinary home.',
        told: () => assumedRod({ externalImpedance: unknown(), electrode: { resistance: known(ohms(1800), read) } }),
      },
      sound: {
        what: 'TT, the rod measured at 150 Ω, the loop at 171 Ω, its conductor of 16 mm² seen.',
        told: () =>
          at({
            ...rod,
            ...readings(171, 860),
            electrode: { resistance: known(ohms(150), read) },
            earthingConductor: known(squareMillimetres(16), 'seen'),
          }),
      },
    },
    {
      id: 'earth-far-away-supply-near',
      title: 'An earth of 35 Ω on a supply of 860 A',
      harm: 'The earthing conductor is broken at the cut-out: the house is earthed by a water pipe, and a fault leaves every tap live.',
      clause: agree,
      mustNotSay: 'That the circuit passes, on either of the readings.',
      check: 'origin-readings-agree',
      unsafe: { what: 'PME, Z_e 35 Ω beside I_pf 0.86 kA.', told: () => at(readings(35, 860)) },
      sound: { what: 'PME, Z_e 0.28 Ω beside I_pf 0.86 kA.', told: () => at(readings(0.28, 860)) },
    },
    {
      id: 'prospective-current-too-small',
      title: 'A prospective current below what the earth loop alone gives',
      harm: 'One reading was taken at another house. The breaker was chosen for 500 A and meets 820 A, or the loop is not what it seems.',
      clause: agree,
      mustNotSay: 'That 0.28 Ω and 0.5 kA are of one supply.',
      check: 'origin-readings-agree',
      unsafe: { what: 'Z_e 0.28 Ω beside I_pf 0.5 kA.', told: () => at(readings(0.28, 500)) },
      sound: { what: 'Z_e 0.28 Ω beside I_pf 0.82 kA.', told: () => at(readings(0.28, 820)) },
    },
    {
      id: 'prospective-current-too-large',
      title: 'A prospective current four times what the one conductor gives',
      harm: 'A slip of the decimal point: protective conductors are sized for a fault that cannot be, and disconnection for one that is not.',
      clause: agree,
      mustNotSay: 'That 0.3 Ω and 3 kA are of one PME supply.',
      check: 'origin-readings-agree',
      unsafe: { what: 'PME, single phase, Z_e 0.3 Ω beside I_pf 3 kA.', told: () => at(readings(0.3, 3000)) },
      sound: { what: 'The same with 0.8 kA.', told: () => at(readings(0.3, 800)) },
    },
    {
      id: 'readings-agree-only-at-one-end',
      title: 'Two readings of the loop, of which one contradicts the current',
      harm: 'On the second day the loop had halved. Something at the cut-out is loose.',
      clause: agree,
      mustNotSay: 'That the better reading counts.',
      check: 'origin-readings-agree',
      unsafe: {
        what: 'Z_e between 0.15 and 0.3 Ω beside I_pf 0.8 kA.',
        told: () =>
          at({
            externalImpedance: between(ohms(0.15), ohms(0.3), 'two days'),
            prospectiveCurrent: known(amperes(800), read),
          }),
      },
      sound: {
        what: 'Z_e between 0.26 and 0.3 Ω beside I_pf 0.86 kA.',
        told: () =>
          at({
            externalImpedance: between(ohms(0.26), ohms(0.3), 'two days'),
            prospectiveCurrent: known(amperes(860), read),
          }),
      },
    },
    {
      id: 'pme-above-its-customary-impedance',
      title: 'PME with 0.6 Ω',
      harm: 'The combined conductor corrodes in the joint under the pavement. 0.6 Ω today is an open PEN next winter.',
      clause: 'ENA ER P23/1, superseded by P23/2:2018: 0.35 Ω is customary on TN-C-S; two texts',
      mustNotSay: 'That 0.6 Ω on PME is nothing to ask about.',
      check: 'external-impedance-customary',
      unsafe: { what: 'PME, Z_e 0.6 Ω beside I_pf 0.4 kA.', told: () => at(readings(0.6, 400)) },
      sound: {
        what: 'The same at the end of a long overhead line, as the distributor confirms.',
        told: () => at({ ...readings(0.6, 400), externalImpedanceConfirmed: known(true, 'letter of the distributor') }),
      },
    },
    {
      id: 'sheath-earth-above-its-customary-impedance',
      title: 'A cable-sheath earth of 1.4 Ω',
      harm: 'The lead sheath has come away from its joint. Fault current finds its way through the soil.',
      clause: 'ENA ER P23/1, superseded by P23/2:2018: 0.8 Ω is customary on TN-S; two texts',
      mustNotSay: 'That the sheath is a sound earth.',
      check: 'external-impedance-customary',
      unsafe: {
        what: 'TN-S, Z_e 1.4 Ω beside I_pf 0.86 kA.',
        told: () => at({ ...readings(1.4, 860), system: known('TN-S', read) }),
      },
      sound: {
        what: 'TN-S, Z_e 0.4 Ω beside I_pf 0.86 kA.',
        told: () => at({ ...readings(0.4, 860), system: known('TN-S', read) }),
      },
    },
    {
      id: 'earth-electrode-of-a-fifth-of-an-ohm',
      title: 'A house said to be TT, with 0.2 Ω',
      harm: 'Somebody joined the earth of the network to the rod. It is PME, and the charge point has no open-PEN protection.',
      clause: 'common practice, no source: no rod of a house gives less than 1 Ω',
      mustNotSay: 'That nothing asks for open-PEN protection on TT.',
      check: 'external-impedance-customary',
      unsafe: { what: 'TT, Z_e 0.2 Ω beside I_pf 1.15 kA.', told: () => at({ ...rod, ...readings(0.2, 1150) }) },
      sound: { what: 'TT, Z_e 60 Ω beside I_pf 1.15 kA.', told: () => at({ ...rod, ...readings(60, 1150) }) },
    },
    {
      id: 'electrode-of-no-resistance',
      title: 'A rod of 0 Ω',
      harm: 'The leads of the tester were clipped together. The rod stands in dry gravel, and nothing opens.',
      clause: 'common practice, no source: no rod of a house gives less than 1 Ω',
      mustNotSay: 'That a rod without resistance is the best of all.',
      check: 'external-impedance-customary',
      unsafe: {
        what: 'TT, the loop read as 60 Ω, the rod as 0 Ω.',
        told: () => at({ ...rod, ...readings(60, 1150), electrode: { resistance: known(ohms(0), read) } }),
      },
      sound: {
        what: 'The same, the rod read as 42 Ω.',
        told: () => at({ ...rod, ...readings(60, 1150), electrode: { resistance: known(ohms(42), read) } }),
      },
    },
    {
      id: 'three-lines-with-the-current-of-less-than-one',
      title: 'Three phases, and less current between the lines than to earth',
      harm: 'One line was measured at the end of a long lead. The breakers meet twice what they are marked for.',
      clause: agree,
      mustNotSay: 'That 0.2 Ω and 1 kA are of one three-phase supply.',
      check: 'origin-readings-agree',
      unsafe: { what: 'Three phases, PME, Z_e 0.2 Ω beside I_pf 1 kA.', told: () => three(readings(0.2, 1000)) },
      sound: { what: 'The same with I_pf 2 kA.', told: () => three(readings(0.2, 2000)) },
    },
    {
      id: 'metered-peak-below-the-storage-heaters',
      title: 'A metered peak that is less than the storage heaters take',
      harm: 'The house was metered in June. On the first cold night heaters and vehicle start together, and the main fuse melts.',
      clause: 'arithmetic: heaters that charge together for hours are in every half-hour of those hours',
      mustNotSay: 'That the demand is what was metered, with a margin.',
      unsafe: {
        what: 'Larch Cottage, metered at 27.8 A, with storage heaters of 45 A.',
        told: () => planned('easy-home', storing('45 A')),
      },
      sound: {
        what: 'The same with storage heaters of 15 A, which the meter can have seen.',
        told: () => planned('easy-home', storing('15 A')),
      },
    },
    {
      id: 'plan-on-readings-that-contradict',
      title: 'A plan on readings that contradict each other',
      harm: 'Quotation, cable and breaker rest on a figure that was never there.',
      clause: agree,
      mustNotSay: 'That the job may be done as planned.',
      check: 'origin-readings-agree',
      unsafe: {
        what: 'Larch Cottage with Z_e 0.28 Ω beside I_pf 0.5 kA.',
        told: () => planned('easy-home', [['supply.prospectiveCurrent', { known: '0.5 kA', by: 'measured' }]]),
      },
      sound: { what: 'Larch Cottage as surveyed.', told: () => planned('easy-home') },
    },
    {
      id: 'assumed-loop-above-what-was-read',
      title: 'A customary loop beside a current that was read, and is far less',
      harm: 'The neutral of the service hangs by a strand. 200 A is what it lets through, and the breaker was reckoned with 650 A.',
      clause: agree,
      mustNotSay: 'That Z_e is the customary 0.35 Ω, even on condition, when only 200 A were read.',
      check: 'origin-readings-agree',
      unsafe: {
        what: 'PME, I_pf read as 0.2 kA, Z_e taken from the assumptions of an ordinary home.',
        told: () => assumedLoop(200),
      },
      sound: { what: 'PME, I_pf read as 0.86 kA, Z_e as 0.28 Ω.', told: () => at(readings(0.28, 860)) },
    },
    {
      id: 'three-lines-of-a-supply-nobody-looked-at',
      title: 'A three-phase circuit on a supply of which nobody counted the lines',
      harm: 'There is one line. The van comes with a board for three, and something is bridged before dark.',
      clause: 'BS 7671:2018+A2:2022, 313.1, from memory',
      mustNotSay: 'That there are three lines because the circuit has three.',
      check: 'lines-of-supply',
      unsafe: {
        what: 'A three-phase heater; the phases of the supply not known.',
        told: () => threeLines(unknown('photograph of the meter')),
      },
      sound: { what: 'The same on a supply of three lines, as seen.', told: () => threeLines(known(3, 'seen')) },
    },
    {
      id: 'metal-found-and-denied',
      title: 'Metal in the integral garage of a house that is said to have none',
      harm: 'A steel pipe comes up through the floor of the garage. With the neutral of the street lost it is at earth, and the case of the point at 200 V.',
      clause: 'Facts that contradict each other decide nothing: common practice, no source',
      mustNotSay: 'That no bonding is due because one of two sentences says so.',
      check: 'outbuilding-bonding',
      unsafe: {
        what: 'No metal and no bonding by one line of the survey; by another, metal at a board in the same building.',
        told: () => inOneBuilding(true),
      },
      sound: { what: 'No metal at that board either.', told: () => inOneBuilding(false) },
    },
    {
      id: 'current-that-suits-one-line-alone',
      title: 'Two readings that agree on one line, on a supply of which nobody counted the lines',
      harm: 'There are three, and between them flows twice what was written down. The devices are chosen for half of the fault.',
      clause: agree,
      mustNotSay: 'That the readings agree, before anybody knows on how many lines.',
      check: 'origin-readings-agree',
      unsafe: {
        what: 'PME, Z_e 0.2 Ω beside I_pf 1 kA; the phases of the supply not known.',
        told: () => at({ ...readings(0.2, 1000), phases: unknown('photograph of the meter') }),
      },
      sound: { what: 'The same on one line, as seen.', told: () => at(readings(0.2, 1000)) },
    },
    {
      id: 'reading-beside-a-transformer',
      title: 'A fault current that the transformer beside it laughs at',
      harm: 'The reading is of the hut at the gate. At the switchboard flows fifteen times as much, and the first fault takes the devices apart.',
      clause: 'Plate of the transformer and IEC 60909-0; how far a reading may be off is common practice, no source',
      mustNotSay: 'That 0.9 kA are right at the terminals of 500 kVA.',
      check: 'origin-readings-agree',
      unsafe: {
        what: 'A transformer of 500 kVA at the origin, I_pf 0.9 kA and Z_e 0.28 Ω by the survey.',
        told: () => three({ ...readings(0.28, 900), transformer: atOrigin(500) }),
      },
      sound: {
        what: 'The same readings behind 25 kVA.',
        told: () => three({ ...readings(0.28, 900), transformer: atOrigin(25) }),
      },
    },
    {
      id: 'loop-below-the-rod-that-it-holds',
      title: 'A loop of 30 Ω through a rod of 100 Ω',
      harm: 'The water pipe carried the test current. The day it is replaced by plastic, the rod stands alone.',
      clause: 'physics: the loop holds the electrode; what instruments differ by is common practice, no source',
      mustNotSay: 'That both readings are right.',
      check: 'origin-readings-agree',
      unsafe: { what: 'TT, Z_e 30 Ω beside R_A of 100 Ω.', told: () => at({ ...rod, ...onRod(30, 100) }) },
      sound: { what: 'TT, Z_e 101 Ω beside R_A of 100 Ω.', told: () => at({ ...rod, ...onRod(101, 100) }) },
    },
  ],
};
