import { type ChargingSession, type NetworkPoint, schedule } from '../charging/index.js';
import { type Line, lineConductors } from '../installation/index.js';
import {
  type Amperes,
  amperes,
  invalidInput,
  type Problem,
  seconds,
  type VoltAmperes,
  type Volts,
  type WattHours,
  wattHours,
} from '../units/index.js';
import type { Hours } from './hours.js';
import type { Item } from './item.js';
import { type PriceBook, quotationOf } from './price.js';

/** A vehicle of the fleet on the night that is looked at; they are taken in turn. @inline */
export interface FleetVehicle {
  /** Arrival and departure, s since midnight of the first day. */
  readonly arrives: number;
  readonly leaves: number;
  /** Energy that it needs at the point, Wh. */
  readonly energy: WattHours;
}

/** What is built in a year, and what the site has from then on. @inline */
export interface BuildStage {
  /** Year from which it is there. */
  readonly from: number;
  /** What is done, in words. */
  readonly what: string;
  /** What the supply carries, A per line. */
  readonly capacity: Amperes;
  /** Charge points that are there in all, single-phase, on the lines in turn. */
  readonly points: number;
  /** Setting of each, A. */
  readonly setting: Amperes;
  /** Whether a load control holds them within what the supply leaves. */
  readonly managed: boolean;
  /** Material and hours of this stage, for the price book. */
  readonly work?: { readonly items: readonly Item[]; readonly hours: Hours };
  /** What others ask for it, such as the network operator, in the smallest coin, without tax. */
  readonly quoted?: number;
  /** What the network operator charges for the capacity that is agreed from then on, year by year; nothing when absent. */
  readonly agreedCapacity?: {
    /** Capacity that is agreed, VA. */
    readonly agreed: VoltAmperes;
    /** Charge for each kVA in a month, in the smallest coin, without tax. */
    readonly monthly: number;
  };
}

/** One way to build a site up over the years. @inline */
export interface SiteWay {
  readonly id: string;
  readonly title: string;
  /** In order of their years; the first in the first year or before. */
  readonly stages: readonly BuildStage[];
}

/** A site over years, and the ways that are compared. */
export interface YearsQuestion {
  /** Years in order, each with the vehicles that want to charge in it. */
  readonly years: readonly { readonly year: number; readonly vehicles: number }[];
  /** Vehicles as they come, taken in turn. */
  readonly fleet: readonly FleetVehicle[];
  /** Everything else on the supply at its most, A per line: L1, L2, L3. */
  readonly existing: readonly [Amperes, Amperes, Amperes];
  /** Voltage of a line to neutral, V. */
  readonly voltage: Volts;
  readonly ways: readonly SiteWay[];
  readonly prices: PriceBook;
}

/** How a way fares in a year. @inline */
export interface YearOfWay {
  readonly year: number;
  /** Vehicles that want to charge, and those that have no point. */
  readonly vehicles: number;
  readonly withoutPoint: number;
  /** Largest current on a line, A: of all points at once where nothing manages them, at most the capacity else. */
  readonly most: Amperes;
  /** Whether the supply carries it; points without a load control beyond it must not be connected. */
  readonly carried: boolean;
  /** Energy that a night asks for, Wh. */
  readonly asked: WattHours;
  /** Energy that it leaves lacking, Wh; not known where the supply does not carry it. */
  readonly lacking?: WattHours;
  /** Whether every vehicle gets what it needs within what the supply carries. */
  readonly suffices: boolean;
  /** Spent in this year, in the smallest coin, without tax: what is built, and the charge for agreed capacity. */
  readonly spent: number;
  /** Of that the charge for agreed capacity. */
  readonly capacityCharge: number;
}

/** What a way comes to. @inline */
export interface WayOverYears {
  readonly id: string;
  readonly title: string;
  readonly years: readonly YearOfWay[];
  /** The first year in which it does not suffice; none where it does throughout. */
  readonly ceases?: number;
  /** Energy lacking in a night, summed over one night of each year, Wh; unknown where a year is not carried. */
  readonly lacking?: WattHours;
  /** Spent in all years, in the smallest coin, without tax, interest and rises of price. */
  readonly spent: number;
  /** What has no price, and is not in it. */
  readonly unpriced: readonly string[];
}

const lineOf = (k: number): Line => lineConductors[k % lineConductors.length] as Line;

