import {
  type CheckResult,
  factValue,
  isMissing,
  type Known,
  missing,
  type Sheet,
  whenKnown,
} from '../../core/index.js';
import type { ResidualDevice } from '../../installation/index.js';
import { electrodeAndProtective, residualLoopVoltage, residualTouchVoltage } from '../../physics/index.js';
import { residualBreakTimes } from '../../products/en61008/break-times.js';
import { type Amperes, type Ohms, ratio, type Seconds, type Volts, volts } from '../../units/index.js';
import type { CircuitCase } from '../wiring-code.js';
import { residualDisconnects, residualTouchLimit } from './disconnection-checks.js';
import { delayOf } from './residual-position.js';

function breakTime(
  sheet: Sheet,
  device: ResidualDevice,
  voltage: Volts,
  loop: Known<Ohms>,
  rating: Known<Amperes>,
  required: Known<Seconds>,
): Known<Seconds> {
  if (device.delayTime !== undefined) {
    // the break time comes on top of a set delay: the delay alone can condemn, never acquit
    const delay = factValue('set delay of the residual current device', device.delayTime);
    const late = !isMissing(delay) && !isMissing(required) && delay > required;
    const onTop = missing({
      kind: 'fact',
      fact: 'break time of the delayed residual current device',
      obtain: 'from its maker, for the delay that is set',
    });
    return sheet.given('disconnectionTime', late ? delay : onTop, 'set delay of the device');
  }
  const multiple = whenKnown([loop, rating], (z, i) => voltage / z / i);
  const row: Known<number> = isMissing(multiple)
    ? multiple
    : (rowBelow(multiple) ??
      missing({
        kind: 'range',
        formula: 'en61008/break-times',
        explain: `the fault current is ${multiple.toPrecision(3)} times the rated residual current; the device is bound to operate from once on`,
      }));
  const residualMultiple = sheet.given(
    'residualMultiple',
    isMissing(row) ? row : ratio(row),
    typeof multiple === 'number'
      ? `printed row at or below ${multiple.toPrecision(3)}, U_0/Z_s over the rated residual current`
      : undefined,
  );
  const kind = delayOf(device);
  const delay = sheet.label('delay', kind.delay, kind.by);
  return sheet.look(residualBreakTimes, { delay, residualMultiple });
}

/** The printed row of break times at or below a multiple of the rated residual current. */
const rowBelow = (multiple: number): number | undefined => [5, 2, 1].find((m) => multiple >= m);

/** Judges one residual current device upstream of the cable: the voltage that it allows and its break time. */
export function judgeResidual(
  sheet: Sheet,
  circuit: CircuitCase,
  device: ResidualDevice,
  isTT: boolean,
  loop: Known<Ohms>,
): readonly CheckResult[] {
  const touchVoltageLimit = sheet.given('touchVoltageLimit', volts(50), 'BS 7671 411.5.3');
  const electrode = circuit.installation.supply.electrode?.resistance;
  let path: Known<Ohms> = loop;
  if (isTT) {
    // a loop test of the supply may stand for the electrode: it is never less
    const earthElectrode =
      electrode && electrode.state !== 'unknown'
        ? sheet.given('earthElectrode', electrode)
        : sheet.given(
            'earthElectrode',
            circuit.installation.supply.externalImpedance,
            'external loop impedance in place of the electrode: never less',
          );
    const circuitProtectiveResistance = sheet.latest('circuitProtectiveResistance') ?? missing();
    path = sheet.step(electrodeAndProtective, { earthElectrode, circuitProtectiveResistance });
  }
  const residualOperatingCurrent = sheet.given('residualOperatingCurrent', device.rating);
  const touchVoltage = isTT
    ? sheet.step(residualTouchVoltage, { electrodeResistance: path, residualOperatingCurrent })
    : sheet.step(residualLoopVoltage, { loopImpedance: loop, residualOperatingCurrent });
  const touch = sheet.check(residualTouchLimit, { touchVoltage, touchVoltageLimit });

  const requiredTime = sheet.latest('requiredTime') ?? missing();
  const disconnectionTime = breakTime(
    sheet,
    device,
    circuit.nominalVoltage,
    loop,
    residualOperatingCurrent,
    requiredTime,
  );
  const time = sheet.check(residualDisconnects, { disconnectionTime, requiredTime });
  return [touch, time];
}
