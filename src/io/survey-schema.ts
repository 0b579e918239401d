import * as z from 'zod';
import { editions } from '../codes/bs7671/editions.js';
import { timeOfDay } from '../core/calendar.js';
import { counts, purposes } from '../installation/index.js';
import { energyOfBattery } from '../site/energy-needed.js';
import type { Survey, VehicleNeed, WorkFacts } from '../site/survey.js';
import { type Ratio, ratio } from '../units/index.js';
import { fact, factField, may, must, quantityField, record } from './field.js';
import {
  board,
  cableToDesign,
  count,
  deviceToDesign,
  fieldsOf,
  LINES,
  NAME,
  recordOf,
  residual,
  stretch,
  supply,
  TEXT,
  wantedPoint,
  yes,
} from './installation-schema.js';

const DATE = z.iso.date('must be a day as yyyy-mm-dd');
const FACTOR = z.number().min(0).max(1).transform(ratio);
const CLOCK = z.string().regex(timeOfDay, 'must be a time of day as hh:mm');

type Battery = Parameters<typeof energyOfBattery>[0];
interface HalfHours {
  readonly from: string;
  readonly wattHours: readonly number[];
  readonly season: string;
  readonly margin?: Ratio;
}

const vehicleRecord = recordOf<Omit<VehicleNeed, 'energy'> & { energy?: VehicleNeed['energy']; battery?: Battery }>(
  'vehicle',
  {
    ...fieldsOf('vehicle'),
    onBoardPhases: must(fact(z.union([z.literal(1), z.literal(2), z.literal(3)]))),
    arrives: must(CLOCK),
    leaves: must(CLOCK),
  },
);
/** The energy of a night is said, or follows from the battery as it comes and leaves. */
const vehicle = vehicleRecord.transform(({ energy, ...read }, ctx): VehicleNeed => {
  if (energy !== undefined && !read.battery) return { energy, ...read } as VehicleNeed;
  if (read.battery && energy === undefined) return { energy: energyOfBattery(read.battery), ...read } as VehicleNeed;
  const message = energy
    ? 'is said beside the battery, from which it follows; write one of them'
    : 'is missing; write energy or energy_Wh or energy_kWh, or battery';
  ctx.addIssue({ code: 'custom', path: ['energy'], message, params: { id: energy ? 'twice' : 'missing' } });
  return z.NEVER;
});

const wanted = record('wanted', {
  id: must(NAME),
  count: may(count(counts.alikePoints)),
  inTurn: may(z.boolean()),
  from: must(NAME),
  lines: must(LINES),
  point: must(wantedPoint),
  device: must(deviceToDesign),
  residual: may(z.array(residual).max(10)),
  jointsAccessible: may(yes),
  bathOrShower: may(yes),
  thirdHarmonic: may(factField('thirdHarmonic')),
  cables: must(z.array(cableToDesign).min(1).max(20)),
  route: must(z.array(stretch).min(1).max(100)),
  terminalTemperature: may(factField('terminalTemperature')),
  vehicle: may(vehicle),
});

/** The survey document, version 1. */
export const surveySchema = record('survey', {
  format: must(z.literal('survey/1')),
  about: must(
    record('about', {
      title: must(TEXT.min(1)),
      reference: may(TEXT),
      invented: may(z.boolean()),
      date: must(DATE),
      country: must(z.literal('GB')),
      premises: must(z.enum(['dwelling', 'small-shop', 'hotel', 'workplace', 'flats'])),
      dwellings: may(count({ least: 1, most: counts.pieces.most })),
    }),
  ),
  code: must(record('code', { id: must(z.literal('BS 7671')), edition: must(z.enum(editions.map((e) => e.edition))) })),
  supply: must(supply),
  board: must(board),
  wanted: must(z.array(wanted).min(1).max(200)),
  options: may(
    recordOf<Survey['options']>('options', {
      ...fieldsOf('options'),
      makersLetThrough: may(z.number().gt(0).min(1e-3).max(1e12)),
    }),
  ),
  demand: may(
    recordOf<Omit<NonNullable<Survey['demand']>, 'readings'> & { readonly halfHours?: HalfHours }>('demand', {
      ...fieldsOf('demand', 'halfHours', 'factors'),
      halfHours: may(
        record('halfHours', {
          from: must(
            z.iso.datetime({ offset: true, error: 'must be a time with its offset, as 2025-10-01T00:00:00Z' }),
          ),
          wattHours: must(z.array(z.number().min(0).max(1e9)).min(1).max(40_000)),
          season: must(TEXT.min(1)),
          margin: may(quantityField('demandMargin')),
        }),
      ),
      factors: may(
        record('demandFactors', {
          utilisation: must(z.partialRecord(z.enum(purposes), FACTOR)),
          simultaneity: must(z.record(NAME, FACTOR)),
        }),
      ),
    }),
  ),
  work: may(recordOf<WorkFacts>('work', { ...fieldsOf('work'), travelMinutes: may(z.number().min(0).max(1440)) })),
});

/** What the schema reads, before it is arranged as a survey. */
export type SurveyDocument = z.output<typeof surveySchema>;