function problemsOf({ years, fleet, existing, voltage, ways }: YearsQuestion): readonly Problem[] {
  const problems: Problem[] = [];
  const say = (path: Problem['path'], message: string) => void problems.push({ path, message });
  const count = (value: number) => Number.isSafeInteger(value) && value >= 0;
  const current = (value: number) => Number.isFinite(value) && value >= 0;
  if (years.length === 0) say(['years'], 'are none');
  years.forEach(({ year, vehicles }, i) => {
    if (!count(vehicles)) say(['years', i, 'vehicles'], 'is a whole number from 0');
    if (i > 0 && !(year > (years[i - 1]?.year ?? 0))) say(['years', i, 'year'], 'comes after the one ahead of it');
  });
  if (fleet.length === 0) say(['fleet'], 'has no vehicle');
  fleet.forEach(({ arrives, leaves, energy }, i) => {
    if (!(leaves > arrives)) say(['fleet', i, 'leaves'], 'is after the arrival');
    if (!current(energy)) say(['fleet', i, 'energy'], 'is 0 Wh and up');
  });
  if (existing.length !== 3 || !existing.every(current)) say(['existing'], 'has three currents of 0 A and up');
  if (!(voltage > 0 && Number.isFinite(voltage))) say(['voltage'], 'is above 0 V');
  ways.forEach(({ stages }, w) => {
    const first = stages[0];
    if (!first || first.from > (years[0]?.year ?? 0)) say(['ways', w, 'stages'], 'begin in the first year or before');
    stages.forEach((s, i) => {
      const at = ['ways', w, 'stages', i];
      if (i > 0 && !(s.from > (stages[i - 1]?.from ?? 0))) say([...at, 'from'], 'comes after the stage ahead of it');
      if (!current(s.capacity)) say([...at, 'capacity'], 'is 0 A and up');
      if (!count(s.points)) say([...at, 'points'], 'is a whole number from 0');
      if (!(s.setting >= 6 && Number.isFinite(s.setting))) say([...at, 'setting'], 'is 6 A and up');
      const { agreed = 0, monthly = 0 } = s.agreedCapacity ?? {};
      if (!(current(agreed) && current(monthly))) say([...at, 'agreedCapacity'], 'has a capacity and a charge from 0');
    });
  });
  return problems;
}

/** Energy that so many vehicles lack where a load control gives them what the supply leaves, Wh. */
function lackingWith({ fleet, existing, voltage }: YearsQuestion, stage: BuildStage, served: number): number {
  if (served === 0) return 0;
  const points = Array.from(
    { length: served },
    (_, k): NetworkPoint => ({
      id: `${k}`,
      node: 'intake',
      lines: [lineOf(k)],
      most: stage.setting,
    }),
  );
  const sessions = points.map(({ id }, k): ChargingSession => {
    const { arrives, leaves, energy } = fleet[k % fleet.length] as FleetVehicle;
    return { id, point: id, arrives: seconds(arrives), leaves: seconds(leaves), energy };
  });
  const left = (k: 0 | 1 | 2) => amperes(Math.max(0, stage.capacity - existing[k]));
  const found = schedule({
    network: { nodes: [{ id: 'intake', limit: [left(0), left(1), left(2)] }], points },
    sessions,
    policy: 'earliest-deadline',
    stage: 'zero-or-least',
    voltage,
    from: seconds(Math.min(...fleet.map((v) => v.arrives))),
    to: seconds(Math.max(...fleet.map((v) => v.leaves))),
    step: seconds(900),
  });
  return found.shortfall;
}

/** Charge for the agreed capacity of a stage in a year, in the smallest coin. */
const chargeOf = ({ agreedCapacity }: BuildStage): number =>
  agreedCapacity ? Math.round((agreedCapacity.agreed / 1000) * agreedCapacity.monthly * 12) : 0;

