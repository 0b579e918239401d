import { rule } from '../../core/index.js';
import { bs } from './source.js';

/** A cable is rated for each way in which it is laid. BS 7671, 523.1, Appendix 4. */
export const cableForRoute = /* @__PURE__ */ rule({
  id: 'cable-for-the-route',
  title: 'A cable that may be used is rated for every way in which the route is laid',
  source: /* @__PURE__ */ bs('523.1, Appendix 4', 'memory'),
});
