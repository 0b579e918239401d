import {
  any,
  by,
  choose,
  chosen,
  compare,
  derive,
  each,
  holds,
  none,
  same,
  set,
  smallest,
  sum,
  unjudged,
  weigh,
  when,
  whereSmallest,
} from '../../../calculation/index.js';
import { type Gap, isMissing, type Known, missing, reaches, unknown } from '../../../core/index.js';
import {
  type ChargePoint,
  type Load,
  outletsBelow,
  type ResidualDevice,
  residualUpstream,
} from '../../../installation/index.js';
import { smoothCurrentWithstand } from '../../../products/en61008/smooth-current.js';
import { type Amperes, milliamperes } from '../../../units/index.js';
import { ofCircuit, ofResidualUpstream, ofSection, type ResidualUpstreamPlace } from '../../iec-family/places.js';
import {
  deviceAhead,
  feedsBack,
  ofAdditional,
  ofInfeed,
  ofPointBehind,
  ofProtecting,
  ofResidualInside,
  ofResidualOnBoard,
  ofResidualPair,
  ofServedRun,
  pointsBehind,
  protectingDevices,
} from '../../iec-family/residual-places.js';
import * as c from '../residual-checks.js';
import { residualLoadOf, standingCurrentLimitOf } from '../residual-checks.js';

const promptAsked: Gap = {
  kind: 'fact',
  fact: 'a residual current device of at most 30 mA without delay',
  obtain: 'read the marking: a delayed one gives no additional protection',
};
const smallestAsked: Gap = {
  kind: 'fact',
  fact: 'which residual current device has the smallest rating',
  obtain: 'the marking of each device on the way',
};
const typeWords = { called: 'type of the residual current device' };
const detectionWords = { called: 'detection of 6 mA direct current' };
const detectionAsked = /* @__PURE__ */ unknown('the charge point’s instructions');

/** Whether a device is, or may be, delayed: a delay leaves a person on the fault for as long as it lasts. */
const mayBeDelayed = ({ delay, delayTime }: ResidualDevice): boolean =>
  delayTime !== undefined || (delay !== undefined && !(delay.state === 'known' && delay.value === 'general'));

/** Loads that are known to have no direct-current component, the only ones for which type AC is left. */
const resistive: readonly Load['purpose'][] = ['instantaneous-water-heating', 'thermostatic-water-heating'];

/** A device of at most 30 mA; a delayed one is none. */
const thirtyMilliamperes = () =>
  compare(c.additionalProtection, {
    applies: derive(['protectsOnlyLate'], ({ protectsOnlyLate }) => (protectsOnlyLate ? missing(promptAsked) : true)),
  });
const noDevice = () =>
  unjudged(
    c.additionalProtection,
    ofAdditional(({ point }) => unknown(point ? 'board and instructions' : 'the board'), {
      called: ({ point }) => `residual current device of the ${point ? 'charge point' : 'circuit'}`,
    }),
  );

/** The device that protects a charge point: rating, type, poles, and whether it is its own. */
const pointChecks = () => [
  thirtyMilliamperes(),
  holds(
    c.residualTypeSuits,
    'smoothDetected',
    derive(['residualType'], ({ residualType: type }) => {
      if (type === 'AC') return 'type AC does not suit a charge point';
      return type === 'B'
        ? 'type B detects smooth direct current'
        : `type ${type} needs a 6 mA direct-current detector beside it`;
    }),
    { applies: 'protectingKnown' },
  ),
  holds(c.residualOpensAllLive, 'opensAllLive', set('line and neutral of a charge point are opened together'), {
    applies: 'protectingKnown',
  }),
  holds(
    c.oneDevicePerPoint,
    'ownDevice',
    derive(['ownDevice'], ({ ownDevice }) =>
      ownDevice ? 'the device serves this point alone' : 'the device serves more than one charge point',
    ),
  ),
];

