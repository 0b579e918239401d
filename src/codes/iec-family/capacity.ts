import { formula, moving, multiplied, rule } from '../../core/index.js';

/** Current-carrying capacity as installed, from the tabulated one and its factors. IEC 60364-5-52 Annex B. */
export const capacityAsInstalled = /* @__PURE__ */ formula({
  id: 'capacity-as-installed',
  title: 'Current-carrying capacity as installed',
  inputs: ['tabulatedCapacity', 'ambientFactor', 'groupFactor', 'insulationFactor', 'soilFactor'],
  output: 'capacity',
  expression: 'tabulatedCapacity * ambientFactor * groupFactor * insulationFactor * soilFactor',
  direction: { tabulatedCapacity: 1, ambientFactor: 1, groupFactor: 1, insulationFactor: 1, soilFactor: 1 },
  compute: ({ tabulatedCapacity, ambientFactor, groupFactor, insulationFactor, soilFactor }) =>
    tabulatedCapacity * ambientFactor * groupFactor * insulationFactor * soilFactor,
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Annex B', provenance: 'memory' },
});

/** Tabulated capacity of conductors in parallel that share the load equally. IEC 60364-5-52 523.7. */
export const capacityInParallel = /* @__PURE__ */ multiplied({
  id: 'capacity-in-parallel',
  title: 'Tabulated capacity of conductors in parallel',
  times: ['tabulatedCapacity', 'parallelConductors'],
  output: 'tabulatedCapacity',
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: '523.7', provenance: 'memory' },
});

/** Tabulated capacity required behind a device that protects against overload, alone or overloaded together. IEC 60364-4-43 433.1. */
export const requiredForOverload = /* @__PURE__ */ multiplied({
  id: 'required-capacity-overload',
  title: 'Tabulated capacity required for overload protection',
  times: ['deviceRating'],
  over: ['ambientFactor', 'groupFactor', 'insulationFactor', 'soilFactor', 'fuseFactor', 'deviceFactor'],
  output: 'requiredCapacity',
  source: {
    document: 'IEC 60364-4-43',
    edition: '2008',
    clause: '433.1',
    provenance: 'derived',
    note: 'I_n <= I_z, solved for the tabulated capacity',
  },
});

/** Share of the tabulated capacity that is required: where it is largest, a section governs. Definition. */
export const capacityUseOf = /* @__PURE__ */ multiplied({
  id: 'capacity-use',
  title: 'Share of the capacity that is required',
  times: ['requiredCapacity'],
  over: ['tabulatedCapacity'],
  output: 'capacityUse',
  source: { document: 'Definition', provenance: 'definition' },
});

/** Conventional operating current from the rated current. Product standards. */
export const conventionalCurrentOf = /* @__PURE__ */ multiplied({
  id: 'conventional-operating-current',
  title: 'Conventional operating current of the device',
  times: ['deviceRating', 'conventionalMultiple'],
  output: 'conventionalOperatingCurrent',
  source: { document: 'Product standards', clause: 'conventional currents', provenance: 'two-sources' },
});

/** Largest conventional operating current that the cable allows. IEC 60364-4-43 433.1. */
export const overloadLimitOf = /* @__PURE__ */ moving({
  id: 'overload-limit',
  title: 'Largest conventional operating current that the cable allows',
  moves: { capacity: 1 },
  output: 'overloadLimit',
  expression: '1.45 * capacity',
  compute: ({ capacity }) => 1.45 * capacity,
  source: { document: 'IEC 60364-4-43', edition: '2008', clause: '433.1', provenance: 'memory' },
});

/** Rated current that a grouped, continuously loaded device may carry, by its maker's factor. Maker's data. */
export const deviceShareOf = /* @__PURE__ */ multiplied({
  id: 'grouped-device-rating',
  title: 'Rated current of a grouped, continuously loaded device',
  times: ['deviceRating', 'deviceGroupFactor'],
  output: 'deviceShare',
  source: { document: "Maker's data", provenance: 'definition', note: 'the factor is an input' },
});

/** Factor for a bunch of circuits of unequal size. IEC 60364-5-52 B.52.5. */
export const unequalGroupFactor = /* @__PURE__ */ moving({
  id: 'unequal-group-factor',
  title: 'Grouping factor for circuits of unequal size',
  moves: { groupedCircuits: -1 },
  output: 'groupFactor',
  expression: '1 / sqrt(groupedCircuits)',
  compute: ({ groupedCircuits }) => 1 / Math.sqrt(groupedCircuits),
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'B.52.5', provenance: 'one-source' },
});

/** Grouping factor together with the one for more than four loaded cores. IEC 60364-5-52 Annex B. */
export const groupWithCores = /* @__PURE__ */ multiplied({
  id: 'group-factor-with-cores',
  title: 'Grouping factor together with the one for loaded cores',
  times: ['groupFactor', 'coresFactor'],
  output: 'groupFactor',
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Annex B', provenance: 'memory' },
});

/** Current of the neutral due to third harmonics, which add up in it. IEC 60364-5-52 Annex E. */
export const neutralOfThirdHarmonics = /* @__PURE__ */ moving({
  id: 'neutral-of-third-harmonics',
  title: 'Current of the neutral due to third harmonics of balanced lines',
  moves: { designCurrent: 1, thirdHarmonic: 1 },
  output: 'harmonicNeutralCurrent',
  expression: '3 * thirdHarmonic * designCurrent',
  compute: ({ designCurrent, thirdHarmonic }) => 3 * thirdHarmonic * designCurrent,
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Annex E', provenance: 'memory' },
});

/** Current from which a four-core cable is chosen where its lines decide. IEC 60364-5-52 Table E.52.1. */
export const harmonicCurrentOfLine = /* @__PURE__ */ multiplied({
  id: 'harmonic-current-line',
  title: 'Design current with third harmonics, by the line conductors',
  times: ['designCurrent'],
  over: ['harmonicFactor'],
  output: 'harmonicCurrent',
  source: {
    document: 'IEC 60364-5-52',
    edition: '2009',
    clause: 'Annex E',
    provenance: 'memory',
    note: 'balanced lines, neutral of the same size in the same cable',
  },
});

/** Current from which a four-core cable is chosen where its neutral decides. IEC 60364-5-52 Table E.52.1. */
export const harmonicCurrentOfNeutral = /* @__PURE__ */ multiplied({
  id: 'harmonic-current-neutral',
  title: 'Design current with third harmonics, by the neutral conductor',
  times: ['harmonicNeutralCurrent'],
  over: ['harmonicFactor'],
  output: 'harmonicCurrent',
  source: {
    document: 'IEC 60364-5-52',
    edition: '2009',
    clause: 'Annex E',
    provenance: 'memory',
    note: 'balanced lines, neutral of the same size in the same cable',
  },
});

/** I_b <= k I_n for grouped devices. Maker's data, factor for devices side by side. */
export const groupedDevice = /* @__PURE__ */ rule({
  id: 'grouped-device',
  title: 'The device carries its load continuously beside its neighbours',
  of: ['deviceShare', 'at-least', 'designCurrent'],
  source: { document: "Maker's data", clause: 'factor for devices side by side', provenance: 'definition' },
});
