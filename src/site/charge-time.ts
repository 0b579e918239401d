import { isMissing, type Known, type Sheet } from '../core/index.js';
import type { ChargePoint } from '../installation/index.js';
import { type Amperes, amperes, ratio, type Seconds, type Volts } from '../units/index.js';
import { chargePowerFromCurrent, chargeTimeAtPower } from './formulas.js';
import type { VehicleNeed } from './survey.js';

/** How long a vehicle takes to charge, and whether that is before it leaves. */
export interface ChargeTime {
  /** Time at the full current that point and vehicle share, s; absent when a fact is missing. */
  readonly seconds?: number;
  /** Time between plugging in and leaving, s. */
  readonly window: number;
  /** Whether it is ready in time; absent when a fact is missing. */
  readonly inTime?: boolean;
  /** What it rests on. */
  readonly about: string;
  /** Time while everything else draws its maximum demand throughout, s; absent where no load control holds the point. */
  readonly slowest?: number;
  /** Set where less than 6 A is then left, so that charging pauses until the demand falls. */
  readonly pauses?: true;
}

const minutesOf = (clock: string): number => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));

/**
 * Time to charge at the full current that point and vehicle share, nominal voltage, nothing else limiting it.
 * @param point the charge point
 * @param need what the vehicle needs
 * @param voltage nominal voltage line to neutral, V, above 0
 * @param sheet where it is worked out
 * @param left what load controls leave for the point while everything else draws its maximum demand, A a line, 0 and up; not counted when absent
 * @returns time, s, and the power that it rests on, or what is missing
 */
export function chargeTimeOf(
  point: ChargePoint,
  need: VehicleNeed,
  voltage: Volts,
  sheet: Sheet,
  left?: Known<Amperes>,
): ChargeTime {
  const setting = point.setting.state === 'known' ? point.setting.value : undefined;
  const onBoard = need.onBoardCurrent.state === 'known' ? need.onBoardCurrent.value : undefined;
  const lines =
    need.onBoardPhases.state === 'known' ? Math.min(need.onBoardPhases.value, point.lines.length) : undefined;
  // who arrives and leaves at the same time of day stands there a whole day
  const window = ((minutesOf(need.leaves) - minutesOf(need.arrives) + 1440) % 1440 || 1440) * 60;
  const about = 'full current that point and vehicle share, nominal voltage; charging slows near full';
  if (setting === undefined || onBoard === undefined || lines === undefined) return { window, about };
  const timeAt = (part: Sheet, current: Amperes, by: string): Known<Seconds> => {
    const nominalVoltage = part.given('nominalVoltage', voltage);
    const chargeCurrent = part.given('chargeCurrent', current, by);
    const phases = part.given('phases', ratio(lines), 'line conductors that both use');
    const availablePower = part.step(chargePowerFromCurrent, { nominalVoltage, chargeCurrent, phases });
    const energyNeeded = part.given('energyNeeded', need.energy);
    const chargeEfficiency = part.given('chargeEfficiency', need.efficiency);
    return part.step(chargeTimeAtPower, { energyNeeded, availablePower, chargeEfficiency });
  };
  const full = amperes(Math.min(setting, onBoard));
  const time = timeAt(sheet, full, 'the smaller of point and vehicle');
  if (isMissing(time)) return { window, about };
  const found = { seconds: time, window, inTime: time <= window, about };
  if (left === undefined || isMissing(left) || left >= full) return found;
  if (left < 6) return { ...found, pauses: true };
  const slowest = timeAt(
    sheet.part('While everything else draws its maximum demand'),
    left,
    'what load controls leave',
  );
  return isMissing(slowest) ? found : { ...found, slowest };
}
