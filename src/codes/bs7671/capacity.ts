import { moving, multiplied, rule } from '../../core/index.js';
import { bs } from './source.js';

/**
 * Rating factor for thermal insulation around a cable whose reference method has insulation beside it: it carries no more
 * than clipped direct and surrounded, and no more than the method says. BS 7671 523.9.
 */
export const insulationBesideMethod = /* @__PURE__ */ moving({
  id: 'insulation-beside-method',
  title: 'Rating factor for insulation around a cable that has insulation beside it',
  moves: { surroundFactor: 1, clippedCapacity: 1, tabulatedCapacity: -1 },
  output: 'insulationFactor',
  expression: 'min(1, surroundFactor * clippedCapacity / tabulatedCapacity)',
  compute: ({ surroundFactor, clippedCapacity, tabulatedCapacity }) =>
    Math.min(1, (surroundFactor * clippedCapacity) / tabulatedCapacity),
  source: /* @__PURE__ */ bs(
    '523.9',
    'memory',
    'half of the capacity clipped direct from 0.5 m up: two sources; its relation to methods A and 100 to 102: from memory',
  ),
});

/** Tabulated capacity required by the load of a grouped circuit that is not overloaded together with others, first condition. BS 7671 Appendix 4, 5.1.2. */
export const requiredForLoad = /* @__PURE__ */ multiplied({
  id: 'required-capacity-load',
  title: 'Tabulated capacity required by the load',
  times: ['designCurrent'],
  over: ['ambientFactor', 'groupFactor', 'insulationFactor', 'soilFactor'],
  output: 'requiredCapacity',
  source: /* @__PURE__ */ bs('Appendix 4, 5.1.2', 'one-source'),
});

/** Tabulated capacity required when not more than one circuit of a group is overloaded at a time, second condition. BS 7671 Appendix 4, 5.1.2. */
export const requiredNotTogether = /* @__PURE__ */ moving({
  id: 'required-capacity-not-simultaneous',
  title: 'Tabulated capacity required when the group is not overloaded together',
  moves: {
    deviceRating: 1,
    designCurrent: 1,
    ambientFactor: -1,
    groupFactor: -1,
    insulationFactor: -1,
    soilFactor: -1,
    fuseFactor: -1,
    deviceFactor: -1,
  },
  output: 'requiredCapacity',
  expression:
    'sqrt((deviceRating / (fuseFactor * deviceFactor))^2 + 0.48 * designCurrent^2 * (1 - groupFactor^2) / groupFactor^2) / (ambientFactor * insulationFactor * soilFactor)',
  compute: (v) =>
    Math.sqrt(
      (v.deviceRating / (v.fuseFactor * v.deviceFactor)) ** 2 +
        (0.48 * v.designCurrent ** 2 * (1 - v.groupFactor ** 2)) / v.groupFactor ** 2,
    ) /
    (v.ambientFactor * v.insulationFactor * v.soilFactor),
  valid: { groupFactor: { above: 0, most: 1 } },
  source: /* @__PURE__ */ bs('Appendix 4, 5.1.2', 'one-source', 'the place of the outer factors is recalled'),
});

/** The larger of two capacities that a grouped circuit requires when the group is not overloaded together. BS 7671 Appendix 4, 5.1.2. */
export const largerRequirement = /* @__PURE__ */ moving({
  id: 'required-capacity-larger',
  title: 'The larger of the capacities that the load and one circuit in overload require',
  moves: { requiredByLoad: 1, requiredByOverload: 1 },
  output: 'requiredCapacity',
  expression: 'max(requiredByLoad, requiredByOverload)',
  compute: ({ requiredByLoad, requiredByOverload }) => Math.max(requiredByLoad, requiredByOverload),
  source: /* @__PURE__ */ bs('Appendix 4, 5.1.2', 'one-source'),
});

/** Current that a section of a ring final circuit carries for long: not more than its capacity. BS 7671 433.1.204. */
export const ringSectionLoad = /* @__PURE__ */ moving({
  id: 'ring-section-load',
  title: 'Current that a section of a ring carries for long',
  moves: { designCurrent: 1, capacity: 1 },
  output: 'designCurrent',
  expression: 'min(designCurrent, capacity)',
  compute: ({ designCurrent, capacity }) => Math.min(designCurrent, capacity),
  source: /* @__PURE__ */ bs('433.1.204', 'one-source'),
});

/** Largest rated current of the device that the capacity as installed allows. BS 7671 433.1. */
export const deviceLimitOf = /* @__PURE__ */ multiplied({
  id: 'device-limit',
  title: 'Largest rated current that the cable allows',
  times: ['capacity', 'fuseFactor', 'deviceFactor'],
  output: 'deviceLimit',
  source: /* @__PURE__ */ bs('433.1.1, Appendix 4, 5.1', 'memory'),
});

/** Grouping factor together with the one for cable on a drum. BS 7671, Tables 4F, notes. */
export const groupWithDrum = /* @__PURE__ */ multiplied({
  id: 'group-factor-with-drum',
  title: 'Grouping factor together with the one for a drum',
  times: ['groupFactor', 'drumFactor'],
  output: 'groupFactor',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Tables 4F, notes', provenance: 'one-source' },
});

/** I_z >= 20 A all along a ring final circuit. BS 7671, 433.1.204. */
export const ringCarriesEnough = /* @__PURE__ */ rule({
  id: 'ring-capacity',
  title: 'The capacity of a ring final circuit is not below the one that is asked of it',
  of: ['capacity', 'at-least', 'ringCapacity'],
  source: /* @__PURE__ */ bs('433.1.204', 'one-source'),
  caution:
    'Holds when the load in no part of the ring is likely to pass the capacity of the cable for long, and when unfused spurs are of the same cable.',
});

/** Drop per ampere and metre corrected for the temperature of the conductor, where reactance is neglected. BS 7671 Appendix 4, 6.1. */
export const dropRateCorrected = /* @__PURE__ */ multiplied({
  id: 'drop-rate-corrected',
  title: 'Drop per ampere and metre at the real conductor temperature',
  times: ['resistiveRate', 'temperatureCorrection'],
  output: 'dropRate',
  source: /* @__PURE__ */ bs('Appendix 4, 6.1', 'memory'),
});
