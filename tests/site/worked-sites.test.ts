/**
 * Worked examples of larger sites: each figure worked by hand first, from the method and the figures that stand beside it.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  allocate,
  asChargingProfile,
  networkOf,
  profileLimitAt,
  schedule,
  simulate,
} from '../../src/charging/index.js';
import { bs7671, bs7671Demand } from '../../src/codes/bs7671/index.js';
import { feederDemandOf } from '../../src/demand/feeder.js';
import { adequacyOf, demandOfDwellings, dwellingsAtOnce } from '../../src/demand/index.js';
import {
  amperes,
  assess,
  type Board,
  type ChargePoint,
  celsius,
  hertz,
  hours,
  isMissing,
  kelvinMetresPerWatt,
  kilovoltAmperes,
  kilowattHours,
  kilowatts,
  known,
  type Line,
  type Load,
  metres,
  millimetres,
  ohmsPerMetre,
  type Run,
  ratio,
  squareMillimetres,
  voltAmperes,
  volts,
  watts,
} from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { riserMethod } from '../../src/networks/index.js';
import { buriedCable, cyclicRating } from '../../src/physics/heat/index.js';
import { equivalentCurrentOf, largestParallelLoad } from '../../src/physics/power/definitions.js';
import {
  capacitorPowerOf,
  motorCurrentOf,
  parallelShares,
  startCurrentOf,
  transformerSupply,
  voltageDipOf,
} from '../../src/physics/power/index.js';
import { installerPage, renderText } from '../../src/report/index.js';
import { compareOverYears, type Plan, placeOnLines } from '../../src/site/index.js';
import { chargePoint, circuit, house, load, stretch } from '../support/house.js';
import { planInBritain } from '../support/plan.js';

const all: readonly Line[] = ['L1', 'L2', 'L3'];
const lineOf = (k: number): Line => all[k % 3] as Line;
const seen = 'seen at the survey';

describe('a riser of 30 flats', () => {
  const flats = (id: string, count: number, at?: number): Load => {
    const dwellings = { count, each: known(amperes(40), seen), heating: known('not-electric' as const, seen) };
    return {
      kind: 'load',
      id,
      purpose: 'dwellings',
      current: dwellingsAtOnce(dwellings, 3),
      lines: all,
      dwellings,
      ...(at === undefined ? {} : { at: metres(at) }),
    };
  };
  const riser = circuit({
    id: 'riser',
    lines: all,
    device: { ...circuit().device, rating: known(amperes(125), seen) },
    cable: { ...circuit().cable, construction: 'multicore', cores: 5, protective: 'core' },
    stretches: [stretch({ length: known(metres(30), seen) })],
    feeds: Array.from({ length: 6 }, (_, k) => flats(`floor ${k + 1}`, 5, 5 * (k + 1))),
  });
  test('after diversity: 1.5 kW each and 8 kW on top, ten flats on a line', () => {
    const dwellings = { afterDiversity: { demand: watts(1500), constant: watts(8000), unbalance: ratio(1) } };
    const { worst, beyond } = feederDemandOf(bs7671Demand, house([riser], { phases: known(3) }), 'riser', {
      premises: 'other',
      governing: 'after-diversity',
      dwellings,
    });
    // 30 x 1.5 kW + 8 kW = 53 kW, at 0.95 55.8 kVA, a third of it on a line of 230 V: 80.9 A
    expect(worst).toBeCloseTo(80.85, 1);
    // above the fifth floor five flats: 5 x 1.5 + 8 = 15.5 kW, two of five on the line: 15.5 / 0.95 x 2/5 / 230 V = 28.4 A
    expect(beyond?.at(-1)?.demand).toBeCloseTo(28.38, 1);
  });
  test('by the French table: 30 x 9 kVA x 0.44 = 118.8 kVA', () => {
    const [found] = demandOfDwellings([riserMethod], {
      dwellings: 30,
      each: kilovoltAmperes(9),
      storageHeating: false,
    });
    expect(found).toMatchObject({ verdict: 'applicable', demand: expect.closeTo(118_800, 6) });
  });
});

/** A board with so many points of 32 A, on the lines in turn. */
const deck = (id: string, count: number, limit?: number): Board => ({
  kind: 'board',
  id,
  complete: known(true, seen),
  noResidual: known(true, seen),
  mainSwitch: {
    rating: known(amperes(400), seen),
    overloadDeclared: known(true, seen),
    noFuseAhead: known(true, seen),
  },
  rating: known(amperes(400), seen),
  ...(limit === undefined
    ? {}
    : {
        control: {
          name: `control of ${id}`,
          limit: known(amperes(limit), seen),
          controls: Array.from({ length: count }, (_, k) => `${id} ${k + 1}`),
        },
      }),
  runs: Array.from({ length: count }, (_, k) =>
    circuit({
      id: `circuit ${id} ${k + 1}`,
      lines: [lineOf(k)],
      feeds: [{ ...chargePoint, id: `${id} ${k + 1}`, lines: [lineOf(k)] } as ChargePoint],
    }),
  ),
});
const feederTo = (board: Board): Run =>
  circuit({
    id: `feeder to ${board.id}`,
    lines: all,
    device: { ...circuit().device, kind: known({ standard: 'BS 88-2' }, seen), rating: known(amperes(355), seen) },
    cable: {
      ...circuit().cable,
      construction: 'multicore',
      cores: 5,
      protective: 'core',
      area: known(squareMillimetres(240), seen),
    },
    feeds: [board],
  });