const standingOf = (p: ChargePoint) => p.standingLeakage ?? unknown('the data sheet');
const standingWords = (p: ChargePoint) => `standing current of ${p.id}`;
const withPoints = (place: ResidualUpstreamPlace) => pointsBehind(place).length > 0;

/** Residual current devices of a circuit. BS 7671 531.3, 722.531.3.101. */
export const residualCurrent = () => ({
  circuit: {
    feedsPoint: ofCircuit((c) => c.feedsChargePoint),
    residualLimit: set(milliamperes(30), 'BS 7671 722.531.3.101; 411.3.3'),
    concealedShallow: any('sections/concealedShallow'),
    additionalAsked: weigh(
      ['finalSockets', 'concealedShallow'],
      (v) => v.finalSockets === true || v.concealedShallow === true,
    ),
    resistiveOnly: ofCircuit(({ run }) =>
      outletsBelow(run).every((o) => o.kind === 'load' && resistive.includes(o.purpose)),
    ),
    pointHasOwn: any('residualUpstream/ownOfPoint'),
    // position
    residualPlace: ofCircuit(({ path, run }) => {
      if (residualUpstream(path).length > 0) return 'upstream';
      return run.feeds.some((o) => o.kind === 'charge-point' && o.residual) ? 'inside' : 'none';
    }),
    cableDepends: weigh(['concealedShallow', 'system'], (v): Known<boolean> => {
      if (v.concealedShallow === true || v.system === 'TT') return true;
      return isMissing(v.system) ? v.system : v.concealedShallow;
    }),
    // what feeds back
    feedsBack: ofCircuit(({ run }) => outletsBelow(run).some(feedsBack)),
    boardFedBack: ofCircuit(({ board }) => board.runs.flatMap(outletsBelow).some(feedsBack)),
    boardRating: ofCircuit(({ board }) => board.rating ?? unknown('its rating plate')),
    boardInfeed: sum('infeeds/deviceRating', { clause: '551.7.2' }),
  },
  sections: {
    concealedShallow: ofSection(
      ({ section: { concealedShallow: said } }) =>
        said?.state === 'unknown' ? unknown(said.obtain ?? 'survey') : (said ?? false),
      { called: ({ section }) => `whether ${section.name} is concealed less than 50 mm deep` },
    ),
  },
  additional: {
    deviceThere: ofAdditional((place) => protectingDevices(place).length > 0),
    // of several devices the one of at most 30 mA without delay protects, the smallest first; without one the smallest
    promptThere: any('protecting/prompt'),
    residualOperatingCurrent: smallest('protecting/protectingCurrent'),
    protectsOnlyLate: whereSmallest('protecting/protectingCurrent', 'smallButDelayed'),
    residualType: whereSmallest('protecting/protectingCurrent', 'residualType'),
    opensAllLive: whereSmallest('protecting/protectingCurrent', 'opensAllLive'),
    severalDevices: ofAdditional((place) => protectingDevices(place).length > 1),
    markingOpen: any('protecting/markingOpen'),
    protectingKnown: derive(['severalDevices', 'markingOpen'], (v) =>
      v.severalDevices && v.markingOpen ? missing(smallestAsked) : true,
    ),
    directCurrentDetection: ofAdditional(
      ({ point }) => point?.directCurrentDetection ?? detectionAsked,
      detectionWords,
    ),
    smoothDetected: choose('residualType', {
      AC: set(false),
      A: same('directCurrentDetection'),
      F: same('directCurrentDetection'),
      B: set(true),
    }),
    ownDevice: when(
      ofAdditional(({ point }) => point?.residual !== undefined),
      set(true),
      same('pointHasOwn'),
    ),
  },
  protecting: {
    residualOperatingCurrent: ofProtecting((d) => d.rating),
    residualType: ofProtecting((d) => d.type, typeWords),
    opensAllLive: ofProtecting((d) => d.opensAllLive ?? unknown('the marking of the device'), {
      called: 'poles of the residual current device',
    }),
    markingOpen: ofProtecting((d) => d.rating.state === 'unknown' || d.delay?.state === 'unknown'),
    mayBeDelayed: ofProtecting(mayBeDelayed),
    prompt: weigh(
      ['mayBeDelayed', 'residualOperatingCurrent'],
      ({ mayBeDelayed: late, residualOperatingCurrent: rating }) =>
        late === false && !isMissing(rating) && rating <= 0.03,
      { direction: { residualOperatingCurrent: -1 } },
    ),
    smallButDelayed: weigh(
      ['mayBeDelayed', 'residualOperatingCurrent'],
      ({ mayBeDelayed: late, residualOperatingCurrent: rating }) =>
        late === true && (isMissing(rating) || rating <= 0.03),
      { direction: { residualOperatingCurrent: -1 } },
    ),
    protectingCurrent: when(
      'promptThere',
      when('prompt', same('residualOperatingCurrent'), none('Another device is of at most 30 mA without delay.')),
      same('residualOperatingCurrent'),
    ),
  },
  residualUpstream: {
    residualType: ofResidualUpstream(({ device }) => device.type, typeWords),
    bidirectional: ofResidualUpstream(({ device }) => device.bidirectional ?? unknown('the marking of the device'), {
      called: 'whether the device may be fed from both sides',
    }),
    pointsBehind: ofResidualUpstream((place) => pointsBehind(place).length),
    servesOnePoint: ofResidualUpstream(
      (place) => pointsBehind(place).length <= 1 && (place.device.pointsServed ?? 1) <= 1,
    ),
    ownOfPoint: when(
      'servesOnePoint',
      derive(['residualOperatingCurrent'], (v) => v.residualOperatingCurrent <= 0.03, {
        direction: { residualOperatingCurrent: -1 },
      }),
      set(false),
    ),
    smoothResidualSum: sum('pointsBehind/smoothResidualCurrent'),
    smoothResidualWithstand: by(smoothCurrentWithstand, '531.3.3'),
    smoothAsked: weigh(['residualType', 'pointsBehind'], (v) => {
      if (isMissing(v.residualType)) return 'type not known';
      return v.residualType !== 'B' && v.pointsBehind !== 0 ? 'asked' : 'not asked';
    }),
    standingCurrentSum: sum('pointsBehind/standingCurrent'),
    standingCurrentLimit: by(standingCurrentLimitOf, '531.3.2'),
  },
  pointsBehind: {
    directCurrentDetection: ofPointBehind((p) => p.directCurrentDetection ?? detectionAsked, detectionWords),
    smoothResidualCurrent: when(
      'directCurrentDetection',
      set(milliamperes(6), 'IEC 62955: a detector may let up to 6 mA stand'),
      ofPointBehind<Amperes>(() => unknown('without a detector it is not limited'), {
        called: (p) => `direct current that ${p.id} can pass`,
      }),
    ),
    standingCurrent: ofPointBehind(standingOf, { called: standingWords }),
  },
  residualInside: {
    residualOperatingCurrent: ofResidualInside(({ device }) => device.rating),
    standingCurrent: ofResidualInside(({ point }) => standingOf(point), {
      called: ({ point }) => standingWords(point),
    }),
    standingCurrentSum: same('standingCurrent'),
    standingCurrentLimit: by(standingCurrentLimitOf, '531.3.2'),
  },
  residualPairs: {
    aheadDelay: ofResidualPair(({ above }) => above.delay ?? unknown('the marking S'), {
      called: 'delay of the upstream residual current device',
    }),
    aheadResidualCurrent: ofResidualPair(({ above }) => above.rating, { called: 'residualOperatingCurrent' }),
    residualOperatingCurrent: ofResidualPair(({ below }) => below.rating),
    residualSelective: derive(
      ['aheadDelay', 'aheadResidualCurrent', 'residualOperatingCurrent'],
      (v) => v.aheadDelay === 'selective' && reaches(v.aheadResidualCurrent, 3 * v.residualOperatingCurrent),
      { direction: { aheadResidualCurrent: 1, residualOperatingCurrent: -1 } },
    ),
  },
  residualOnBoard: {
    residualRatedCurrent: ofResidualOnBoard(({ device }) => device.ratedCurrent ?? missing()),
    aheadRating: ofResidualOnBoard(({ circuit }) => deviceAhead(circuit).rating, {
      called: ({ circuit }) => (circuit.path.feeders.length > 0 ? 'rating of the device ahead' : 'cutOutRating'),
    }),
    servedRating: sum('servedRuns/deviceRating'),
    // where one of the two is not known, the other decides only if it is small enough
    loadLimitedBy: weigh(
      ['residualRatedCurrent', 'aheadRating', 'servedRating'],
      ({ residualRatedCurrent: carries, aheadRating: ahead, servedRating: served }) => {
        if (isMissing(carries)) return 'both';
        if (isMissing(served) && !isMissing(ahead) && ahead <= carries) return 'the device ahead';
        return isMissing(ahead) && !isMissing(served) && served <= carries ? 'the devices below' : 'both';
      },
      { direction: { residualRatedCurrent: 1, aheadRating: -1, servedRating: -1 } },
    ),
    residualLoad: choose('loadLimitedBy', {
      both: by(residualLoadOf, '536.4'),
      'the device ahead': same('aheadRating'),
      'the devices below': same('servedRating'),
    }),
  },
  servedRuns: {
    deviceRating: ofServedRun((r) => r.device.rating, { called: (r) => `rating of the device of ${r.id}` }),
  },
  infeeds: {
    deviceRating: ofInfeed(({ device }) => device.rating, { called: 'rating of an infeed' }),
  },
  checks: [
    chosen('feedsPoint', {
      true: [each('additional', [chosen('deviceThere', { true: pointChecks(), false: [noDevice()] })])],
      false: [
        chosen('additionalAsked', {
          true: [each('additional', [chosen('deviceThere', { true: [thirtyMilliamperes()], false: [noDevice()] })])],
          false: [],
        }),
        chosen('resistiveOnly', {
          true: [],
          false: [
            each('residualUpstream', [
              holds(
                c.residualTypeSuits,
                derive(['residualType'], ({ residualType }) => residualType !== 'AC'),
                set('type AC is left for fixed equipment that is known to have no direct-current component'),
              ),
            ]),
          ],
        }),
      ],
    }),
    holds(
      c.residualAtOrigin,
      derive(['residualPlace'], ({ residualPlace }) => residualPlace === 'upstream'),
      choose('residualPlace', {
        upstream: set('a device stands upstream of the whole cable'),
        inside: set('a device inside the equipment protects no cable ahead of it'),
        none: set('no device stands upstream of the cable'),
      }),
      {
        applies: derive(
          ['cableDepends'],
          ({ cableDepends }) => cableDepends || 'The cable does not depend on a residual current device.',
        ),
      },
    ),
    each('residualUpstream', [
      chosen('smoothAsked', {
        asked: [compare(c.smoothCurrentBorne)],
        'not asked': [],
        'type not known': [unjudged(c.smoothCurrentBorne, 'residualType')],
      }),
    ]),
    each('residualPairs', [
      holds(c.residualSelective, 'residualSelective', set('otherwise either of the two may open')),
    ]),
    each('residualUpstream', [compare(c.standingCurrentBorne)], withPoints),
    each('residualInside', [compare(c.standingCurrentBorne)]),
    each('residualOnBoard', [compare(c.residualNotOverloaded)]),
    chosen('feedsBack', {
      true: [each('residualUpstream', [holds(c.residualBothWays, 'bidirectional', set('this circuit can feed back'))])],
      false: [],
    }),
    chosen('boardFedBack', { true: [compare(c.boardCarriesInfeed)], false: [] }),
  ],
});