function yearOf(question: YearsQuestion, stage: BuildStage, year: number, vehicles: number, built: number): YearOfWay {
  const { fleet, existing } = question;
  const needOf = (k: number): number => (fleet[k % fleet.length] as FleetVehicle).energy;
  const sum = (from: number, to: number) => {
    let total = 0;
    for (let k = from; k < to; k++) total += needOf(k);
    return total;
  };
  const served = Math.min(vehicles, stage.points);
  const all = lineConductors.map(
    (_, k) => (existing[k] as number) + stage.setting * Math.ceil(Math.max(0, stage.points - k) / 3),
  );
  const most = Math.max(...all);
  const carried = Math.max(...existing) <= stage.capacity && (stage.managed || most <= stage.capacity);
  const asked = sum(0, vehicles);
  // what is not managed is carried at full current: a vehicle lacks what its stay is too short for
  const unlimited = { ...stage, capacity: amperes(most) };
  const lacking = carried
    ? sum(served, vehicles) + lackingWith(question, stage.managed ? stage : unlimited, served)
    : undefined;
  return {
    year,
    vehicles,
    withoutPoint: vehicles - served,
    most: amperes(stage.managed ? Math.min(most, Math.max(stage.capacity, ...existing)) : most),
    carried,
    asked: wattHours(asked),
    ...(lacking === undefined ? {} : { lacking: wattHours(lacking) }),
    suffices: lacking !== undefined && lacking <= 1,
    spent: built + chargeOf(stage),
    capacityCharge: chargeOf(stage),
  };
}

/**
 * Compares ways to build up a site over the years: a larger supply, a transformer, load management, fewer or smaller points,
 * building in stages. Of each: what is spent by the price book and by what others quote, the energy that a night leaves
 * lacking, year by year, and the year in which it ceases to suffice. Everything else on the supply counts at its most
 * throughout the night, so that real nights lack no more; who leaves first is served first. Money is nominal: no tax, no
 * interest, no rise of prices.
 * @param question years, vehicles, other load in A, ways, prices
 * @returns the ways in the order in which they were given; A, Wh, money in the smallest coin
 * @throws CalculationError `invalid-input` with the path of each problem
 * @example
 * ```ts
 * import { amperes, kilowattHours, volts } from 'ohmwright';
 * import { compareOverYears } from 'ohmwright/site';
 *
 * const stage = { from: 2027, what: 'six points', capacity: amperes(100), points: 6, setting: amperes(32), managed: true };
 * const [managed] = compareOverYears({
 *   years: [{ year: 2027, vehicles: 3 }, { year: 2028, vehicles: 6 }, { year: 2029, vehicles: 9 }],
 *   fleet: [{ arrives: 64800, leaves: 108000, energy: kilowattHours(10) }],
 *   existing: [amperes(60), amperes(60), amperes(60)], voltage: volts(230),
 *   ways: [{ id: 'managed', title: 'Load management', stages: [{ ...stage, quoted: 150000 }] }],
 *   prices: { format: 'prices/1', currency: 'GBP', items: {}, hour: 4500, taxBasisPoints: 2000 },
 * });
 * managed?.ceases; // => 2029
 * managed?.spent; // => 150000
 * ```
 */
export function compareOverYears(question: YearsQuestion): readonly WayOverYears[] {
  const problems = problemsOf(question);
  if (problems.length > 0) throw invalidInput('the comparison over years', problems);
  const { years, ways, prices } = question;
  const [first] = years;
  return ways.map(({ id, title, stages }): WayOverYears => {
    const unpriced = new Set<string>();
    const costs = stages.map(({ work, quoted = 0 }) => {
      const quotation = work && quotationOf(work.items, work.hours, prices);
      for (const open of quotation?.open ?? []) unpriced.add(open);
      return quoted + (quotation?.net ?? 0);
    });
    const found = years.map(({ year, vehicles }, i) => {
      const at = stages.filter((s) => s.from <= year).length - 1;
      const since = i === 0 ? Number.NEGATIVE_INFINITY : (years[i - 1]?.year ?? (first?.year as number));
      const spent = costs.reduce((sum, cost, k) => {
        const { from } = stages[k] as BuildStage;
        return from > since && from <= year ? sum + cost : sum;
      }, 0);
      return yearOf(question, stages[at] as BuildStage, year, vehicles, spent);
    });
    const lacking = found.every((y) => y.lacking !== undefined)
      ? found.reduce((sum, y) => sum + (y.lacking as number), 0)
      : undefined;
    const ceases = found.find((y) => !y.suffices)?.year;
    return {
      id,
      title,
      years: found,
      ...(ceases === undefined ? {} : { ceases }),
      ...(lacking === undefined ? {} : { lacking: wattHours(lacking) }),
      spent: found.reduce((sum, y) => sum + y.spent, 0),
      unpriced: [...unpriced],
    };
  });
}