describe('a car park of 60 points on two boards behind a transformer of 500 kVA', () => {
  const site = (limit?: number) =>
    house(
      [
        feederTo(deck('upper', 30, limit)),
        feederTo(deck('lower', 30, limit)),
        circuit({
          id: 'lighting',
          lines: all,
          cable: { ...circuit().cable, construction: 'multicore', cores: 5, protective: 'core' },
          device: { ...circuit().device, rating: known(amperes(63), seen) },
          feeds: [load(60, { id: 'lighting', purpose: 'lighting', lines: all })],
        }),
      ],
      {
        system: known('TN-S', seen),
        phases: known(3, seen),
        cutOut: { kind: known({ standard: 'BS 88-2' }, seen), rating: known(amperes(800), seen) },
        transformer: {
          rating: known(voltAmperes(500e3), seen),
          voltage: known(volts(433), seen),
          impedanceVoltage: known(ratio(0.0475), seen),
          loss: known(watts(5500), seen),
          gridFaultPower: known(voltAmperes(250e6), seen),
          owner: 'customer',
          atOrigin: known(true, seen),
        },
      },
      {
        mainSwitch: { rating: known(amperes(800), seen), noFuseAhead: known(true, seen) },
        rating: known(amperes(800), seen),
      },
    );
  const ofTransformer = (limit?: number) => {
    const options = { premises: 'other', governing: 'connected-load' } as const;
    const { results, demand } = adequacyOf(bs7671Demand, site(limit), options);
    return { demand, found: results.filter((r) => r.check === 'demand-within-transformer') };
  };
  // 500 kVA / (sqrt 3 x 433 V) = 666.7 A; 2 x 10 points on a line: 640 A, and 60 A of lighting
  test('all at once are more than it carries', () => {
    const { found } = ofTransformer();
    expect(found.map((r) => r.verdict)).toEqual(['fail', 'fail', 'fail']);
    expect(found[0]).toMatchObject({
      value: { value: expect.closeTo(700, 6) },
      limit: { value: expect.closeTo(666.69, 1) },
    });
  });
  test('two boards held to 250 A each stay within it: 560 A', () => {
    const { found } = ofTransformer(250);
    expect(found.map((r) => r.verdict)).toEqual(['pass', 'pass', 'pass']);
    expect(found[0]?.value?.value).toBeCloseTo(560, 6);
  });
  test('shares: 250 A for ten points on a line are 25 A each', () => {
    const network = networkOf(site(250));
    if (isMissing(network)) throw new Error(JSON.stringify(network));
    const { points } = allocate(network, { rule: 'max-min-amperes' });
    expect(new Set(points.map((p) => p.current))).toEqual(new Set([25]));
  });
});

