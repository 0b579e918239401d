import { added, factValue, formula, isMissing, type Known, rule, type Sheet, type Source } from '../../core/index.js';
import { coincidenceByRoot } from '../../demand/many/dwellings.js';
import { dwellingsByStage } from '../../demand/many/staged.js';
import type { DemandRules } from '../../demand/rules.js';
import { buildingCurve } from '../../guidance/din18015/building-load.js';
import { guideDwelling, guideHotel, guideShop, guideShopRecalled } from '../../guidance/on-site-guide/allowances.js';
import { oneLineRule } from '../../guidance/on-site-guide/one-line-rule.js';
import type { Supply } from '../../installation/index.js';
import { afterDiversity } from '../../networks/gb-network/after-diversity.js';
import { customaryAfterDiversity } from '../../networks/gb-network/dwelling-demand.js';
import { meterTails } from '../../networks/gb-network/meter-tails.js';
import { servicesOf } from '../../networks/gb-network/service-fuses.js';
import { serviceOfItsOwn } from '../../networks/gb-network/supply-checks.js';
import { riserMethod } from '../../networks/nfc14100/riser-simultaneity.js';
import { peakFromEnergy } from '../../networks/nordic-network/energy-to-peak.js';
import type { Amperes } from '../../units/index.js';
import { boardOverload, mainSwitchOverload, residualOverload, tailsOverload } from './overload-checks.js';
import { bs, entered } from './source.js';
import { table4D1A } from './tables/4d1a.js';

const assessment: Source = {
  document: 'BS 7671',
  edition: entered,
  clause: '311.1, 313.1',
  provenance: 'memory',
};

/** The demand on a line is within the rating of the service cut-out. BS 7671, 311.1, 313.1. */
export const demandWithinCutOut = /* @__PURE__ */ rule({
  id: 'demand-within-cut-out',
  title: 'Maximum demand is at most the rating of the cut-out fuse',
  of: ['demand', 'at-most', 'cutOutRating'],
  source: assessment,
  caution: 'The rating is that of the fuse, not of its carrier. Only the distributor may open the cut-out.',
});

/** The demand on a line is within the rating of the main switch. BS 7671, 512.1.2. */
export const demandWithinMainSwitch = /* @__PURE__ */ rule({
  id: 'demand-within-main-switch',
  title: 'Maximum demand is at most the rated current of the main switch',
  of: ['demand', 'at-most', 'mainSwitchRating'],
  source: /* @__PURE__ */ bs('512.1.2', 'memory'),
});

/** Demand with charge points at their full current. BS 7671, 722.311.201. */
export const demandWithPoints = /* @__PURE__ */ added({
  id: 'demand-with-points',
  title: 'Demand with the charge points at 100 %',
  plus: ['existingDemand', 'chargeCurrent'],
  output: 'demand',
  source: /* @__PURE__ */ bs('722.311.201'),
});

/**
 * Demand where a load control holds the current at one board down to its limit, as far as pausing the charge points
 * can. BS 7671, 722.311.201.
 */
export const controlledDemand = /* @__PURE__ */ formula({
  id: 'controlled-demand',
  title: 'Demand with a load control',
  inputs: ['existingDemand', 'chargeCurrent', 'controlLimit', 'restDemand'],
  output: 'demand',
  expression: 'restDemand + min(existingDemand + chargeCurrent, max(controlLimit, existingDemand))',
  compute: ({ existingDemand, chargeCurrent, controlLimit, restDemand }) =>
    restDemand + Math.min(existingDemand + chargeCurrent, Math.max(controlLimit, existingDemand)),
  source: /* @__PURE__ */ bs(
    '722.311.201',
    'derived',
    'the clause allows for load control; the expression follows from what a control can do',
  ),
});

/**
 * What the tails carry: the distributors' figure where they have one for the size, else the table of single-core cables
 * clipped direct, which larger services need.
 */
function tailsCapacity(supply: Supply, phases: 1 | 3, sheet: Sheet): Known<Amperes> {
  const { tails = { state: 'unknown', obtain: 'measure the meter tails' } as const } = supply;
  const area = factValue('size of the meter tails', tails);
  if (isMissing(area) || meterTails.find({ tails: 'copper', tailsArea: area }) !== undefined) {
    const tailsArea = sheet.given('tailsArea', tails);
    return sheet.look(meterTails, { tails: sheet.label('tails', 'copper'), tailsArea });
  }
  const part = sheet.part('Tails of another size: copper, 70 °C, clipped direct at 30 °C, alone');
  const method = part.label('method', 'C');
  const loaded = part.label('loaded', phases === 3 ? '3' : '2');
  const formation = part.label('formation', phases === 3 ? 'flat-or-trefoil' : 'flat-touching');
  const conductorArea = part.given('conductorArea', tails);
  part.look(table4D1A, { method, loaded, formation, conductorArea });
  return sheet.gather('smallest', 'tabulatedCapacity', 'tailsCapacity', [part]);
}

/** Demand after diversity of British dwellings: constants of the operator before the customary ones. */
const dwellingMethods = /* @__PURE__ */ [
  /* @__PURE__ */ dwellingsByStage(afterDiversity),
  /* @__PURE__ */ dwellingsByStage(customaryAfterDiversity),
];
/** What is said elsewhere of the same dwellings, side by side. */
const otherDwellingMethods = /* @__PURE__ */ [
  /* @__PURE__ */ dwellingsByStage(riserMethod),
  /* @__PURE__ */ dwellingsByStage(buildingCurve),
  /* @__PURE__ */ dwellingsByStage(coincidenceByRoot),
  /* @__PURE__ */ dwellingsByStage(peakFromEnergy),
];

/**
 * Demand by BS 7671 and the On-Site Guide: allowances of the guide, charge points in full unless a load control holds
 * them, a supply judged against cut-out, main switch and tails as distributors in Great Britain ask.
 */
export const bs7671Demand: DemandRules = {
  methods: [guideDwelling, guideShop, guideShopRecalled, guideHotel, oneLineRule],
  ofDwellings: /* @__PURE__ */ dwellingMethods.concat(otherDwellingMethods),
  governing: {
    title:
      'the On-Site Guide for the stated premises; of several dwellings the demand after diversity, by the operator’s constants where they are stated',
    methods: /* @__PURE__ */ [guideDwelling, guideShop, guideHotel].concat(dwellingMethods),
  },
  withPoints: demandWithPoints,
  withControl: controlledDemand,
  supply: {
    cutOut: demandWithinCutOut,
    mainSwitch: demandWithinMainSwitch,
    mainSwitchOverload,
    boardOverload,
    residualOverload,
    tails: tailsOverload,
    ownService: serviceOfItsOwn,
    tailsCapacity,
    services: servicesOf,
  },
  cautions: [
    'BS 7671:2018 with amendments 2 and 3 was withdrawn on 15 October 2026; whether amendment 4 of 2026 changed diversity or section 722 was not available.',
  ],
};
