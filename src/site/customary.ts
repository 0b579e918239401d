import type { Provenance } from '../core/index.js';

/** What is customary of a figure of a survey: outside it somebody is asked, nothing is refused. */
export interface Customary {
  /** What it is, in words. */
  readonly words: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  /** What is commonly behind a figure outside. */
  readonly slip: string;
  readonly provenance: Provenance;
}

const practice = 'common-practice' as const;

/** Figures that are customary in homes and on small sites, in canonical units. Common practice, no source. */
export const customary = {
  externalImpedance: {
    words: 'external earth fault loop impedance on TN',
    unit: 'Ω',
    least: 0.03,
    most: 1,
    slip: 'a reading with the bonding connected, in another unit, or of another place',
    provenance: practice,
  },
  externalImpedanceOfRod: {
    words: 'external earth fault loop impedance on TT',
    unit: 'Ω',
    least: 2,
    most: 500,
    slip: 'a parallel path through pipes, or a rod that makes no contact',
    provenance: practice,
  },
  prospectiveCurrent: {
    words: 'prospective fault current at the origin',
    unit: 'A',
    least: 200,
    most: 16_000,
    slip: 'amperes and kiloamperes mixed up',
    provenance: practice,
  },
  routeLength: {
    words: 'length of the route',
    unit: 'm',
    least: 1,
    most: 120,
    slip: 'feet, or a length there and back',
    provenance: practice,
  },
  airTemperature: {
    words: 'ambient temperature of air',
    unit: '°C',
    least: 10,
    most: 45,
    slip: 'the temperature of a day in place of the hottest that lasts',
    provenance: practice,
  },
  groundTemperature: {
    words: 'temperature of the ground',
    unit: '°C',
    least: 5,
    most: 25,
    slip: 'the temperature of the air in place of that of the ground',
    provenance: practice,
  },
  chargeCurrent: {
    words: 'setting of a charge point',
    unit: 'A',
    least: 6,
    most: 63,
    slip: 'kilowatts in place of amperes, or the rating of the device',
    provenance: practice,
  },
  connectedCurrent: {
    words: 'connected load of one item',
    unit: 'A',
    least: 0.1,
    most: 100,
    slip: 'watts in place of amperes',
    provenance: practice,
  },
  meteredCurrent: {
    words: 'metered peak of a supply',
    unit: 'A',
    least: 2,
    most: 100,
    slip: 'kilowatt-hours of a half hour in place of amperes: half an hour at 1 kWh is 2 kW',
    provenance: practice,
  },
  tailsArea: {
    words: 'the conductors from the meter to the installation',
    unit: 'mm²',
    least: 16,
    most: 50,
    slip: 'the diameter in place of the cross-section',
    provenance: practice,
  },
  cutOutRating: {
    words: 'fuse of the cut-out',
    unit: 'A',
    least: 60,
    most: 100,
    slip: 'the rating of the carrier in place of the fuse, or a small old service',
    provenance: practice,
  },
  travelMinutes: {
    words: 'travelling, there and back',
    unit: 'min',
    least: 0,
    most: 240,
    slip: 'hours and minutes mixed up',
    provenance: practice,
  },
  hourPrice: {
    words: 'price of an hour, in the smallest coin',
    unit: '',
    least: 2_000,
    most: 15_000,
    slip: 'whole pounds in place of pence',
    provenance: practice,
  },
} as const satisfies Readonly<Record<string, Customary>>;