describe('a night of 40 vans', () => {
  const line = (a: number) => [amperes(a), amperes(a), amperes(a)] as const;
  const points = Array.from(
    { length: 40 },
    (_, k) => ({ id: `van ${k + 1}`, node: 'depot', lines: [lineOf(k)], most: amperes(32) }) as const,
  );
  const sessions = points.map(({ id }) => ({
    id,
    point: id,
    arrives: hours(18),
    leaves: hours(30),
    energy: kilowattHours(30),
  }));
  const night = (limit: number) => ({
    network: { nodes: [{ id: 'depot', limit: line(limit) }], points },
    sessions,
    hours: { kind: 'windows', windows: [{ from: hours(24), to: hours(29) }] } as const,
    from: hours(18),
    to: hours(30),
    voltage: volts(230),
  });
  // 14 vans on L1: 420 kWh in the five hours of the window are 84 kW, 365.2 A; 13 on the others 339.1 A
  test('350 A leave 17.5 kWh lacking on L1 alone', () => {
    const found = schedule({ ...night(350), step: hours(0.25), policy: 'valley-filling', stage: 'continuous' });
    // 350 A x 230 V x 5 h = 402.5 kWh
    expect(found.shortfall).toBeCloseTo(17_500, 3);
    const lacking = found.sessions.filter((s) => s.shortfall > 1);
    expect(lacking.every((s) => points.find((p) => p.id === s.point)?.lines[0] === 'L1')).toBe(true);
  });
  test('366 A are enough, and all windows are kept', () => {
    const found = schedule({ ...night(366), step: hours(0.25), policy: 'valley-filling', stage: 'continuous' });
    expect(found.shortfall).toBeCloseTo(0, 3);
    for (const s of found.sessions)
      for (const { from, to, current } of s.stretches)
        if (current > 1e-9) expect(from >= hours(24) - 1e-6 && to <= hours(29) + 1e-6).toBe(true);
  });
  test('a battery that fills takes longer than its energy over its power', () => {
    const battery = {
      holds: kilowattHours(40),
      onArrival: ratio(0.25),
      peak: amperes(32),
      course: [
        [0, 1],
        [0.75, 1],
        [1, 0.5],
      ],
    } as const;
    const [found] = simulate({
      network: { nodes: [{ id: 'depot', limit: line(366) }], points: [points[0] as (typeof points)[number]] },
      sessions: [{ ...(sessions[0] as (typeof sessions)[number]), battery }],
      from: hours(18),
      to: hours(30),
      step: 60 as never,
      voltage: volts(230),
      control: { policy: { rule: 'max-min-amperes' } },
    }).sessions;
    // 20 kWh at 7.36 kW in 2.717 h; then 10 kWh while the power falls to the half: 10/7.36 x 2 ln 2 h = 1.884 h
    expect((Number(found?.fullAt) - hours(18)) / 3600).toBeCloseTo(2.717 + 1.884, 1);
  });
});

describe('a workshop with a welder and a motor', () => {
  test('a welder of 63 A that works 35 % of the time heats like 37.3 A', () => {
    // 63 A x sqrt 0.35
    expect(equivalentCurrentOf({ workingCurrent: amperes(63), workingShare: ratio(0.35) })).toBeCloseTo(37.27, 2);
  });
  test('a motor of 15 kW started direct on line dips a supply of 0.1 and 0.05 Ω by 6 %', () => {
    // 15 kW / (0.9 x 0.85) / (sqrt 3 x 400 V) = 28.3 A; six times that 169.8 A
    const motorCurrent = motorCurrentOf({ motorRating: voltAmperes(15_000 / (0.9 * 0.85)), motorVoltage: volts(400) });
    expect(motorCurrent).toBeCloseTo(28.3, 1);
    const startCurrent = startCurrentOf({ motorCurrent, startMultiple: ratio(6), startReduction: ratio(1) });
    expect(startCurrent).toBeCloseTo(169.8, 1);
    // 169.8 A x (0.1 x 0.35 + 0.05 x 0.937) Ω / 230 V
    const dip = voltageDipOf({
      startCurrent,
      resistance: 0.1 as never,
      reactance: 0.05 as never,
      powerFactor: ratio(0.35),
      reactiveFactor: ratio(Math.sqrt(1 - 0.35 ** 2)),
      nominalVoltage: volts(230),
    });
    expect(dip).toBeCloseTo(0.0604, 4);
  });
});

