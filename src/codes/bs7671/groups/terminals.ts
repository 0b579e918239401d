import { terminals as shared, terminalsCoolEnough } from '../../iec-family/conductor-size.js';

/** Terminals are not heated beyond what they are made for. BS 7671 512.1.5. */
export const terminals = () =>
  shared(
    terminalsCoolEnough,
    'most are made for 70 °C (BS 7671:2018+A2:2022 512.1.5, from memory), which is not taken for granted',
  );
