/** The figures that are looked for most, each in one call, by the words of the trade. */

import { argumentsDue, type Due, fieldsDue, mayBe, numberDue, oneOf } from '../../core/due.js';
import { type Figure, FigureSheet } from '../../core/figure.js';
import type {
  Cable,
  CableConstruction,
  ConductorMaterial,
  Insulation,
  ReferenceMethod,
} from '../../installation/index.js';
import { labels } from '../../installation/labels.js';
import { adiabaticArea, faultEnergy, loopImpedanceLimitOf } from '../../physics/index.js';
import { gateBounds } from '../../physics/time-current.js';
import { ggEnvelope } from '../../products/bs88/gg-envelope.js';
import { breakerEnvelope } from '../../products/en60898/envelope.js';
import {
  type AdiabaticFactor,
  type Amperes,
  CalculationError,
  type Celsius,
  type KelvinMetresPerWatt,
  kelvinMetresPerWatt,
  type Metres,
  metres,
  type Ohms,
  ratio,
  type Seconds,
  type SquareMillimetres,
  seconds,
  type Volts,
  volts,
} from '../../units/index.js';
import { capacityAsInstalled } from '../iec-family/capacity.js';
import { voltageDropTabulated } from '../iec-family/voltage-drop.js';
import { bsMethod, capacityTableFor, dropTableFor, leastOfFlexible } from './cable-tables.js';
import { bs } from './source.js';
import {
  distributionTimes,
  fuseOperatingCurrents,
  table4B1,
  table4B2,
  table4B3,
  table4C1,
  table4C2,
  table52_2,
  table411,
  table413,
} from './tables/index.js';

/** A cable as its tables name it. @inline */
export interface CableKind {
  readonly construction: CableConstruction;
  readonly material: ConductorMaterial;
  readonly insulation: Insulation;
  /** Cross-section of a line conductor, mm². */
  readonly area: SquareMillimetres;
}

const cableDue = /* @__PURE__ */ fieldsDue(
  {
    construction: /* @__PURE__ */ oneOf(() => labels.construction),
    material: /* @__PURE__ */ oneOf(() => labels.material),
    insulation: /* @__PURE__ */ oneOf(() => labels.insulation),
    area: /* @__PURE__ */ numberDue('squareMillimetres(6)'),
  },
  "{ construction: 'flat-twin-and-earth', material: 'copper', insulation: 'thermoplastic-70', area: squareMillimetres(6) }",
);

const asCable = ({ construction, material, insulation }: CableKind): Cable => ({
  construction,
  material,
  insulation,
  cores: 2,
  area: { state: 'unknown' },
  protective: 'none',
});

const notCovered = (what: string) => new CalculationError('not-covered', `not covered: ${what}`, { what });
const noTableOf = ({ construction, material, insulation }: CableKind, what: string) =>
  notCovered(`${what} of ${material} ${construction} cable with ${insulation} insulation: no table is entered for it`);

/** How a cable is installed. @inline */
export interface Installed {
  /** Reference method, a letter or number of Appendix 4. */
  readonly method: ReferenceMethod;
  /** Loaded conductors: 2 on one phase, 3 on three. */
  readonly loaded: 2 | 3;
  /** Temperature of the air around it, or of the ground with method D, °C. */
  readonly ambient: Celsius;
  /** Circuits side by side, this one included; 1 where it runs alone. */
  readonly circuits: number;
  /** How they lie, of several. */
  readonly arrangement?: 'bunched' | 'single-layer-wall' | 'single-layer-tray' | 'single-layer-ladder';
  /** Clearance between several cables in the ground. */
  readonly clearance?: 'touching' | 'one-diameter' | '0.125 m' | '0.25 m' | '0.5 m';
  /** Length over which thermal insulation surrounds it, m; with method D and 103 there is none to state. */
  readonly insulated?: Metres;
  /** In the ground: in a duct or direct. */
  readonly laying?: 'ducts' | 'direct';
  /** In the ground: thermal resistivity of the soil, K·m/W. */
  readonly soil?: KelvinMetresPerWatt;
  /** How single-core cables lie. */
  readonly formation?:
    | 'enclosed'
    | 'flat-touching'
    | 'flat-or-trefoil'
    | 'trefoil'
    | 'spaced-horizontal'
    | 'spaced-vertical';
}