test('power factor of 320 kW from 0.78 to 0.95: 0.474 kvar for each kW, 151.6 kvar', () => {
  // tan(acos 0.78) - tan(acos 0.95) = 0.8023 - 0.3287; the printed multipliers have 0.474
  const capacitor = capacitorPowerOf({
    activePower: kilowatts(320),
    powerFactor: ratio(0.78),
    targetPowerFactor: ratio(0.95),
  });
  expect(capacitor / 1000).toBeCloseTo(151.55, 2);
});

test('eleven points of 32 A beside 30, 10 and 50 A: 158 A on the fullest line and no less', () => {
  const items = Array.from({ length: 11 }, (_, k) => ({ id: `bay ${k + 1}`, current: 32, on: 'L1' as const }));
  const { currents, unbalance, proven } = placeOnLines([30, 10, 50], items);
  // 4, 4 and 3: 158, 138 and 146 A; 3, 5, 3 has 170 A, 3, 4, 4 has 178 A
  expect([currents, unbalance, proven]).toEqual([[158, 138, 146], 20, true]);
});

test('630 kVA at 4 % and 400 kVA at 6 % in parallel: 562 and 238 of 800 kVA, and 897 kVA at most', () => {
  const units = [
    { rating: kilovoltAmperes(630), impedanceVoltage: ratio(0.04) },
    { rating: kilovoltAmperes(400), impedanceVoltage: ratio(0.06) },
  ];
  // rated power over u_k: 15,750 and 6,667
  expect(parallelShares(units, kilovoltAmperes(800)).map((s) => s.load / 1000)).toEqual([
    expect.closeTo(562.08, 2),
    expect.closeTo(237.92, 2),
  ]);
  // 630 kVA x 22,417 / 15,750
  expect(largestParallelLoad(units) / 1000).toBeCloseTo(896.67, 2);
});

test('250 MVA through 500 kVA of 4.75 % and 40 m of 240 mm²: 13.4 kA at the terminals, 11.0 kA at the board', () => {
  const input = {
    lineVoltage: 400,
    transformer: {
      rating: 500e3,
      voltage: 433,
      impedanceVoltage: { least: 0.0475, most: 0.0475 },
      loss: { least: 5500, most: 5500 },
    },
    gridFaultPower: { least: 250e6, most: 250e6 },
    voltageFactor: { least: 0.95, most: 1.05 },
  };
  // Z_Q = 1.05 x 433²/250 MVA = 0.79 mΩ; R_T 4.12, X_T 17.33 mΩ by K_T 0.9706: with the grid 4.08 + j 17.6 mΩ
  expect(transformerSupply(input).threePhase.most).toBeCloseTo(13_421, -1);
  // and 40 m at 0.0754 and 0.08 mΩ/m: 7.10 + j 20.80 mΩ; 1.05 x 230.9 V / 21.98 mΩ
  const cable = {
    line: { resistance: 40 * 0.0754e-3, reactance: 40 * 0.08e-3 },
    protective: { resistance: 40 * 0.0754e-3, reactance: 40 * 0.08e-3 },
  };
  expect(transformerSupply({ ...input, cable, hottest: 80 }).threePhase.most).toBeCloseTo(11_033, -1);
});

