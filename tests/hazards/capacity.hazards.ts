import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  between,
  type Cable,
  celsius,
  type Fact,
  type Group,
  kelvinMetresPerWatt,
  known,
  type Metres,
  metres,
  type Stretch,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import { assessed, type Case, type Chapter, type Hazard } from './hazard.js';
import { metresOf, premises, soundCircuit, soundHouse, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const flat = (area: number): Cable => ({ ...soundCircuit().cable, area: known(squareMillimetres(area)) });
const multicore = (area: number): Cable => ({ ...flat(area), construction: 'multicore', cores: 3, protective: 'core' });
const armoured = (area: number): Cable => ({
  ...multicore(area),
  construction: 'armoured',
  insulation: 'thermosetting-90',
});
const rated = (amps: number) => ({ ...soundCircuit().device, rating: known(amperes(amps)) });

/** A point set to a current, behind a device of a rating, over a route. */
const told = (
  what: string,
  of: { readonly cable?: Cable; readonly rating?: number; readonly setting?: number },
  ...route: readonly Partial<Stretch>[]
): Case => ({
  what,
  told: () =>
    assessed(
      code,
      soundHouse([
        soundCircuit(
          {
            ...(of.cable ? { cable: of.cable } : {}),
            device: rated(of.rating ?? 32),
            stretches: route.map((s, i) => soundStretch({ name: `stretch ${i + 1}`, length: metresOf(8), ...s })),
          },
          { setting: known(amperes(of.setting ?? of.rating ?? 32)) },
        ),
      ]),
      'ev',
      { ...premises, makersLetThrough: 12_000 },
    ),
});
/** Without a length nobody says anything of insulation around it. */
const beside = (method: 'A' | '100' | '101' | '102', insulated?: Fact<Metres>): Partial<Stretch> =>
  ({ method: known(method, seen), insulated }) as Partial<Stretch>;
const none = known(metres(0), seen);
const over = (length: number) => known(metres(length), 'tape');

/** In trunking, by a method. */
const enclosed = (method: 'B' | 'C'): Partial<Stretch> => ({ method: known(method, seen), containment: 'trunking' });
/** Four circuits of about one size. */
const four = (arrangement: Group['arrangement']): Group => ({
  arrangement,
  circuits: known(4, seen),
  unequal: known(false, seen),
});
const enclosedClause = 'BS 7671:2018+A2:2022, Appendix 4, Table 4A2, from memory';

const surrounded: Pick<Hazard, 'harm' | 'clause' | 'mustNotSay' | 'check'> = {
  harm: 'Heat cannot leave the cable. Its insulation ages and softens in the loft or the wall, and the house burns from a place that nobody sees.',
  clause:
    'BS 7671:2018+A2:2022, 523.9 (half of method C: two sources), Table 52.2 (from memory); its relation to methods A and 100 to 102 from memory',
  mustNotSay: 'That the cable carries what its reference method says.',
  check: 'tabulated-capacity',
};
const inSoil = (change: Partial<Stretch>, resistivity = 1): Partial<Stretch> => {
  const { containment: _clipped, ...stated } = soundStretch();
  return {
    ...stated,
    containment: undefined as never,
    method: known('D', seen),
    ambient: known(celsius(20), 'common practice, no source'),
    soilResistivity: known(kelvinMetresPerWatt(resistivity), 'soil report'),
    depth: known(metres(0.6), 'tape'),
    ...change,
  };
};
const soil: Pick<Hazard, 'harm' | 'clause' | 'mustNotSay' | 'check'> = {
  harm: 'In a duct the air around the cable keeps it hotter than earth would. It is overloaded for hours each night, and fails under the drive.',
  clause: 'BS 7671:2018+A2:2022, Table 4B3, from memory',
  mustNotSay: 'That the cable lies direct in the ground, where nobody has said so.',
  check: 'tabulated-capacity',
};

export const chapter: Chapter = {
  title: 'Cables that cannot lose their heat',
  introduction:
    'A cable carries only as much as its surroundings let it cool. A charge point draws its full current for hours, so nothing is forgiven.',
  hazards: [
    {
      ...surrounded,
      id: 'insulation-laid-over-a-cable-above-a-ceiling',
      title: 'Quilt laid over a cable above a ceiling',
      unsafe: told('6 mm² flat cable behind 32 A, method 100, 2 m of it wholly in quilt.', {}, beside('100', over(2))),
      sound: told('The same with the quilt cut back all along.', {}, beside('100', none)),
    },
    {
      ...surrounded,
      id: 'deep-insulation-on-both-sides',
      title: 'Deep loft insulation that closes over the cable',
      unsafe: told('6 mm² behind 25 A, method 101, 0.6 m surrounded.', { rating: 25 }, beside('101', over(0.6))),
      sound: told('The same behind 20 A.', { rating: 20 }, beside('101', over(0.6))),
    },
    {
      ...surrounded,
      id: 'stud-wall-filled-afterwards',
      title: 'A stud wall that was filled with blown insulation',
      unsafe: told(
        '4 mm² behind 20 A, method 102, 4 m surrounded.',
        { cable: flat(4), rating: 20 },
        beside('102', over(4)),
      ),
      sound: told('The same behind 16 A.', { cable: flat(4), rating: 16 }, beside('102', over(4))),
    },
    {
      ...surrounded,
      id: 'conduit-in-an-insulated-wall-surrounded',
      title: 'Cable in conduit in an insulated wall, with insulation all round',
      unsafe: told(
        '10 mm² multicore behind 32 A, method A, 3 m surrounded.',
        { cable: multicore(10) },
        beside('A', over(3)),
      ),
      sound: told(
        'The same with the conduit against the inner leaf, nothing behind it.',
        { cable: multicore(10) },
        beside('A', none),
      ),
    },
    {
      ...surrounded,
      id: 'short-crossing-of-insulation',
      title: 'A cable that passes through 200 mm of insulation',
      unsafe: told('6 mm² behind 32 A, method 102, 0.2 m surrounded.', {}, beside('102', over(0.2))),
      sound: told('The same with 50 mm surrounded.', {}, beside('102', over(0.05))),
    },
    {
      ...surrounded,
      id: 'half-a-metre-of-insulation',
      title: 'Exactly half a metre surrounded',
      unsafe: told('6 mm² behind 25 A, method 100, 0.5 m surrounded.', { rating: 25 }, beside('100', over(0.5))),
      sound: told('10 mm² in its place.', { cable: flat(10), rating: 25 }, beside('100', over(0.5))),
    },
    {
      ...surrounded,
      id: 'insulation-in-one-stretch-of-three',
      title: 'One insulated stretch in a long route',
      unsafe: told(
        'Clipped, then 1 m of quilt in the loft by method 100, then clipped: 6 mm² behind 32 A.',
        {},
        {},
        beside('100', over(1)),
        {},
      ),
      sound: told('The same with the cable taken above the quilt in the loft.', {}, {}, beside('100', none), {}),
    },
    {
      ...surrounded,
      id: 'insulation-nobody-looked-for',
      title: 'A loft that nobody has looked into',
      mustNotSay: 'That there is no insulation around the cable because none is mentioned.',
      unsafe: told('6 mm² behind 32 A, method 100; nothing is said of insulation around it.', {}, beside('100')),
      sound: told('The same, seen to be free of it.', {}, beside('100', none)),
    },
    {
      ...surrounded,
      id: 'insulation-not-known-in-a-stud-wall',
      title: 'A stud wall whose filling is not known',
      mustNotSay: 'That the cable carries its full current.',
      unsafe: told(
        '6 mm² behind 32 A, method 102, surrounded over an unknown length.',
        {},
        beside('102', unknown('borescope')),
      ),
      sound: told('The same, looked into: nothing around it.', {}, beside('102', none)),
    },
    {
      ...surrounded,
      id: 'insulation-known-within-a-range',
      title: 'Insulation over somewhere between nothing and two metres',
      unsafe: told(
        '6 mm² behind 32 A, method 102, surrounded over 0 to 2 m.',
        {},
        beside('102', between(metres(0), metres(2), 'guessed')),
      ),
      sound: told(
        'The same, surrounded over at most 50 mm.',
        {},
        beside('102', between(metres(0), metres(0.05), 'tape')),
      ),
    },
    {
      ...surrounded,
      id: 'insulation-around-an-insulated-wall-conduit-not-known',
      title: 'Conduit in an insulated wall of which nothing more is known',
      mustNotSay: 'That method A already contains whatever surrounds the conduit.',
      unsafe: told(
        '10 mm² multicore behind 40 A, method A, nothing said of insulation.',
        { cable: multicore(10), rating: 40, setting: 32 },
        beside('A'),
      ),
      sound: told(
        'The same, seen: none around it.',
        { cable: multicore(10), rating: 40, setting: 32 },
        beside('A', none),
      ),
    },
    {
      ...soil,
      id: 'duct-or-soil-not-stated',
      title: 'A buried cable, in a duct or not',
      unsafe: told(
        '6 mm² armoured behind 63 A in soil of 1 K·m/W; nobody says whether there is a duct.',
        { cable: armoured(6), rating: 63, setting: 32 },
        inSoil({}),
      ),
      sound: told(
        'The same, seen to lie direct in the ground.',
        { cable: armoured(6), rating: 63, setting: 32 },
        inSoil({ containment: 'buried' }),
      ),
    },
    {
      ...soil,
      id: 'duct-contradicted',
      title: 'Method D1, said to be buried direct',
      unsafe: told(
        'Method D1 with “buried” as its containment, 63 A.',
        { cable: armoured(6), rating: 63, setting: 32 },
        inSoil({ method: known('D1'), containment: 'buried' }),
      ),
      sound: told(
        'Method D2, buried.',
        { cable: armoured(6), rating: 63, setting: 32 },
        inSoil({ method: known('D2'), containment: 'buried' }),
      ),
    },
    {
      ...soil,
      id: 'duct-by-its-method',
      title: 'Method D1 of which the containment is left out',
      unsafe: told(
        'Method D1, 6 mm² armoured behind 63 A, soil of 1 K·m/W.',
        { cable: armoured(6), rating: 63, setting: 32 },
        inSoil({ method: known('D1') }),
      ),
      sound: told(
        'The same behind 50 A.',
        { cable: armoured(6), rating: 50, setting: 32 },
        inSoil({ method: known('D1') }),
      ),
    },
    {
      ...soil,
      id: 'tray-in-the-ground',
      title: 'A buried stretch that is said to lie on a tray',
      unsafe: told(
        'Method D, containment “tray”, soil of 0.8 K·m/W, 63 A.',
        { cable: armoured(6), rating: 63, setting: 32 },
        inSoil({ containment: 'tray' }, 0.8),
      ),
      sound: told(
        'The same in a duct, 10 mm².',
        { cable: armoured(10), rating: 63, setting: 32 },
        inSoil({ containment: 'duct' }, 0.8),
      ),
    },
    {
      ...soil,
      id: 'dry-soil-column-not-stated',
      title: 'Dry soil, where a cable without a duct fares worse',
      unsafe: told(
        '6 mm² armoured behind 45 A in soil of 3 K·m/W; nothing said of a duct.',
        { cable: armoured(6), rating: 45, setting: 32 },
        inSoil({}, 3),
      ),
      sound: told(
        'The same in a duct.',
        { cable: armoured(6), rating: 45, setting: 32 },
        inSoil({ containment: 'duct' }, 3),
      ),
    },
    {
      id: 'depth-that-nobody-measured',
      title: 'A cable in the ground of which nobody says how deep it lies',
      harm: 'Each half metre of soil above it keeps its heat in. Under a raised bed of two metres it runs hotter than its insulation bears, and nobody can see it.',
      clause: 'BS 7671:2018+A2:2022, Appendix 4; that the figures hold down to 0.8 m, from memory',
      mustNotSay: 'That it lies as deep as the tables take it.',
      check: 'tabulated-capacity',
      unsafe: told(
        '10 mm² armoured in the soil behind 50 A, the depth left out.',
        { cable: armoured(10), rating: 50, setting: 32 },
        inSoil({ method: known('D2'), containment: 'buried', depth: undefined as never }),
      ),
      sound: told(
        'The same, 0.6 m deep.',
        { cable: armoured(10), rating: 50, setting: 32 },
        inSoil({ method: known('D2'), containment: 'buried' }),
      ),
    },
    {
      id: 'lightly-loaded-more-than-there-are',
      title: 'More lightly loaded circuits than the bunch has',
      harm: 'Five warm neighbours are counted as none, and the whole bunch runs hotter than its insulation bears.',
      clause: 'BS 7671:2018+A2:2022, 523.5, Table 4C1, from memory',
      mustNotSay: 'That the cable is alone.',
      unsafe: told(
        'Four circuits bunched, six of them said to be lightly loaded.',
        {},
        {
          group: { arrangement: 'bunched', circuits: known(4, seen), lightlyLoaded: 6, unequal: known(false, seen) },
        },
      ),
      sound: told(
        'Two circuits bunched, one of them lightly loaded.',
        {},
        {
          group: { arrangement: 'bunched', circuits: known(2, seen), lightlyLoaded: 1, unequal: known(false, seen) },
        },
      ),
    },
    {
      ...soil,
      id: 'lightly-loaded-of-a-group-within-a-range',
      title: 'Lightly loaded circuits of a bunch that nobody has counted',
      harm: 'Of a bunch of three or four, six are left out: all of them may be warm.',
      clause: 'BS 7671:2018+A2:2022, 523.5, Table 4C1, from memory',
      mustNotSay: 'That the cable is alone.',
      unsafe: told(
        'Three or four circuits bunched, six of them said to be lightly loaded.',
        {},
        {
          group: {
            arrangement: 'bunched',
            circuits: between<number>(3, 4, 'guessed'),
            lightlyLoaded: 6,
            unequal: known(false, seen),
          },
        },
      ),
      sound: told(
        'Two circuits bunched, both counted, behind 32 A.',
        {},
        {
          group: { arrangement: 'bunched', circuits: known(2, seen), unequal: known(false, seen) },
        },
      ),
    },
    {
      id: 'flat-cable-in-trunking-by-the-figure-for-clipped-cable',
      title: 'Twin and earth in mini trunking, sized as if it were clipped',
      harm: 'The cable warms the still air around it every night, and its insulation hardens where nobody sees it.',
      clause:
        'BS 7671:2018+A2:2022, Table 4D2A, method B, from memory; that flat cable in trunking is read from it: common practice, in two threads of electricians',
      mustNotSay: 'That it carries what it would on the wall: 30 A are less than 32 A.',
      check: 'tabulated-capacity',
      unsafe: told('4 mm² flat cable behind 32 A, method B.', { cable: flat(4) }, { method: known('B', seen) }),
      sound: told('6 mm² behind 32 A, method B: 38 A.', {}, { method: known('B', seen) }),
    },
    {
      id: 'clipped-by-the-method-and-in-trunking-by-the-survey',
      title: 'Twin and earth in trunking, by the method of clipped cable',
      harm: 'The cable warms the still air around it every night, and its insulation hardens where nobody sees it.',
      clause: enclosedClause,
      mustNotSay: 'That a cable which is seen in trunking has the capacity of one on the wall.',
      check: 'tabulated-capacity',
      unsafe: told('4 mm² flat cable behind 32 A, method C, containment: trunking.', { cable: flat(4) }, enclosed('C')),
      sound: told('6 mm² behind 32 A, the same: 38 A by method B.', {}, enclosed('C')),
    },
    {
      id: 'free-air-by-the-method-and-clipped-by-the-survey',
      title: 'A clipped cable, by the method of free air',
      harm: 'The wall keeps what the free air would have carried off: the cable ages at the heart of every bend.',
      clause: enclosedClause,
      mustNotSay: 'That a cable on a wall has the air all around it.',
      check: 'tabulated-capacity',
      unsafe: told(
        '6 mm² multicore for 70 °C behind 45 A, method E, clipped, 35 °C.',
        { cable: multicore(6), rating: 45 },
        { method: known('E', seen), ambient: known(celsius(35), seen) },
      ),
      sound: told(
        '10 mm², the same.',
        { cable: multicore(10), rating: 45 },
        { method: known('E', seen), ambient: known(celsius(35), seen) },
      ),
    },
    {
      id: 'single-layer-within-trunking',
      title: 'Four circuits in one trunking, said to lie in a single layer',
      harm: 'They lie on one another and warm one another; the factor for a wall has each with air on one side.',
      clause: 'BS 7671:2018+A2:2022, Appendix 4, Table 4C1, from memory',
      mustNotSay: 'That circuits within a trunking lie beside one another on a wall.',
      check: 'tabulated-capacity',
      unsafe: told(
        '16 mm² flat cable behind 50 A in trunking, four circuits in a single layer: 0.65 of 69 A, not 0.75.',
        { cable: flat(16), rating: 50 },
        { ...enclosed('B'), group: four('single-layer-wall') },
      ),
      sound: told(
        '16 mm² flat cable behind 40 A, the same.',
        { cable: flat(16), rating: 40 },
        { ...enclosed('B'), group: four('single-layer-wall') },
      ),
    },
    {
      id: 'ground-group-above-ground',
      title: 'A clipped cable whose neighbours are said to lie in the ground, apart',
      harm: 'The factor of spaced cables in soil is taken for a bunch on a wall.',
      clause: 'BS 7671:2018+A2:2022, Appendix 4, Tables 4C1 and 4C2, from memory',
      mustNotSay: 'That circuits in the ground run beside a cable on the wall.',
      check: 'tabulated-capacity',
      unsafe: told(
        '6 mm² clipped behind 32 A, four circuits direct in the ground, half a metre apart.',
        {},
        {
          group: { ...four('direct-in-ground'), spacing: metres(0.5) },
        },
      ),
      sound: told(
        '6 mm² clipped behind 32 A, two circuits bunched.',
        {},
        {
          group: { ...four('bunched'), circuits: known(2, seen) },
        },
      ),
    },
  ],
};
