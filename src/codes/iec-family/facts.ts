import { ofCircuit, ofRun, ofSection } from './places.js';

/** Facts of a circuit that the groups of checks share, by list. */
export const sharedFacts = () => ({
  circuit: {
    designCurrent: ofCircuit((c) => c.designCurrent, { by: 'load of the circuit' }),
    nominalVoltage: ofCircuit((c) => c.nominalVoltage),
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
