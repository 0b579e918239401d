import { describe, expect, it, test } from 'vitest';
import { allocate, controllerOf, judgeMainFuse, networkOf, schedule, simulate } from '../../src/charging/index.js';
import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { adequacyOf, demandOf, notificationOf } from '../../src/demand/index.js';
import {
  amperes,
  assess,
  design,
  hasCode,
  known,
  minus,
  ohms,
  permitted,
  plus,
  scaled,
  seconds,
  times,
} from '../../src/index.js';
import { parseCsv, readBrief, readSurvey } from '../../src/io/index.js';
import { greatBritain } from '../../src/networks/index.js';
import * as physics from '../../src/physics/definitions.js';
import { lineOfRodsFactor } from '../../src/physics/index.js';
import { soundHouse } from '../hazards/sound.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocument } from '../support/surveys.js';

const code = bs7671('2018+A2:2022');
const house = soundHouse();
const none = undefined as never;

/** The paths of the problems for which a call is refused; fails where it is not, or by an error without them. */
function refused(call: () => unknown): readonly string[] {
  try {
    call();
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => p.path.join('.'));
    throw error;
  }
  throw new Error('is not refused');
}

/** Options of an assessment that are wrong, and where. */
const wrongOptions: readonly (readonly [options: object, path: string])[] = [
  [{ dropLimit: Number.NaN }, 'options.dropLimit'],
  [{ dropLimit: '0.05' }, 'options.dropLimit'],
  [{ dropLimt: 0.01 }, 'options.dropLimt'],
  [{ feederDemand: { garage: -5 } }, 'options.feederDemand.garage'],
  [{ feederDemand: 40 }, 'options.feederDemand'],
  [{ dropTemperature: 'always' }, 'options.dropTemperature'],
  [{ testTemperature: Number.NaN }, 'options.testTemperature'],
  [{ acceptMemoryFigures: 'yes' }, 'options.acceptMemoryFigures'],
  [{ initialTemperature: -400 }, 'options.initialTemperature'],
  [{ initialTemperature: 500 }, 'options.initialTemperature'],
  [{ initialTemperature: -20 }, 'options.initialTemperature'],
  [{ fuseEdition: '1999' }, 'options.fuseEdition'],
  [{ makersLetThrough: 0 }, 'options.makersLetThrough'],
  [{ loadStates: 'all' }, 'options.loadStates'],
  [{ loadStates: [{ name: 'night', currents: [10, -2, 0] }] }, 'options.loadStates.0.currents.1'],
  [{ loadStates: [{ name: 'night', currents: [10] }] }, 'options.loadStates.0.currents'],
  [{ pointNeverAlone: true }, 'options.pointNeverAlone'],
  [{ premises: { kind: 'dwelling' } }, 'options.premises.kind'],
  [{ premises: { kind: known('house') } }, 'options.premises.kind.value'],
  [{ premises: { kind: known('dwelling'), arcDetection: true } }, 'options.premises.arcDetection'],
];

