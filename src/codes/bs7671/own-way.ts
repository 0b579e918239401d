import { statement } from '../../core/index.js';

/** Each new circuit has a way of its own. BS 7671, 314.4. */
export const wayOfItsOwn = /* @__PURE__ */ statement({
  id: 'way-of-its-own',
  title: 'Each new circuit has a way of its own in a board',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '314.4', provenance: 'two-sources' },
  caution: 'Two circuits are not put on one device to make room.',
});
