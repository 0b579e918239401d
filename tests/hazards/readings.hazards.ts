import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  celsius,
  circuitCase,
  judgeReadings,
  known,
  milliamperes,
  overall,
  type Run,
  testSheet,
} from '../../src/index.js';
import { load } from '../support/house.js';
import type { Chapter, Told } from './hazard.js';
import { slow, tt } from './residual-circuits.js';
import { metresOf, premises, soundCircuit, soundHouse, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
type Changes = Readonly<Record<string, number | boolean | undefined>>;

/** What the readings of a circuit are told; undefined leaves one out. */
function read(run: Run, good: Changes, change: Changes, house = soundHouse([run])): Told {
  const sheet = testSheet({
    code,
    circuit: circuitCase(house, run.id, premises),
    testTemperature: celsius(15),
    electronics: 'disconnected',
  });
  const readings = Object.entries({ ...good, ...change }).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, value] as const],
  );
  const { results } = judgeReadings(sheet, Object.fromEntries(readings));
  return { verdict: overall(results).verdict, results };
}

/** The circuit of the point: 20 m of 6/2.5 mm², R_1+R_2 about 0.21 Ω. */
const good: Changes = {
  continuity: 0.21,
  insulationLive: 200e6,
  insulationEarth: 200e6,
  polarity: true,
  externalLoop: 0.28,
  loop: 0.49,
  prospective: 860,
  residual1At1: 0.024,
  residual2At1: 0.021,
  'directTrip-point': 0.0045,
  'directTime-point': 0.9,
  functional: true,
  voltage: 240,
  loadedVoltage: 235.6,
};
const ofPoint = (change: Changes = {}): Told => read(soundCircuit(), good, change);

/** A ring of 2.5/1.5 mm² sockets, 80 m from end to end: ends of about 0.6 Ω and 1.0 Ω. */
const ring = soundCircuit({
  id: 'ring',
  ring: true,
  stretches: [soundStretch({ length: metresOf(80) })],
  cable: { ...soundCircuit().cable, area: known(2.5 as never, 'seen at the survey') },
  feeds: [load(20, { id: 'sockets', purpose: 'socket-outlets' })],
});
const ofRing = (change: Changes = {}): Told =>
  read(
    ring,
    {
      continuity: 0.38,
      ringLine: 0.58,
      ringNeutral: 0.58,
      ringProtective: 0.95,
      crossLineNeutral: 0.29,
      crossLineProtective: 0.38,
      insulationLive: 200e6,
      insulationEarth: 200e6,
      polarity: true,
      externalLoop: 0.28,
      loop: 0.66,
      prospective: 860,
      residual1At1: 0.024,
      functional: true,
      voltage: 240,
      loadedVoltage: 236,
    },
    change,
  );

/** The same point on TT, its rod surveyed at 80 Ω and not read by itself. */
const onRod = (externalLoop: number): Told => {
  const run = soundCircuit({}, { openPenDevice: known('none', 'data sheet') });
  const house = soundHouse([run], {
    system: known('TT', 'seen at the survey'),
    externalImpedance: known(80 as never, 'measured'),
    electrode: { resistance: known(80 as never, 'measured') },
  });
  return read(run, { ...good, externalLoop, loop: externalLoop + 0.21 }, {}, house);
};
/** The same on TT behind 100 mA of the house, the rod of 40 Ω. */
const behindRod = (change: Changes = {}): Told =>
  read(
    soundCircuit(),
    {
      ...good,
      electrode: 40,
      externalLoop: 41,
      loop: 41.2,
      residual1At1: 0.2,
      residual2At1: 0.024,
      residual3At1: 0.021,
    },
    change,
    soundHouse([soundCircuit()], tt, { residual: [slow({ rating: known(milliamperes(100), 'marking') })] }),
  );

const clause = 'BS 7671, 643.2; how far a reading may lie off is common practice, no source';

