import { isMissing, type Sheet } from '../core/index.js';
import type { ChargePoint } from '../installation/index.js';
import { amperes, ratio, type Volts } from '../units/index.js';
import { chargePowerFromCurrent, chargeTimeAtPower } from './formulas.js';
import { stayOf } from './stay.js';
import type { VehicleNeed } from './survey.js';

/** How long a vehicle takes to charge at full current, and whether that is before it leaves. @inline */
export interface ChargeTime {
  /** Time at the full current that point and vehicle share, s; absent when a fact is missing. */
  readonly seconds?: number;
  /** Time between plugging in and leaving, s. */
  readonly window: number;
  /** Whether it is ready in time; absent when a fact is missing. */
  readonly inTime?: boolean;
  /** What it rests on. */
  readonly about: string;
}

/** Time to charge at the full current that point and vehicle share, nominal voltage, nothing else limiting it. */
export function chargeTimeOf(point: ChargePoint, need: VehicleNeed, voltage: Volts, sheet: Sheet): ChargeTime {
  const setting = point.setting.state === 'known' ? point.setting.value : undefined;
  const onBoard = need.onBoardCurrent.state === 'known' ? need.onBoardCurrent.value : undefined;
  const lines =
    need.onBoardPhases.state === 'known' ? Math.min(need.onBoardPhases.value, point.lines.length) : undefined;
  const { window } = stayOf(need);
  const about = 'full current that point and vehicle share, nominal voltage; charging slows near full';
  if (setting === undefined || onBoard === undefined || lines === undefined) return { window, about };
  const nominalVoltage = sheet.given('nominalVoltage', voltage);
  const full = amperes(Math.min(setting, onBoard));
  const chargeCurrent = sheet.given('chargeCurrent', full, 'the smaller of point and vehicle');
  const phases = sheet.given('phases', ratio(lines), 'line conductors that both use');
  const availablePower = sheet.step(chargePowerFromCurrent, { nominalVoltage, chargeCurrent, phases });
  const energyNeeded = sheet.given('energyNeeded', need.energy);
  const chargeEfficiency = sheet.given('chargeEfficiency', need.efficiency);
  const time = sheet.step(chargeTimeAtPower, { energyNeeded, availablePower, chargeEfficiency });
  return isMissing(time) ? { window, about } : { seconds: time, window, inTime: time <= window, about };
}
