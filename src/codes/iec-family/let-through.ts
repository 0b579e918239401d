import { betweenSteps, by, choose, derive, open, run, same, set, weigh, when } from '../../calculation/index.js';
import { type CheckResult, type Gap, isMissing, type Known, missing } from '../../core/index.js';
import {
  boundedFaultEnergy,
  directComponentFactor,
  largerFaultCurrent,
  lesserEnergy,
  timeOnCurve,
} from '../../physics/definitions.js';
import { faultEnergy } from '../../physics/index.js';
import { energyLimits } from '../../products/en60898/energy-limiting-classes.js';
import {
  type AmpereSquaredSeconds,
  type Amperes,
  ampereSquaredSeconds,
  amperes,
  hertz,
  ratio,
  seconds,
} from '../../units/index.js';
import type { CircuitPlace } from '../wiring-code.js';
import { opened } from './opened.js';
import { type FaultPlace, ofCircuit, ofFault } from './places.js';
import { delayOf, isSetToNone, residualUpstream } from './residual-position.js';

const noResidual: Gap = { kind: 'fact', fact: 'residual current device that sees the fault' };
const noClass: Gap = { kind: 'fact', fact: 'limit of the let-through energy by class' };

/** The residual current device nearest to the circuit, where it sees the fault and it is known that no delay is set on it. */
function residualOf({ circuit, conductor }: FaultPlace) {
  const nearest = residualUpstream(circuit.path).at(-1);
  return conductor === 'line' || !nearest || !isSetToNone(nearest) ? undefined : nearest;
}
/** General only where it is stated or cannot be otherwise. */
function isGeneral(place: FaultPlace): boolean {
  const device = residualOf(place);
  const { delay } = device ? delayOf(device) : {};
  return delay?.state === 'known' && delay.value === 'general';
}

/** Class as marked; of a range the least. An unmarked circuit-breaker may be of class 1, which has no limit. */
function energyClassOf({ run: { device } }: CircuitPlace): Known<'1' | '2' | '3'> {
  const { energyClass: marked } = device;
  if (!marked || marked.state === 'unknown')
    return missing({
      kind: 'fact',
      fact: 'energy limiting class',
      obtain:
        marked?.obtain ??
        "the figure in a square beside the breaking capacity; unmarked, its maker's let-through energy",
    });
  return String(marked.state === 'known' ? marked.value : marked.least) as '1' | '2' | '3';
}

const tooSlow = (faultCurrent: Amperes): Known<AmpereSquaredSeconds> =>
  missing({
    kind: 'fact',
    fact: 'operating time of the circuit-breaker',
    obtain: `the fault current of ${faultCurrent.toPrecision(4)} A is below its instantaneous trip: its standard bounds the time only loosely; take the maker's curve`,
  });
const tooLong = (faultCurrent: Amperes): Known<AmpereSquaredSeconds> =>
  missing({
    kind: 'fact',
    fact: 'operating time of the fuse',
    obtain: `the fault current of ${faultCurrent.toPrecision(4)} A takes it longer than 5 s; the adiabatic equation ends there`,
  });

const breakerTime = () => set(seconds(0.1), 'a circuit-breaker has to trip in less: EN 60898-1 Table 7');
const lastPoint = 'the last published point: at a larger current a fuse lets through no more';

const ofClass = (level: 'breakingCapacity' | ReturnType<typeof set<Amperes>>) =>
  by(energyLimits, undefined, { type: 'tripType', breakingCapacity: level });

const ofBreaker = (clause: string) =>
  choose('breakerClears', {
    'at once': when('classKnown', by(lesserEnergy), same('boundedEnergy')),
    'by the residual current device': by(faultEnergy, clause, {
      faultTime: when(
        'residualGeneral',
        set(seconds(0.04), 'break time of the residual current device at five times its rated current, EN 61008-1'),
        set(seconds(0.15), 'break time of the residual current device at five times its rated current, EN 61008-1'),
      ),
    }),
    late: derive(['faultCurrent'], ({ faultCurrent }) => tooSlow(faultCurrent)),
  });

/**
 * Energy that the device of the circuit lets through in a fault, and what is said of it.
 * @param clause clause of the code by which the energy is I²t
 * @param byFaultLevel the guide that reads class 3 by the fault level for protective conductors; as marked elsewhere
 */