const installedDue = /* @__PURE__ */ fieldsDue(
  {
    method: /* @__PURE__ */ oneOf(() => labels.method),
    loaded: /* @__PURE__ */ oneOf(() => [2, 3]),
    ambient: /* @__PURE__ */ numberDue('celsius(30)'),
    circuits: /* @__PURE__ */ numberDue('1, where it runs alone'),
    insulated: /* @__PURE__ */ mayBe(/* @__PURE__ */ numberDue('metres(0)')),
    soil: /* @__PURE__ */ mayBe(/* @__PURE__ */ numberDue('kelvinMetresPerWatt(2.5)')),
  },
  "{ method: 'C', loaded: 2, ambient: celsius(30), circuits: 1, insulated: metres(0) }",
);

const due = (value: unknown, name: string, why: string): void => {
  if (value === undefined) throw notCovered(`the capacity without '${name}', which is due ${why}`);
};

function ambientFactor(sheet: FigureSheet, { insulation }: CableKind, { method, ambient }: Installed) {
  const kind = insulation === 'thermosetting-60' ? undefined : insulation;
  if (kind === undefined) throw notCovered('a factor for the ambient temperature of rubber insulation');
  return bsMethod(method) === 'D'
    ? sheet.look(table4B2, { insulation: kind, groundTemperature: ambient })
    : sheet.look(table4B1, { insulation: kind, ambientTemperature: ambient });
}

function groupFactor(sheet: FigureSheet, { method, circuits, arrangement, clearance }: Installed) {
  if (circuits === 1) return sheet.given('groupFactor', ratio(1), 'it runs alone');
  const circuitsInGroup = ratio(circuits);
  if (bsMethod(method) === 'D') {
    due(clearance, 'clearance', 'where several cables lie in the ground');
    return sheet.look(table4C2, { circuitsInGroup, clearance: clearance ?? 'touching' });
  }
  due(arrangement, 'arrangement', 'where several circuits run side by side');
  return sheet.look(table4C1, { circuitsInGroup, arrangement: arrangement ?? 'bunched' });
}

function insulationFactor(sheet: FigureSheet, { method, insulated }: Installed) {
  if (insulated === undefined && !['D', '103'].includes(bsMethod(method)))
    throw notCovered(
      "the capacity without 'insulated': write metres(0) where no thermal insulation surrounds the cable",
    );
  if (insulated === undefined || insulated === 0)
    return sheet.given('insulationFactor', ratio(1), 'no thermal insulation around it');
  if (!['B', 'C', 'E', 'F', 'G'].includes(bsMethod(method)))
    throw notCovered(`insulation around a cable of method ${method}, which has insulation beside it already`);
  // the last factor of the table holds for every longer length
  return sheet.look(table52_2, { insulatedLength: metres(Math.min(insulated, 0.5)) });
}

function soilFactor(sheet: FigureSheet, { method, laying, soil }: Installed) {
  if (bsMethod(method) !== 'D') return sheet.given('soilFactor', ratio(1), 'in air');
  due(laying, 'laying', 'with method D');
  due(soil, 'soil', 'with method D');
  return sheet.look(table4B3, { laying: laying ?? 'direct', soilResistivity: soil ?? kelvinMetresPerWatt(2.5) });
}

/**
 * Current-carrying capacity of a cable as installed: the tabulated capacity by the factors for ambient temperature,
 * grouping, thermal insulation and soil.
 * @param cable construction, metal, insulation and size, mm²
 * @param installed method, loaded conductors, temperatures in °C, lengths in m, circuits side by side
 * @returns the capacity in A, with the factors, their tables and the weakest provenance on its sheet
 * @throws CalculationError `no-cell` where a table has no such size, method or factor, `not-covered` where no table is
 * entered for the cable or something is left open, `invalid-input` for arguments of another kind
 * @example
 * ```ts
 * import { celsius, metres, squareMillimetres } from 'ohmwright';
 * import { cableCapacity } from 'ohmwright/bs7671';
 *
 * const twinAndEarth = { construction: 'flat-twin-and-earth', material: 'copper', insulation: 'thermoplastic-70', area: squareMillimetres(6) } as const;
 * const capacity = cableCapacity(twinAndEarth, { method: 'C', loaded: 2, ambient: celsius(35), circuits: 2, arrangement: 'bunched', insulated: metres(0) });
 * capacity.text; // => '35.3 A'
 * capacity.sources[0]; // => 'BS 7671:2018+A2:2022, Table 4D5'
 * ```
 */
