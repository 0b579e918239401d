import { type Provenance, type Source, stated } from '../../core/index.js';
import type { Assumption, AssumptionSet } from '../../installation/index.js';

const inAir = ['A', 'A1', 'A2', 'B', 'B1', 'B2', 'C', 'E', 'F', 'G', '100', '101', '102', '103'] as const;
const inGround = ['D', 'D1', 'D2'] as const;

const custom = (note?: string): Source => ({ document: 'physics', provenance: 'common-practice', ...stated({ note }) });
const p23 = (provenance: Provenance, note: string): Source => ({
  document: 'ENA ER P23/1',
  edition: '1991',
  clause: 'Table 1',
  provenance,
  note,
});

/** What is assumed, by name; common practice where nothing else is said of the source. */
const entries = (): Readonly<Record<string, Omit<Assumption, 'id' | 'source'> & Partial<Assumption>>> => ({
  'external-impedance-tn-c-s': {
    fact: 'supply.externalImpedance',
    when: { 'supply.system': 'TN-C-S' },
    value: 0.35,
    source: p23('two-sources', 'largest customary figure, never guaranteed, superseded by P23/2:2018'),
    confirm:
      'Measure Z_e at the main switch, the earthing conductor disconnected, before anything is connected; above 0.35 Ω measure it anew, and have the distributor confirm it.',
  },
  'external-impedance-tn-s': {
    fact: 'supply.externalImpedance',
    when: { 'supply.system': 'TN-S' },
    value: 0.8,
    source: p23('two-sources', 'largest customary figure, never guaranteed, superseded by P23/2:2018'),
    confirm:
      'Measure Z_e at the main switch, the earthing conductor disconnected, before anything is connected; above 0.8 Ω measure it anew, and have the distributor confirm it.',
  },
  'external-impedance-tt': {
    fact: 'supply.externalImpedance',
    // where a resistance of the electrode is stated, 200 Ω are not taken for it
    when: { 'supply.system': 'TT', 'supply.electrode': false },
    value: 221,
    source: p23(
      'one-source',
      '21 Ω without the electrode of the installation, and 200 Ω for it; superseded by P23/2:2018',
    ),
    confirm:
      'Measure Z_e at the main switch, the earthing conductor disconnected from bonding and metal that is in the ground.',
  },
  'electrode-tt': {
    fact: 'supply.electrode',
    when: { 'supply.system': 'TT' },
    value: { resistance: 200 },
    source: {
      document: 'BS 7671',
      clause: 'Table 41.5, note 2',
      provenance: 'two-sources',
      note: 'the largest resistance that is taken for stable',
    },
    confirm: 'Measure the electrode alone, disconnected from the installation: at most 200 Ω.',
  },
  'earthing-conductor-tt': {
    fact: 'supply.earthingConductor',
    when: { 'supply.system': 'TT' },
    value: 16,
    confirm: 'Read the size of the earthing conductor to the electrode: 16 mm².',
  },
  'earthing-conductor-buried': {
    fact: 'supply.earthingConductorLaid',
    when: { 'supply.system': 'TT' },
    value: 'buried-against-corrosion',
    confirm: 'Follow the earthing conductor to the electrode: sheathed where it is buried, and its clamp within reach.',
  },
  'prospective-current': {
    fact: 'supply.prospectiveCurrent',
    when: { 'supply.phases': 1 },
    value: 6000,
    source: custom(
      'most homes are found well below it; the largest that a distributor declares for such supplies is 16 kA',
    ),
    confirm: 'Measure the prospective fault current at the main switch, line to neutral and line to earth.',
  },
  'prospective-current-three-phase': {
    fact: 'supply.prospectiveCurrent',
    when: { 'supply.phases': 3 },
    value: 6000,
    source: custom('services of homes, between the lines; the distributor states the figure with a new supply'),
    confirm:
      'Measure the prospective fault current at the main switch: between lines, line to neutral and line to earth.',
  },
  'own-service': {
    fact: 'supply.looped',
    value: false,
    confirm: 'Look for a second service cable at the cut-out, and ask the distributor whether the service is looped.',
  },
  'service-neutral': {
    fact: 'supply.supplyNeutral',
    value: 35,
    source: custom('service cables of cut-outs up to 100 A have neutrals up to 35 mm²'),
    confirm: 'Ask the distributor for the neutral of the service, or read it off the service cable.',
  },
  'earthing-conductor-above-ground': {
    fact: 'supply.earthingConductorLaid',
    when: { 'supply.system': ['TN-C-S', 'TN-S'] },
    value: 'above-ground',
    confirm: 'Follow the earthing conductor from the main earthing terminal to the means of earthing.',
  },
  'tails-behind-the-cut-out-fuse': {
    fact: 'supply.tailsFaultProtected',
    value: true,
    source: custom('tails of 25 mm² no longer than 3 m'),
    confirm: 'Measure the meter tails: 25 mm² no longer than 3 m, or what the distributor allows.',
  },
  'tails-25': {
    fact: 'supply.tails',
    value: 25,
    confirm: 'Read the size off the meter tails, or compare them with a sample: 25 mm².',
  },
  'earthing-conductor-16': {
    fact: 'supply.earthingConductor',
    when: { 'supply.system': ['TN-C-S', 'TN-S'] },
    value: 16,
    confirm: 'Read the size of the earthing conductor: 16 mm².',
  },
  'bonding-10': {
    fact: 'bonded.area',
    value: 10,
    confirm:
      'Look for every metal service and structure that comes in, and read the size of its bonding conductor at the clamp: 10 mm² each.',
  },
  'main-switch-100': {
    fact: 'board.mainSwitch',
    value: { rating: 100 },
    confirm: 'Read the rated current on the main switch.',
  },
  'main-switch-rating-100': {
    fact: 'mainSwitch.rating',
    value: 100,
    confirm: 'Read the rated current on the main switch.',
  },
  'no-fuse-ahead': {
    fact: 'mainSwitch.noFuseAhead',
    value: true,
    confirm:
      'Look along the tails to the board, and where a feeder comes to a board: no switch-fuse stands ahead of its main switch.',
  },
  'on-a-way-of-its-board': {
    fact: 'run.fromTails',
    when: { 'run.existing': true },
    value: false,
    confirm: 'Look whether each circuit that is there leaves a way of its board, and none the tails ahead of it.',
  },
  'joints-within-reach': {
    fact: 'run.jointsAccessible',
    value: true,
    confirm: 'Follow the cable that is there from the board to its end: no joint but such as can be got at.',
  },
  'board-100': {
    fact: 'board.rating',
    value: 100,
    confirm: 'Read the rated current off the consumer unit, or off its main switch where it has no other marking.',
  },
  'no-device-ahead': {
    fact: 'board.noResidual',
    value: true,
    confirm: 'Look which residual current devices of the board serve the new circuit: none but its own.',
  },
  'no-device-inside': {
    fact: 'chargePoint.noResidual',
    value: true,
    confirm: 'Read in the maker’s data which residual current device the charge point has inside.',
  },
  'one-spare-way': {
    fact: 'board.spareWays',
    value: 1,
    confirm: 'Open the lid of the consumer unit and count the blanks; without one, a new enclosure is added.',
  },
  'surge-protection': {
    fact: 'board.surgeProtection',
    value: true,
    confirm: 'Look for a surge protective device in the consumer unit; without one, one is fitted with the work.',
  },
  'consumer-unit-16-ka': {
    fact: 'board.conditionalRating',
    value: 16000,
    source: { document: 'BS EN 61439-3', clause: 'Annex ZB', provenance: 'memory' },
    confirm:
      'Read the conditional rating on the label of the consumer unit; its devices have to be those of its maker.',
  },
  'air-temperature': {
    fact: 'stretch.ambient',
    when: { 'stretch.method': inAir },
    value: 30,
    source: { document: 'BS 7671', clause: 'Appendix 4, Table 4B1', provenance: 'two-sources' },
    confirm: 'Check that the cable passes no place that is warmer than 30 °C.',
  },
  'ground-temperature': {
    fact: 'stretch.ambient',
    when: { 'stretch.method': inGround },
    value: 20,
    source: { document: 'BS 7671', clause: 'Appendix 4, Table 4B2', provenance: 'two-sources' },
    confirm: 'Check that no heat pipe or other cable warms the ground beside the trench.',
  },
  'depth-in-the-ground': {
    fact: 'stretch.depth',
    when: { 'stretch.method': inGround },
    value: 0.6,
    confirm: 'Measure the depth before the trench is filled: 0.45 m to 0.8 m.',
  },
  'soil-resistivity': {
    fact: 'stretch.soilResistivity',
    when: { 'stretch.method': inGround },
    value: 2.5,
    source: { document: 'BS 7671', clause: 'Appendix 4, Table 4B3', provenance: 'memory' },
    confirm: 'Look at the soil of the trench: dry sand, rubble or ash is worse than 2.5 K·m/W.',
  },
  'runs-alone': {
    fact: 'stretch.group',
    when: { 'run.existing': false },
    value: { arrangement: 'bunched', circuits: 1 },
    confirm: 'Keep the cable clear of other loaded cables along its whole way, or count them.',
  },
  'no-other-circuits': {
    fact: 'group.circuits',
    when: { 'run.existing': false },
    value: 1,
    confirm: 'Keep the cable clear of other loaded cables along its whole way, or count them.',
  },
  'no-thermal-insulation': {
    fact: 'stretch.insulated',
    when: { 'run.existing': false, 'stretch.method': inAir },
    value: 0,
    confirm: 'Check that thermal insulation touches the cable nowhere.',
  },
  'no-bath-or-shower': {
    fact: 'run.bathOrShower',
    when: { 'run.existing': false },
    value: false,
    confirm: 'Check that the new cable passes no room with a bath or a shower.',
  },
  'terminals-70': {
    fact: 'run.terminalTemperature',
    when: { 'run.existing': false },
    value: 70,
    source: custom('terminals of which the maker states nothing'),
    confirm: 'Read the makers’ instructions for the terminals at both ends.',
  },
  'third-harmonics-15': {
    fact: 'run.thirdHarmonic',
    when: { 'run.existing': false, 'supply.phases': 3 },
    value: 0.15,
    source: {
      document: 'IEC 61000-3-2',
      clause: 'Table 1',
      provenance: 'one-source',
      note: '2.3 A of equipment of 16 A a line, 14.4 %; that larger vehicles are found below 15 % is common practice, no source',
    },
    confirm:
      'Ask the maker of the charge point, or of the car, for the third harmonic at full charge: at most 15 % of the line current.',
  },
  'selective-without-set-delay': {
    fact: 'residual.delayTime',
    when: { 'residual.delay': 'selective' },
    value: 0,
    source: { document: 'physics', provenance: 'common-practice', note: 'what is sold for consumer units' },
    confirm: 'Look whether a delay can be set on the residual current device; on one for a consumer unit none can.',
  },
  'new-device-6-ka': {
    fact: 'device.breakingCapacity',
    when: { 'run.existing': false },
    value: 6000,
    source: custom('what is sold for consumer units'),
    confirm: 'Read the rated breaking capacity on the new device.',
  },
  'new-device-class-3': {
    fact: 'device.energyClass',
    when: { 'run.existing': false },
    value: 3,
    source: custom('what is sold for consumer units'),
    confirm: 'Read the energy limiting class on the new device, the figure 3 in a square.',
  },
  'device-not-derated': {
    fact: 'device.groupingFactor',
    when: { 'run.existing': false },
    value: 1,
    confirm: 'Leave a blank way beside the new device, or use the maker’s factor for continuous load.',
  },
  'largest-half-hour-45': {
    fact: 'supply.meteredDemand',
    when: { 'supply.phases': 1 },
    value: { current: 45, about: 'customary: largest half hour of a year of an ordinary home' },
    source: custom(
      'half hours of homes without electric heating mostly stay below it; it is taken only where an estimate of the demand stands in the way',
    ),
    confirm:
      'Read the half hours of a whole year from the smart meter, or log a week of the coldest season, before anything is installed.',
  },
  'limiter-keeps-the-fuse': {
    fact: 'control.keepsFuse',
    value: true,
    source: custom('limiters are sold to be set to the rating of the fuse ahead of them'),
    confirm:
      'Read in the instructions of the limiter for which fuse it is made, to what part of its rating it is set, and within what time it makes room.',
  },
  'standing-leakage': {
    fact: 'chargePoint.standingLeakage',
    value: 0.0035,
    confirm: 'Read the protective conductor current in the maker’s data of the charge point.',
  },
});

/**
 * What is customary of an ordinary home in Great Britain and its new circuits: a design may begin by it, and is confirmed on
 * site before it is relied on.
 * @see ENA ER P23/1 and P25/1, both superseded, and common practice, as each entry says
 */
export const ordinaryHome: AssumptionSet = /* @__PURE__ */ (() => ({
  format: 'assumptions/1' as const,
  id: 'ordinary-home',
  title: 'An ordinary home in Great Britain',
  by: 'the authors of this library',
  entries: Object.entries(entries()).map(([id, { source = custom(), confirm, ...entry }]) => ({
    id,
    ...entry,
    source,
    confirm,
  })),
}))();
