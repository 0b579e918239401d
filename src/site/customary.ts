/** What is customary of a figure of a survey: outside it somebody is asked, nothing is refused. */
export interface Customary {
  /** What it is, in words. */
  readonly words: string;
  readonly unit: string;
  readonly range: readonly [least: number, most: number];
  /** What is commonly behind a figure outside. */
  readonly slip: string;
}

/** Figures that are customary in homes and on small sites, in canonical units. Common practice, no source. */
export const customary = {
  externalImpedance: {
    words: 'external earth fault loop impedance on TN',
    unit: 'Ω',
    range: [0.03, 1],
    slip: 'a reading with the bonding connected, in another unit, or of another place',
  },
  externalImpedanceOfRod: {
    words: 'external earth fault loop impedance on TT',
    unit: 'Ω',
    range: [2, 500],
    slip: 'a parallel path through pipes, or a rod that makes no contact',
  },
  prospectiveCurrent: {
    words: 'prospective fault current at the origin',
    unit: 'A',
    range: [200, 16_000],
    slip: 'amperes and kiloamperes mixed up',
  },
  routeLength: {
    words: 'length of the route',
    unit: 'm',
    range: [1, 120],
    slip: 'feet, or a length there and back',
  },
  airTemperature: {
    words: 'ambient temperature of air',
    unit: '°C',
    range: [10, 45],
    slip: 'the temperature of a day in place of the hottest that lasts',
  },
  groundTemperature: {
    words: 'temperature of the ground',
    unit: '°C',
    range: [5, 25],
    slip: 'the temperature of the air in place of that of the ground',
  },
  chargeCurrent: {
    words: 'setting of a charge point',
    unit: 'A',
    range: [6, 63],
    slip: 'kilowatts in place of amperes, or the rating of the device',
  },
  connectedCurrent: {
    words: 'connected load of one item',
    unit: 'A',
    range: [0.1, 100],
    slip: 'watts in place of amperes',
  },
  meteredCurrent: {
    words: 'metered peak of a supply',
    unit: 'A',
    range: [2, 100],
    slip: 'kilowatt-hours of a half hour in place of amperes: half an hour at 1 kWh is 2 kW',
  },
  tailsArea: {
    words: 'the conductors from the meter to the installation',
    unit: 'mm²',
    range: [16, 50],
    slip: 'the diameter in place of the cross-section',
  },
  cutOutRating: {
    words: 'fuse of the cut-out',
    unit: 'A',
    range: [60, 100],
    slip: 'the rating of the carrier in place of the fuse, or a small old service',
  },
  travelMinutes: {
    words: 'travelling, there and back',
    unit: 'min',
    range: [0, 240],
    slip: 'hours and minutes mixed up',
  },
  hourPrice: {
    words: 'price of an hour, in the smallest coin',
    unit: '',
    range: [2_000, 15_000],
    slip: 'whole pounds in place of pence',
  },
} as const satisfies Readonly<Record<string, Customary>>;
