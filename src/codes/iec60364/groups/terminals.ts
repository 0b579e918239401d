import { terminals as shared, terminalsCoolEnough } from '../../iec-family/conductor-size.js';

/** Terminals are not heated beyond what they are made for. IEC 60364-5-52 523.1. */
export const terminals = () =>
  shared(
    terminalsCoolEnough,
    'terminals count as made for 70 °C unless their maker says otherwise, IEC 60364-5-52:2009 523.1, from memory',
  );
