import {
  adjusted,
  any,
  chosen,
  compare,
  derive,
  each,
  missingOf,
  none,
  same,
  set,
  smallest,
  weigh,
  when,
  whereSmallest,
} from '../../../calculation/index.js';
import {
  type CheckResult,
  type Fact,
  type Gap,
  isMissing,
  type Known,
  type Missing,
  missing,
  unknown,
} from '../../../core/index.js';
import { insideOpen, type ResidualDevice, residualUnlisted } from '../../../installation/index.js';
import { milliamperes } from '../../../units/index.js';
import { opened } from '../../iec-family/opened.js';
import { ofCircuit } from '../../iec-family/places.js';
import {
  type AdditionalPlace,
  alongToEnd,
  mayBeInOneLeg,
  ofAdditional,
  ofProtecting,
  protectingDevices,
} from '../../iec-family/residual-places.js';
import { delayOf, isSetToNone } from '../../iec-family/residual-position.js';
import * as c from '../residual-checks.js';
import { concealedCables } from './concealed-cables.js';

const promptAsked = {
  kind: 'fact',
  fact: 'a residual current device of at most 30 mA without delay',
  obtain: 'read the marking: a delayed one gives no additional protection',
} as const;
const householdAsked: Gap = {
  kind: 'fact',
  fact: 'whether the circuit serves a household',
  obtain: 'where people live in an institution that is argued: ask whoever inspects',
};

/** Whether a device is delayed: that leaves a person on the fault for as long as it lasts. Up to 30 mA there is no delayed one. */
function delayed(device: ResidualDevice) {
  const { delay } = delayOf(device);
  // above 30 mA nobody has to know it
  if (device.delay === undefined && delay.state === 'known' && delay.value === 'selective') return false;
  if (delay.state === 'known' && delay.value === 'selective') return true;
  return delay.state === 'known' && isSetToNone(device) ? false : unknown(promptAsked.obtain);
}

/** Reasons for additional protection other than a charge point. */
const reasons = ['finalSockets', 'lightingOfHousehold', 'bathOrShower', 'concealed'] as const;

/** Whether a device of at most 30 mA has to be there, and whether that can be judged. */
const judgeable = (
  fitted: Known<boolean>,
  prompt: Known<boolean>,
  late: Known<boolean>,
  asked: Known<unknown> = true,
) => {
  // where it stands, nobody has to know whether it is asked for
  if (prompt === true) return true;
  if (isMissing(fitted)) return missingOf([asked, fitted]);
  if (isMissing(asked) || isMissing(prompt)) return missingOf([asked, prompt]);
  return late === true ? missing(promptAsked) : true;
};

/** Whether it is said of every place where a device could stand that there is none. */
const noneFitted = (place: AdditionalPlace): boolean => {
  const { path, run } = place.circuit;
  const said = (of: { readonly noResidual?: Fact<boolean> }) => of.noResidual?.state === 'known' && of.noResidual.value;
  return (
    protectingDevices(place).length === 0 &&
    residualUnlisted(path).length === 0 &&
    said(run) &&
    (place.point === undefined || (said(place.point) && !insideOpen(place.point)))
  );
};
/** What is known to be absent fails where it is asked for. */
function absent(result: CheckResult, none: unknown, asked: unknown): CheckResult {
  if (none !== true || asked !== true || result.verdict !== 'not-determined') return result;
  const { gaps: _, ...rest } = opened(result, []);
  return { ...rest, verdict: 'fail', because: 'There is no residual current device, as the survey says.' };
}

/** The charge point has a device of at most 30 mA; a delayed one is none. */
export const pointProtected = () =>
  adjusted(
    compare(c.additionalProtection, {
      applies: weigh(['deviceThere', 'promptThere', 'protectsOnlyLate'], (v) =>
        judgeable(v.deviceThere, v.promptThere, v.protectsOnlyLate),
      ),
    }),
    ['noneFitted'],
    (result, v) => absent(result, v.noneFitted, true),
  );

/** A device of at most 30 mA stands ahead of the whole circuit where there is a reason for it, or may be one. */
const protectedFor = (check: typeof c.socketsProtected, reason: (typeof reasons)[number]) =>
  chosen(
    weigh(reasons, (v) => v[reason] !== false),
    {
      true: [
        adjusted(
          compare(check, {
            applies: weigh([...reasons, 'deviceThere', 'promptThere', 'protectsOnlyLate'], (v) =>
              judgeable(v.deviceThere, v.promptThere, v.protectsOnlyLate, v[reason]),
            ),
          }),
          ['noneFitted', ...reasons],
          (result, v) => absent(result, v.noneFitted, v[reason]),
        ),
      ],
      false: [],
    },
  );