describe('what a reader refuses, every caller is refused', () => {
  it.each(wrongOptions)('an assessment with %j', (options, path) => {
    expect(refused(() => assess(code, house, 'ev', options))).toEqual([path]);
    expect(refused(() => permitted(code, house, 'ev', { vary: 'area' }, options))).toEqual([path]);
  });

  const notOnes: readonly unknown[] = [null, {}, [], 5, 'house'];
  it.each(notOnes)('%j in the place of an installation, of options, of a network', (bad) => {
    const it = bad as never;
    const calls: readonly (() => unknown)[] = [
      () => assess(code, it, 'ev'),
      () => design(code, it, 'ev'),
      () => permitted(code, it, 'ev', { vary: 'area' }),
      () => demandOf(bs7671Demand, it, { premises: 'dwelling' }),
      () => adequacyOf(bs7671Demand, it, { premises: 'dwelling' }),
      () => notificationOf(bs7671Demand, greatBritain, it, { premises: 'dwelling' }),
      () => demandOf(bs7671Demand, house, it),
      () => permitted(code, house, 'ev', it),
      () => planInBritain({ ...readSurvey(surveyDocument('easy-home')), installation: it }),
      () => networkOf(it),
      () => allocate(it, none),
      () => controllerOf(it, none),
      () => schedule(it),
      () => simulate(it),
      () => judgeMainFuse(it),
    ];
    for (const call of calls) expect(refused(call).length).toBeGreaterThan(0);
  });

  it('says everything at once: installation, question and options', () => {
    const paths = refused(() =>
      permitted(
        code,
        { ...house, supply: { ...house.supply, system: known('tt' as never), frequency: 60 as never } },
        'ev',
        { vary: 'colour' as never },
        { dropLimit: -1 } as never,
      ),
    );
    expect(paths).toEqual(['supply.system.value', 'supply.frequency', 'question.vary', 'options.dropLimit']);
  });

  it('the demand of an installation, with its options', () => {
    const options = { premises: 'castle', governing: 'guess', meteredMargin: Number.NaN, assembly: 'x' } as never;
    expect(refused(() => demandOf(bs7671Demand, house, options))).toEqual([
      'premises',
      'governing',
      'meteredMargin',
      'assembly',
    ]);
    const factors = { utilisation: { lighting: 2 }, simultaneity: null };
    expect(refused(() => demandOf(bs7671Demand, house, { premises: 'dwelling', factors } as never))).toEqual([
      'factors.utilisation.lighting',
      'factors.simultaneity',
    ]);
  });

  it('a plan, with the vehicles and the work that its survey states', () => {
    const survey = readSurvey(surveyDocument('easy-home'));
    const wrong = {
      ...survey,
      options: { dropLimit: 0, colour: 1 },
      work: { wallsToDrill: 3, digging: known('spoon'), travelMinutes: Number.NaN },
    };
    expect(refused(() => planInBritain(wrong as never))).toEqual([
      'options.dropLimit',
      'options.colour',
      'work.wallsToDrill',
      'work.digging.value',
      'work.travelMinutes',
    ]);
  });

  it('a network, with the demand that is put on it, and the fuse ahead', () => {
    expect(refused(() => networkOf(house, { margin: -5, worst: { intake: [1, 2] }, otherLoad: 3 } as never))).toEqual([
      'options.otherLoad',
      'options.worst.intake',
      'options.margin',
    ]);
    expect(
      refused(() =>
        judgeMainFuse({
          limit: Number.NaN as never,
          rise: amperes(1),
          time: seconds(-3),
          gates: [{ current: 290, time: Number.NaN }],
        }),
      ),
    ).toEqual(['limit', 'time', 'gates.0.time']);
  });
});

const called = Object.entries(physics).filter(([, f]) => typeof f === 'function' && 'kind' in f);
test.each(called)('%s never returns what is no finite number, and says what is wrong', (_, definition) => {
  for (const input of [undefined, null, {}, { resistance: Number.NaN }, []]) {
    try {
      expect(Number.isFinite((definition as (input: unknown) => number)(input))).toBe(true);
    } catch (error) {
      expect((error as { code?: string }).code).toBeDefined();
    }
  }
});

describe('what refuses to be made a text, a number or a table', () => {
  const bare = Object.create(null);
  const nodes = [{ id: 'n', limit: [60, 60, 60] }];
  const point = { id: 'p', node: 'n', lines: ['L1'], most: 32 };
  it.each<[string, object, string]>([
    ['the node of a point', { nodes, points: [{ ...point, node: bare }] }, 'points.0.node'],
    ['a line of a point', { nodes, points: [{ ...point, lines: [bare] }] }, 'points.0.lines.0'],
    ['what feeds a node', { nodes: [{ ...nodes[0], parent: bare }], points: [] }, 'nodes.0.parent'],
    ['the name of a node', { nodes: [{ id: bare }, { id: bare }], points: [] }, 'nodes.0.id'],
  ])('%s', (_, network, path) => {
    expect(refused(() => allocate(network as never, { rule: 'max-min-amperes' }))).toContain(path);
  });
  it('a period by which another setting is held', () => {
    const network = { nodes, points: [point] };
    const settings = { policy: { rule: 'max-min-amperes' }, meters: [], meterPeriod: bare, staleAfter: 10 };
    expect(refused(() => controllerOf(network as never, settings as never))).toContain('meterPeriod');
  });
  it('tables and briefs', () => {
    expect(refused(() => parseCsv(5 as never))).toEqual(['']);
    expect(refused(() => readBrief({ format: 'brief/1' }, none))).toEqual(['defaults']);
  });
  it('a sum or a product of what is no quantity, or beyond all numbers', () => {
    const codeOf = (call: () => unknown) => {
      try {
        return call();
      } catch (error) {
        return (error as { code?: string }).code;
      }
    };
    const a = amperes(1e308);
    for (const call of [
      () => plus(a, a),
      () => minus(a, none),
      () => scaled(a, Number.NaN),
      () => times(a, ohms(1e308)),
    ])
      expect(codeOf(call)).toBe('not-finite');
    expect(codeOf(() => lineOfRodsFactor(1e308))).toBe('out-of-range');
  });
});