export function cableCapacity(cable: CableKind, installed: Installed): Figure<'capacity'> {
  argumentsDue('cableCapacity', ['cable', cable, cableDue], ['installed', installed, installedDue]);
  const sheet = new FigureSheet('Current-carrying capacity as installed');
  const { method, loaded, formation } = installed;
  const cord = cable.construction === 'flexible' && cable.area < leastOfFlexible;
  const table = capacityTableFor(asCable(cable), cord, loaded === 3 ? '3' : '2', bsMethod(method));
  if (!table) throw noTableOf(cable, 'the capacity');
  const keys = {
    method: bsMethod(method),
    loaded: String(loaded),
    system: loaded === 3 ? 'three-phase' : 'single-phase',
    build: 'multicore',
    ...(formation ? { formation } : {}),
    conductorArea: cable.area,
  };
  // the tables differ in their axes: each is asked by those that it has
  const own = Object.fromEntries(Object.entries(keys).filter(([name]) => table.axes.some((a) => a.name === name)));
  const capacity = sheet.step(capacityAsInstalled, {
    tabulatedCapacity: sheet.look(table, own as never),
    ambientFactor: ambientFactor(sheet, cable, installed),
    groupFactor: groupFactor(sheet, installed),
    insulationFactor: insulationFactor(sheet, installed),
    soilFactor: soilFactor(sheet, installed),
  });
  return sheet.figure('capacity', capacity, bs('Appendix 4, 5', 'memory'));
}

const circuitDue = /* @__PURE__ */ fieldsDue(
  {
    system: /* @__PURE__ */ oneOf(() => ['single-phase', 'three-phase']),
    current: /* @__PURE__ */ numberDue('amperes(32)'),
    length: /* @__PURE__ */ numberDue('metres(18)'),
  },
  "{ system: 'single-phase', current: amperes(32), length: metres(18) }",
);

/**
 * Voltage drop of a circuit from the tabulated drop per ampere and metre, with the conductors at their full temperature:
 * between line and neutral on one phase, between lines on three.
 * @param cable construction, metal, insulation and size, mm²
 * @param circuit single-phase or three-phase, design current, A, and length one way, m
 * @returns the drop in V, with its tables
 * @throws CalculationError `no-cell` where the table has no such size, `not-covered` where no table is entered for the cable,
 * `invalid-input` for arguments of another kind
 * @example
 * ```ts
 * import { amperes, metres, squareMillimetres } from 'ohmwright';
 * import { circuitVoltageDrop } from 'ohmwright/bs7671';
 *
 * const cable = { construction: 'flat-twin-and-earth', material: 'copper', insulation: 'thermoplastic-70', area: squareMillimetres(6) } as const;
 * circuitVoltageDrop(cable, { system: 'single-phase', current: amperes(32), length: metres(25) }).text; // => '5.84 V'
 * ```
 */
export function circuitVoltageDrop(
  cable: CableKind,
  circuit: { readonly system: 'single-phase' | 'three-phase'; readonly current: Amperes; readonly length: Metres },
): Figure<'voltageDrop'> {
  argumentsDue('circuitVoltageDrop', ['cable', cable, cableDue], ['circuit', circuit, circuitDue]);
  const sheet = new FigureSheet('Voltage drop of a circuit');
  const { system, current, length } = circuit;
  const found = dropTableFor(asCable(cable), cable.area, system, 'z');
  if (!found || found.dropFactor) throw noTableOf(cable, 'the voltage drop');
  const keys = { system, component: 'z', conductorArea: cable.area, formation: 'enclosed' };
  const own = Object.fromEntries(Object.entries(keys).filter(([name]) => found.drop.axes.some((a) => a.name === name)));
  const dropRate = sheet.look(found.drop, own as never);
  const drop = sheet.step(voltageDropTabulated, {
    dropRate,
    designCurrent: sheet.given('designCurrent', current),
    length: sheet.given('length', length),
  });
  return sheet.figure('voltageDrop', drop, bs('Appendix 4, 6.1'));
}

/** Standard of a circuit-breaker. @inline */
type BreakerStandard = 'EN 60898' | 'EN 61009';
/** Standard of a fuse. @inline */
type FuseStandard = 'BS 88-2' | 'BS 88-3' | 'BS 1361' | 'BS 1362' | 'BS 3036';

/** A fuse or circuit-breaker. @inline */
export type Protection =
  | { readonly standard: BreakerStandard; readonly curve: 'B' | 'C' | 'D'; readonly rating: Amperes }
  | { readonly standard: FuseStandard; readonly rating: Amperes };

const isBreaker = (p: Protection): p is Extract<Protection, { curve: string }> =>
  (p as { readonly curve?: unknown }).curve !== undefined;

