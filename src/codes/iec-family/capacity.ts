import { comparison, formula, statement } from '../../core/index.js';

/** Current-carrying capacity as installed, from the tabulated one and its factors. BS 7671 Appendix 4, 5. */
export const capacityAsInstalled = /* @__PURE__ */ formula({
  id: 'capacity-as-installed',
  title: 'Current-carrying capacity as installed',
  inputs: ['tabulatedCapacity', 'ambientFactor', 'groupFactor', 'insulationFactor', 'soilFactor'],
  output: 'capacity',
  expression: 'tabulatedCapacity * ambientFactor * groupFactor * insulationFactor * soilFactor',
  direction: { tabulatedCapacity: 1, ambientFactor: 1, groupFactor: 1, insulationFactor: 1, soilFactor: 1 },
  compute: ({ tabulatedCapacity, ambientFactor, groupFactor, insulationFactor, soilFactor }) =>
    tabulatedCapacity * ambientFactor * groupFactor * insulationFactor * soilFactor,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Appendix 4, 5', provenance: 'memory' },
});

/** Tabulated capacity of conductors in parallel that share the load equally. BS 7671 523.7. */
export const capacityInParallel = /* @__PURE__ */ formula({
  id: 'capacity-in-parallel',
  title: 'Tabulated capacity of conductors in parallel',
  inputs: ['tabulatedCapacity', 'parallelConductors'],
  output: 'tabulatedCapacity',
  expression: 'tabulatedCapacity * parallelConductors',
  direction: { tabulatedCapacity: 1, parallelConductors: 1 },
  compute: ({ tabulatedCapacity, parallelConductors }) => tabulatedCapacity * parallelConductors,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '523.7', provenance: 'memory' },
});

/**
 * Rating factor for thermal insulation around a cable whose reference method has insulation beside it: it carries no more
 * than clipped direct and surrounded, and no more than the method says. BS 7671 523.9.
 */
export const insulationBesideMethod = /* @__PURE__ */ formula({
  id: 'insulation-beside-method',
  title: 'Rating factor for insulation around a cable that has insulation beside it',
  inputs: ['surroundFactor', 'clippedCapacity', 'tabulatedCapacity'],
  output: 'insulationFactor',
  expression: 'min(1, surroundFactor * clippedCapacity / tabulatedCapacity)',
  direction: { surroundFactor: 1, clippedCapacity: 1, tabulatedCapacity: -1 },
  compute: ({ surroundFactor, clippedCapacity, tabulatedCapacity }) =>
    Math.min(1, (surroundFactor * clippedCapacity) / tabulatedCapacity),
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: '523.9',
    provenance: 'memory',
    note: 'half of the capacity clipped direct from 0.5 m up: two sources; its relation to methods A and 100 to 102: from memory',
  },
});

/** Tabulated capacity required behind a device that protects against overload, alone or overloaded together. BS 7671 Appendix 4, 5.1. */
export const requiredForOverload = /* @__PURE__ */ formula({
  id: 'required-capacity-overload',
  title: 'Tabulated capacity required for overload protection',
  inputs: [
    'deviceRating',
    'ambientFactor',
    'groupFactor',
    'insulationFactor',
    'soilFactor',
    'fuseFactor',
    'deviceFactor',
  ],
  output: 'requiredCapacity',
  expression:
    'deviceRating / (ambientFactor * groupFactor * insulationFactor * soilFactor * fuseFactor * deviceFactor)',
  direction: {
    deviceRating: 1,
    ambientFactor: -1,
    groupFactor: -1,
    insulationFactor: -1,
    soilFactor: -1,
    fuseFactor: -1,
    deviceFactor: -1,
  },
  compute: (v) =>
    v.deviceRating /
    (v.ambientFactor * v.groupFactor * v.insulationFactor * v.soilFactor * v.fuseFactor * v.deviceFactor),
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Appendix 4, 5.1.1 and 5.1.2',
    provenance: 'two-sources',
  },
});

/** Tabulated capacity required by the load of a grouped circuit that is not overloaded together with others, first condition. BS 7671 Appendix 4, 5.1.2. */
export const requiredForLoad = /* @__PURE__ */ formula({
  id: 'required-capacity-load',
  title: 'Tabulated capacity required by the load',
  inputs: ['designCurrent', 'ambientFactor', 'groupFactor', 'insulationFactor', 'soilFactor'],
  output: 'requiredCapacity',
  expression: 'designCurrent / (ambientFactor * groupFactor * insulationFactor * soilFactor)',
  direction: { designCurrent: 1, ambientFactor: -1, groupFactor: -1, insulationFactor: -1, soilFactor: -1 },
  compute: (v) => v.designCurrent / (v.ambientFactor * v.groupFactor * v.insulationFactor * v.soilFactor),
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Appendix 4, 5.1.2', provenance: 'one-source' },
});

