import { type FormEntry, type FormField, formEntries } from '../../demand/form.js';
import { readMeterPoint } from './meter-point.js';

/** The meter-point number with its plausibility, and the area of the distributor that it names. */
export const meterPointEntry: FormEntry = (c) => {
  const number = formEntries.meterPoint(c);
  const { meterPoint } = c.installation.supply;
  if (meterPoint?.state !== 'known') return number;
  const { area, result } = readMeterPoint(meterPoint.value);
  const head = { id: 'distributor-area', title: 'Area of the distributor' };
  const named: FormField = area
    ? { ...head, value: area, by: 'first two digits of the number' }
    : { ...head, missing: result.because ?? 'look the number up' };
  return [...number.map((field) => ({ ...field, result })), named];
};
