import { contents } from '../../calculation/index.js';
import { conductors } from '../iec-family/conductors.js';
import { sharedFacts } from '../iec-family/facts.js';
import { figuresOf } from '../iec-family/figures-of.js';
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
    figures: figuresOf(
      facts,
      way,
      origin,
      rating,
      shared,
      drop,
      fault,
      additional,
      residual,
      breaking,
      terminal,
      withstand,
      protective,
      size,
      points,
      place,
      earthed,
      plugged,
      direct,
      earth,
      others,
      placed,
      surge,
      arc,
    ),
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