/** Tabulated capacity required when not more than one circuit of a group is overloaded at a time, second condition. BS 7671 Appendix 4, 5.1.2. */
export const requiredNotTogether = /* @__PURE__ */ formula({
  id: 'required-capacity-not-simultaneous',
  title: 'Tabulated capacity required when the group is not overloaded together',
  inputs: [
    'deviceRating',
    'designCurrent',
    'ambientFactor',
    'groupFactor',
    'insulationFactor',
    'soilFactor',
    'fuseFactor',
    'deviceFactor',
  ],
  output: 'requiredCapacity',
  expression:
    'sqrt((deviceRating / (fuseFactor * deviceFactor))^2 + 0.48 * designCurrent^2 * (1 - groupFactor^2) / groupFactor^2) / (ambientFactor * insulationFactor * soilFactor)',
  direction: {
    deviceRating: 1,
    designCurrent: 1,
    ambientFactor: -1,
    groupFactor: -1,
    insulationFactor: -1,
    soilFactor: -1,
    fuseFactor: -1,
    deviceFactor: -1,
  },
  compute: (v) =>
    Math.sqrt(
      (v.deviceRating / (v.fuseFactor * v.deviceFactor)) ** 2 +
        (0.48 * v.designCurrent ** 2 * (1 - v.groupFactor ** 2)) / v.groupFactor ** 2,
    ) /
    (v.ambientFactor * v.insulationFactor * v.soilFactor),
  valid: { groupFactor: { above: 0, most: 1 } },
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Appendix 4, 5.1.2',
    provenance: 'one-source',
    note: 'the place of the outer factors is recalled',
  },
});

/** The larger of two capacities that a grouped circuit requires when the group is not overloaded together. BS 7671 Appendix 4, 5.1.2. */
export const largerRequirement = /* @__PURE__ */ formula({
  id: 'required-capacity-larger',
  title: 'The larger of the capacities that the load and one circuit in overload require',
  inputs: ['requiredByLoad', 'requiredByOverload'],
  output: 'requiredCapacity',
  expression: 'max(requiredByLoad, requiredByOverload)',
  direction: { requiredByLoad: 1, requiredByOverload: 1 },
  compute: ({ requiredByLoad, requiredByOverload }) => Math.max(requiredByLoad, requiredByOverload),
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Appendix 4, 5.1.2', provenance: 'one-source' },
});

/** Share of the tabulated capacity that is required: where it is largest, a section governs. Definition. */
export const capacityUseOf = /* @__PURE__ */ formula({
  id: 'capacity-use',
  title: 'Share of the capacity that is required',
  inputs: ['requiredCapacity', 'tabulatedCapacity'],
  output: 'capacityUse',
  expression: 'requiredCapacity / tabulatedCapacity',
  direction: { requiredCapacity: 1, tabulatedCapacity: -1 },
  compute: ({ requiredCapacity, tabulatedCapacity }) => requiredCapacity / tabulatedCapacity,
  source: { document: 'Definition', provenance: 'definition' },
});

/** Current that a section of a ring final circuit carries for long: not more than its capacity. BS 7671 433.1.204. */
export const ringSectionLoad = /* @__PURE__ */ formula({
  id: 'ring-section-load',
  title: 'Current that a section of a ring carries for long',
  inputs: ['designCurrent', 'capacity'],
  output: 'designCurrent',
  expression: 'min(designCurrent, capacity)',
  direction: { designCurrent: 1, capacity: 1 },
  compute: ({ designCurrent, capacity }) => Math.min(designCurrent, capacity),
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '433.1.204', provenance: 'one-source' },
});

/** Largest rated current of the device that the capacity as installed allows. BS 7671 433.1. */
export const deviceLimitOf = /* @__PURE__ */ formula({
  id: 'device-limit',
  title: 'Largest rated current that the cable allows',
  inputs: ['capacity', 'fuseFactor', 'deviceFactor'],
  output: 'deviceLimit',
  expression: 'capacity * fuseFactor * deviceFactor',
  direction: { capacity: 1, fuseFactor: 1, deviceFactor: 1 },
  compute: ({ capacity, fuseFactor, deviceFactor }) => capacity * fuseFactor * deviceFactor,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '433.1.1, Appendix 4, 5.1', provenance: 'memory' },
});