const breakers: readonly BreakerStandard[] = ['EN 60898', 'EN 61009'];
const fuses: readonly FuseStandard[] = ['BS 88-2', 'BS 88-3', 'BS 1361', 'BS 1362', 'BS 3036'];
const ratingDue = /* @__PURE__ */ numberDue('amperes(32)');
const deviceExample = "{ standard: 'EN 60898', curve: 'B', rating: amperes(32) }";
const breakerDue = /* @__PURE__ */ fieldsDue(
  {
    standard: /* @__PURE__ */ oneOf(() => breakers),
    curve: /* @__PURE__ */ oneOf(() => ['B', 'C', 'D']),
    rating: ratingDue,
  },
  deviceExample,
);
const fuseDue = /* @__PURE__ */ fieldsDue(
  { standard: /* @__PURE__ */ oneOf(() => [...breakers, ...fuses]), rating: ratingDue },
  deviceExample,
);
/** A curve is due of a circuit-breaker, and goes with no fuse. */
const deviceDue: Due = (value, path) => {
  const { standard, curve } = (value ?? {}) as { readonly standard?: unknown; readonly curve?: unknown };
  const breaker = curve !== undefined || breakers.includes(standard as BreakerStandard);
  return (breaker ? breakerDue : fuseDue)(value, path);
};

const timeDue = /* @__PURE__ */ oneOf(() => [0.4, 5]);

/**
 * Largest earth fault loop impedance (maximum Zs) for a fuse or circuit-breaker at 230 V, with the voltage factor of 0.95.
 * It holds for hot conductors: what a tester reads on cold ones has to be less.
 * @param device standard, curve of a circuit-breaker, and rated current, A
 * @param time 0.4 s or 5 s; circuit-breakers have one figure for both
 * @returns the impedance in Ω: of circuit-breakers as printed, of fuses from the current that operates them
 * @throws CalculationError `no-cell` for a rating that the tables do not have, `invalid-input` for arguments of another kind
 * @example
 * ```ts
 * import { amperes } from 'ohmwright';
 * import { maxZs } from 'ohmwright/bs7671';
 *
 * maxZs({ standard: 'EN 60898', curve: 'B', rating: amperes(32) }, 0.4).text; // => '1.37 Ω'
 * maxZs({ standard: 'BS 88-3', rating: amperes(32) }, 0.4).text; // => '0.912 Ω'
 * ```
 */
export function maxZs(device: Protection, time: 0.4 | 5): Figure<'loopImpedanceLimit'> {
  argumentsDue('maxZs', ['device', device, deviceDue], ['time', time, timeDue]);
  const sheet = new FigureSheet('Largest earth fault loop impedance');
  const { rating: deviceRating } = device;
  if (isBreaker(device))
    return sheet.figure(
      'loopImpedanceLimit',
      sheet.look(table413, { printed: '2015', type: device.curve, deviceRating }),
    );
  const operatingCurrent = sheet.look(fuseOperatingCurrents, {
    device: device.standard,
    operatingTime: seconds(time),
    deviceRating,
  });
  const limit: Ohms = sheet.step(loopImpedanceLimitOf, {
    nominalVoltage: sheet.given('nominalVoltage', volts(230)),
    minimumVoltageFactor: sheet.given('minimumVoltageFactor', ratio(0.95), 'C_min'),
    operatingCurrent,
  });
  return sheet.figure('loopImpedanceLimit', limit, bs('411.4.4'));
}

const earthingDue = /* @__PURE__ */ oneOf(() => ['TN', 'TT']);
const finalDue = /* @__PURE__ */ oneOf(() => ['final', 'distribution']);
const voltageDue = /* @__PURE__ */ numberDue('volts(230)');

/**
 * Longest time in which a circuit has to be disconnected in an earth fault, for alternating current.
 * @param system `TN` (TN-S and TN-C-S) or `TT`
 * @param circuit a final circuit that Table 41.1 is for, or a distribution circuit or larger final circuit
 * @param nominalVoltage voltage from line to earth, V, above 50 to 1000
 * @returns the time in s, with its table
 * @throws CalculationError `no-cell` above 1000 V, `invalid-input` for arguments of another kind
 * @example
 * ```ts
 * import { volts } from 'ohmwright';
 * import { longestDisconnectionTime } from 'ohmwright/bs7671';
 *
 * longestDisconnectionTime('TN', 'final', volts(230)).value; // => 0.4
 * longestDisconnectionTime('TT', 'distribution', volts(230)).value; // => 1
 * ```
 */
