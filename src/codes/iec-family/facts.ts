import { type ChargePoint, type Load, outletsBelow, type Run } from '../../installation/index.js';
import { ofCircuit, ofRun, ofSection } from './places.js';

const feedsNoBoard = (run: Run) => run.feeds.every((o) => o.kind !== 'board');
const hasSockets = (o: Load | ChargePoint) =>
  o.kind === 'load' && (o.purpose === 'socket-outlets' || o.withSocket === true);

/** Facts of a circuit that the groups of checks share, by list. */
export const sharedFacts = () => ({
  circuit: {
    designCurrent: ofCircuit((c) => c.designCurrent, { by: 'load of the circuit' }),
    nominalVoltage: ofCircuit((c) => c.nominalVoltage),
    singlePhase: ofCircuit((c) => c.phases === 1),
    finalSockets: ofCircuit(({ run }) => feedsNoBoard(run) && outletsBelow(run).some(hasSockets)),
    deviceRating: ofCircuit((c) => c.run.device.rating),
    deviceKind: ofCircuit((c) => c.run.device.kind, { called: 'kind of the overcurrent device' }),
    cable: ofCircuit((c) => c.run.cable),
    conductorArea: ofCircuit((c) => c.run.cable.area),
    system: ofCircuit((c) => c.installation.supply.system, { called: 'earthing system of the supply' }),
  },
  sections: {
    sectionName: ofSection((s) => s.section.name),
    method: ofSection((s) => s.section.method),
  },
  runs: {
    runName: ofRun((r) => r.run.id),
  },
});