export const letThrough = (clause: string, byFaultLevel: string) => ({
  circuit: {
    makersGiven: ofCircuit((c) => c.options.makersLetThrough !== undefined),
    energyClass: ofCircuit<'1' | '2' | '3'>(energyClassOf),
  },
  faults: {
    // circuit-breakers
    residualOperatingCurrent: ofFault((f) => residualOf(f)?.rating ?? missing(noResidual), {
      called: 'rating of the residual current device',
    }),
    residualGeneral: ofFault(isGeneral),
    residualClearing: derive(
      ['residualOperatingCurrent'],
      ({ residualOperatingCurrent: rated }): Known<Amperes> => amperes(5 * rated),
      { direction: { residualOperatingCurrent: 1 } },
    ),
    breakerClears: weigh(
      ['faultCurrent', 'instantaneousTrip', 'residualClearing'],
      ({ faultCurrent, instantaneousTrip, residualClearing }) => {
        if (isMissing(instantaneousTrip)) return instantaneousTrip;
        if (isMissing(faultCurrent)) return faultCurrent;
        if (faultCurrent >= instantaneousTrip) return 'at once';
        const residual = !isMissing(residualClearing) && faultCurrent >= residualClearing;
        return residual ? 'by the residual current device' : 'late';
      },
      { direction: { faultCurrent: 1, instantaneousTrip: -1, residualClearing: -1 } },
    ),
    atDevice: ofFault(({ circuit, end }) => end === 'near' && circuit.cableNumber === 0),
    ofProtective: ofFault(({ conductor }) => conductor === 'protective'),
    // a declared impedance may be higher than the real one: the prospective current guards the bound
    guarded: ofFault(({ conductor, end }) => conductor === 'protective' && end === 'near'),
    guardedCurrent: when(
      'guarded',
      when(
        ofFault(({ circuit }) => circuit.cableNumber === 0),
        by(largerFaultCurrent),
        by(largerFaultCurrent, undefined, { maximumFaultCurrent: 'currentAtChange' }),
      ),
      same('faultCurrent'),
    ),
    // with the largest direct-current component of low voltage
    boundedEnergy: by(boundedFaultEnergy, undefined, {
      faultCurrent: 'guardedCurrent',
      faultTime: breakerTime(),
      thermalFactor: by(directComponentFactor, undefined, {
        peakFactor: set(ratio(1.8), 'IEC 60909-0, need not exceed 1.8 at low voltage'),
        frequency: set(hertz(50)),
        faultTime: breakerTime(),
      }),
    }),
    // the limits of a class hold up to the marked capacity; those of class 2 are recalled and have to be accepted
    classApplies: weigh(
      ['deviceFamily', 'tripType', 'energyClass', 'acceptsMemory', 'breakingCapacity', 'guardedCurrent'],
      (v) =>
        v.deviceFamily === 'circuit-breaker' &&
        v.tripType !== 'D' &&
        (v.energyClass === '3' || (v.energyClass === '2' && v.acceptsMemory === true)) &&
        !isMissing(v.breakingCapacity) &&
        !isMissing(v.guardedCurrent) &&
        v.guardedCurrent <= v.breakingCapacity,
      { direction: { breakingCapacity: 1, guardedCurrent: -1 } },
    ),
    // a device that breaks more than it meets lets through no more than one that is marked for what it meets
    classLevel: weigh(
      ['ofProtective', 'energyClass', 'breakingCapacity', 'guardedCurrent', 'maximumFaultCurrent'],
      (v) => {
        if (v.ofProtective !== true || v.energyClass !== '3' || isMissing(v.breakingCapacity)) return 'as marked';
        // a computed current alone may rest on a declared impedance
        if (isMissing(v.guardedCurrent) || isMissing(v.maximumFaultCurrent)) return 'as marked';
        const level = Math.max(v.guardedCurrent, v.maximumFaultCurrent);
        if (level <= 3000 && v.breakingCapacity > 3000) return '3 kA';
        return level <= 6000 && v.breakingCapacity > 6000 ? '6 kA' : 'as marked';
      },
      { direction: { breakingCapacity: 1, guardedCurrent: -1, maximumFaultCurrent: -1 } },
    ),
    classEnergy: when(
      'classApplies',
      choose('classLevel', {
        '3 kA': ofClass(set(amperes(3000), byFaultLevel)),
        '6 kA': ofClass(set(amperes(6000), byFaultLevel)),
        'as marked': ofClass('breakingCapacity'),
      }),
      open(noClass),
    ),
    // over a range in which the class holds for a part only, the bound alone: it acquits, never condemns
    classKnown: weigh(['classEnergy'], ({ classEnergy }) => !isMissing(classEnergy), { direction: { classEnergy: 1 } }),
    // fuses
    fuseClears: weigh(
      ['faultCurrent', 'slowOperatingCurrent', 'quickOperatingCurrent'],
      ({ faultCurrent, slowOperatingCurrent, quickOperatingCurrent }) => {
        if (isMissing(faultCurrent)) return faultCurrent;
        if (isMissing(slowOperatingCurrent)) return slowOperatingCurrent;
        if (faultCurrent < slowOperatingCurrent) return 'after 5 s';
        if (isMissing(quickOperatingCurrent)) return 'within 5 s';
        return faultCurrent <= quickOperatingCurrent ? 'on the curve' : 'within 0.4 s';
      },
      { direction: { faultCurrent: 1, slowOperatingCurrent: -1, quickOperatingCurrent: -1 } },
    ),
    // at the device it is that of the prospective current; farther away a circuit-breaker lets through less, a fuse more
    makersServes: weigh(
      ['makersGiven', 'atDevice', 'deviceFamily', 'breakerClears'],
      ({ makersGiven, atDevice, deviceFamily, breakerClears }) =>
        makersGiven === true &&
        (atDevice === true || (!isMissing(deviceFamily) && deviceFamily !== 'fuse' && breakerClears === 'at once')),
      { direction: { breakerClears: 1 } },
    ),
    letThrough: betweenSteps(
      'faultCurrent',
      ['instantaneousTrip', 'residualClearing', 'breakingCapacity', 'slowOperatingCurrent', 'quickOperatingCurrent'],
      when(
        'makersServes',
        ofFault(({ circuit: { options } }) => ampereSquaredSeconds(options.makersLetThrough ?? 0), {
          by: "the maker's figure",
        }),
        choose('deviceFamily', {
          'circuit-breaker': ofBreaker(clause),
          'old circuit-breaker': ofBreaker(clause),
          fuse: choose('fuseClears', {
            'after 5 s': derive(['faultCurrent'], ({ faultCurrent }) => tooLong(faultCurrent)),
            'on the curve': by(faultEnergy, clause, {
              faultTime: run(timeOnCurve, ['faultCurrent', 'quickOperatingCurrent', 'slowOperatingCurrent'], (v) => ({
                points: [
                  { current: v.quickOperatingCurrent, time: 0.4 },
                  { current: v.slowOperatingCurrent, time: 5 },
                ],
                current: v.faultCurrent,
              })),
            }),
            'within 0.4 s': by(faultEnergy, clause, {
              faultCurrent: 'quickOperatingCurrent',
              faultTime: set(seconds(0.4), lastPoint),
            }),
            'within 5 s': by(faultEnergy, clause, {
              faultCurrent: 'slowOperatingCurrent',
              faultTime: set(seconds(5), lastPoint),
            }),
          }),
        }),
      ),
    ),
    energyIsBound: when(
      'makersServes',
      set(false),
      choose('deviceFamily', {
        'circuit-breaker': set(true),
        'old circuit-breaker': set(true),
        fuse: derive(['fuseClears'], ({ fuseClears }) => fuseClears.startsWith('within')),
      }),
    ),
    energyRests: when(
      'makersServes',
      set("Rests on the maker's let-through energy."),
      choose('deviceFamily', {
        'circuit-breaker': breakerRests(byFaultLevel),
        'old circuit-breaker': breakerRests(byFaultLevel),
        fuse: derive(
          ['fuseClears'],
          ({ fuseClears }) =>
            fuseClears !== 'after 5 s' &&
            'Rests on operating currents of the fuse worked back from printed loop impedances.',
        ),
      }),
    ),
  },
});

