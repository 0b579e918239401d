import { bs7671 } from '../../src/codes/bs7671/index.js';
import { testSheet } from '../../src/design/index.js';
import { celsius, known, milliamperes, type Run, type Supply } from '../../src/index.js';
import { caseOf, chargePoint, circuit, house } from './house.js';

/** The test sheet of a house with the circuit of one charge point behind an RCBO, with other facts in their place. */
export const sheetOf = (change: Partial<Run> = {}, supply: Partial<Supply> = {}) =>
  testSheet({
    code: bs7671('2018+A2:2022'),
    circuit: caseOf(
      house(
        [
          circuit({
            residual: [{ position: 'origin-of-circuit', type: known('A'), rating: known(milliamperes(30)) }],
            feeds: [{ ...chargePoint, directCurrentDetection: known(true) }],
            ...change,
          }),
        ],
        supply,
      ),
      'ev',
    ),
    testTemperature: celsius(10),
    electronics: 'disconnected',
  });
