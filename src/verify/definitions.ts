import * as chargingControlReaction from '../charging/control/reaction.js';
import * as chargingPilotOfferedCurrent from '../charging/pilot/offered-current.js';
import type { Check, Formula, Procedure, Relation, Table } from '../core/index.js';
import * as demandAdequacyChecks from '../demand/adequacy-checks.js';
import * as demandFormulas from '../demand/formulas.js';
import * as demandManyCoincidence from '../demand/many/coincidence.js';
import * as demandManyFormulas from '../demand/many/formulas.js';
import * as demandMounting from '../demand/mounting.js';
import * as physicsAdiabatic from '../physics/adiabatic.js';
import * as physicsEarthingConductor from '../physics/earthing-conductor.js';
import * as physicsElectrodes from '../physics/electrodes.js';
import * as physicsFaultCurrent from '../physics/fault-current.js';
import * as physicsFourWireNetwork from '../physics/four-wire-network.js';
import * as physicsLoop from '../physics/loop.js';
import * as physicsLostPenNetwork from '../physics/lost-pen-network.js';
import * as physicsOpenPen from '../physics/open-pen.js';
import * as physicsRing from '../physics/ring.js';
import * as physicsShortCircuit from '../physics/short-circuit.js';
import * as physicsTimeCurrent from '../physics/time-current.js';
import * as physicsVoltageDrop from '../physics/voltage-drop.js';
import * as siteFormulas from '../site/formulas.js';
import * as siteTablesLabour from '../site/tables/labour.js';
import * as approvedDocumentMHeights from '../standards/approved-document-m/heights.js';
import * as bs88ConventionalCurrents from '../standards/bs88/conventional-currents.js';
import * as bs88GgGates from '../standards/bs88/gg-gates.js';
import * as bs88GgLoopTesting from '../standards/bs88/gg-loop-testing.js';
import * as bs88GgPreArcing from '../standards/bs88/gg-pre-arcing.js';
import * as bs1361ConventionalCurrents from '../standards/bs1361/conventional-currents.js';
import * as bs1362OperatingWindows from '../standards/bs1362/operating-windows.js';
import * as bs3871InstantaneousBands from '../standards/bs3871/instantaneous-bands.js';
import * as bs5467Armour from '../standards/bs5467/armour.js';
import * as bs6004ProtectiveConductors from '../standards/bs6004/protective-conductors.js';
import * as bs7430SoilResistivity from '../standards/bs7430/soil-resistivity.js';
import * as bs7671EarthingChecks from '../standards/bs7671/earthing-checks.js';
import * as bs7671ResidualChecks from '../standards/bs7671/residual-checks.js';
import * as bs7671RulesArcDetection from '../standards/bs7671/rules/arc-detection.js';
import * as bs7671RulesEarthingAndBonding from '../standards/bs7671/rules/earthing-and-bonding.js';
import * as bs7671RulesSurgeProtection from '../standards/bs7671/rules/surge-protection.js';
import * as bs7671Tables4b1 from '../standards/bs7671/tables/4b1.js';
import * as bs7671Tables4b2 from '../standards/bs7671/tables/4b2.js';
import * as bs7671Tables4b3 from '../standards/bs7671/tables/4b3.js';
import * as bs7671Tables4c1 from '../standards/bs7671/tables/4c1.js';
import * as bs7671Tables4c2 from '../standards/bs7671/tables/4c2.js';
import * as bs7671Tables4c3 from '../standards/bs7671/tables/4c3.js';
import * as bs7671Tables4c4 from '../standards/bs7671/tables/4c4.js';
import * as bs7671Tables4c5 from '../standards/bs7671/tables/4c5.js';
import * as bs7671Tables4d1a from '../standards/bs7671/tables/4d1a.js';
import * as bs7671Tables4d1b from '../standards/bs7671/tables/4d1b.js';
import * as bs7671Tables4d2a from '../standards/bs7671/tables/4d2a.js';
import * as bs7671Tables4d2b from '../standards/bs7671/tables/4d2b.js';
import * as bs7671Tables4d4a from '../standards/bs7671/tables/4d4a.js';
import * as bs7671Tables4d4b from '../standards/bs7671/tables/4d4b.js';
import * as bs7671Tables4d5 from '../standards/bs7671/tables/4d5.js';
import * as bs7671Tables4e1a from '../standards/bs7671/tables/4e1a.js';
import * as bs7671Tables4e1b from '../standards/bs7671/tables/4e1b.js';
import * as bs7671Tables4e2a from '../standards/bs7671/tables/4e2a.js';
import * as bs7671Tables4e2b from '../standards/bs7671/tables/4e2b.js';
import * as bs7671Tables4e4a from '../standards/bs7671/tables/4e4a.js';
import * as bs7671Tables4e4b from '../standards/bs7671/tables/4e4b.js';
import * as bs7671Tables4fAmbient from '../standards/bs7671/tables/4f-ambient.js';
import * as bs7671Tables4fDrum from '../standards/bs7671/tables/4f-drum.js';
import * as bs7671Tables4f1a from '../standards/bs7671/tables/4f1a.js';
import * as bs7671Tables4f2a from '../standards/bs7671/tables/4f2a.js';
import * as bs7671Tables4f2b from '../standards/bs7671/tables/4f2b.js';
import * as bs7671Tables4f3a from '../standards/bs7671/tables/4f3a.js';
import * as bs7671Tables4f3b from '../standards/bs7671/tables/4f3b.js';
import * as bs7671Tables4j4a from '../standards/bs7671/tables/4j4a.js';
import * as bs7671Tables4j4b from '../standards/bs7671/tables/4j4b.js';
import * as bs7671Tables411 from '../standards/bs7671/tables/41-1.js';
import * as bs7671Tables412 from '../standards/bs7671/tables/41-2.js';
import * as bs7671Tables413 from '../standards/bs7671/tables/41-3.js';
import * as bs7671Tables414 from '../standards/bs7671/tables/41-4.js';
import * as bs7671Tables416 from '../standards/bs7671/tables/41-6.js';
import * as bs7671Tables431 from '../standards/bs7671/tables/43-1.js';
import * as bs7671Tables522 from '../standards/bs7671/tables/52-2.js';
import * as bs7671Tables541 from '../standards/bs7671/tables/54-1.js';
import * as bs7671Tables542 from '../standards/bs7671/tables/54-2.js';
import * as bs7671Tables543 from '../standards/bs7671/tables/54-3.js';
import * as bs7671Tables544 from '../standards/bs7671/tables/54-4.js';
import * as bs7671Tables545 from '../standards/bs7671/tables/54-5.js';
import * as bs7671Tables546 from '../standards/bs7671/tables/54-6.js';
import * as bs7671Tables548 from '../standards/bs7671/tables/54-8.js';
import * as bs7671Tables64 from '../standards/bs7671/tables/64.js';
import * as bs7671Tables41132 from '../standards/bs7671/tables/411-3-2.js';
import * as bs7671Tables722Separation from '../standards/bs7671/tables/722-separation.js';
import * as bs7671Tables722TouchVoltage from '../standards/bs7671/tables/722-touch-voltage.js';
import * as bs7671Tables722Window from '../standards/bs7671/tables/722-window.js';
import * as bs7671TablesFuseOperatingCurrents from '../standards/bs7671/tables/fuse-operating-currents.js';
import * as bs7671TablesRatedCurrents from '../standards/bs7671/tables/rated-currents.js';
import * as chargingCodeOfPracticeHeights from '../standards/charging-code-of-practice/heights.js';
import * as deNetworkConnectionChecks from '../standards/de-network/connection-checks.js';
import * as deNetworkUnbalance from '../standards/de-network/unbalance.js';
import * as din18015BuildingLoad from '../standards/din18015/building-load.js';
import * as en60898EnergyLimitingClasses from '../standards/en60898/energy-limiting-classes.js';
import * as en60898InstantaneousBands from '../standards/en60898/instantaneous-bands.js';
import * as en60898ServiceCapacities from '../standards/en60898/service-capacities.js';
import * as en60898TestCurrents from '../standards/en60898/test-currents.js';
import * as en61008BreakTimes from '../standards/en61008/break-times.js';
import * as en61008NonActuatingTimes from '../standards/en61008/non-actuating-times.js';
import * as en61008OperatingBands from '../standards/en61008/operating-bands.js';
import * as en61008SmoothCurrent from '../standards/en61008/smooth-current.js';
import * as frAccessibilityHeights from '../standards/fr-accessibility/heights.js';
import * as gbNetworkConnectionChecks from '../standards/gb-network/connection-checks.js';
import * as gbNetworkExternalImpedance from '../standards/gb-network/external-impedance.js';
import * as gbNetworkMeterPoint from '../standards/gb-network/meter-point.js';
import * as gbNetworkMeterTails from '../standards/gb-network/meter-tails.js';
import * as gbNetworkProspectiveCurrents from '../standards/gb-network/prospective-currents.js';
import * as gbNetworkServiceFuses from '../standards/gb-network/service-fuses.js';
import * as gbNetworkTransformers from '../standards/gb-network/transformers.js';
import * as gbSmartChargingPeakHours from '../standards/gb-smart-charging/peak-hours.js';
import * as gbSmartChargingStartDelay from '../standards/gb-smart-charging/start-delay.js';
import * as iecFamilyBreakingCapacity from '../standards/iec-family/breaking-capacity.js';
import * as iecFamilyCapacity from '../standards/iec-family/capacity.js';
import * as iecFamilyConductorSize from '../standards/iec-family/conductor-size.js';
import * as iecFamilyConductorTemperature from '../standards/iec-family/conductor-temperature.js';
import * as iecFamilyDisconnectionChecks from '../standards/iec-family/disconnection-checks.js';
import * as iecFamilyLineWithstand from '../standards/iec-family/line-withstand.js';
import * as iecFamilyMeasuredLoop from '../standards/iec-family/measured-loop.js';
import * as iecFamilyProtectiveConductor from '../standards/iec-family/protective-conductor.js';
import * as iecFamilyVoltageDrop from '../standards/iec-family/voltage-drop.js';
import * as iec60228ConductorResistance from '../standards/iec60228/conductor-resistance.js';
import * as iec60364AnnexD from '../standards/iec60364/annex-d.js';
import * as iec60364TablesB522 from '../standards/iec60364/tables/b52-2.js';
import * as iec60364TablesB523 from '../standards/iec60364/tables/b52-3.js';
import * as iec60364TablesB524 from '../standards/iec60364/tables/b52-4.js';
import * as iec60364TablesB525 from '../standards/iec60364/tables/b52-5.js';
import * as iec60364TablesB5210 from '../standards/iec60364/tables/b52-10.js';
import * as iec60364TablesB5211 from '../standards/iec60364/tables/b52-11.js';
import * as iec60364TablesB5212 from '../standards/iec60364/tables/b52-12.js';
import * as iec60364TablesB5213 from '../standards/iec60364/tables/b52-13.js';
import * as iec60364TablesB5214 from '../standards/iec60364/tables/b52-14.js';
import * as iec60364TablesB5215 from '../standards/iec60364/tables/b52-15.js';
import * as iec60364TablesB5216 from '../standards/iec60364/tables/b52-16.js';
import * as iec60364TablesB5217 from '../standards/iec60364/tables/b52-17.js';
import * as iec60364TablesB5218 from '../standards/iec60364/tables/b52-18.js';
import * as iec60364TablesB5219 from '../standards/iec60364/tables/b52-19.js';
import * as iec60364TablesB5220 from '../standards/iec60364/tables/b52-20.js';
import * as iec60364TablesB5221 from '../standards/iec60364/tables/b52-21.js';
import * as iec60364TablesD521 from '../standards/iec60364/tables/d52-1.js';
import * as iec60909VoltageFactors from '../standards/iec60909/voltage-factors.js';
import * as iec60949MaterialConstants from '../standards/iec60949/material-constants.js';
import * as iec61439RatedDiversity from '../standards/iec61439/rated-diversity.js';
import * as iec61851PilotDutyCycle from '../standards/iec61851/pilot-duty-cycle.js';
import * as iec61851PilotStates from '../standards/iec61851/pilot-states.js';
import * as iec61851Timing from '../standards/iec61851/timing.js';
import * as iec62196CableCoding from '../standards/iec62196/cable-coding.js';
import * as iec62955BreakTimes from '../standards/iec62955/break-times.js';
import * as nfc14100RiserSimultaneity from '../standards/nfc14100/riser-simultaneity.js';
import * as onSiteGuide727 from '../standards/on-site-guide/7-2-7.js';
import * as onSiteGuideA2 from '../standards/on-site-guide/a2.js';
import * as onSiteGuideB7 from '../standards/on-site-guide/b7.js';
import * as onSiteGuideI1 from '../standards/on-site-guide/i1.js';
import * as onSiteGuideI2 from '../standards/on-site-guide/i2.js';
import * as onSiteGuideI3 from '../standards/on-site-guide/i3.js';
import * as pas1899Heights from '../standards/pas1899/heights.js';
import * as vde0298Tables4ManyCores from '../standards/vde0298/tables/4-many-cores.js';

