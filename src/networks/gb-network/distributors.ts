/**
 * Distribution areas of Great Britain by the first two digits of the meter-point number: industry data, in two sources. 24 and
 * above belong to independent networks, whose area is not in the number (recalled).
 */
export const distributionAreas: Readonly<Record<string, string>> = {
  10: 'Eastern England',
  11: 'East Midlands',
  12: 'London',
  13: 'Merseyside, Cheshire and North Wales',
  14: 'West Midlands',
  15: 'North East England',
  16: 'North West England',
  17: 'North Scotland',
  18: 'South and Central Scotland',
  19: 'South East England',
  20: 'Southern England',
  21: 'South Wales',
  22: 'South West England',
  23: 'Yorkshire',
};
