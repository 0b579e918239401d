import type { Provenance, Source } from '../../core/index.js';
import * as shared from '../iec-family/checks.js';

const part43 = (clause: string, provenance: Provenance): Source => ({
  document: 'IEC 60364-4-43',
  edition: '2008',
  clause,
  provenance,
});
const part52 = (clause: string, provenance: Provenance): Source => ({
  document: 'IEC 60364-5-52',
  edition: '2009',
  clause,
  provenance,
});

/** Checks that wiring codes share, with the clauses by which IEC 60364 asks for them. */
export const clauses = () => ({
  deviceCarriesLoad: shared.deviceCarriesLoad(part43('433.1', 'one-source')),
  capacitySuffices: shared.capacitySuffices(part43('433.1, by the tables of 5-52 Annex B', 'one-source')),
  loadWithinCapacity: shared.loadWithinCapacity(part43('433.1', 'one-source')),
  conventionalOverload: shared.conventionalOverload(part43('433.1', 'one-source')),
  insulationOnce: shared.insulationOnce(part52('Annex B, B.52.1, reference method A', 'memory')),
  harmonicsStated: shared.harmonicsStated(part52('523.6, Annex E', 'one-source')),
  dropWithinLimit: shared.dropWithinLimit(part52('525, Annex G, Table G.52.1', 'two-sources')),
  insideWindow: shared.insideWindow({
    document: 'IEC 60364-5-51',
    clause: '512.1.1',
    provenance: 'memory',
    note: 'equipment suits the voltage that it meets; this code asks for no such device',
  }),
  terminalsCoolEnough: shared.terminalsCoolEnough(part52('523.1', 'memory')),
});
