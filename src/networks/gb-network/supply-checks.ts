import { comparison, statement } from '../../core/index.js';

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
