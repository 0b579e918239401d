import {
  adjusted,
  by,
  choose,
  chosen,
  compare,
  derive,
  type Labels,
  type Line,
  largest,
  listOf,
  orElse,
  run,
  same,
  set,
  smallest,
  sum,
  weigh,
  when,
  whereLargest,
  whereSmallest,
} from '../../calculation/index.js';
import { type Comparison, isMissing, type Known, missing, type Span } from '../../core/index.js';
import { byCable, type Run, type Stretch } from '../../installation/index.js';
import { runReactance, runResistance, voltageInNetwork } from '../../physics/definitions.js';
import { dropOnRing, resistanceAtTemperature } from '../../physics/index.js';
import { conductorResistance } from '../../products/iec60228/conductor-resistance.js';
import {
  amperes,
  metres,
  millivoltsPerAmpereMetre,
  ohmsPerMetre,
  perKelvin,
  ratio,
  type Volts,
  type VoltsPerAmpereMetre,
  volts,
} from '../../units/index.js';
import { coreReactance, coreReactanceBy, metalCoefficient, metalCoefficientBy } from './conductor-constants.js';
import { dropCorrectionAtTemperature, dropCorrectionGroupFull } from './conductor-temperature.js';
import { currentOn, placeOf, powerFactorOf } from './drop-loads.js';
import { dropVerdict, statedDeparture, unknownBehindFeeders, windowVerdict } from './drop-verdict.js';
import { drawsOf, networkOf, type RunDraw, reversed, sectionFigures } from './exact-drop.js';
import {
  type LinePlace,
  ofCircuit,
  ofLineFollowed,
  ofPiece,
  ofRate,
  ofRun,
  ofRunLine,
  ofSequence,
  ofWholeCircuit,
  type RunLinePlace,
  type RunPlace,
  type SectionPlace,
} from './places.js';
import {
  balancedEquivalent,
  dropRateAtPowerFactor,
  dropRateAtWorstAngle,
  dropRateInParallel,
  dropRatioOf,
  dropToNeutral,
  voltageDropTabulated,
} from './voltage-drop.js';

/** Entries that a code may read when it gives the drop per ampere and metre of a run, or of a section of it. */
type RateNeeds = 'cable' | 'conductorArea' | 'phaseSystem' | 'dropFormation';

/** What a wiring code says of voltage drop. */
export interface DropRules {
  /** Drop per ampere and metre, or its resistive or reactive part. */
  rate(part: 'r' | 'x' | 'z'): Line<RateNeeds, VoltsPerAmpereMetre>;
  /** How a section counts where single-core cables drop more or less by how they lie. */
  formation(section: Stretch | undefined, three: boolean): Known<Labels['dropFormation']>;
  /** Largest area, mm², for which there is one figure without its parts; reactance is neglected up to it. */
  readonly wholeRateUpTo: number;
  /** Limit as a ratio for lighting and for other uses, and where it stands. */
  readonly limit: { readonly lighting: number; readonly other: number; readonly by: string };
  /** Smallest and largest supply voltage, and where they stand. */
  readonly supply: { readonly least: Volts; readonly most: Volts; readonly by: string };
  /** Window of a voltage-operated device of a charge point, where the code has one. */
  readonly window?: { readonly low: Volts; readonly high: Volts; readonly by: string };
  /** Clauses of the drop per metre, its corrections, its limit, and of conductors in parallel. */
  readonly clauses: { readonly drop: string; readonly limit: string };
  readonly dropWithinLimit: Comparison<'dropRatio', 'dropLimit'>;
  readonly insideWindow: Span<'pointVoltage', 'windowLow', 'windowHigh'>;
}

const partOf = (angle: ReturnType<typeof powerFactorOf>, part: 'cos' | 'sin') =>
  angle === undefined ? missing() : isMissing(angle) ? angle : ratio(angle[part]);

/** The exact voltage of a line at a supply voltage, in one phase sequence. */
const exactVoltage = (supply: 'lowestSupply' | 'highestSupply') =>
  run(
    voltageInNetwork,
    ['dropNetwork', supply, 'followedPlace', 'reversedSequence'],
    (v) => ({
      network: {
        sourceVoltage: v[supply],
        sections: v.reversedSequence ? reversed(v.dropNetwork.sections, v.followedPlace) : v.dropNetwork.sections,
      },
      section: v.dropNetwork.section,
      line: v.followedPlace,
    }),
    ({ network }) => sectionFigures(network.sections),
  );

