import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../src/codes/wiring-code.js';
import {
  amperes,
  type ChargePoint,
  known,
  metres,
  ohms,
  type Run,
  type Supply,
  squareMillimetres,
} from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Chapter } from './hazard.js';
import { premises, soundCircuit, soundHouse } from './sound.js';

const lineConductors = ['L1', 'L2', 'L3'] as const;
const [a1, a2] = [bs7671('2018+A1:2020'), bs7671('2018+A2:2022')];
const looked = 'seen at the survey';
const three: Partial<Supply> = {
  phases: known(3, looked),
  prospectiveCurrent: known(amperes(1600), 'measured'),
};
const state = (a: number, b: number, c: number) => ({
  name: `${a}/${b}/${c} A`,
  currents: [amperes(a), amperes(b), amperes(c)] as const,
});
const tied = 'contactor that opens without the other load';
/** A three-phase point of 16 A on 4 mm² armoured cable of four cores and more. */
const threePhasePoint = (point: Partial<ChargePoint>): Run =>
  soundCircuit(
    {
      lines: lineConductors,
      device: {
        kind: known({ standard: 'EN 60898', type: 'B' }),
        rating: known(amperes(20)),
        breakingCapacity: known(amperes(6000)),
        groupingFactor: known(1, 'stands apart'),
      },
      cable: {
        construction: 'armoured',
        material: 'copper',
        insulation: 'thermosetting-90',
        cores: 5,
        loadedCores: known(4),
        area: known(squareMillimetres(6), looked),
        protective: 'core',
      },
    },
    { lines: lineConductors, setting: known(amperes(16)), ...point },
  );
const kiln: Run = {
  ...soundCircuit({
    id: 'kiln',
    lines: lineConductors,
    existing: true,
    cable: { ...soundCircuit().cable, construction: 'multicore', cores: 5, protective: 'core' },
  }),
  feeds: [load(40, { id: 'kiln load', lines: lineConductors })],
};
const ownElectrodeOnTnS = (resistance: number) =>
  soundHouse(
    [
      soundCircuit(
        {},
        {
          openPenDevice: known('none', looked),
          earthing: 'tt-earthing',
          electrode: { resistance: known(ohms(resistance), 'measured'), separation: known(metres(12), 'measured') },
        },
      ),
    ],
    { system: known('TN-S', looked) },
  );
/** A sound point at a place of this kind. */
const placed = (specialLocation: NonNullable<Supply['specialLocation']>, supply: Partial<Supply> = {}) =>
  assessed(a2, soundHouse([soundCircuit()], { ...supply, specialLocation }), 'ev', premises);
/** A point outdoors without a measure on TN-S. */
const onTnS = (supply: Partial<Supply> = {}, point: Partial<ChargePoint> = {}) =>
  assessed(
    a2,
    soundHouse([soundCircuit({}, { openPenDevice: known('none', looked), ...point })], {
      system: known('TN-S', looked),
      ...supply,
    }),
    'ev',
    premises,
  );
const onThree = (
  code: typeof a1,
  point: Partial<ChargePoint>,
  options: AssessmentOptions,
  supply: Partial<Supply> = {},
  runs: readonly Run[] = [kiln],
) =>
  assessed(code, soundHouse([threePhasePoint(point), ...runs], { ...three, ...supply }), 'ev', {
    ...premises,
    ...options,
  });
const rod = (value: number): Partial<Supply> => ({ electrode: { resistance: known(ohms(value), 'measured') } });
const byDevice = { openPenDevice: known('open-pen-detection-touch-voltage' as const, looked) };
const otherKind = (point: Partial<ChargePoint>) => {
  const circuit = soundCircuit({}, { openPenDevice: known('open-pen-detection-other', looked), ...point });
  return assessed(a2, soundHouse([circuit]), 'ev', premises);
};
const balanced = { earthing: 'balanced-three-phase', openPenDevice: known('none', looked) } as const;
const lowRod = { earthing: 'low-electrode', openPenDevice: known('none', looked) } as const;

