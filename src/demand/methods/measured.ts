import { endsOf, type Fact, type Known, missing, type Sheet } from '../../core/index.js';
import type { Installation, Line } from '../../installation/index.js';
import { type Amperes, seconds } from '../../units/index.js';
import { meteredCurrentOfLine, meteredDemandWithMargin, meteredPowerOfInterval } from '../formulas.js';
import { type DemandCase, type DemandLoad, demandCase } from '../loads.js';
import {
  type Applicability,
  applicable,
  type DemandMethod,
  type HalfHourReading,
  inFull,
  notApplicable,
  onLine,
} from '../method.js';
import { checkReadings, HALF_HOUR } from './readings.js';

/** What no meter has seen yet comes on top in full. */
function withNewLoads(loads: readonly DemandLoad[], line: Line, metered: Sheet, sheet: Sheet): Known<Amperes> {
  const fresh = onLine(loads, line).filter((l) => l.isNew);
  return sheet.gather('sum', 'existingDemand', 'existingDemand', [
    metered,
    ...inFull(fresh, 'existingDemand', ', not yet metered, in full', sheet),
  ]);
}

/** Whether storage heaters, which charge together for hours, take more on a line than a meter is said to have seen at most. */
function storageBeyond(c: DemandCase, peak: Fact<Amperes>): boolean {
  const most = endsOf(peak)?.[1];
  if (most === undefined) return false;
  return c.lines.some(
    (line) =>
      onLine(c.loads, line)
        .filter((l) => l.purpose === 'storage-heating' && !l.hidNothing)
        .reduce((sum, l) => sum + (endsOf(l.current)?.[0] ?? 0), 0) > most,
  );
}

/** What feeds in behind the meter, which saw the difference alone; what is yet to be connected hid nothing. */
const hidingIn = (c: DemandCase) =>
  [...c.sources, ...c.points.filter((p) => p.bidirectional !== false)].filter((o) => !o.hidNothing);

/** Whether a meter of the supply saw no demand, because something feeds in behind it. */
export const feedsInUnseen = (installation: Installation): boolean => hidingIn(demandCase(installation)).length > 0;

function unseen(c: DemandCase): Applicability | undefined {
  const hiding = hidingIn(c);
  if (hiding.length === 0) return undefined;
  const names = hiding.map(({ id }) => id).join(', ');
  return {
    verdict: 'not-determined',
    because: `${names} can feed in behind the meter, which sees the difference alone`,
    gaps: [
      {
        kind: 'fact',
        fact: `what the loads draw while ${names} feeds in nothing`,
        obtain: 'measure with it switched off over the busiest days, or list every load and take another method',
      },
    ],
  };
}

/** Demand from half-hour readings of the supply meter. */
export const halfHourReadings: DemandMethod = {
  id: 'half-hour-readings',
  title: 'Largest half-hour of the supply meter, with a margin',
  source: { document: 'measured demand', clause: 'kWh of a half-hour times two', provenance: 'common-practice' },
  assumption:
    'Half-hour means hide short peaks; the margin and the season are the user’s. Power factor 1. Loads that are yet to be connected come on top in full, and so do all charge points, those too that the meter may have seen.',
  countBands: false,
  divisible: false,
  metered: true,
  applies: (c, { readings }) => {
    if (!readings) return notApplicable('no half-hour readings were handed over');
    checkReadings(readings);
    const hidden = unseen(c);
    if (hidden) return hidden;
    const { phases } = c.installation.supply;
    if (phases.state === 'known')
      return phases.value === 1
        ? applicable
        : notApplicable('the meter adds the lines up; readings of each line would be needed');
    return {
      verdict: 'not-determined',
      because: 'the number of lines of the supply is not known',
      gaps: [{ kind: 'fact', fact: 'line conductors of the supply', obtain: 'cut-out and meter' }],
    };
  },
  existing: (loads, line, c, { readings }, sheet) => {
    const peak = readings?.readings.reduce<HalfHourReading | undefined>(
      (best, r) => (best && best.energy >= r.energy ? best : r),
      undefined,
    );
    const metered = sheet.part('meter');
    const lacking = missing({ kind: 'fact', fact: 'readings', obtain: 'half-hour readings of the supply meter' });
    const meteredEnergy = metered.given('meteredEnergy', peak?.energy ?? lacking, `half-hour from ${peak?.start}`);
    const meteringInterval = metered.given('meteringInterval', seconds(HALF_HOUR), 'half-hour readings');
    const meteredPower = metered.step(meteredPowerOfInterval, { meteredEnergy, meteringInterval });
    const nominalVoltage = metered.given('nominalVoltage', c.installation.supply.nominalVoltage);
    const meteredCurrent = metered.step(meteredCurrentOfLine, { meteredPower, nominalVoltage });
    const demandMargin = metered.given('demandMargin', readings?.margin ?? lacking, `readings of ${readings?.season}`);
    metered.step(meteredDemandWithMargin, { meteredCurrent, demandMargin });
    return withNewLoads(loads, line, metered, sheet);
  },
};

/** Demand from a peak current that the survey of the supply states. */
export const meteredPeak: DemandMethod = {
  id: 'metered-peak',
  title: 'Peak current metered at the supply, with a margin',
  source: { document: 'measured demand', provenance: 'common-practice' },
  assumption:
    'What the peak rests on is the survey’s, the margin the user’s, or the customary one that is named beside it; the peak counts on every line. Loads that are yet to be connected come on top in full, and so do all charge points, those too that the meter may have seen.',
  countBands: false,
  divisible: false,
  metered: true,
  applies: (c, { meteredMargin }) => {
    const stated = c.installation.supply.meteredDemand;
    if (!stated) return notApplicable('the survey states no metered peak');
    const hidden = unseen(c);
    if (hidden) return hidden;
    if (storageBeyond(c, stated.current))
      return {
        verdict: 'not-determined',
        because: 'the storage heaters alone take more than the metered peak',
        gaps: [
          {
            kind: 'fact',
            fact: 'metered demand of the supply',
            obtain: 'measure over nights on which the storage heaters charge',
            disagree: true,
          },
        ],
      };
    if (meteredMargin !== undefined) return applicable;
    return {
      verdict: 'not-determined',
      because: 'the margin on the metered peak is not stated',
      gaps: [{ kind: 'fact', fact: 'meteredMargin', obtain: 'state a margin with the season of the measurement' }],
    };
  },
  existing: (loads, line, c, { meteredMargin, marginBy }, sheet) => {
    const stated = c.installation.supply.meteredDemand;
    const metered = sheet.part('meter');
    const peak =
      stated?.current.state === 'between'
        ? stated.current.most
        : (stated?.current ?? missing({ kind: 'fact', fact: 'metered demand of the supply' }));
    const meteredCurrent = metered.given('meteredCurrent', peak, stated?.about);
    const margin = meteredMargin ?? missing({ kind: 'fact', fact: 'meteredMargin' });
    const demandMargin = metered.given('demandMargin', margin, marginBy ?? 'stated by the user');
    metered.step(meteredDemandWithMargin, { meteredCurrent, demandMargin });
    return withNewLoads(loads, line, metered, sheet);
  },
};
