import { contents, together } from '../../calculation/index.js';
import { conductors } from '../iec-family/conductors.js';
import { sharedFacts } from '../iec-family/facts.js';
import { residualScopes } from '../iec-family/residual-places.js';
import { circuitScopes } from '../iec-family/scopes.js';
import { additionalProtection } from './groups/additional-protection.js';
import { arcDetection } from './groups/arc-detection.js';
import { breakingCapacity } from './groups/breaking-capacity.js';
import { chargePointEarthing } from './groups/charge-point-earthing.js';
import { coordination } from './groups/coordination.js';
import { disconnection } from './groups/disconnection.js';
import { earthingAndBonding, earthingSizeScope } from './groups/earthing-and-bonding.js';
import {
  balancedThreePhase,
  earthedBy,
  electrodeOfItsOwn,
  lowElectrode,
  openPenDetectionTouchVoltage,
  separationForOneVehicle,
} from './groups/earthing-arrangements.js';
import { fuseScope } from './groups/fuses.js';
import { lineWithstand } from './groups/line-withstand.js';
import { minimumSize } from './groups/minimum-size.js';
import { modeFour } from './groups/mode-four.js';
import { modeTwo } from './groups/mode-two.js';
import { originFacts } from './groups/origin-facts.js';
import { outbuildingScope, outbuildings } from './groups/outbuildings.js';
import { placement } from './groups/placement.js';
import { protectiveConductor } from './groups/protective-conductor.js';
import { residualCurrent } from './groups/residual-current.js';
import { sharedCircuit } from './groups/shared-circuit.js';
import { specialPlace } from './groups/special-place.js';
import { surgeProtection } from './groups/surge-protection.js';
import { terminals } from './groups/terminals.js';
import { voltageDrop } from './groups/voltage-drop.js';

/** BS 7671:2018 as a contents list: where each figure comes from, and the checks by group. */
export const bs7671Contents = () => {
  const facts = sharedFacts();
  const way = conductors();
  const origin = originFacts();
  const rating = coordination();
  const shared = sharedCircuit();
  const breaking = breakingCapacity();
  const drop = voltageDrop();
  const fault = disconnection();
  const terminal = terminals();
  const additional = additionalProtection();
  // 531.3.3 of 2018: type AC for general purposes
  const residual = residualCurrent({ generalPurposes: true });
  const withstand = lineWithstand();
  const protective = protectiveConductor();
  const size = minimumSize();
  const points = chargePointEarthing();
  const plugged = modeTwo();
  const direct = modeFour();
  const earthed = earthedBy({
    'balanced-three-phase': balancedThreePhase(),
    'low-electrode': lowElectrode(),
    'open-pen-detection-touch-voltage': openPenDetectionTouchVoltage(),
    'tt-earthing': electrodeOfItsOwn(),
    'electrical-separation': separationForOneVehicle(),
  });
  const earth = earthingAndBonding();
  const others = outbuildings();
  const placed = placement();
  const place = specialPlace();
  const surge = surgeProtection();
  const arc = arcDetection();
  return contents({
    scopes: {
      ...circuitScopes,
      ...residualScopes,
      fuses: fuseScope,
      earthingSizes: earthingSizeScope,
      outbuildings: outbuildingScope,
    },
    figures: {
      circuit: together(
        facts.circuit,
        origin.circuit,
        rating.circuit,
        shared.circuit,
        drop.circuit,
        fault.circuit,
        additional.circuit,
        residual.circuit,
        breaking.circuit,
        terminal.circuit,
        withstand.circuit,
        size.circuit,
        points.circuit,
        place.circuit,
        earth.circuit,
        surge.circuit,
        arc.circuit,
      ),
      cables: together(facts.cables, rating.cables, withstand.cables, protective.cables, size.cables, placed.cables),
      sections: together(facts.sections, rating.sections, additional.sections, placed.sections),
      runs: together(facts.runs, way.runs, drop.runs),
      runSections: way.runSections,
      rates: drop.rates,
      runLines: drop.runLines,
      pieces: drop.pieces,
      lines: drop.lines,
      sequences: drop.sequences,
      temperatures: way.temperatures,
      conductors: way.conductors,
      returns: way.returns,
      conditionalRatings: breaking.conditionalRatings,
      ahead: breaking.ahead,
      points: together(points.points, earthed.points, plugged.points, direct.points),
      loadStates: points.loadStates,
      earthingSizes: earth.earthingSizes,
      bonds: earth.bonds,
      outbuildings: others.outbuildings,
      residualUpstream: together(fault.residualUpstream, residual.residualUpstream, shared.residualUpstream),
      additional: together(additional.additional, residual.additional),
      protecting: together(additional.protecting, residual.protecting),
      pointsBehind: residual.pointsBehind,
      residualInside: residual.residualInside,
      residualPairs: residual.residualPairs,
      servedRuns: residual.servedRuns,
      infeeds: residual.infeeds,
      fuses: fault.fuses,
      faults: together(withstand.faults, protective.faults),
    },
    checks: {
      'origin-facts': origin.checks,
      coordination: [...rating.checks, ...shared.checks, ...plugged.checks, ...direct.checks],
      'voltage-drop': drop.checks,
      disconnection: fault.checks,
      'residual-current': [...additional.checks, ...residual.checks],
      'line-withstand': withstand.checks,
      'protective-conductor': protective.checks,
      'breaking-capacity': breaking.checks,
      'terminal-temperature': terminal.checks,
      'minimum-size': size.checks,
      placement: [...placed.checks, ...place.checks],
      'charge-point-earthing': earthed.checks,
      'earthing-and-bonding': [...earth.checks, ...others.checks],
      'surge-protection': surge.checks,
      'arc-detection': arc.checks,
    },
  });
};
