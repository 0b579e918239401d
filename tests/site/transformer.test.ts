import { describe, expect, it } from 'vitest';
import { bs7671Demand } from '../../src/codes/bs7671/index.js';
import { isMissing } from '../../src/core/index.js';
import type { SupplyTransformer } from '../../src/demand/index.js';
import { adequacyOf } from '../../src/demand/index.js';
import { byTransformer } from '../../src/demand/transformer.js';
import {
  amperes,
  type Fact,
  known,
  metres,
  ohms,
  ratio,
  recorder,
  type Supply,
  squareMillimetres,
  unknown,
  voltAmperes,
  volts,
  watts,
  writeSheet,
} from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import type { Survey } from '../../src/site/index.js';
import { sanityQuestions, withAllWanted } from '../../src/site/index.js';
import { withTransformer } from '../../src/site/transformer.js';
import { verifySheet } from '../../src/verify/index.js';
import { circuit, house, load, supply } from '../support/house.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocument } from '../support/surveys.js';

/** 500 kVA, 433 V, 4.75 %, at the main board. */
const plate: SupplyTransformer = {
  rating: known(voltAmperes(500e3)),
  voltage: known(volts(433)),
  impedanceVoltage: known(ratio(0.0475)),
  loss: known(watts(5500)),
  gridFaultPower: { state: 'between', least: voltAmperes(80e6), most: voltAmperes(250e6) },
  owner: 'customer',
  atOrigin: known(true),
};
const fed = (change: Partial<SupplyTransformer> = {}, others: Partial<Supply> = {}) =>
  supply({ phases: known(3), transformer: { ...plate, ...change }, ...others });
const found = (change: Partial<SupplyTransformer> = {}) => {
  const by = byTransformer(fed(change));
  if (!by) throw new Error('no transformer');
  return by;
};
const span = (of: unknown) => of as { least: number; most: number };

describe('what a transformer gives at the origin', () => {
  // Z_T = 0.0475 x 433² / 500 kVA = 17.81 mΩ; within a tenth 16.03 to 19.59 mΩ.
  // Largest: strong grid 1.1 x 433² / 250 MVA = 0.82 mΩ, of which two thirds count to earth, and X_0 = 0.95 X:
  // close to 16.03 x 2.95 / 3 + 0.55 = 16.3 mΩ. Smallest: 0.9 x 433² / 80 MVA = 2.11 mΩ: 19.59 + 1.41 = 21.0 mΩ.
  it('loop impedance between the strong and the weak end', () => {
    const { least, most } = span(found().externalImpedance);
    expect(least).toBeCloseTo(0.0163, 4);
    expect(most).toBeCloseTo(0.021, 3);
  });
  // to earth 1.1 x 230 V / 16.3 mΩ = 15.5 kA, more than three-phase 1.1 x 230 / 16.85 mΩ = 15.0 kA
  it('largest current, to earth', () => expect(span(found().prospectiveCurrent).most / 1e3).toBeCloseTo(15.5, 1));
  it('two in parallel halve what they add', () => {
    const [one, two] = [{}, { parallel: 2 }].map((c) => span(found(c).externalImpedance).most);
    // 19.59 / 2 + 1.41 = 11.2 mΩ
    expect(two).toBeCloseTo(0.0112, 3);
    expect(one).toBeGreaterThan(two as number);
  });
  it('a cable adds its resistance hot, and nothing is worked out without knowing of one', () => {
    // 40 m of 240/120 mm² aluminium: (0.125 + 0.253) mΩ/m x 40 m x 1.282 at 90 °C = 19.4 mΩ beside 21 mΩ, mostly reactance
    const cable = {
      material: 'aluminium' as const,
      length: known(metres(40)),
      area: known(squareMillimetres(240)),
      protectiveArea: known(squareMillimetres(120)),
    };
    const { most } = span(found({ cable }).externalImpedance);
    expect(most).toBeGreaterThan(0.028);
    expect(most).toBeLessThan(0.0404);
    const { atOrigin: _, ...nobody } = plate;
    const open = byTransformer(supply({ transformer: nobody }));
    expect(isMissing(open?.externalImpedance as never)).toBe(true);
    expect(span(open?.prospectiveCurrent).most / 1e3).toBeCloseTo(15.5, 1);
  });
  it('a loss that cannot be is asked about, and nothing follows from it', () => {
    const { externalImpedance } = found({ loss: known(watts(50e3)) });
    expect(externalImpedance).toMatchObject({ missing: [{ fact: 'loss of the transformer' }] });
  });
  it('a grid that nobody knows is strong for the current, and leaves the impedance open', () => {
    const { externalImpedance, prospectiveCurrent } = found({ gridFaultPower: unknown('ask the operator') });
    expect(isMissing(externalImpedance as never)).toBe(true);
    // 1.1 x 230 V / (16.03 x 2.95 / 3) mΩ = 16.05 kA
    expect(span(prospectiveCurrent).most / 1e3).toBeCloseTo(16.05, 1);
  });
});

const survey = (of: Partial<Supply>): Survey => {
  const read = readSurvey(surveyDocument('workshop'));
  return {
    ...read,
    installation: { ...read.installation, supply: { ...read.installation.supply, transformer: plate, ...of } },
  };
};
const open: Fact<never> = unknown('measure it');

