import { terminals as shared } from '../../iec-family/terminals.js';
import { clauses } from '../clauses.js';

/** Terminals are not heated beyond what they are made for. IEC 60364-5-52 523.1. */
export const terminals = () =>
  shared(
    clauses().terminalsCoolEnough,
    'most are made for 70 °C (IEC 60364-5-52:2009 523.1, from memory), which is not taken for granted',
  );
