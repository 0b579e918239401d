import { rule } from '../../core/index.js';
import { bs } from './source.js';

/** Each new circuit has a way of its own. BS 7671, 314.4. */
export const wayOfItsOwn = /* @__PURE__ */ rule({
  id: 'way-of-its-own',
  title: 'Each new circuit has a way of its own in a board',
  source: /* @__PURE__ */ bs('314.4'),
  caution: 'Two circuits are not put on one device to make room.',
});
