import { type ChargePoint, type Load, outletsBelow, type Run, type Stretch } from '../../installation/index.js';
import { operatingTemperatureOf } from './conductor-constants.js';
import { ofCircuit, ofRun, ofSection } from './places.js';

const feedsNoBoard = (run: Run) => run.feeds.every((o) => o.kind !== 'board');
const hasSockets = (o: Load | ChargePoint) =>
  o.kind === 'load' && (o.purpose === 'socket-outlets' || o.withSocket === true);

/** Whether a section is in the ground: its reference method is known and one of the ground. */
export const isBuried = ({ method }: Stretch): boolean => method.state === 'known' && /^D/.test(method.value);

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
    insulation: ofCircuit((c) => c.run.cable.insulation),
    operatingTemperature: ofCircuit((c) => operatingTemperatureOf(c.run.cable.insulation)),
    ring: ofCircuit((c) => c.run.ring === true),
    system: ofCircuit((c) => c.installation.supply.system, { called: 'earthing system of the supply' }),
  },
  sections: {
    sectionName: ofSection((s) => s.section.name),
    method: ofSection((s) => s.section.method, { called: (s) => `method of ${s.section.name}` }),
    buried: ofSection((s) => isBuried(s.section)),
    ambientTemperature: ofSection((s) => s.section.ambient),
    groundTemperature: ofSection((s) => s.section.ambient, { by: 'temperature of the ground' }),
  },
  runs: {
    runName: ofRun((r) => r.run.id),
  },
});