describe('armoured cables in the ground', () => {
  const feeder = (resistivity: number) =>
    assess(
      bs7671('2018+A2:2022'),
      house([
        circuit({
          cable: {
            ...circuit().cable,
            construction: 'armoured',
            insulation: 'thermosetting-90',
            cores: 3,
            protective: 'core',
            area: known(squareMillimetres(10), seen),
          },
          stretches: [
            stretch({
              method: known('D', seen),
              ambient: known(celsius(20), seen),
              soilResistivity: known(kelvinMetresPerWatt(resistivity), seen),
              depth: known(metres(0.7), seen),
              containment: 'buried',
            }),
          ],
        }),
      ]),
      'ev',
    ).figures.capacity;
  test('soil of 1.2 K·m/W counts as 1.5: 1.28 times what 2.5 carries', () => {
    // BS 7671 Table 4B3, buried direct: 1.28 at 1.5 K·m/W, 1 at 2.5; between rows the more resistive one
    expect(Number(feeder(1.2)) / Number(feeder(2.5))).toBeCloseTo(1.28, 6);
  });
  test('seven hours of charging in a night carry more than the same current throughout', () => {
    const cable = buriedCable({
      cable: {
        metal: 'copper',
        resistancePerMetre20: ohmsPerMetre(0.000524),
        shape: 'round',
        conductorDiameter: millimetres(6.9),
        insulation: { material: 'XLPE', thickness: millimetres(0.9) },
        cores: 4,
        laidUpDiameter: millimetres(21),
        sheath: { material: 'PVC', thickness: millimetres(1.8) },
        overallDiameter: millimetres(24.6),
      },
      loadedConductors: 3,
      surroundings: {
        where: 'ground',
        groundTemperature: celsius(15),
        soilResistivity: kelvinMetresPerWatt(1.2),
        burialDepth: metres(0.6),
      },
      operatingTemperature: celsius(90),
      frequency: hertz(50),
    });
    const load = Array.from({ length: 24 }, (_, h) => ratio(h < 7 ? 1 : 0));
    const { cyclicFactor, lossLoadFactor } = cyclicRating(cable, load);
    expect(lossLoadFactor).toBeCloseTo(7 / 24, 9);
    // independent bounds: never less than 1, never more than the inverse root of the mean of the squares, 1.85
    expect(cyclicFactor).toBeGreaterThan(1.05);
    expect(cyclicFactor).toBeLessThan(1 / Math.sqrt(7 / 24));
  });
});

test('profiles of the open protocol: a plan for one night, and 6 A where it does not hold', () => {
  const network = {
    nodes: [{ id: 'intake', limit: [amperes(40), amperes(40), amperes(40)] as const }],
    points: [{ id: 'bay', node: 'intake', lines: ['L1'] as const, most: amperes(32) }],
  };
  const plan = schedule({
    network,
    policy: 'earliest-deadline',
    stage: 'continuous',
    voltage: volts(230),
    sessions: [{ id: 'van', point: 'bay', arrives: hours(20), leaves: hours(30), energy: kilowattHours(14.72) }],
    from: hours(18),
    to: hours(30),
    step: hours(0.5),
  });
  const [bay] = asChargingProfile(plan, {
    network,
    midnight: '2026-11-30T00:00:00Z',
    unit: 'A',
    voltage: volts(230),
    fallback: amperes(6),
    mostPeriods: 24,
  });
  const held = bay ? [bay.fallback, bay.cap, ...bay.planned] : [];
  // 14.72 kWh at 7.36 kW: from 20:00 to 22:00
  const limit = (at: string) => profileLimitAt(held, at, '2026-11-30T19:30:00Z');
  expect(limit('2026-11-30T19:59:59Z')).toBe(6);
  expect(limit('2026-11-30T20:00:00Z')).toBe(32);
  expect(limit('2026-11-30T21:59:59Z')).toBe(32);
  expect(limit('2026-11-30T22:00:00Z')).toBe(6);
  expect(limit('2026-12-01T20:30:00Z')).toBe(6);
});

