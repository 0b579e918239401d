/** Invented houses with a charge point, every fact known: the easy home of the examples and variations of it. */
import { readFileSync } from 'node:fs';
import {
  type Amperes,
  amperes,
  type Board,
  type Cable,
  type ChargePoint,
  celsius,
  type Installation,
  known,
  metres,
  milliamperes,
  ohms,
  type Run,
  type Stretch,
  squareMillimetres,
} from '../../src/index.js';
import { parseSurvey } from '../../src/io/index.js';
import { decidedRun } from '../../src/site/installed.js';

const survey = parseSurvey(readFileSync('docs/examples/surveys/easy-home.json', 'utf8'));
const [wanted] = survey.wanted;
if (!wanted) throw new Error('the example wants no point');

/** The circuit of the point, as the planner decides it. */
const decided = decidedRun(wanted, wanted.run.cable, squareMillimetres(6), amperes(32));
export const circuit: Run = {
  ...decided,
  bathOrShower: known(false),
  stretches: decided.stretches.map((s) => ({ ...s, concealedShallow: known(false), metalParts: known(false) })),
};
const { supply, board } = survey.installation;

const armoured: Cable = {
  construction: 'armoured',
  material: 'copper',
  insulation: 'thermosetting-90',
  cores: 3,
  protective: 'core',
  area: known(squareMillimetres(10)),
};

/** A feeder to a garage, with the point and the lights behind it. */
const behindFeeder = (run: Run, length = 14, rating: Amperes = amperes(50)): Run => ({
  id: 'garage feeder',
  lines: ['L1'],
  device: {
    kind: known({ standard: 'EN 60898', type: 'C' }),
    rating: known(rating),
    breakingCapacity: known(amperes(6000)),
  },
  cable: armoured,
  stretches: [{ name: 'garden wall', length: known(metres(length)), method: known('C'), ambient: known(celsius(30)) }],
  feeds: [
    {
      kind: 'board',
      noResidual: known(true),
      id: 'garage board',
      complete: known(true),
      conditionalRating: known(amperes(10_000)),
      rating: known(amperes(63)),
      surgeProtection: known(false),
      runs: [
        run,
        {
          ...(board.runs.find((r) => r.id === 'lights') as Run),
          id: 'garage lights',
          feeds: [
            {
              kind: 'load',
              id: 'garage lighting',
              purpose: 'lighting',
              current: known(amperes(3)),
              lines: ['L1'],
            },
          ],
        },
      ],
    },
  ],
});

/** The house with a circuit at its consumer unit, or behind the feeder to the garage. */
export function house(run: Run, feeder?: { readonly length: number; readonly rating: Amperes }): Installation {
  const added = feeder ? behindFeeder(run, feeder.length, feeder.rating) : run;
  return { supply, board: { ...board, runs: [...board.runs, added] } };
}

/** The circuit with its second section of another length. */
export const withLength = (length: number): Run => ({
  ...circuit,
  stretches: circuit.stretches.map((s, i) => (i === 1 ? { ...s, length: known(metres(length)) } : s)),
});

/** Numbers between 0 and 1 from a seed: the same in every run. */
function drawing(seed: number) {
  let state = seed;
  return <T>(...of: readonly T[]): T => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return of[Math.floor((state / 2 ** 32) * of.length)] as T;
  };
}

/** A house drawn from a seed: good practice or not, it is judged by the same checks. */
export function drawnHouse(seed: number): Installation {
  const pick = drawing(seed);
  for (let i = 0; i < 8; i++) pick(0); // the first numbers of neighbouring seeds are alike
  const cable: Cable = pick(circuit.cable, circuit.cable, { ...armoured, insulation: 'thermosetting-90' });
  const isFlat = cable.construction === 'flat-twin-and-earth';
  const stretches = circuit.stretches.map((s): Stretch => {
    const { insulated: _, ...rest } = s;
    return {
      ...rest,
      length: known(metres(pick(0.5, 4, 11, 24))),
      method: known(isFlat ? pick('C', '100', '102', '103', 'A') : pick('C', 'E')),
      ambient: known(celsius(pick(20, 25, 30, 37, 50))),
      insulated: known(metres(pick(0, 0, 0, 0.1, 0.3, 0.9))),
      ...(pick(true, false)
        ? {
            group: {
              arrangement: pick('bunched', 'single-layer-wall'),
              circuits: known(pick(1, 2, 3, 7)),
              unequal: known(false),
            },
          }
        : {}),
      concealedShallow: known(pick(true, false, false)),
    };
  });
  const [found] = circuit.feeds as readonly [ChargePoint];
  const residual = circuit.residual?.[0];
  if (!residual) throw new Error('the example has no residual current device');
  const point: ChargePoint = {
    ...found,
    setting: known(amperes(pick(10, 16, 32))),
    outdoors: known(pick(true, true, false)),
    directCurrentDetection: known(pick(true, true, false)),
    openPenDevice: known(
      pick(
        'open-pen-detection-window',
        'open-pen-detection-touch-voltage',
        'open-pen-detection-other',
        'none',
      ) as 'open-pen-detection-other',
    ),
    openPenEqualSafety: known(true),
    standingLeakage: known(milliamperes(pick(1, 3.5, 12))),
    bidirectional: pick(true, false),
    ...(pick(true, false, false)
      ? { residual: { ...residual, position: 'inside-equipment', pointsServed: 1, type: known(pick('A', 'B')) } }
      : {}),
  };
  // of an RCBO its residual current part is described
  const ahead = [
    {
      ...residual,
      position: 'origin-of-circuit' as const,
      type: known(pick('AC', 'A', 'F', 'B')),
      rating: known(milliamperes(pick(10, 30, 100))),
      ratedCurrent: known(amperes(pick(25, 40, 63))),
      delay: known('general'), // one whose delay is set decides nothing until it is read
      opensAllLive: known(pick(true, true, false)),
      bidirectional: known(pick(true, false)),
    },
  ].slice(pick(0, 0, 0, 1));
  const run: Run = {
    ...circuit,
    device: {
      ...circuit.device,
      kind: known({
        standard: ahead.length === 0 ? 'EN 60898' : pick('EN 60898', 'EN 61009'),
        type: pick('B', 'C', 'D'),
      }),
      rating: known(amperes(pick(16, 20, 32, 40, 50))),
      breakingCapacity: known(amperes(pick(3000, 6000, 10_000))),
    },
    cable: { ...cable, area: known(squareMillimetres(pick(2.5, 4, 6, 10, 16))) },
    stretches,
    residual: ahead,
    feeds: [point],
  };
  const feeder = pick(true, false) ? { length: pick(3, 14, 40), rating: amperes(pick(40, 50, 63)) } : undefined;
  const drawn = house(run, feeder);
  const [impedance, above] = [pick(0.04, 0.28, 0.8), pick(1, 1.1, 1.6)];
  return {
    ...drawn,
    supply: {
      ...supply,
      system: known(pick('TN-C-S', 'TN-C-S', 'TN-S')),
      externalImpedance: known(ohms(impedance)),
      prospectiveCurrent: known(amperes((230 / impedance) * above)), // readings that contradict each other decide nothing
      tails: known(squareMillimetres(pick(16, 25, 50))),
      earthingConductor: known(squareMillimetres(pick(6, 16))),
      specialLocation: pick('none', 'none', 'caravan-park'),
    },
    board: { ...(drawn.board as Board), surgeProtection: known(pick(true, true, false)) },
  };
}