/** Conventional operating current from the rated current. Product standards. */
export const conventionalCurrentOf = /* @__PURE__ */ formula({
  id: 'conventional-operating-current',
  title: 'Conventional operating current of the device',
  inputs: ['deviceRating', 'conventionalMultiple'],
  output: 'conventionalOperatingCurrent',
  expression: 'deviceRating * conventionalMultiple',
  direction: { deviceRating: 1, conventionalMultiple: 1 },
  compute: ({ deviceRating, conventionalMultiple }) => deviceRating * conventionalMultiple,
  source: { document: 'Product standards', clause: 'conventional currents', provenance: 'two-sources' },
});

/** Largest conventional operating current that the cable allows. BS 7671 433.1.1 (iii). */
export const overloadLimitOf = /* @__PURE__ */ formula({
  id: 'overload-limit',
  title: 'Largest conventional operating current that the cable allows',
  inputs: ['capacity'],
  output: 'overloadLimit',
  expression: '1.45 * capacity',
  direction: { capacity: 1 },
  compute: ({ capacity }) => 1.45 * capacity,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '433.1.1 (iii)', provenance: 'memory' },
});

/** Rated current that a grouped, continuously loaded device may carry, by its maker's factor. Maker's data. */
export const deviceShareOf = /* @__PURE__ */ formula({
  id: 'grouped-device-rating',
  title: 'Rated current of a grouped, continuously loaded device',
  inputs: ['deviceRating', 'deviceGroupFactor'],
  output: 'deviceShare',
  expression: 'deviceRating * deviceGroupFactor',
  direction: { deviceRating: 1, deviceGroupFactor: 1 },
  compute: ({ deviceRating, deviceGroupFactor }) => deviceRating * deviceGroupFactor,
  source: { document: "Maker's data", provenance: 'definition', note: 'the factor is an input' },
});

/** Factor for a bunch of circuits of unequal size. IEC 60364-5-52 B.52.5. */
export const unequalGroupFactor = /* @__PURE__ */ formula({
  id: 'unequal-group-factor',
  title: 'Grouping factor for circuits of unequal size',
  inputs: ['groupedCircuits'],
  output: 'groupFactor',
  expression: '1 / sqrt(groupedCircuits)',
  direction: { groupedCircuits: -1 },
  compute: ({ groupedCircuits }) => 1 / Math.sqrt(groupedCircuits),
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'B.52.5', provenance: 'one-source' },
});

/** Grouping factor together with the one for more than four loaded cores. BS 7671, Appendix 4, 5. */
export const groupWithCores = /* @__PURE__ */ formula({
  id: 'group-factor-with-cores',
  title: 'Grouping factor together with the one for loaded cores',
  inputs: ['groupFactor', 'coresFactor'],
  output: 'groupFactor',
  expression: 'groupFactor * coresFactor',
  direction: { groupFactor: 1, coresFactor: 1 },
  compute: ({ groupFactor, coresFactor }) => groupFactor * coresFactor,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Appendix 4, 5', provenance: 'memory' },
});

/** Grouping factor together with the one for cable on a drum. BS 7671, Tables 4F, notes. */
export const groupWithDrum = /* @__PURE__ */ formula({
  id: 'group-factor-with-drum',
  title: 'Grouping factor together with the one for a drum',
  inputs: ['groupFactor', 'drumFactor'],
  output: 'groupFactor',
  expression: 'groupFactor * drumFactor',
  direction: { groupFactor: 1, drumFactor: 1 },
  compute: ({ groupFactor, drumFactor }) => groupFactor * drumFactor,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Tables 4F, notes', provenance: 'one-source' },
});

/** Current of the neutral due to third harmonics, which add up in it. IEC 60364-5-52 Annex E. */
export const neutralOfThirdHarmonics = /* @__PURE__ */ formula({
  id: 'neutral-of-third-harmonics',
  title: 'Current of the neutral due to third harmonics of balanced lines',
  inputs: ['designCurrent', 'thirdHarmonic'],
  output: 'harmonicNeutralCurrent',
  expression: '3 * thirdHarmonic * designCurrent',
  direction: { designCurrent: 1, thirdHarmonic: 1 },
  compute: ({ designCurrent, thirdHarmonic }) => 3 * thirdHarmonic * designCurrent,
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Annex E', provenance: 'memory' },
});

/** Current from which a four-core cable is chosen where its lines decide. IEC 60364-5-52 Table E.52.1. */
export const harmonicCurrentOfLine = /* @__PURE__ */ formula({
  id: 'harmonic-current-line',
  title: 'Design current with third harmonics, by the line conductors',
  inputs: ['designCurrent', 'harmonicFactor'],
  output: 'harmonicCurrent',
  expression: 'designCurrent / harmonicFactor',
  direction: { designCurrent: 1, harmonicFactor: -1 },
  compute: ({ designCurrent, harmonicFactor }) => designCurrent / harmonicFactor,
  source: {
    document: 'IEC 60364-5-52',
    edition: '2009',
    clause: 'Annex E',
    provenance: 'memory',
    note: 'balanced lines, neutral of the same size in the same cable',
  },
});