test('manage or reinforce over ten years: management is cheaper until its nights are full', () => {
  const stage = {
    from: 2027,
    what: 'points with load management',
    capacity: amperes(100),
    points: 30,
    setting: amperes(32),
    managed: true,
    quoted: 600_000,
  };
  const ways = compareOverYears({
    years: Array.from({ length: 10 }, (_, i) => ({ year: 2027 + i, vehicles: 3 * (i + 1) })),
    fleet: [{ arrives: hours(18), leaves: hours(30), energy: kilowattHours(15) }],
    existing: [amperes(60), amperes(60), amperes(60)],
    voltage: volts(230),
    ways: [
      { id: 'manage', title: 'manage', stages: [stage] },
      {
        id: 'reinforce',
        title: 'reinforce',
        stages: [{ ...stage, what: 'larger supply', capacity: amperes(400), managed: false, quoted: 3_500_000 }],
      },
      {
        id: 'in stages',
        title: 'manage, then reinforce',
        stages: [stage, { ...stage, from: 2034, what: 'larger supply', capacity: amperes(400), quoted: 3_200_000 }],
      },
    ],
    prices: { format: 'prices/1', currency: 'GBP', items: {}, hour: 4500, taxBasisPoints: 2000 },
  });
  // 40 A x 230 V x 12 h = 110.4 kWh on a line, seven vehicles of 15 kWh; the eighth comes in the eighth year, 2034
  expect(ways.map((w) => w.ceases)).toEqual([2034, undefined, undefined]);
  expect(ways.map((w) => w.spent)).toEqual([600_000, 3_500_000, 3_800_000]);
  // 60 A and ten points of 32 A on a line
  expect(ways[1]?.years.at(-1)).toMatchObject({ most: 380, carried: true, lacking: 0 });
});

describe('a depot whose third hall is fed by two cables', () => {
  /** The depot with a second feeder to a hall, each behind a fuse of its own. */
  const planned = (length: string, rating: string): Plan => {
    const file = new URL('../../docs/examples/surveys/sites/depot.json', import.meta.url);
    const survey = JSON.parse(readFileSync(file, 'utf8'));
    const feeder = survey.board.runs.find((r: { id: string }) => r.id === 'feeder to hall 3');
    feeder.device.rating = rating;
    feeder.cable.area = '70 mm²';
    const [stretch] = feeder.stretches;
    feeder.beside = [
      {
        id: 'second feeder to hall 3',
        device: { ...feeder.device },
        stretches: [{ ...stretch, name: 'second tray to hall 3', length: { known: length, by: 'plan' } }],
      },
    ];
    return planInBritain(readSurvey(survey), { lengths: false, sheets: 'none' });
  };
  const feederOf = (plan: Plan) => plan.options[0]?.feeders.find((f) => f.run === 'feeder to hall 3');
  test('of 85 m each: 160 A are 80 A in each, behind 100 A', () => {
    const plan = planned('85 m', '100 A');
    const found = feederOf(plan);
    expect(found?.overall.verdict).toBe('pass');
    expect(found?.demand.limit).toBe(200);
    expect(found?.assessment.results.find((r) => r.check === 'device-carries-load')).toMatchObject({
      because: expect.stringContaining('feeder to hall 3'),
    });
    // material for both
    const items = found?.items ?? [];
    expect(items.filter((i) => /70 mm²/.test(i.words) && i.unit === 'm')).toHaveLength(2);
    expect(items.filter((i) => i.key === 'board')).toHaveLength(1);
    const page = renderText(installerPage(plan)).replace(/\s+/g, ' ');
    expect(page).toMatch(
      /‘feeder to hall 3’ tray to hall 3 85 m .*‘second feeder to hall 3’ second tray to hall 3 85 m/,
    );
  });
  test('of 85 m and 170 m: 107 A in the short one are more than 100 A', () => {
    const found = feederOf(planned('170 m', '100 A'));
    // two thirds of 160 A
    expect(found?.assessment.results.find((r) => r.check === 'device-carries-load')).toMatchObject({
      verdict: 'fail',
      limit: { value: expect.closeTo(106.67, 1) },
    });
    // 100 A / (2/3)
    expect(found?.demand.limit).toBeCloseTo(150, 9);
  });
});