const breakerRests = (byFaultLevel: string) =>
  choose('breakerClears', {
    'at once': weigh(
      ['classEnergy', 'boundedEnergy', 'energyClass', 'classLevel'],
      ({ classEnergy, boundedEnergy, energyClass, classLevel }) =>
        !isMissing(classEnergy) && (isMissing(boundedEnergy) || classEnergy <= boundedEnergy)
          ? `Rests on the limit of energy limiting class ${energyClass} of EN 60898-1${isMissing(classLevel) || classLevel === 'as marked' ? '' : ` at ${classLevel}, ${byFaultLevel}`}, a figure from memory (grade C): compare with the maker's.`
          : 'Rests on the bound of a fault cleared in less than 0.1 s with the largest direct-current component of IEC 60909-0.',
      { direction: { classEnergy: -1, boundedEnergy: 1 } },
    ),
    'by the residual current device': set(
      'Rests on the residual current device: the fault current is below the instantaneous trip of the circuit-breaker.',
    ),
    late: set(false as const),
  });

/** A bound that a conductor does not withstand condemns nothing: the maker's figure decides. */
export function acquitOnly(
  result: CheckResult,
  { energyIsBound, energyRests }: { readonly energyIsBound: unknown; readonly energyRests: unknown },
): CheckResult {
  if (result.verdict !== 'fail' || energyIsBound === false) return result;
  return opened(
    result,
    [
      {
        kind: 'fact',
        fact: 'let-through energy of the device',
        obtain:
          'at the prospective current, from its maker: the bound that is known is more than the conductor withstands',
      },
    ],
    typeof energyRests === 'string' ? energyRests : undefined,
  );
}
