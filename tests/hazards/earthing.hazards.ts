import { bs7671 } from '../../src/codes/bs7671/index.js';
import { known, ohms, type Supply, squareMillimetres, unknown } from '../../src/index.js';
import { readBrief, usualDefaults } from '../../src/io/index.js';
import type { Json } from '../support/surveys.js';
import { assessed, type Chapter, planned } from './hazard.js';
import { premises, soundCircuit, soundHouse } from './sound.js';

const code = bs7671('2018+A2:2022');
const at = (supply: Partial<Supply>) => assessed(code, soundHouse([soundCircuit()], supply), 'ev', premises);
const bond = (what: string, area: number) => ({ what, area: known(squareMillimetres(area), 'read off') });
/** Larch Cottage with the bonding that a brief survey gives it. */
const brief = (answers: Readonly<Record<string, string>>) => {
  const start = { format: 'brief/1', date: '2026-09-21', edition: '2018+A2:2022', earthing: 'PME' };
  const { supply } = readBrief({ ...start, ...answers }, usualDefaults).document as { supply: Record<string, Json> };
  return planned('easy-home', [
    ['demand', { governing: 'metered-peak' }],
    ['supply.bonding', supply.bonding],
    ['supply.noExtraneousParts', supply.noExtraneousParts],
  ]);
};
const nothingFound: Partial<Supply> = {
  bonding: [],
  noExtraneousParts: known(true, 'looked for in every room: plastic pipes'),
};

