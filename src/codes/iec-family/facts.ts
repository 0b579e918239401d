import { contradicted } from '../../core/contradicted.js';
import { type Fact, known, unknown } from '../../core/index.js';
import {
  isPlugged,
  type Outlet,
  onSocket,
  type ReferenceMethod,
  type Run,
  type Stretch,
} from '../../installation/index.js';
import type { Amperes } from '../../units/index.js';
import { operatingTemperatureOf } from './conductor-constants.js';
import { nameOfLength, ofCable, ofCircuit, ofRun, ofSection, type SectionPlace } from './places.js';

/** Whether an outlet is, or has, a socket-outlet of up to 32 A; undefined where that is not known. */
function hasSockets(o: Outlet): boolean | undefined {
  if (o.kind === 'board') return false;
  if (o.kind === 'charge-point') {
    if (!isPlugged(o)) return false;
    // a household socket-outlet is of 13 A whatever else is said of it
    return o.socket?.state === 'known' && o.socket.value === 'BS 1363' ? true : upTo32(o.socketRating);
  }
  const { purpose, withSocket, socketRating: rated, accessories } = o;
  // a socket-outlet at something else than a cooker is looked at
  const fixed = purpose === 'cooking' ? withSocket : withSocket === true ? undefined : false;
  const [one, other] = [onSocket(o), fixed];
  const there = one === true || other === true || (one === undefined ? one : other);
  const household = accessories?.state === 'known' && accessories.value === 'BS 1363';
  return there === false || rated === undefined || household ? there : upTo32(rated) && there;
}
/** Whether a socket-outlet is of up to 32 A: it is where nothing is said of its rating. */
function upTo32(rated: Fact<Amperes> | undefined): boolean | undefined {
  if (rated === undefined) return true;
  if (rated.state === 'unknown') return undefined;
  const [least, most] = rated.state === 'known' ? [rated.value, rated.value] : [rated.least, rated.most];
  return least > 32 ? false : most <= 32 || undefined;
}
/** Whether a run feeds socket-outlets of up to 32 A itself, whatever else it feeds. */
function feedsSockets({ feeds }: Run) {
  const found = feeds.map(hasSockets);
  if (found.includes(true)) return known(true);
  return found.includes(undefined) ? unknown('look at the socket-outlets and the cooker unit') : known(false);
}

/** Whether a cable lies in something that holds its heat. */
export const isEnclosed = (containment: Stretch['containment']): boolean =>
  containment === 'conduit' || containment === 'trunking' || containment === 'duct';
/** Whether a section is in the ground: its reference method is known and one of the ground. */
export const isBuried = ({ method }: Stretch): boolean => method.state === 'known' && /^D/.test(method.value);

/** The method of a cable that is seen to lie closer than the method that is said: what is seen counts. */
const closer: Readonly<Partial<Record<ReferenceMethod, 'C' | 'B' | 'A'>>> = {
  C: 'B',
  E: 'B',
  F: 'B',
  G: 'B',
  '100': 'A',
  '102': 'A',
};
/** Method of a section, unless how it lies contradicts it. */
function methodOf({ circuit, section: { method, containment, name } }: SectionPlace): Stretch['method'] {
  if (method.state !== 'known') return method;
  if (containment === 'buried' && !method.value.startsWith('D'))
    return contradicted(
      'it is said to be buried, with a method for cables above ground: see which of the two is right',
    );
  const enclosed = isEnclosed(containment) ? closer[method.value] : undefined;
  if (enclosed) {
    const seen = `${enclosed}${circuit.run.cable.construction === 'single-core' ? 1 : 2}` as ReferenceMethod;
    return known(seen, `${name} lies in ${containment}: method ${method.value} is for cables that are not enclosed`);
  }
  return containment === 'clipped' && /^[EFG]$/.test(method.value)
    ? known('C', `${name} is clipped: method ${method.value} is for cables in free air`)
    : method;
}

/** Facts of a circuit that the groups of checks share, by list. */
export const sharedFacts = () => ({
  circuit: {
    designCurrent: ofCircuit((c) => c.designCurrent, { by: 'load of the circuit' }),
    nominalVoltage: ofCircuit((c) => c.nominalVoltage),
    singlePhase: ofCircuit((c) => c.phases === 1),
    finalSockets: ofCircuit(({ run }) => feedsSockets(run), {
      called: 'whether the circuit has socket-outlets of up to 32 A',
    }),
    deviceRating: ofCircuit((c) => c.run.device.rating),
    deviceKind: ofCircuit((c) => c.run.device.kind, { called: 'kind of the overcurrent device' }),
    ring: ofCircuit((c) => c.run.ring === true),
    system: ofCircuit((c) => c.installation.supply.system, { called: 'earthing system of the supply' }),
  },
  cables: {
    cable: ofCable((c) => c.run.cable),
    conductorArea: ofCable((c) => c.run.cable.area),
    insulation: ofCable((c) => c.run.cable.insulation),
    operatingTemperature: ofCable((c) => operatingTemperatureOf(c.run.cable.insulation)),
    // said with a verdict where the cable changes along the route
    cableName: ofCable((c) => (c.oneCable ? false : `cable from ${nameOfLength(c)}`)),
  },
  sections: {
    sectionName: ofSection((s) => s.section.name),
    method: ofSection(methodOf, { called: (s) => `method of ${s.section.name}` }),
    buried: ofSection((s) => isBuried(s.section)),
    ambientTemperature: ofSection((s) => s.section.ambient),
    groundTemperature: ofSection((s) => s.section.ambient, { by: 'temperature of the ground' }),
  },
  runs: {
    runName: ofRun((r) => r.run.id),
  },
});