export const chapter: Chapter = {
  title: 'Readings that prove the opposite',
  introduction:
    'A reading far from what the cable can give is a finding: an open conductor, a bridge, or a lead that hung in the air. Written down and passed over, it is a certificate for a fault.',
  hazards: [
    {
      id: 'protective-conductor-open',
      title: 'A protective conductor that is not connected',
      harm: 'The instrument shows 2 MΩ: the case of the point has no earth. The first fault makes it live, and the vehicle with it.',
      clause,
      mustNotSay: 'That continuity is in order.',
      check: 'reading-continuity-at-most',
      unsafe: { what: 'R_1+R_2 of 2 MΩ where 0.21 Ω is due.', told: () => ofPoint({ continuity: 2e6 }) },
      sound: { what: 'R_1+R_2 of 0.21 Ω.', told: () => ofPoint() },
    },
    {
      id: 'protective-conductor-poor-joint',
      title: 'A joint that adds half an ohm',
      harm: 'A clamp that is barely tight heats at every charge, and an earth fault finds twice the resistance that was reckoned with.',
      clause,
      mustNotSay: 'That 0.7 Ω is near enough to 0.21 Ω.',
      check: 'reading-continuity-at-most',
      unsafe: { what: 'R_1+R_2 of 0.7 Ω where 0.21 Ω is due.', told: () => ofPoint({ continuity: 0.7, loop: 0.98 }) },
      sound: { what: 'R_1+R_2 of 0.25 Ω, a little over.', told: () => ofPoint({ continuity: 0.25, loop: 0.53 }) },
    },
    {
      id: 'continuity-of-nothing',
      title: 'A continuity of 0.00 Ω',
      harm: 'The leads were clipped together. The conductor was never measured.',
      clause,
      mustNotSay: 'That so low a resistance is all the better.',
      check: 'reading-continuity-at-least',
      unsafe: { what: 'R_1+R_2 of 0 Ω over 20 m.', told: () => ofPoint({ continuity: 0 }) },
      sound: { what: 'R_1+R_2 of 0.2 Ω.', told: () => ofPoint({ continuity: 0.2 }) },
    },
    {
      id: 'continuity-not-read',
      title: 'Continuity that was not read at all',
      harm: 'Everything else was measured; whether the point is earthed was not.',
      clause: 'BS 7671, 643.2',
      mustNotSay: 'That the circuit is verified.',
      check: 'reading-continuity',
      unsafe: { what: 'Neither R_1+R_2 nor R_2 was read.', told: () => ofPoint({ continuity: undefined }) },
      sound: {
        what: 'R_2 was read with a wander lead instead.',
        told: () => ofPoint({ continuity: undefined, protectiveContinuity: 0.145 }),
      },
    },
    {
      id: 'ring-open',
      title: 'A ring that is none',
      harm: 'One end is broken: 30 A flow through one 2.5 mm² cable behind the plaster, which chars for weeks before it burns.',
      clause,
      mustNotSay: 'That the ends of the ring are in order.',
      check: 'reading-ringLine-at-most',
      unsafe: {
        what: 'Ends of 9999 Ω, as the instrument shows an open conductor.',
        told: () => ofRing({ ringLine: 9999, ringNeutral: 9999 }),
      },
      sound: { what: 'Ends of 0.58 Ω.', told: () => ofRing() },
    },
    {
      id: 'ring-bridged',
      title: 'A ring with a bridge in it',
      harm: 'Two points of the ring were joined in an old junction box: part of the cable carries nearly everything.',
      clause,
      mustNotSay: 'That cross-connected readings of a tenth are good.',
      check: 'reading-crossLineNeutral-at-least',
      unsafe: {
        what: 'Cross-connected 0.05 Ω where 0.29 Ω is due.',
        told: () => ofRing({ crossLineNeutral: 0.05 }),
      },
      sound: { what: 'Cross-connected 0.29 Ω.', told: () => ofRing() },
    },
    {
      id: 'loop-of-nothing',
      title: 'A loop impedance of 0 Ω',
      harm: 'The instrument was zeroed on the circuit. Nobody knows whether the breaker opens.',
      clause: 'BS 7671, 643.7.3, with physics: the line conductor alone resists more',
      mustNotSay: 'That Z_s is below its limit.',
      check: 'reading-loop-at-least',
      unsafe: { what: 'Z_s of 0 Ω at the end of 20 m.', told: () => ofPoint({ loop: 0 }) },
      sound: { what: 'Z_s of 0.49 Ω.', told: () => ofPoint() },
    },
    {
      id: 'external-loop-of-nothing',
      title: 'An external impedance of 0 Ω',
      harm: 'Every figure that rests on Z_e is too good by all of it.',
      clause: 'BS 7671, 643.7.3; a loop of nothing is no loop',
      mustNotSay: 'That the supply has no impedance.',
      check: 'reading-externalLoop-at-least',
      unsafe: { what: 'Z_e of 0 Ω.', told: () => ofPoint({ externalLoop: 0 }) },
      sound: { what: 'Z_e of 0.28 Ω.', told: () => ofPoint() },
    },
    {
      id: 'break-time-of-nothing',
      title: 'A residual current device that trips in no time',
      harm: 'It had tripped already when the button was pressed: its time was never taken, and it may be stuck at the next fault.',
      clause: 'BS 7671, 643.8; a time of nothing is no time',
      mustNotSay: 'That 0 ms is below 300 ms.',
      check: 'reading-residual1At1-at-least',
      unsafe: { what: 'A break time of 0 s.', told: () => ofPoint({ residual1At1: 0 }) },
      sound: { what: 'A break time of 24 ms.', told: () => ofPoint() },
    },
    {
      id: 'external-loop-three-times-the-design',
      title: 'An external impedance three times that of the design',
      harm: 'The neutral of the street is about to part. The circuit was worked out for another supply, and nobody asks.',
      clause: 'BS 7671, 643.7.3, 313.1, from memory',
      mustNotSay: 'That the circuit is as designed.',
      check: 'reading-externalLoop',
      unsafe: {
        what: 'Z_e of 0.9 Ω on PME that was designed with 0.28 Ω.',
        told: () => ofPoint({ externalLoop: 0.9, loop: 1.11, prospective: 260 }),
      },
      sound: { what: 'Z_e of 0.3 Ω.', told: () => ofPoint({ externalLoop: 0.3, loop: 0.51, prospective: 820 }) },
    },
    {
      id: 'loop-below-the-external-one',
      title: 'A loop at the point below that of the supply',
      harm: 'One of the two was read with something in parallel: the circuit is passed by a figure that is not its own.',
      clause: 'BS 7671, 643.7.3, with physics: Z_s contains Z_e',
      mustNotSay: 'That Z_s is below its limit.',
      check: 'reading-loop',
      unsafe: { what: 'Z_s of 0.2 Ω beside Z_e of 0.28 Ω.', told: () => ofPoint({ loop: 0.2 }) },
      sound: { what: 'Z_s of 0.46 Ω: a little metal in parallel.', told: () => ofPoint({ loop: 0.46 }) },
    },
    {
      id: 'continuity-of-half',
      title: 'R_1+R_2 of half of what is due',
      harm: 'A pipe carries the continuity test. When it is replaced by plastic the point has no earth.',
      clause: 'BS 7671, 643.2.1, with physics: 20 m of 6 and 2.5 mm² resist 0.21 Ω',
      mustNotSay: 'That the protective conductor is continuous.',
      check: 'reading-continuity',
      unsafe: { what: '0.1 Ω where 0.21 Ω is due.', told: () => ofPoint({ continuity: 0.1 }) },
      sound: { what: '0.18 Ω.', told: () => ofPoint({ continuity: 0.18, loop: 0.46 }) },
    },
    {
      id: 'continuity-of-twice',
      title: 'R_1+R_2 of twice what is due',
      harm: 'A clamp of the protective conductor holds by two strands. Every figure is within its limit, and the clamp burns off at the first earth fault.',
      clause: `${clause}; that the next smaller cable has half as much again: physics`,
      mustNotSay: 'That 0.42 Ω is in order because it is less than three times 0.21 Ω.',
      check: 'reading-continuity',
      unsafe: {
        what: 'R_1+R_2 of 0.42 Ω where 0.21 Ω is due, Z_s as much more.',
        told: () => ofPoint({ continuity: 0.42, loop: 0.7 }),
      },
      sound: {
        what: 'R_1+R_2 of 0.28 Ω: the route is a little longer than it was paced.',
        told: () => ofPoint({ continuity: 0.28, loop: 0.56 }),
      },
    },
    {
      id: 'protective-conductor-of-twice',
      title: 'R_2 of twice what is due',
      harm: 'Half of the wires of the armour are not under the gland. A fault finds the other half.',
      clause: `${clause}; that the next smaller cable has half as much again: physics`,
      mustNotSay: 'That the way to earth is as designed.',
      check: 'reading-protectiveContinuity',
      unsafe: {
        what: 'R_2 of 0.29 Ω where 0.145 Ω is due.',
        told: () => ofPoint({ continuity: undefined, protectiveContinuity: 0.29 }),
      },
      sound: {
        what: 'R_2 of 0.16 Ω.',
        told: () => ofPoint({ continuity: undefined, protectiveContinuity: 0.16 }),
      },
    },
    {
      id: 'ring-of-twice',
      title: 'A ring whose ends read twice what is due',
      harm: 'There are 80 m more of it than anybody knows: a spur was put into the ring, or it goes round an annexe that is on no plan.',
      clause,
      mustNotSay: 'That line and neutral agree, and all is well.',
      check: 'reading-ringLine',
      unsafe: {
        what: 'Ends of 1.18 Ω where 0.58 Ω is due, line and neutral alike, crossed 0.59 Ω.',
        told: () => ofRing({ ringLine: 1.18, ringNeutral: 1.18, crossLineNeutral: 0.59 }),
      },
      sound: {
        what: 'Ends of 0.66 Ω, crossed 0.33 Ω.',
        told: () => ofRing({ ringLine: 0.66, ringNeutral: 0.66, crossLineNeutral: 0.33 }),
      },
    },
    {
      id: 'voltage-that-breaks-down-under-load',
      title: 'A voltage that falls by 40 V as the vehicle charges',
      harm: 'A terminal burns with a kilowatt behind the cover.',
      clause: 'common practice, no source: 5 % of U_0 is what 32 A drop in 0.35 Ω of a supply',
      mustNotSay: 'That nothing is wrong with the supply and the joints.',
      check: 'reading-loadedVoltage',
      unsafe: { what: '240 V, and 200 V under load.', told: () => ofPoint({ loadedVoltage: 200 }) },
      sound: {
        what: '240 V, and 230 V under load: the street falls too.',
        told: () => ofPoint({ loadedVoltage: 230 }),
      },
    },
    {
      id: 'prospective-current-without-a-loop',
      title: 'A prospective current of which the loop knows nothing',
      harm: 'Either it is wrong and the devices may burst, or the loop is, and they may not open.',
      clause: 'BS 7671, 643.7.3.201, 434.1, with physics: 230 V over Z_e',
      mustNotSay: 'That the breaking capacity suffices.',
      check: 'reading-prospective',
      unsafe: { what: '5 kA on PME beside Z_e of 0.28 Ω.', told: () => ofPoint({ prospective: 5000 }) },
      sound: { what: '1 kA.', told: () => ofPoint({ prospective: 1000 }) },
    },
    {
      id: 'prospective-current-above-the-design',
      title: 'A fault current five times that of the design',
      harm: 'The distributor has put a transformer at the end of the garden. The protective conductor was reckoned with a fifth of what melts it now.',
      clause: 'BS 7671, 643.7.3.201, 434.5.2, 543.1.1, from memory',
      mustNotSay: 'That the circuit is as designed because its devices break the current.',
      check: 'reading-prospective',
      unsafe: {
        what: 'I_pf of 4.5 kA and Z_e of 0.05 Ω where 0.86 kA and 0.28 Ω were designed with.',
        told: () => ofPoint({ externalLoop: 0.051, loop: 0.26, prospective: 4500 }),
      },
      sound: {
        what: 'I_pf of 0.95 kA and Z_e of 0.25 Ω.',
        told: () => ofPoint({ externalLoop: 0.25, loop: 0.46, prospective: 950 }),
      },
    },
    {
      id: 'prospective-current-below-the-earth-fault',
      title: 'A prospective current far below what the loop gives',
      harm: 'The smaller of two readings was written down: the devices are chosen for a fault that is not the worst.',
      clause: 'BS 7671, 643.7.3.201, 434.1, with physics: 230 V over Z_e',
      mustNotSay: 'That the breaking capacity suffices.',
      check: 'reading-prospective',
      unsafe: { what: '100 A beside Z_e of 0.28 Ω.', told: () => ofPoint({ prospective: 100 }) },
      sound: { what: '800 A.', told: () => ofPoint({ prospective: 800 }) },
    },
    {
      id: 'loop-of-twice-its-parts',
      title: 'A loop of twice what its parts make',
      harm: 'A terminal of the main switch has worked loose. Every figure is within its limit, and the terminal glows.',
      clause:
        'BS 7671, 643.7.3, with physics: Z_s is Z_e and R_1+R_2; how far instruments err is common practice, no source',
      mustNotSay: 'That Z_s is in order because it is below its limit.',
      check: 'reading-loop',
      unsafe: {
        what: 'Z_s of 1.05 Ω beside Z_e of 0.28 Ω and R_1+R_2 of 0.21 Ω.',
        told: () => ofPoint({ loop: 1.05 }),
      },
      sound: { what: 'Z_s of 0.56 Ω: leads, and the device in the path.', told: () => ofPoint({ loop: 0.56 }) },
    },
    {
      id: 'ring-ends-that-differ',
      title: 'Line and neutral of a ring that differ by half',
      harm: 'One joint of the neutral is poor. It carries the return of half the house, behind a wardrobe.',
      clause,
      mustNotSay: 'That the ring is in order because each reading is near enough.',
      check: 'reading-ringNeutral',
      unsafe: { what: 'Line 0.58 Ω, neutral 0.85 Ω.', told: () => ofRing({ ringNeutral: 0.85 }) },
      sound: { what: 'Line 0.58 Ω, neutral 0.61 Ω.', told: () => ofRing({ ringNeutral: 0.61 }) },
    },
    {
      id: 'ring-that-was-not-crossed',
      title: 'A cross-connected reading that is not a quarter of both',
      harm: 'The ends were joined like to like. Nothing was tested, and the bridge in the ring stays.',
      clause,
      mustNotSay: 'That the ring is whole.',
      check: 'reading-crossLineNeutral',
      unsafe: {
        what: 'Cross-connected 0.5 Ω where ends of 0.58 Ω give 0.29 Ω.',
        told: () => ofRing({ crossLineNeutral: 0.5 }),
      },
      sound: { what: 'Cross-connected 0.3 Ω.', told: () => ofRing({ crossLineNeutral: 0.3 }) },
    },
    {
      id: 'voltage-that-rises-under-load',
      title: 'A voltage that rises as the vehicle charges',
      harm: 'The neutral of the service is about to part. The lamps of the house grow bright, and then everything burns out.',
      clause: 'BS 7671, 643.11, with physics: a load lowers the voltage at its terminals',
      mustNotSay: 'That a rise is all the better.',
      check: 'reading-loadedVoltage',
      unsafe: { what: '240 V, and 250 V under load.', told: () => ofPoint({ loadedVoltage: 250 }) },
      sound: { what: '240 V, and 236 V under load.', told: () => ofPoint({ loadedVoltage: 236 }) },
    },
    {
      id: 'loop-read-with-the-bonds-on',
      title: 'A loop read from outside, with the bonds still on',
      harm: 'The water main of iron gives 0.4 Ω today and is of plastic tomorrow. Then there is the rod alone, which nobody has read.',
      clause: 'BS 7671:2018+A2:2022, 643.7.2 and its note: the loop may stand for the electrode, from memory',
      mustNotSay: 'That a low loop proves a good electrode.',
      check: 'reading-electrode',
      unsafe: { what: 'TT, a rod of 80 Ω, Z_e of 0.4 Ω; the rod not read by itself.', told: () => onRod(0.4) },
      sound: { what: 'The same, Z_e of 80 Ω: the rod is no more than that.', told: () => onRod(80) },
    },
    {
      id: 'loop-through-the-rod-below-the-rod',
      title: 'A loop through the rod that is less than the rod',
      harm: 'The pipes carried the test current, and they are plastic from the next repair on: what is left is a rod that nobody measured.',
      clause,
      mustNotSay: 'That 5 Ω and 40 Ω are both in order.',
      check: 'reading-electrode',
      unsafe: { what: 'TT: R_A of 40 Ω beside Z_e of 5 Ω.', told: () => behindRod({ externalLoop: 5, loop: 5.2 }) },
      sound: { what: 'TT: R_A of 40 Ω beside Z_e of 41 Ω.', told: () => behindRod() },
    },
  ],
};