/** What a sheet may quote. */
export type Definition = Formula | Relation | Procedure | Table | Check;

const checkKinds: readonly unknown[] = ['at-most', 'at-least', 'within', 'one-of', 'holds', 'any-of'];

/**
 * Whether a value is a formula, a relation, a procedure, a table or a check.
 * @param value whatever a module exports
 */
export function isDefinition(value: unknown): value is Definition {
  if ((typeof value !== 'object' && typeof value !== 'function') || value === null) return false;
  const { kind, id, title, source } = value as { kind?: unknown; id?: unknown; title?: unknown; source?: unknown };
  if (typeof id !== 'string' || typeof title !== 'string' || typeof source !== 'object') return false;
  return typeof value === 'function'
    ? kind === 'formula' || kind === 'relation' || kind === 'procedure'
    : kind === 'table' || checkKinds.includes(kind);
}

// The list is written by `npm run definitions` from what the modules export.
const modules: readonly object[] = [
  chargingControlReaction,
  chargingPilotOfferedCurrent,
  demandAdequacyChecks,
  demandFormulas,
  demandManyCoincidence,
  demandManyFormulas,
  demandMounting,
  physicsAdiabatic,
  physicsEarthingConductor,
  physicsElectrodes,
  physicsFaultCurrent,
  physicsFourWireNetwork,
  physicsLoop,
  physicsLostPenNetwork,
  physicsOpenPen,
  physicsRing,
  physicsShortCircuit,
  physicsTimeCurrent,
  physicsVoltageDrop,
  siteFormulas,
  siteTablesLabour,
  approvedDocumentMHeights,
  bs1361ConventionalCurrents,
  bs1362OperatingWindows,
  bs3871InstantaneousBands,
  bs5467Armour,
  bs6004ProtectiveConductors,
  bs7430SoilResistivity,
  bs7671EarthingChecks,
  bs7671ResidualChecks,
  bs7671RulesArcDetection,
  bs7671RulesEarthingAndBonding,
  bs7671RulesSurgeProtection,
  bs7671Tables411,
  bs7671Tables412,
  bs7671Tables413,
  bs7671Tables414,
  bs7671Tables416,
  bs7671Tables41132,
  bs7671Tables431,
  bs7671Tables4b1,
  bs7671Tables4b2,
  bs7671Tables4b3,
  bs7671Tables4c1,
  bs7671Tables4c2,
  bs7671Tables4c3,
  bs7671Tables4c4,
  bs7671Tables4c5,
  bs7671Tables4d1a,
  bs7671Tables4d1b,
  bs7671Tables4d2a,
  bs7671Tables4d2b,
  bs7671Tables4d4a,
  bs7671Tables4d4b,
  bs7671Tables4d5,
  bs7671Tables4e1a,
  bs7671Tables4e1b,
  bs7671Tables4e2a,
  bs7671Tables4e2b,
  bs7671Tables4e4a,
  bs7671Tables4e4b,
  bs7671Tables4fAmbient,
  bs7671Tables4fDrum,
  bs7671Tables4f1a,
  bs7671Tables4f2a,
  bs7671Tables4f2b,
  bs7671Tables4f3a,
  bs7671Tables4f3b,
  bs7671Tables4j4a,
  bs7671Tables4j4b,
  bs7671Tables522,
  bs7671Tables541,
  bs7671Tables542,
  bs7671Tables543,
  bs7671Tables544,
  bs7671Tables545,
  bs7671Tables546,
  bs7671Tables548,
  bs7671Tables64,
  bs7671Tables722Separation,
  bs7671Tables722TouchVoltage,
  bs7671Tables722Window,
  bs7671TablesFuseOperatingCurrents,
  bs7671TablesRatedCurrents,
  bs88ConventionalCurrents,
  bs88GgGates,
  bs88GgLoopTesting,
  bs88GgPreArcing,
  chargingCodeOfPracticeHeights,
  deNetworkConnectionChecks,
  deNetworkUnbalance,
  din18015BuildingLoad,
  en60898EnergyLimitingClasses,
  en60898InstantaneousBands,
  en60898ServiceCapacities,
  en60898TestCurrents,
  en61008BreakTimes,
  en61008NonActuatingTimes,
  en61008OperatingBands,
  en61008SmoothCurrent,
  frAccessibilityHeights,
  gbNetworkConnectionChecks,
  gbNetworkExternalImpedance,
  gbNetworkMeterPoint,
  gbNetworkMeterTails,
  gbNetworkProspectiveCurrents,
  gbNetworkServiceFuses,
  gbNetworkTransformers,
  gbSmartChargingPeakHours,
  gbSmartChargingStartDelay,
  iecFamilyBreakingCapacity,
  iecFamilyCapacity,
  iecFamilyConductorSize,
  iecFamilyConductorTemperature,
  iecFamilyDisconnectionChecks,
  iecFamilyLineWithstand,
  iecFamilyMeasuredLoop,
  iecFamilyProtectiveConductor,
  iecFamilyVoltageDrop,
  iec60228ConductorResistance,
  iec60364AnnexD,
  iec60364TablesB5210,
  iec60364TablesB5211,
  iec60364TablesB5212,
  iec60364TablesB5213,
  iec60364TablesB5214,
  iec60364TablesB5215,
  iec60364TablesB5216,
  iec60364TablesB5217,
  iec60364TablesB5218,
  iec60364TablesB5219,
  iec60364TablesB522,
  iec60364TablesB5220,
  iec60364TablesB5221,
  iec60364TablesB523,
  iec60364TablesB524,
  iec60364TablesB525,
  iec60364TablesD521,
  iec60909VoltageFactors,
  iec60949MaterialConstants,
  iec61439RatedDiversity,
  iec61851PilotDutyCycle,
  iec61851PilotStates,
  iec61851Timing,
  iec62196CableCoding,
  iec62955BreakTimes,
  nfc14100RiserSimultaneity,
  onSiteGuide727,
  onSiteGuideA2,
  onSiteGuideB7,
  onSiteGuideI1,
  onSiteGuideI2,
  onSiteGuideI3,
  pas1899Heights,
  vde0298Tables4ManyCores,
];

/** Definitions by kind. */
export interface Definitions {
  /** Formulas and relations. */
  readonly formulas: readonly (Formula | Relation)[];
  /** Procedures. */
  readonly procedures: readonly Procedure[];
  /** Tables. */
  readonly tables: readonly Table[];
  /** Checks. */
  readonly checks: readonly Check[];
}

/**
 * Sorts definitions by their kind, each once.
 * @param all definitions
 */
export function sortDefinitions(all: readonly Definition[]): Definitions {
  const once = [...new Set(all)];
  const of = <T>(...kinds: readonly unknown[]) => once.filter((d) => kinds.includes(d.kind)) as unknown as readonly T[];
  return {
    formulas: of('formula', 'relation'),
    procedures: of('procedure'),
    tables: of('table'),
    checks: of(...checkKinds),
  };
}

/** Every definition of this library. */
export const definitions: Definitions = /* @__PURE__ */ (() =>
  sortDefinitions(modules.flatMap((m) => Object.values(m)).filter(isDefinition)))();