describe('in a survey', () => {
  it('open figures follow from it, to the safe side, and say where they come from', () => {
    const { externalImpedance: z, prospectiveCurrent: i } = withTransformer(
      survey({ externalImpedance: open, prospectiveCurrent: open }),
    ).installation.supply;
    expect(z).toMatchObject({ state: 'known', by: expect.stringContaining('500 kVA, u_k 4.75 %') });
    expect(z.state === 'known' && z.value).toBeCloseTo(0.021, 3);
    expect(i.state === 'known' && i.value / 1e3).toBeCloseTo(15.5, 1);
  });
  it('a reading stays, and one that does not go with it is asked about', () => {
    const measured = survey({ externalImpedance: known(ohms(0.17)), prospectiveCurrent: known(amperes(14_500)) });
    expect(withTransformer(measured).installation.supply.externalImpedance).toEqual(known(ohms(0.17)));
    const questions = sanityQuestions(measured).map((q) => q.of);
    expect(questions).toContain('external impedance');
    expect(questions).not.toContain('prospective current');
  });
  it('the sheet of the supply holds against a second calculation', () => {
    const sheet = recorder('supply');
    adequacyOf(bs7671Demand, withAllWanted(survey({})), { premises: 'other', meteredMargin: ratio(0.2) }, sheet);
    expect(verifySheet(writeSheet(sheet)).problems).toEqual([]);
  });
  it('the demand is held against its rated current', () => {
    const results = (kVA: number, parallel?: number) => {
      const scaled = { rating: known(voltAmperes(kVA * 1e3)), loss: known(watts(kVA * 11)) };
      const transformer = { ...plate, ...scaled, ...(parallel ? { parallel } : {}) };
      const [option] = planInBritain(survey({ transformer }), {
        sheets: 'none',
        remedies: false,
        limits: false,
      }).options;
      return option?.supply.results.filter((r) => r.check === 'demand-within-transformer').map((r) => r.verdict);
    };
    // 58 A and the points up to 80 A of their control: 50 kVA is 66.7 A at 433 V, two of them 133 A
    expect(new Set(results(50))).toContain('fail');
    expect(results(50, 2)).toEqual(['pass', 'pass', 'pass']);
    expect(results(500)).toEqual(['pass', 'pass', 'pass']);
  });
});

describe('unlike transformers in parallel', () => {
  const beside = (kVA: number, u: number, loss: number) => [
    { rating: known(voltAmperes(kVA * 1e3)), impedanceVoltage: known(ratio(u)), loss: known(watts(loss)) },
  ];
  const alike = beside(500, 0.0475, 5500);

  it('one of the same plate beside it is two in parallel', () => {
    const [two, pair] = [found({ parallel: 2 }), found({ beside: alike })];
    for (const key of ['externalImpedance', 'prospectiveCurrent'] as const)
      for (const end of ['least', 'most'] as const) expect(span(pair[key])[end]).toBeCloseTo(span(two[key])[end], 6);
  });
  it('two unlike ones: impedances in parallel, by hand', () => {
    // 1000 kVA, 5 % and 1500 kVA, 8 % at 433 V, hardly any loss: 9.374 and 9.999 mΩ, in parallel 4.838 mΩ; a tenth less is
    // 4.354 mΩ. A grid without bound, 1.1 x 230.94 V between star and line: 58.3 kA, and a little more to earth
    const { most } = span(
      found({
        rating: known(voltAmperes(1e6)),
        impedanceVoltage: known(ratio(0.05)),
        loss: known(watts(10)),
        gridFaultPower: unknown(),
        beside: beside(1500, 0.08, 15),
      }).prospectiveCurrent,
    );
    expect(most / 1e3).toBeGreaterThan(57);
    expect(most / 1e3).toBeLessThan(62);
  });
  it('the one that is full first sets what they carry: 1937.5 kVA of 2500, as published', () => {
    const limitWith = (change: Partial<SupplyTransformer>) => {
      const installation = house([circuit({ feeds: [load(20)] })], {
        phases: known(3),
        transformer: { ...plate, ...change },
      });
      const sheet = recorder('supply');
      const { results } = adequacyOf(bs7671Demand, installation, { premises: 'other' }, sheet);
      expect(verifySheet(writeSheet(sheet)).problems).toEqual([]);
      return results.find((r) => r.check === 'demand-within-transformer') as unknown as { limit: { value: number } };
    };
    const pair: Partial<SupplyTransformer> = {
      rating: known(voltAmperes(1e6)),
      voltage: known(volts(400)),
      impedanceVoltage: known(ratio(0.05)),
      loss: known(watts(0.001)),
      beside: beside(1500, 0.08, 0.001),
    };
    // 1937.5 kVA over √3 x 400 V
    expect(limitWith(pair).limit.value).toBeCloseTo(2796.5, 0);
    // harmonics that a load of K = 1.18 brings take that to 2370 A
    expect(limitWith({ ...pair, harmonicLossFactor: known(ratio(1.18)) }).limit.value).toBeCloseTo(2370, 0);
  });
  it('a plate beside it that nobody read leaves it open', () => {
    const open = found({ beside: [{ ...alike[0]!, impedanceVoltage: unknown('the plate') }] });
    expect(isMissing(open.prospectiveCurrent)).toBe(true);
    expect(
      isMissing(
        found({
          beside: [{ ...alike[0]!, rating: { state: 'between', least: voltAmperes(3e5), most: voltAmperes(5e5) } }],
        }).prospectiveCurrent,
      ),
    ).toBe(true);
  });
});
