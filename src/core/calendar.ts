const daysOf = (year: number, month: number): number =>
  month === 2
    ? year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
      ? 29
      : 28
    : [4, 6, 9, 11].includes(month)
      ? 30
      : 31;

/** Whether it is a day of the calendar as yyyy-mm-dd. */
export function isCalendarDay(text: unknown): text is string {
  if (typeof text !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(text)) return false;
  const [year, month, day] = text.split('-').map(Number) as [number, number, number];
  return month >= 1 && month <= 12 && day >= 1 && day <= daysOf(year, month);
}

/** A time of day as hh:mm. */
export const timeOfDay = /^([01]\d|2[0-3]):[0-5]\d$/;