export const chapter: Chapter = {
  title: 'Bonding that nobody has seen',
  introduction:
    'A pipe that comes out of the ground and is not bonded is at another potential than everything that is earthed, whenever a fault flows.',
  hazards: [
    {
      id: 'bonding-list-empty',
      title: 'An empty list of bonding conductors',
      harm: 'The surveyor did not look. The gas pipe is not bonded, and sparks where it touches the boiler.',
      clause: 'BS 7671, 411.3.1.2 and 544.1.1',
      mustNotSay: 'That there is no extraneous metal, because none is listed.',
      check: 'main-bonding-conductor',
      unsafe: {
        what: 'PME; the list of bonding conductors is empty, and nobody says why.',
        told: () => at({ bonding: [] }),
      },
      sound: { what: 'The same; somebody looked, and found plastic pipes alone.', told: () => at(nothingFound) },
    },
    {
      id: 'bonding-not-mentioned',
      title: 'Bonding left out of the survey',
      harm: 'As before: nobody looked, nobody wrote, and the pipe is live at the next fault.',
      clause: 'BS 7671, 411.3.1.2 and 544.1.1',
      mustNotSay: 'Anything better than for an empty list.',
      check: 'main-bonding-conductor',
      unsafe: {
        what: 'PME; no word of bonding.',
        told: () => {
          const { supply, board } = soundHouse([soundCircuit()]);
          const { bonding: _unsaid, ...rest } = supply;
          return assessed(code, { supply: rest, board }, 'ev', premises);
        },
      },
      sound: {
        what: 'Water bonded by 10 mm², and no other metal.',
        told: () => at({ bonding: [{ what: 'water', area: known(squareMillimetres(10), 'read off') }] }),
      },
    },
    {
      id: 'metal-found-and-not-bonded',
      title: 'Metal that was found, and no conductor to it',
      harm: 'A steel oil line comes out of the ground beside the boiler. It is on nobody’s list.',
      clause: 'BS 7671, 411.3.1.2 and 544.1.1',
      mustNotSay: 'That nothing has to be bonded.',
      check: 'main-bonding-conductor',
      unsafe: {
        what: 'PME; extraneous metal was found, the list of conductors is empty.',
        told: () => at({ bonding: [], noExtraneousParts: known(false, 'steel oil line') }),
      },
      sound: {
        what: 'The same with the line bonded by 10 mm².',
        told: () =>
          at({
            bonding: [{ what: 'oil line', area: known(squareMillimetres(10), 'read off') }],
            noExtraneousParts: known(false, 'steel oil line'),
          }),
      },
    },
    {
      id: 'bonding-list-empty-on-cable-sheath',
      title: 'The same on a cable-sheath earth',
      harm: 'No PEN to break, and still a pipe at 100 V for as long as a fault flows.',
      clause: 'BS 7671, 411.3.1.2 and 544.1.1',
      mustNotSay: 'That TN-S needs no bonding.',
      check: 'main-bonding-conductor',
      unsafe: {
        what: 'TN-S, Z_e 0.35 Ω; the list of bonding conductors is empty.',
        told: () =>
          at({ bonding: [], system: known('TN-S', 'read off'), externalImpedance: known(ohms(0.35), 'measured') }),
      },
      sound: {
        what: 'The same; somebody looked, and found none.',
        told: () =>
          at({ ...nothingFound, system: known('TN-S', 'read off'), externalImpedance: known(ohms(0.35), 'measured') }),
      },
    },
    {
      id: 'one-of-two-services-not-bonded',
      title: 'Gas is bonded, water is not',
      harm: 'The list looks complete, since something is on it. The water pipe is not.',
      clause: 'BS 7671, 411.3.1.2 and 544.1.1',
      mustNotSay: 'That what is bonded is all that there is.',
      check: 'main-bonding-conductor',
      unsafe: {
        what: 'PME; gas bonded by 10 mm², the steel water pipe seen without a conductor.',
        told: () => at({ bonding: [bond('gas', 10), bond('water', 0)] }),
      },
      sound: {
        what: 'Both bonded by 10 mm².',
        told: () => at({ bonding: [bond('gas', 10), bond('water', 10)] }),
      },
    },
    {
      id: 'small-bonding-whatever-the-neutral',
      title: 'A bonding conductor below every row of the table',
      harm: 'Nobody asked for the neutral of the service, and 6 mm² to the gas waits for an answer that cannot save it.',
      clause: 'BS 7671, 544.1.1, Table 54.8',
      mustNotSay: 'That 6 mm² under PME may do, since the neutral is not known.',
      check: 'main-bonding-conductor',
      unsafe: {
        what: 'PME, neutral of the service not known; gas bonded by 6 mm².',
        told: () => at({ supplyNeutral: unknown('ask the distributor'), bonding: [bond('gas', 6)] }),
      },
      sound: {
        what: 'TN-S, meter tails of 16 mm²; gas bonded by 10 mm²: half of an earthing conductor of 16 mm² is 8 mm².',
        told: () =>
          at({
            supplyNeutral: unknown('ask the distributor'),
            system: known('TN-S', 'read off'),
            externalImpedance: known(ohms(0.35), 'measured'),
            bonding: [bond('gas', 10)],
          }),
      },
    },
    {
      id: 'answer-that-water-is-not-bonded',
      title: 'A customer who answers that there is no wire at the water pipe',
      harm: 'The answer gets lost on its way into the survey, and with it the pipe.',
      clause: 'BS 7671, 411.3.1.2 and 544.1.1',
      mustNotSay: 'That the bonding is as it should be.',
      check: 'main-bonding-conductor',
      unsafe: {
        what: 'A brief survey: water not bonded, gas 10 mm², no other metal.',
        told: () => brief({ waterBond: 'missing', gasBond: '10 mm²', otherBond: 'none' }),
      },
      sound: {
        what: 'Water and gas 10 mm², no other metal.',
        told: () => brief({ waterBond: '10 mm²', gasBond: '10 mm²', otherBond: 'none' }),
      },
    },
    {
      id: 'other-metal-not-asked-for',
      title: 'Nobody asked for other metal',
      harm: 'The oil line to the boiler comes out of the ground behind the house.',
      clause: 'BS 7671, 411.3.1.2 and 544.1.1',
      mustNotSay: 'That there is no other metal, because nobody was asked.',
      check: 'main-bonding-conductor',
      unsafe: {
        what: 'A brief survey: water and gas 10 mm², no answer on other metal.',
        told: () => brief({ waterBond: '10 mm²', gasBond: '10 mm²' }),
      },
      sound: {
        what: 'The same, and no other metal answered.',
        told: () => brief({ waterBond: '10 mm²', gasBond: '10 mm²', otherBond: 'none' }),
      },
    },
    {
      id: 'plan-with-an-empty-bonding-list',
      title: 'A plan on an empty list',
      harm: 'The point goes live on a house whose gas pipe floats.',
      clause: 'BS 7671, 411.3.1.2 and 544.1.1',
      mustNotSay: 'That the job may be done as planned.',
      check: 'main-bonding-conductor',
      unsafe: {
        what: 'Larch Cottage, its bonding list emptied.',
        told: () => planned('easy-home', [['supply.bonding', []]]),
      },
      sound: {
        what: 'The same, and somebody looked: plastic pipes.',
        told: () =>
          planned('easy-home', [
            ['supply.bonding', []],
            ['supply.noExtraneousParts', { known: true, by: 'looked for in every room' }],
          ]),
      },
    },
  ],
};
