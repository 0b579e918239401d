import type { Comparison, Source, Span, Statement } from '../../core/index.js';
import * as shared from '../iec-family/capacity.js';
import { terminalsCoolEnough } from '../iec-family/conductor-size.js';
import type { CoordinationChecks } from '../iec-family/coordination.js';
import { dropWithinLimit, insideWindow } from '../iec-family/voltage-drop.js';

/** A check that wiring codes share with the clause by which IEC 60364 asks for it. */
const asked = <C extends Comparison | Span | Statement>(check: C, source: Source): C => ({ ...check, source });

const part43 = (provenance: Source['provenance'], clause: string): Source => ({
  document: 'IEC 60364-4-43',
  edition: '2008',
  clause,
  provenance,
});
const part52 = (provenance: Source['provenance'], clause: string): Source => ({
  document: 'IEC 60364-5-52',
  edition: '2009',
  clause,
  provenance,
});

/** Load, device and cable. IEC 60364-4-43 433.1 and 5-52 523. */
export const coordinationChecks = (): CoordinationChecks => ({
  deviceCarriesLoad: asked(shared.deviceCarriesLoad, part43('one-source', '433.1')),
  groupedDevice: shared.groupedDevice,
  harmonicsStated: asked(shared.harmonicsStated, part52('one-source', '523.6, Annex E')),
  insulationOnce: asked(shared.insulationOnce, part52('memory', 'Annex B, B.52.1, reference method A')),
  capacitySuffices: asked(shared.capacitySuffices, part43('one-source', '433.1, by the tables of 5-52 Annex B')),
  loadWithinCapacity: asked(shared.loadWithinCapacity, part43('one-source', '433.1')),
  conventionalOverload: asked(shared.conventionalOverload, part43('one-source', '433.1')),
});

/** The drop from the origin, and the voltage that is left. IEC 60364-5-52 525 and Annex G; 5-51 512.1.1. */
export const dropChecks = () => ({
  dropWithinLimit: asked(dropWithinLimit, part52('two-sources', '525, Annex G, Table G.52.1')),
  insideWindow: asked(insideWindow, {
    document: 'IEC 60364-5-51',
    clause: '512.1.1',
    provenance: 'memory',
    note: 'equipment suits the voltage that it meets; this code asks for no such device',
  }),
});

/** Temperature of the conductors at terminals. IEC 60364-5-52 523.1. */
export const terminalCheck = () => asked(terminalsCoolEnough, part52('memory', '523.1'));