export function longestDisconnectionTime(
  system: 'TN' | 'TT',
  circuit: 'final' | 'distribution',
  nominalVoltage: Volts,
): Figure<'requiredTime'> {
  argumentsDue(
    'longestDisconnectionTime',
    ['system', system, earthingDue],
    ['circuit', circuit, finalDue],
    ['nominalVoltage', nominalVoltage, voltageDue],
  );
  const sheet = new FigureSheet('Longest disconnection time');
  const time =
    circuit === 'final'
      ? sheet.look(table411, { system, current: 'AC', nominalVoltage })
      : sheet.look(distributionTimes, { supply: 'any', system });
  return sheet.figure('requiredTime', time);
}

/**
 * Time within which a circuit-breaker or gG fuse disconnects a fault current, by the gates of its standard: the longest
 * that the standard allows. A given device may be faster; its maker's curve says by how much.
 * @param device a circuit-breaker of EN 60898 or EN 61009, or a gG fuse of BS 88-2, and its rated current, A
 * @param current fault current, A, above 0
 * @returns the time in s, with the standard behind it
 * @throws CalculationError `no-cell` for a rating without gates, `not-covered` for other fuses, and for a current at which the
 * standard does not make it open, `invalid-input` for arguments of another kind
 * @example
 * ```ts
 * import { amperes } from 'ohmwright';
 * import { disconnectionTime } from 'ohmwright/bs7671';
 *
 * const device = { standard: 'EN 60898', curve: 'B', rating: amperes(32) } as const;
 * disconnectionTime(device, amperes(170)).value; // => 0.1
 * disconnectionTime(device, amperes(40)); // throws not-covered
 * ```
 */
export function disconnectionTime(device: Protection, current: Amperes): Figure<'operatingTime'> {
  argumentsDue('disconnectionTime', ['device', device, deviceDue], ['current', current, ratingDue]);
  if (!isBreaker(device) && device.standard !== 'BS 88-2') throw notCovered(`gates of fuses of ${device.standard}`);
  const envelope = isBreaker(device) ? breakerEnvelope(device.curve, device.rating) : ggEnvelope(device.rating);
  const { most } = gateBounds(envelope, current);
  if (most === undefined)
    throw notCovered(`a current of ${current} A: the standard does not make this device open at it`);
  const document = isBreaker(device) ? 'EN 60898-1' : 'BS 88-2';
  const sheet = new FigureSheet('Disconnection time');
  return sheet.figure('operatingTime', seconds(most), {
    document,
    clause: 'gates of the time-current zone',
    provenance: isBreaker(device) ? 'two-sources' : 'memory',
  });
}

const secondsDue = /* @__PURE__ */ numberDue('seconds(0.1)');
const factorDue = /* @__PURE__ */ numberDue('adiabaticFactor(115)');

/**
 * Smallest conductor that bears a fault current for a time (adiabatic equation), S = √(I²t)/k.
 * @param current fault current, A, 0 and up
 * @param time time that it lasts, s, above 0 to 5
 * @param k factor of the conductor, A·√s/mm², such as Table 54.3 has it
 * @returns the size in mm², not rounded up to one that is made
 * @throws CalculationError `out-of-range` for a time above 5 s, `invalid-input` for arguments of another kind
 * @example
 * ```ts
 * import { adiabaticFactor, amperes, seconds } from 'ohmwright';
 * import { adiabaticSize } from 'ohmwright/bs7671';
 *
 * adiabaticSize(amperes(860), seconds(0.1), adiabaticFactor(115)).text; // => '2.36 mm²'
 * adiabaticSize(amperes(860), seconds(9), adiabaticFactor(115)); // throws out-of-range
 * ```
 */
export function adiabaticSize(current: Amperes, time: Seconds, k: AdiabaticFactor): Figure<'minimumProtectiveArea'> {
  argumentsDue('adiabaticSize', ['current', current, ratingDue], ['time', time, secondsDue], ['k', k, factorDue]);
  const sheet = new FigureSheet('Smallest conductor by the adiabatic equation');
  const letThrough = sheet.step(faultEnergy, {
    faultCurrent: sheet.given('faultCurrent', current),
    faultTime: sheet.given('faultTime', time),
  });
  const area = sheet.step(adiabaticArea, { letThrough, adiabaticFactor: sheet.given('adiabaticFactor', k) });
  return sheet.figure('minimumProtectiveArea', area, bs('543.1.3'));
}
