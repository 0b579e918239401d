import { comparison, type Source, statement } from '../core/index.js';

const assessment: Source = {
  document: 'BS 7671',
  edition: '2018+A2:2022',
  clause: '311.1, 313.1',
  provenance: 'memory',
};

/** The demand on a line is within the rating of the service cut-out. BS 7671, 311.1, 313.1. */
export const demandWithinCutOut = /* @__PURE__ */ comparison({
  id: 'demand-within-cut-out',
  title: 'Maximum demand is at most the rating of the cut-out fuse',
  kind: 'at-most',
  value: 'demand',
  limit: 'cutOutRating',
  weight: 'rule',
  source: assessment,
  caution: 'The rating is that of the fuse, not of its carrier. Only the distributor may open the cut-out.',
  worse: { demand: 'up', cutOutRating: 'down' },
});

/** The demand on a line is within the rating of the main switch. BS 7671, 536.4.202. */
export const demandWithinMainSwitch = /* @__PURE__ */ comparison({
  id: 'demand-within-main-switch',
  title: 'Maximum demand is at most the rated current of the main switch',
  kind: 'at-most',
  value: 'demand',
  limit: 'mainSwitchRating',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '536.4.202', provenance: 'memory' },
  worse: { demand: 'up', mainSwitchRating: 'down' },
});

/** The demand on a line is within what the meter tails carry. */
export const demandWithinTails = /* @__PURE__ */ comparison({
  id: 'demand-within-tails',
  title: 'Maximum demand is at most what the meter tails carry',
  kind: 'at-most',
  value: 'demand',
  limit: 'tailsCapacity',
  weight: 'rule',
  source: { document: 'requirements of distributors', clause: 'meter tails', provenance: 'common-practice' },
  worse: { demand: 'up', tailsCapacity: 'down' },
});

/** The service feeds this installation alone. ENA process for charge points and heat pumps, looped supplies. */
export const serviceOfItsOwn = /* @__PURE__ */ statement({
  id: 'service-of-its-own',
  title: 'The service feeds this installation alone',
  weight: 'rule',
  source: {
    document: 'ENA process for charge points and heat pumps',
    clause: 'looped supplies',
    provenance: 'two-sources',
  },
  caution: 'What a looped service leaves for one house is the distributor’s to say.',
});