/** Current from which a four-core cable is chosen where its neutral decides. IEC 60364-5-52 Table E.52.1. */
export const harmonicCurrentOfNeutral = /* @__PURE__ */ formula({
  id: 'harmonic-current-neutral',
  title: 'Design current with third harmonics, by the neutral conductor',
  inputs: ['harmonicNeutralCurrent', 'harmonicFactor'],
  output: 'harmonicCurrent',
  expression: 'harmonicNeutralCurrent / harmonicFactor',
  direction: { harmonicNeutralCurrent: 1, harmonicFactor: -1 },
  compute: ({ harmonicNeutralCurrent, harmonicFactor }) => harmonicNeutralCurrent / harmonicFactor,
  source: {
    document: 'IEC 60364-5-52',
    edition: '2009',
    clause: 'Annex E',
    provenance: 'memory',
    note: 'balanced lines, neutral of the same size in the same cable',
  },
});

/** I_b <= I_n. BS 7671, 433.1.1 (i). */
export const deviceCarriesLoad = /* @__PURE__ */ comparison({
  id: 'device-carries-load',
  title: 'The rated current of the device is not below the design current',
  kind: 'at-least',
  value: 'deviceRating',
  limit: 'designCurrent',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '433.1.1 (i)', provenance: 'two-sources' },
});

/** I_t >= I_t,min. BS 7671, 433.1.1 (ii), Appendix 4, 5. */
export const capacitySuffices = /* @__PURE__ */ comparison({
  id: 'tabulated-capacity',
  title: 'The tabulated capacity is not below the one that load and device require',
  kind: 'at-least',
  value: 'tabulatedCapacity',
  limit: 'requiredCapacity',
  weight: 'rule',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: '433.1.1 (ii), Appendix 4, 5',
    provenance: 'two-sources',
  },
  caution: 'An overloaded cable ages, and can start a fire, without any device operating.',
});

/** I_b <= I_z. BS 7671, 433.1.1. */
export const loadWithinCapacity = /* @__PURE__ */ comparison({
  id: 'load-within-capacity',
  title: 'The design current is within the capacity as installed',
  kind: 'at-most',
  value: 'designCurrent',
  limit: 'capacity',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '433.1.1', provenance: 'two-sources' },
});

/** I_z >= 20 A all along a ring final circuit. BS 7671, 433.1.204. */
export const ringCarriesEnough = /* @__PURE__ */ comparison({
  id: 'ring-capacity',
  title: 'The capacity of a ring final circuit is not below the one that is asked of it',
  kind: 'at-least',
  value: 'capacity',
  limit: 'ringCapacity',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '433.1.204', provenance: 'one-source' },
  caution:
    'Holds when the load in no part of the ring is likely to pass the capacity of the cable for long, and when unfused spurs are of the same cable.',
});

/** I_2 <= 1.45 I_z. BS 7671, 433.1.1 (iii). */
export const conventionalOverload = /* @__PURE__ */ comparison({
  id: 'conventional-overload',
  title: 'The conventional operating current is at most 1.45 times the capacity',
  kind: 'at-most',
  value: 'conventionalOperatingCurrent',
  limit: 'overloadLimit',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '433.1.1 (iii)', provenance: 'two-sources' },
});

/** I_b <= k I_n for grouped devices. Maker's data, factor for devices side by side. */
export const groupedDevice = /* @__PURE__ */ comparison({
  id: 'grouped-device',
  title: 'The device carries its load continuously beside its neighbours',
  kind: 'at-least',
  value: 'deviceShare',
  limit: 'designCurrent',
  weight: 'rule',
  source: { document: "Maker's data", clause: 'factor for devices side by side', provenance: 'definition' },
});

/** A method that contains insulation takes no further factor for it. BS 7671, 523.9, Appendix 4. */
export const insulationOnce = /* @__PURE__ */ statement({
  id: 'insulation-counted-once',
  title: 'Thermal insulation is counted once: in the reference method or by C_i',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '523.9, Appendix 4', provenance: 'memory' },
});

/** The third-harmonic content of a three-phase circuit is stated. BS 7671, 523.6.3, Appendix 4, 5.5. */
export const harmonicsStated = /* @__PURE__ */ statement({
  id: 'third-harmonic-stated',
  title: 'The third-harmonic content of the load is stated',
  weight: 'advice',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '523.6.3, Appendix 4, 5.5', provenance: 'memory' },
});
