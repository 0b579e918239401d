import { boardRemedies } from './board.js';
import { jointRemedies } from './joints.js';
import { originRemedies } from './origin.js';
import { pointRemedies } from './point.js';
import type { SurveyRemedy } from './remedy.js';
import { residualRemedies } from './residual.js';
import { routeRemedies } from './route.js';
import { supplyRemedies } from './supply.js';

/** Every remedy, of one topic from what changes least. */
export const allRemedies: readonly SurveyRemedy[] = /* @__PURE__ */ supplyRemedies.concat(
  residualRemedies,
  routeRemedies,
  jointRemedies,
  pointRemedies,
  originRemedies,
  boardRemedies,
);