/** The line that a verdict rests on, where there are several. */
const worstLineWords = /* @__PURE__ */ weigh(
  ['worstLine', 'severalLines', 'totalDrop'],
  ({ worstLine, severalLines, totalDrop }) =>
    severalLines === true && !isMissing(totalDrop) ? `${String(worstLine)}, where the drop is largest` : undefined,
);
const windowWords = (line: 'lowestLine' | 'highestLine', where: string) =>
  weigh([line, 'severalLines'], (v) =>
    v.severalLines === true && !isMissing(v[line]) ? `${where}, ${String(v[line])}` : where,
  );

const hasLighting = ({ feeds }: Run) => feeds.some((o) => o.kind === 'load' && o.purpose === 'lighting');
const ofLength = (s: SectionPlace, here: RunPlace) => s.circuit.run === here.run;
const sameLine = (x: RunLinePlace, here: LinePlace) => x.of.line === here.of.line;

/**
 * Voltage drop from the origin, distribution circuits included, on every line: the tabulated drop, of which the worst is
 * judged, and the exact voltage at the point at both ends of the tolerance of the supply.
 * @param rules the code's tables and limits
 */
export const voltageDropOf = (rules: DropRules) => {
  const inWindow = <const V extends 'voltageAtLowestSupply' | 'voltageAtHighestSupply', B extends Line>(
    pointVoltage: V,
    because: B,
  ) => adjusted(compare(rules.insideWindow, { as: { pointVoltage }, because }), ['unknownBehind'], windowVerdict);
  return {
    // drop per ampere and metre, section by section where they differ
    rates: {
      // without a known area the figure as a whole counts
      rateInParts: orElse(
        derive(['conductorArea'], ({ conductorArea }) => conductorArea > rules.wholeRateUpTo, {
          direction: { conductorArea: 1 },
        }),
        set(false),
      ),
      dropFormation: ofRate(({ section, run: { lines } }) => rules.formation(section, lines.length === 3)),
      resistiveRate: when('rateInParts', rules.rate('r'), rules.rate('z')),
      reactiveRate: when(
        'rateInParts',
        rules.rate('x'),
        set(millivoltsPerAmpereMetre(0), `neglected up to ${rules.wholeRateUpTo} mm²`),
      ),
      temperatureCorrection: choose('dropCorrection', {
        none: set(ratio(1), 'conductor at its largest operating temperature'),
        // figures of the governing section
        'group-at-same-load': by(dropCorrectionAtTemperature, rules.clauses.drop),
        'neighbours-at-full-load': by(dropCorrectionGroupFull, rules.clauses.drop),
      }),
      dropRate: choose('rateKind', {
        'as tabulated': rules.rate('z'),
        'at a power factor': by(dropRateAtPowerFactor, rules.clauses.drop),
        'at the worst angle': by(dropRateAtWorstAngle),
      }),
    },
    runs: {
      phaseSystem: ofRun((r): 'single-phase' | 'three-phase' =>
        r.run.lines.length === 3 ? 'three-phase' : 'single-phase',
      ),
      cable: ofRun((r) => r.run.cable),
      ring: ofRun((r) => r.run.ring === true),
      inParallel: ofRun((r) => (r.run.cable.parallel ?? 1) > 1),
      rateKind: ofRun(({ run: r, own, circuit }) => {
        const factor = powerFactorOf(r);
        if (isMissing(factor)) return factor;
        if (factor) return 'at a power factor';
        return circuit.options.dropTemperature !== undefined && own ? 'at the worst angle' : 'as tabulated';
      }),
      powerFactor: ofRun((r) => partOf(powerFactorOf(r.run), 'cos'), { by: 'of all that the run feeds' }),
      reactiveFactor: ofRun((r) => partOf(powerFactorOf(r.run), 'sin'), { by: 'of all that the run feeds' }),
      // the temperature of the section that governs is none of another cable
      dropCorrection: ofRun(
        ({ own, run: r, wholeRun, circuit }) =>
          (own && r === wholeRun ? circuit.options.dropTemperature : undefined) ?? 'none',
      ),
      dropRate: when(
        'inParallel',
        by(dropRateInParallel, undefined, {
          dropRate: largest('rates/dropRate'),
          parallelConductors: ofRun((r) => ratio(r.run.cable.parallel ?? 1), { by: 'they share the load equally' }),
        }),
        largest('rates/dropRate'),
      ),
      // a conductor at the temperature of its load, for the exact voltage
      resistance: by(runResistance, undefined, {
        resistancePerMetre: by(resistanceAtTemperature, undefined, {
          resistancePerMetre20: by(conductorResistance, undefined, {
            metal: ofRun((r) => r.run.cable.material),
            conductorClass: ofRun(({ run: { cable } }) => (cable.construction === 'flexible' ? '5' : '2')),
          }),
          temperatureCoefficient: set(perKelvin(metalCoefficient), metalCoefficientBy),
          conductorTemperature: when(
            ofRun((r) => r.own),
            when(
              ofRun((r) => r.run === r.wholeRun),
              orElse('hottestConductor', same('operatingTemperature')),
              orElse(largest('sections/conductorTemperature', { among: ofLength }), same('operatingTemperature')),
            ),
            same('operatingTemperature'),
          ),
        }),
      }),
      reactance: by(runReactance, undefined, {
        reactancePerMetre: set(ohmsPerMetre(coreReactance), coreReactanceBy),
      }),
    },
    // each run on each line that is followed, piece by piece where loads are tapped
    runLines: {
      lineAlone: ofRunLine(({ run: { lines }, of }) => lines.length !== 3 || of.balanced),
      tapped: ofRunLine(({ load }) => load.tapped),
      voltageDrop: sum('pieces/voltageDrop'),
      phaseDrop: choose('phaseSystem', {
        'single-phase': same('voltageDrop'),
        'three-phase': by(dropToNeutral),
      }),
    },
    pieces: {
      ownLineCurrent: when(
        'tapped',
        ofPiece(({ piece, of }) => (isMissing(piece) ? piece : amperes(piece.currents[placeOf(of.line)]))),
        ofPiece(({ load }) => currentOn(load, 'own'), { called: 'designCurrent' }),
      ),
      otherLineCurrents: when(
        'tapped',
        ofPiece(({ piece, of }) => {
          if (isMissing(piece)) return piece;
          const [a, b, c] = piece.currents;
          return amperes(a + b + c - piece.currents[placeOf(of.line)]);
        }),
        ofPiece(({ load }) => currentOn(load, 'others')),
      ),
      designCurrent: when('lineAlone', same('ownLineCurrent'), by(balancedEquivalent)),
      ringPosition: set(ratio(0.5), 'all of the load at the farthest point'),
      voltageDrop: when(
        'ring',
        by(dropOnRing),
        by(voltageDropTabulated, rules.clauses.drop, {
          length: when(
            'tapped',
            ofPiece(({ piece }) => (isMissing(piece) ? piece : metres(piece.length)), { by: 'between taps' }),
            same('length'),
          ),
        }),
      ),
    },
    lines: {
      lineName: ofLineFollowed(({ of }) => of.name),
      followedPlace: ofLineFollowed(({ of }) => placeOf(of.line)),
      totalDrop: sum('runLines/phaseDrop', { among: sameLine }),
      dropSteps: listOf('runLines/phaseDrop', sameLine),
      dropAlong: derive(['dropSteps', 'wayNames'], ({ dropSteps, wayNames }) =>
        [...new Set(wayNames)].map((run) => ({
          run,
          drop: volts(dropSteps.reduce<number>((sum, drop, i) => (wayNames[i] === run ? sum + drop : sum), 0)),
        })),
      ),
      dropNetwork: derive(
        ['wayResistances', 'wayReactances', 'wayLengths', 'lineDraws', 'nominalVoltage'],
        ({ wayResistances, wayReactances, wayLengths, lineDraws, nominalVoltage }) =>
          networkOf(
            lineDraws as readonly RunDraw[],
            wayResistances.map((r, i) => ({
              r,
              x: wayReactances[i] ?? 0,
              length: wayLengths[i] as number,
            })),
            nominalVoltage,
          ),
      ),
      lineDraws: ofLineFollowed(({ of, circuit }) => drawsOf(of, circuit.run)),
      voltageAtLowestSupply: smallest('sequences/voltageAtLowestSupply'),
      voltageAtHighestSupply: largest('sequences/voltageAtHighestSupply'),
    },
    sequences: {
      reversedSequence: ofSequence((s) => s.reversed),
      voltageAtLowestSupply: exactVoltage('lowestSupply'),
      voltageAtHighestSupply: exactVoltage('highestSupply'),
    },
    circuit: {
      wayNames: ofCircuit((c) => [...c.path.feeders, c.run].flatMap(byCable).map((r) => r.id)),
      wayResistances: listOf('runs/resistance'),
      wayReactances: listOf('runs/reactance'),
      wayLengths: listOf('runs/length'),
      totalDrop: largest('lines/totalDrop'),
      worstLine: whereLargest('lines/totalDrop', 'lineName'),
      dropAlong: whereLargest('lines/totalDrop', 'dropAlong'),
      dropRatio: by(dropRatioOf, rules.clauses.limit),
      feedsLighting: ofCircuit((c) => hasLighting(c.run)),
      dropLimitOfCode: when('feedsLighting', set(ratio(rules.limit.lighting)), set(ratio(rules.limit.other))),
      dropLimitStated: ofCircuit((c) => c.options.dropLimit ?? 0),
      // a tighter limit is the user's to set; a looser one is a departure and leaves the code's in its place
      dropLimitBy: derive(
        ['dropLimitStated', 'dropLimitOfCode'],
        ({ dropLimitStated: stated, dropLimitOfCode: code }) =>
          stated === 0 || stated > code ? 'the code' : 'the user',
      ),
      dropDeparture: derive(['dropLimitStated', 'dropLimitOfCode'], (of) =>
        statedDeparture(of.dropLimitStated, of.dropLimitOfCode),
      ),
      unknownBehind: ofCircuit(unknownBehindFeeders),
      dropLimit: choose('dropLimitBy', {
        'the code': when(
          'feedsLighting',
          set(ratio(rules.limit.lighting), rules.limit.by),
          set(ratio(rules.limit.other), rules.limit.by),
        ),
        'the user': ofCircuit((c) => ratio(c.options.dropLimit ?? 0), { by: 'set by the user' }),
      }),
      severalLines: ofWholeCircuit((c) => c.followed().length > 1),
      lowestLine: whereSmallest('lines/voltageAtLowestSupply', 'lineName'),
      highestLine: whereLargest('lines/voltageAtHighestSupply', 'lineName'),
      lowestSupply: set(rules.supply.least, rules.supply.by),
      highestSupply: set(rules.supply.most, rules.supply.by),
      voltageAtLowestSupply: smallest('lines/voltageAtLowestSupply'),
      voltageAtHighestSupply: largest('lines/voltageAtHighestSupply'),
      windowed: ofCircuit(
        (c) =>
          rules.window !== undefined &&
          c.run.feeds.some(
            (o) =>
              o.kind === 'charge-point' &&
              o.openPenDevice?.state === 'known' &&
              o.openPenDevice.value === 'open-pen-detection-window',
          ),
      ),
      windowLow: set(rules.window?.low ?? volts(0), rules.window?.by),
      windowHigh: set(rules.window?.high ?? volts(0), rules.window?.by),
    },
    checks: [
      adjusted(
        compare(rules.dropWithinLimit, { because: worstLineWords }),
        ['unknownBehind', 'dropDeparture', 'dropRatio', 'dropLimit', 'nominalVoltage', 'dropAlong'],
        dropVerdict,
      ),
      chosen('windowed', {
        false: [],
        true: [
          inWindow('voltageAtLowestSupply', windowWords('lowestLine', 'at the smallest supply voltage')),
          inWindow('voltageAtHighestSupply', windowWords('highestLine', 'at the largest supply voltage')),
        ],
      }),
    ],
  };
};