/** PME, vehicles indoors alone; the kind of place is known where it is stated. */
function indoors(supply: Partial<Supply>, point: Partial<ChargePoint> = {}) {
  const circuit = soundCircuit({}, { outdoors: known(false, looked), openPenDevice: known('none', looked), ...point });
  const house = soundHouse([circuit]);
  const { specialLocation: _unsaid, ...rest } = house.supply;
  return assessed(a2, { ...house, supply: { ...rest, ...supply } }, 'ev', premises);
}
const onSite = (point: Partial<ChargePoint>) => indoors({ specialLocation: 'construction-site' }, point);

export const chapter: Chapter = {
  title: 'A neutral that is lost in the street',
  introduction:
    'On a PME supply neutral and earth are one conductor. Where it breaks, everything that is earthed takes the voltage of the neutral, and a vehicle outdoors stands on true earth with whoever touches it.',
  hazards: [
    {
      id: 'single-phase-vehicle-on-three-phase-point',
      title: 'A single-phase vehicle on a point that counts as balanced',
      harm: 'The point was reckoned with all three lines alike. The neighbour’s small car uses one; the neutral breaks, and its body stands at 230 V.',
      clause: 'BS 7671:2018+A1:2020, 722.411.4.1 (i), two texts; deleted by A2',
      mustNotSay: 'That a three-phase point is balanced, whatever is plugged in.',
      unsafe: {
        what: 'A1: a point of three lines, earthed by balance, with a state of 56 A on each line declared.',
        told: () => onThree(a1, balanced, { loadStates: [state(56, 56, 56)] }),
      },
      sound: {
        what: 'The same with a device that measures the voltage to earth.',
        told: () => onThree(a1, byDevice, {}),
      },
    },
    {
      id: 'vehicle-on-some-of-the-lines',
      title: 'A vehicle on one line or two beside a load that is balanced',
      harm: 'With the kiln running the three lines were alike, until a car with a single-phase charger drove in.',
      clause: 'BS 7671:2018+A1:2020, 722.411.4.1 (i), two texts; deleted by A2',
      mustNotSay: 'That the declared state is the only one.',
      check: 'open-pen-balanced-load',
      unsafe: {
        what: 'A1: kiln 10 A and point 16 A on each line, never alone; the state with all three lines declared.',
        told: () => onThree(a1, balanced, { loadStates: [state(26, 26, 26)], pointNeverAlone: tied }),
      },
      sound: {
        what: 'The same beside 100 A on each line, against which a vehicle on one line does not weigh.',
        told: () => onThree(a1, balanced, { loadStates: [state(116, 116, 116)], pointNeverAlone: tied }),
      },
    },
    {
      id: 'balance-without-another-load',
      title: 'Balance with nothing to balance',
      harm: 'The point is the only load there is. “Balanced” is a word for a single car.',
      clause: 'BS 7671:2018+A1:2020, 722.411.4.1 (i): other loads as well, two texts',
      mustNotSay: 'That an installation of charge points alone is balanced.',
      check: 'three-phase-installation',
      unsafe: {
        what: 'A1: a three-phase supply that feeds the point and nothing else, declared as 116 A on each line.',
        told: () => onThree(a1, balanced, { loadStates: [state(116, 116, 116)], pointNeverAlone: tied }, {}, []),
      },
      sound: {
        what: 'The same with a kiln on the board.',
        told: () => onThree(a1, balanced, { loadStates: [state(116, 116, 116)], pointNeverAlone: tied }),
      },
    },
    {
      id: 'balance-under-the-second-amendment',
      title: 'Balance, after it was struck out',
      harm: 'The same car and the same broken neutral, and a clause that no longer exists.',
      clause: 'BS 7671:2018+A2:2022: 722.411.4.1 (i) is deleted, two persons in one thread',
      mustNotSay: 'That balance is an arrangement of this edition.',
      check: 'charge-point-earthing',
      unsafe: {
        what: 'A2: the arrangement by balance, with states that A1 would have accepted.',
        told: () => onThree(a2, balanced, { loadStates: [state(116, 116, 116)], pointNeverAlone: tied }),
      },
      sound: { what: 'A2: a device that measures the voltage to earth.', told: () => onThree(a2, byDevice, {}) },
    },
    {
      id: 'low-electrode-without-an-electrode',
      title: 'A low electrode that is not there',
      harm: 'With balanced load nothing rises, so nobody drove a rod. The kiln trips one of its fuses.',
      clause: 'BS 7671, 722.411.4.1 (ii), two texts',
      mustNotSay: 'That an arrangement by electrode needs no electrode.',
      check: 'open-pen-electrode-there',
      unsafe: {
        what: 'A2: earthed “by a low electrode”, none stated, a balanced state of load declared.',
        told: () => onThree(a2, lowRod, { loadStates: [state(116, 116, 116)], pointNeverAlone: tied }),
      },
      sound: {
        what: 'The same with an electrode of 1 Ω.',
        told: () => onThree(a2, lowRod, { loadStates: [state(116, 116, 116)], pointNeverAlone: tied }, rod(1)),
      },
    },
    {
      id: 'electrode-for-three-lines-only',
      title: 'A rod that suits three lines, and a car on one',
      harm: 'The rod was chosen for a car on all three lines, which needs none. A car on one line lifts it to 200 V.',
      clause: 'BS 7671, 722.411.4.1 (ii), two texts',
      mustNotSay: 'That the rod is low enough.',
      check: 'open-pen-low-electrode',
      unsafe: {
        what: 'A2: a rod of 20 Ω, the state with all three lines declared.',
        told: () => onThree(a2, lowRod, { loadStates: [state(16, 16, 16)] }, rod(20)),
      },
      sound: {
        what: 'The same with an earth of 1 Ω.',
        told: () => onThree(a2, lowRod, { loadStates: [state(16, 16, 16)] }, rod(1)),
      },
    },
    {
      id: 'other-detection-without-a-declaration',
      title: 'Open-PEN detection of a kind that nobody vouches for',
      harm: 'The leaflet says that it guards against the loss of the neutral. It watches a quantity that stays usual while the body of the vehicle is at 150 V.',
      clause: 'BS 7671:2018+A1:2020, 722.411.4.1 (v), two texts',
      mustNotSay: 'That a device of another kind gives equal safety because it calls itself open-PEN detection.',
      check: 'open-pen-detection-other',
      unsafe: {
        what: 'A point with open-PEN detection of another kind, of which no declaration was seen.',
        told: () => otherKind({}),
      },
      sound: {
        what: 'The same, its maker showing in writing safety equal to the others.',
        told: () => otherKind({ openPenEqualSafety: known(true, 'declaration of the maker') }),
      },
    },
    {
      id: 'filling-station-indoors',
      title: 'A point in the wash hall of a filling station',
      harm: 'Vapour, several earths of several suppliers, an emergency switch that does not know of the point.',
      clause: 'No clause of BS 7671; guidance for filling stations, from memory',
      mustNotSay: 'That a roof over the vehicle makes a filling station an ordinary place.',
      check: 'charge-point-place',
      unsafe: {
        what: 'A sound point in a filling station, for vehicles indoors.',
        told: () =>
          assessed(
            a2,
            soundHouse([soundCircuit({}, { outdoors: known(false, looked) })], { specialLocation: 'filling-station' }),
            'ev',
            premises,
          ),
      },
      sound: {
        what: 'The same point in an ordinary garage.',
        told: () => assessed(a2, soundHouse([soundCircuit({}, { outdoors: known(false, looked) })]), 'ev', premises),
      },
    },
    {
      id: 'filling-station-on-its-own-electrode',
      title: 'A filling station with an earth of its own for the point',
      harm: 'A second earth between pumps and point: a spark where there may be vapour.',
      clause: 'No clause of BS 7671; guidance for filling stations, from memory',
      mustNotSay: 'That a device, or a rod, settles it.',
      check: 'charge-point-place',
      unsafe: {
        what: 'A TT supply at a filling station.',
        told: () =>
          assessed(
            a2,
            soundHouse([soundCircuit()], { system: known('TT', looked), specialLocation: 'filling-station' }),
            'ev',
            premises,
          ),
      },
      sound: {
        what: 'The same point at a house on PME.',
        told: () => assessed(a2, soundHouse([soundCircuit()], { specialLocation: 'none' }), 'ev', premises),
      },
    },
    {
      id: 'point-where-cattle-stand',
      title: 'A point at a milking parlour on PME',
      harm: 'With the PEN conductor open every rail is live. A cow dies at 25 V that no man would feel.',
      clause: 'BS 7671:2018+A2:2022, Section 705, from memory: no rule of it is entered',
      mustNotSay: 'That open-PEN detection in the point settles a place that has a section of its own.',
      check: 'charge-point-place',
      unsafe: { what: 'A sound point on PME at a farm where animals are kept.', told: () => placed('farm') },
      sound: { what: 'The same at the house, where none are.', told: () => placed('none') },
    },
    {
      id: 'point-beside-a-swimming-pool',
      title: 'A point on the terrace of a swimming pool',
      harm: 'Wet, barefoot, within reach of the rail of the pool and of the car.',
      clause: 'BS 7671:2018+A2:2022, Section 702, from memory: no rule of it is entered',
      mustNotSay: 'That the terrace is a drive like any other.',
      check: 'charge-point-place',
      unsafe: { what: 'A sound point on PME beside a pool.', told: () => placed('swimming-pool') },
      sound: { what: 'The same on the drive of a house without one.', told: () => placed('none') },
    },
    {
      id: 'point-at-a-fairground',
      title: 'A point at a fairground, with an earth of its own',
      harm: 'Rides of steel, each earthed elsewhere, an arm’s length from the car.',
      clause: 'BS 7671:2018+A2:2022, Part 7, from memory: no rule of that section is entered',
      mustNotSay: 'That a place of which the rules are not known has none.',
      check: 'charge-point-place',
      unsafe: {
        what: 'A sound point on a TT supply at a place with rules of its own.',
        told: () => placed('other', { system: known('TT', looked), externalImpedance: known(ohms(60), 'measured') }),
      },
      sound: {
        what: 'The same supply at an ordinary place.',
        told: () => placed('none', { system: known('TT', looked), externalImpedance: known(ohms(60), 'measured') }),
      },
    },
    {
      id: 'place-not-stated',
      title: 'A place of which nobody says what it is',
      harm: 'It is a marina. The combined conductor reaches the pontoon, and whoever swims there.',
      clause: 'ESQCR 2002, regulation 9(4), two texts',
      mustNotSay: 'Anything better than for a marina.',
      unsafe: {
        what: 'A point outdoors on PME, the place left out of the survey.',
        told: () => {
          const { supply, board } = soundHouse([soundCircuit()]);
          const { specialLocation: _unsaid, ...rest } = supply;
          return assessed(a2, { supply: rest, board }, 'ev', premises);
        },
      },
      sound: {
        what: 'The same, stated to be none of the special places.',
        told: () => assessed(a2, soundHouse([soundCircuit()]), 'ev', premises),
      },
    },
    {
      id: 'point-indoors-vehicle-outdoors',
      title: 'A point in the garage, a lead under the door',
      harm: 'The point hangs indoors; the car stands on the drive. With the neutral lost the householder who touches it stands on wet earth.',
      clause: 'BS 7671, 722.411.4.1: a point outdoors, or reasonably expected to charge a vehicle outdoors; two texts',
      mustNotSay: 'That the place of the point decides.',
      unsafe: {
        what: 'A point in a garage without any measure, from which a vehicle outdoors may be charged.',
        told: () =>
          assessed(
            a2,
            soundHouse([
              soundCircuit(
                {},
                { outdoors: known(true, 'the lead reaches the drive'), openPenDevice: known('none', looked) },
              ),
            ]),
            'ev',
            premises,
          ),
      },
      sound: {
        what: 'The same, where the lead does not reach the door.',
        told: () =>
          assessed(
            a2,
            soundHouse([
              soundCircuit({}, { outdoors: known(false, 'fixed lead of 3 m'), openPenDevice: known('none', looked) }),
            ]),
            'ev',
            premises,
          ),
      },
    },
    {
      id: 'tn-s-taken-at-its-word',
      title: 'TN-S that was repaired in the street',
      harm: 'The sheath of the service cable is the earth, and the main in the road was jointed with combined cable ten years ago. Its neutral breaks, and the car on the drive stands at 230 V.',
      clause:
        'BS 7671, 722.411.4.1 names PME; code of practice for charging equipment: TN-S from the street is treated alike, from memory',
      mustNotSay: 'That a clamp on the sheath says how the main is made.',
      check: 'charge-point-earthing',
      unsafe: {
        what: 'TN-S of which nobody asked the distributor, and a point outdoors without any measure.',
        told: () => onTnS(),
      },
      sound: {
        what: 'The same, the distributor having confirmed that neutral and earth are separate as far as the transformer.',
        told: () => onTnS({ separateEarthConfirmed: known(true, 'letter of the distributor') }),
      },
    },
    {
      id: 'tn-s-with-the-supply-earth',
      title: 'The earth of a TN-S supply as the measure',
      harm: 'The same main, and somebody wrote down that the earth of the supply is used.',
      clause:
        'BS 7671, 722.411.4.1 names PME; code of practice for charging equipment: TN-S from the street is treated alike, from memory',
      mustNotSay: 'That naming the earth of the supply settles it.',
      check: 'charge-point-earthing',
      unsafe: {
        what: 'TN-S of which nobody asked the distributor, the earth of the supply stated for the point.',
        told: () => onTnS({}, { earthing: 'supply-earth' }),
      },
      sound: {
        what: 'The same with a point that has open-PEN detection, whatever the main is.',
        told: () => onTnS({}, { openPenDevice: known('open-pen-detection-touch-voltage', looked) }),
      },
    },
    {
      id: 'own-electrode-on-tn-s',
      title: 'An electrode of its own on TN-S that nobody measured',
      harm: 'The point is cut off from the earth of the supply and stands on a rod that no fault current gets through; its residual current device does not open, and the car stays live.',
      clause: 'BS 7671, 411.5.3: R_A x I_Δn at most 50 V; two texts',
      mustNotSay: 'That nothing is asked because the supply is TN-S.',
      unsafe: {
        what: 'A point with TT earthing on a TN-S supply, its rod at 3,000 Ω.',
        told: () => assessed(a2, ownElectrodeOnTnS(3000), 'ev', premises),
      },
      sound: {
        what: 'The same with 60 Ω, out of reach of the metal of the house, the armour of the feed cut off from it.',
        told: () => assessed(a2, ownElectrodeOnTnS(60), 'ev', premises),
      },
    },
    {
      id: 'construction-site-under-a-roof',
      title: 'A construction site, the vehicle under a roof',
      harm: 'Scaffold, wet concrete and reinforcement stand on true earth. When the neutral of the street parts, the cage of the hoist and the van in the shed are live.',
      clause: 'BS 7671, 704.411.3.1, one source',
      mustNotSay: 'That the earth of a PME supply serves a construction site as long as no vehicle stands outdoors.',
      check: 'charge-point-earthing',
      unsafe: {
        what: 'A point for vehicles indoors on the earth of a PME supply, on a construction site.',
        told: () => onSite({ earthing: 'supply-earth' }),
      },
      sound: {
        what: 'The same on an earth of its own, well apart.',
        told: () =>
          onSite({
            earthing: 'tt-earthing',
            electrode: { resistance: known(ohms(60), 'measured'), separation: known(metres(12), 'measured') },
          }),
      },
    },
    {
      id: 'indoors-and-nobody-asked-for-the-place',
      title: 'A point indoors, and nobody said what kind of place it is',
      harm: 'Indoors, so no word was lost on the earth. The hall stands on a construction site, where a PME earth is barred throughout.',
      clause: 'BS 7671, 704.411.3.1 and 722.411.4.1',
      mustNotSay: 'That a place of which nobody spoke is an ordinary one.',
      check: 'charge-point-earthing',
      unsafe: {
        what: 'PME, vehicles indoors alone, no measure; the kind of place is left out.',
        told: () => indoors({}),
      },
      sound: {
        what: 'The same in an ordinary house.',
        told: () => indoors({ specialLocation: 'none' }),
      },
    },
  ],
};
