import { rule } from '../../core/index.js';

/** The service feeds this installation alone. ENA process for charge points and heat pumps, looped supplies. */
export const serviceOfItsOwn = /* @__PURE__ */ rule({
  id: 'service-of-its-own',
  title: 'The service feeds this installation alone',
  source: {
    document: 'ENA process for charge points and heat pumps',
    clause: 'looped supplies',
    provenance: 'two-sources',
  },
  caution: 'What a looped service leaves for one house is the distributor’s to say.',
});
