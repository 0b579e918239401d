import { terminals as shared } from '../../iec-family/terminals.js';
import { terminalsCoolEnough } from '../clauses.js';

/** Terminals are not heated beyond what they are made for. BS 7671 512.1.5. */
export const terminals = () =>
  shared(terminalsCoolEnough, 'most are made for 70 °C (BS 7671 512.1.5, from memory), which is not taken for granted');