/** Additional protection of charge points, socket-outlets, luminaires, bathrooms and concealed cables. */
export const additionalProtection = () => {
  const hidden = concealedCables();
  return {
    circuit: {
      ...hidden.circuit,
      residualLimit: set(milliamperes(30), 'BS 7671 415.1.1'),
      bathOrShower: ofCircuit(({ run }) => run.bathOrShower ?? unknown('follow the circuit to all that it feeds'), {
        called: 'whether the circuit serves a room with a bath or shower, or passes through zone 1 or 2 of one',
      }),
      finalLighting: ofCircuit(({ run }) => run.feeds.some((o) => o.kind === 'load' && o.purpose === 'lighting')),
      lightingOfHousehold: weigh(['finalLighting', 'premises'], ({ finalLighting, premises }): Known<boolean> => {
        if (finalLighting !== true || premises === 'other') return false;
        if (isMissing(premises)) return premises;
        return premises === 'care-home' || premises === 'student-accommodation' ? missing(householdAsked) : true;
      }),
    },
    sections: hidden.sections,
    additional: {
      noneFitted: ofAdditional(noneFitted),
      deviceThere: ofAdditional<boolean>(
        (place) => {
          if ((place.point || place.end) && mayBeInOneLeg(place.circuit.run))
            return unknown('see whether the circuit is a ring: one along it may stand in one leg');
          return protectingDevices(place).length > 0 || unknown(place.point ? 'board and instructions' : 'the board');
        },
        { called: ({ point }) => `residual current device of the ${point ? 'charge point' : 'circuit'}` },
      ),
      // of several devices one that suits in all respects protects, else one of at most 30 mA without delay, the smallest first;
      // without one the smallest
      promptThere: any('protecting/prompt'),
      suitableThere: any('protecting/suits'),
      residualOperatingCurrent: smallest('protecting/protectingCurrent'),
      protectsOnlyLate: whereSmallest('protecting/protectingCurrent', 'smallButDelayed'),
      ownDevice: any('protecting/ownOfPoint'),
    },
    protecting: {
      residualOperatingCurrent: ofProtecting((d) => d.rating),
      delayed: ofProtecting(delayed, { called: promptAsked.fact }),
      prompt: weigh(
        ['delayed', 'residualOperatingCurrent'],
        ({ delayed: late, residualOperatingCurrent: rating }): boolean | Missing => {
          if (late === true || (!isMissing(rating) && rating > 0.03)) return false;
          return isMissing(late) || isMissing(rating) ? missingOf([late, rating]) : true;
        },
        { direction: { residualOperatingCurrent: -1 } },
      ),
      surelyPrompt: weigh(['prompt'], ({ prompt }) => prompt === true),
      smallButDelayed: derive(
        ['delayed', 'residualOperatingCurrent'],
        ({ delayed: late, residualOperatingCurrent: rating }) => late && rating <= 0.03,
        { direction: { residualOperatingCurrent: -1 } },
      ),
      protectingCurrent: when(
        weigh(['suitableThere'], ({ suitableThere }) => suitableThere === true),
        when('suits', same('residualOperatingCurrent'), none('Another device suits in all respects.')),
        when(
          weigh(['promptThere'], ({ promptThere }) => promptThere === true),
          when(
            'surelyPrompt',
            same('residualOperatingCurrent'),
            none('Another device is of at most 30 mA without delay.'),
          ),
          same('residualOperatingCurrent'),
        ),
      ),
      alone: ofProtecting((_, { alone }) => alone),
      ownOfPoint: when('alone', same('prompt'), set(false)),
    },
    checks: [
      each(
        'additional',
        [protectedFor(c.socketsProtected, 'finalSockets'), protectedFor(c.lightingProtected, 'lightingOfHousehold')],
        ({ circuit, point, end }: AdditionalPlace) =>
          point === undefined && (end || alongToEnd(circuit.run).length === 0),
      ),
      each(
        'additional',
        [protectedFor(c.bathroomProtected, 'bathOrShower'), protectedFor(c.concealedProtected, 'concealed')],
        ({ point, end }: AdditionalPlace) => point === undefined && !end,
      ),
    ],
  };
};
