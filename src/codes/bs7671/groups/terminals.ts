import { terminals as shared, terminalsCoolEnough } from '../../iec-family/conductor-size.js';

/** Terminals are not heated beyond what they are made for. BS 7671 512.1.5. */
export const terminals = () =>
  shared(
    terminalsCoolEnough,
    'terminals count as made for 70 °C unless their maker says otherwise, BS 7671:2018+A2:2022 512.1.5, from memory',
  );
