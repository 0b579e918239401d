import type { AssumptionSet } from '../../installation/index.js';

const inAir = ['A', 'A1', 'A2', 'B', 'B1', 'B2', 'C', 'E', 'F', 'G', '100', '101', '102', '103'] as const;
const inGround = ['D', 'D1', 'D2'] as const;

/**
 * What is customary of an ordinary home in Great Britain and its new circuits: a design may begin by it, and is confirmed on
 * site before it is relied on.
 * @see ENA ER P23/1 and P25/1, both superseded, and common practice, as each entry says
 */
export const ordinaryHome: AssumptionSet = {
  format: 'assumptions/1',
  id: 'ordinary-home',
  title: 'An ordinary home in Great Britain',
  by: 'the authors of this library',
  entries: [
    {
      id: 'external-impedance-tn-c-s',
      fact: 'supply.externalImpedance',
      when: { 'supply.system': 'TN-C-S' },
      value: 0.35,
      source: {
        document: 'ENA ER P23/1',
        edition: '1991',
        clause: 'Table 1',
        provenance: 'two-sources',
        note: 'largest customary figure, never guaranteed, superseded by P23/2:2018',
      },
      confirm: 'Measure Z_e at the main switch, the earthing conductor disconnected, before anything is connected.',
    },
    {
      id: 'external-impedance-tn-s',
      fact: 'supply.externalImpedance',
      when: { 'supply.system': 'TN-S' },
      value: 0.8,
      source: {
        document: 'ENA ER P23/1',
        edition: '1991',
        clause: 'Table 1',
        provenance: 'two-sources',
        note: 'largest customary figure, never guaranteed, superseded by P23/2:2018',
      },
      confirm: 'Measure Z_e at the main switch, the earthing conductor disconnected, before anything is connected.',
    },
    {
      id: 'prospective-current',
      fact: 'supply.prospectiveCurrent',
      when: { 'supply.phases': 1 },
      value: 6000,
      source: {
        document: 'physics',
        provenance: 'common-practice',
        note: 'most homes are found well below it; the largest that a distributor declares for such supplies is 16 kA',
      },
      confirm: 'Measure the prospective fault current at the main switch, line to neutral and line to earth.',
    },
    {
      id: 'own-service',
      fact: 'supply.looped',
      value: false,
      source: { document: 'physics', provenance: 'common-practice' },
      confirm: 'Look for a second service cable at the cut-out, and ask the distributor whether the service is looped.',
    },
    {
      id: 'service-neutral',
      fact: 'supply.supplyNeutral',
      when: { 'supply.phases': 1 },
      value: 35,
      source: {
        document: 'physics',
        provenance: 'common-practice',
        note: 'service cables of cut-outs up to 100 A have neutrals up to 35 mm²',
      },
      confirm: 'Ask the distributor for the neutral of the service, or read it off the service cable.',
    },
    {
      id: 'earthing-conductor-above-ground',
      fact: 'supply.earthingConductorLaid',
      when: { 'supply.system': ['TN-C-S', 'TN-S'] },
      value: 'above-ground',
      source: { document: 'physics', provenance: 'common-practice' },
      confirm: 'Follow the earthing conductor from the main earthing terminal to the means of earthing.',
    },
    {
      id: 'tails-behind-the-cut-out-fuse',
      fact: 'supply.tailsFaultProtected',
      value: true,
      source: { document: 'physics', provenance: 'common-practice', note: 'tails of 25 mm² no longer than 3 m' },
      confirm: 'Measure the meter tails: 25 mm² no longer than 3 m, or what the distributor allows.',
    },
    {
      id: 'consumer-unit-16-ka',
      fact: 'board.conditionalRating',
      value: 16000,
      source: { document: 'BS EN 61439-3', clause: 'Annex ZB', provenance: 'memory' },
      confirm:
        'Read the conditional rating on the label of the consumer unit; its devices have to be those of its maker.',
    },
    {
      id: 'air-temperature',
      fact: 'stretch.ambient',
      when: { 'stretch.method': inAir },
      value: 30,
      source: { document: 'BS 7671', clause: 'Appendix 4, Table 4B1', provenance: 'two-sources' },
      confirm: 'Check that the cable passes no place that is warmer than 30 °C.',
    },
    {
      id: 'ground-temperature',
      fact: 'stretch.ambient',
      when: { 'stretch.method': inGround },
      value: 20,
      source: { document: 'BS 7671', clause: 'Appendix 4, Table 4B2', provenance: 'two-sources' },
      confirm: 'Check that no heat pipe or other cable warms the ground beside the trench.',
    },
    {
      id: 'soil-resistivity',
      fact: 'stretch.soilResistivity',
      when: { 'stretch.method': inGround },
      value: 2.5,
      source: { document: 'BS 7671', clause: 'Appendix 4, Table 4B3', provenance: 'memory' },
      confirm: 'Look at the soil of the trench: dry sand, rubble or ash is worse than 2.5 K·m/W.',
    },
    {
      id: 'runs-alone',
      fact: 'stretch.group',
      when: { 'run.existing': false },
      value: { arrangement: 'bunched', circuits: 1 },
      source: { document: 'physics', provenance: 'common-practice' },
      confirm: 'Keep the cable clear of other loaded cables along its whole way, or count them.',
    },
    {
      id: 'no-thermal-insulation',
      fact: 'stretch.insulated',
      when: { 'run.existing': false, 'stretch.method': inAir },
      value: 0,
      source: { document: 'physics', provenance: 'common-practice' },
      confirm: 'Check that thermal insulation touches the cable nowhere.',
    },
    {
      id: 'no-bath-or-shower',
      fact: 'run.bathOrShower',
      when: { 'run.existing': false },
      value: false,
      source: { document: 'physics', provenance: 'common-practice' },
      confirm: 'Check that the new cable passes no room with a bath or a shower.',
    },
    {
      id: 'terminals-70',
      fact: 'run.terminalTemperature',
      when: { 'run.existing': false },
      value: 70,
      source: {
        document: 'physics',
        provenance: 'common-practice',
        note: 'terminals of which the maker states nothing',
      },
      confirm: 'Read the makers’ instructions for the terminals at both ends.',
    },
    {
      id: 'new-device-6-ka',
      fact: 'device.breakingCapacity',
      when: { 'run.existing': false },
      value: 6000,
      source: { document: 'physics', provenance: 'common-practice', note: 'what is sold for consumer units' },
      confirm: 'Read the rated breaking capacity on the new device.',
    },
    {
      id: 'new-device-class-3',
      fact: 'device.energyClass',
      when: { 'run.existing': false },
      value: 3,
      source: { document: 'physics', provenance: 'common-practice', note: 'what is sold for consumer units' },
      confirm: 'Read the energy limiting class on the new device, the figure 3 in a square.',
    },
    {
      id: 'device-not-derated',
      fact: 'device.groupingFactor',
      when: { 'run.existing': false },
      value: 1,
      source: { document: 'physics', provenance: 'common-practice' },
      confirm: 'Leave a blank way beside the new device, or use the maker’s factor for continuous load.',
    },
    {
      id: 'standing-leakage',
      fact: 'chargePoint.standingLeakage',
      value: 0.0035,
      source: { document: 'physics', provenance: 'common-practice' },
      confirm: 'Read the protective conductor current in the maker’s data of the charge point.',
    },
  ],
};
