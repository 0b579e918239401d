import {
  adjusted,
  any,
  by,
  choose,
  chosen,
  compare,
  derive,
  each,
  holds,
  missingOf,
  same,
  set,
  sum,
  unjudged,
  weigh,
  when,
  whereSmallest,
} from '../../../calculation/index.js';
import { type Gap, isMissing, type Known, known, missing, reaches, unknown } from '../../../core/index.js';
import { feedingInto } from '../../../installation/feeds-back.js';
import {
  type ChargePoint,
  type Load,
  outletsBelow,
  type Path,
  residualUnlisted,
  residualUpstream,
} from '../../../installation/index.js';
import { smoothCurrentWithstand } from '../../../products/en61008/smooth-current.js';
import { type Amperes, amperes, milliamperes } from '../../../units/index.js';
import { opened } from '../../iec-family/opened.js';
import {
  ofCircuit,
  ofResidualUpstream,
  type ResidualUpstreamPlace,
  residualAlong,
  unlistedObtain,
  unlistedWords,
} from '../../iec-family/places.js';
import {
  type AdditionalPlace,
  aheadOfEnd,
  feedingBack,
  insideUnsaid,
  isChargePoint,
  ofAdditional,
  ofInfeed,
  ofPointBehind,
  ofProtecting,
  ofResidualInside,
  ofResidualPair,
  ofServedRun,
  outletsBehind,
  pointsBehind,
  protectingDevices,
} from '../../iec-family/residual-places.js';
import * as c from '../residual-checks.js';
import { standingCurrentLimitOf } from '../residual-checks.js';
import { pointProtected } from './additional-protection.js';
import { notOverloaded, residualLoad } from './residual-overload.js';
import {
  byCable,
  detectionAsked,
  detectionWords,
  smoothDetected,
  typeFits,
  typeSuits,
  typesOfCircuit,
  typeWords,
} from './residual-type.js';

/** What a device of at most 30 mA is asked for, whatever hides the cable. */
const asksForDevice = ['finalSockets', 'lightingOfHousehold', 'bathOrShower'] as const;

/** What editions of the rules on residual current devices differ in. */
interface ResidualEdition {
  /** The check that a device serves one charge point alone. */
  readonly individually?: typeof c.oneDevicePerPoint;
  /** Whether type AC is for general purposes, 531.3.3. */
  readonly generalPurposes?: boolean;
  /** The check of devices through which power can flow both ways. */
  readonly bothWays?: typeof c.residualBothWays;
}

const oneWayAsked: Gap = {
  kind: 'fact',
  fact: 'a device marked for one direction, fed from both sides',
  obtain: 'its maker: whether it opens when it is fed from the load side; else one that is made for it',
};
const smallestAsked: Gap = {
  kind: 'fact',
  fact: 'which residual current device has the smallest rating',
  obtain: 'the marking of each device on the way',
};
const backAsked: Gap = {
  kind: 'fact',
  fact: 'whether the charge point can feed back from the vehicle',
  obtain: 'its data sheet',
};
const insideAsked: Gap = {
  kind: 'fact',
  fact: 'residual current device inside the charge point',
  obtain: 'its instructions: the rated residual current, or that there is none',
};
/** True where it is said of each place on the way whether a device stands there. */
function unlistedAhead(path: Path): Known<true> {
  const [open] = residualUnlisted(path);
  return open ? missing({ kind: 'fact', fact: unlistedWords(open), obtain: unlistedObtain(open) }) : true;
}
/** What stands inside a point at worst. */
const smallestMade = /* @__PURE__ */ known(
  /* @__PURE__ */ milliamperes(10),
  'none is described: the smallest in use, common practice, no source',
);
/** The device that protects a charge point: rating, type, poles, and whether it is its own. */
const pointChecks = (individually: typeof c.oneDevicePerPoint) => [
  pointProtected(),
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
    individually,
    'ownDevice',
    derive(['ownDevice'], ({ ownDevice }) =>
      ownDevice ? 'a device of at most 30 mA serves this point alone' : 'no device of at most 30 mA serves it alone',
    ),
    { applies: 'listedAhead' },
  ),
];

/** A device behind which something can feed back, or may. */
const fedFromBothSides = (bothWays: typeof c.residualBothWays) =>
  chosen('feedsBack', {
    yes: [
      holds(
        bothWays,
        weigh(['bidirectional'], ({ bidirectional: both }): Known<boolean> => {
          // before there was a rule, what the maker says of such a use decides
          return both === false && bothWays === c.residualMarkedBothWays ? missing(oneWayAsked) : both;
        }),
        set('something behind it can feed back'),
      ),
    ],
    'not known': [
      holds(
        bothWays,
        weigh(['bidirectional'], ({ bidirectional }): Known<boolean> => bidirectional === true || missing(backAsked)),
        set('something behind it may feed back'),
      ),
    ],
    no: [],
  });

const standingOf = (o: Load | ChargePoint) => {
  if (!isChargePoint(o)) return known(amperes(0), 'of charge points alone it is asked');
  return (o.kind === 'charge-point' && o.standingLeakage) || unknown('the data sheet');
};
const standingWords = (o: Load | ChargePoint) => `standing current of ${o.id}`;
const withPoints = (place: ResidualUpstreamPlace) => pointsBehind(place).some(isChargePoint);
/** Whether an outlet lets no more than 6 mA of smooth direct current stand. */
const detectionOf = (o: Load | ChargePoint) => {
  if (o.kind === 'charge-point') return o.mode === 2 ? byCable : (o.directCurrentDetection ?? detectionAsked);
  return o.purpose === 'charge-point'
    ? unknown('describe it as a charge point: its instructions say it')
    : unknown('its maker asks for type B: what smooth direct current it can pass');
};

/**
 * Residual current devices of a circuit. BS 7671 531.3, 722.531.3.101.
 */
export const residualCurrent = ({
  individually = c.oneDevicePerPoint,
  generalPurposes = false,
  bothWays = c.residualMarkedBothWays,
}: ResidualEdition = {}) => ({
  circuit: {
    ...typesOfCircuit(generalPurposes),
    // position
    residualPlace: ofCircuit(({ path, run }) => {
      if (residualUpstream(path).length > 0) return 'upstream';
      const listed = unlistedAhead(path);
      if (isMissing(listed)) return listed;
      if (residualAlong(run).length > 0) return 'along';
      return run.feeds.some((o) => o.kind === 'charge-point' && o.residual) ? 'inside' : 'none';
    }),
    // of what was there before somebody has to say it; what is new has what is described
    noneUpstream: ofCircuit(
      ({ path, run }): Known<boolean> =>
        run.existing === true && residualUpstream(path).length === 0 && aheadOfEnd(run).length === 0
          ? unlistedAhead(path)
          : false,
    ),
    cableDepends: weigh(
      [...asksForDevice, 'concealed', 'system', 'residualPlace', 'noneUpstream'],
      (v): Known<boolean> => {
        if (v.concealed === true || v.system === 'TT') return true;
        if (v.noneUpstream !== false && asksForDevice.some((reason) => v[reason] === true)) return v.noneUpstream;
        // with a device upstream nobody has to know it
        const gone = missingOf([v.system, v.concealed]);
        return gone.missing.length > 0 && v.residualPlace !== 'upstream' ? gone : gone.missing.length > 0;
      },
    ),
    // what feeds back
    boardFedBack: ofCircuit(({ board }) => feedingBack(feedingInto(board).flatMap(outletsBelow))),
    boardRating: ofCircuit(({ board }) => board.rating ?? unknown('its rating plate')),
    boardInfeed: sum('infeeds/deviceRating', { clause: '551.7.2' }),
  },
  additional: {
    residualType: whereSmallest('protecting/protectingCurrent', 'residualType'),
    opensAllLive: whereSmallest('protecting/protectingCurrent', 'opensAllLive'),
    // one that may be inside the point counts until somebody says that there is none
    severalDevices: ofAdditional(
      (place) => protectingDevices(place).length + (place.point && insideUnsaid(place.point) ? 1 : 0) > 1,
    ),
    insideOpen: ofAdditional((place) => place.point !== undefined && insideUnsaid(place.point)),
    markingOpen: any('protecting/markingOpen'),
    // one of which nobody says whether it is there may be the one that decides
    unlistedAhead: ofAdditional<true>(({ circuit }) => unlistedAhead(circuit.path)),
    listedAhead: weigh(
      ['suitableThere', 'unlistedAhead'],
      (v): Known<true> => (v.suitableThere === true ? true : v.unlistedAhead),
    ),
    protectingKnown: weigh(
      ['suitableThere', 'severalDevices', 'markingOpen', 'insideOpen', 'listedAhead'],
      (v): Known<true> => {
        if (isMissing(v.listedAhead)) return v.listedAhead;
        const open = v.suitableThere !== true && v.severalDevices === true && (v.markingOpen === true || v.insideOpen);
        return open ? missing(smallestAsked) : true;
      },
    ),
    directCurrentDetection: ofAdditional(
      ({ point }) => point?.directCurrentDetection ?? detectionAsked,
      detectionWords,
    ),
    smoothDetected: smoothDetected(),
  },
  protecting: {
    residualType: ofProtecting((d) => d.type, typeWords),
    opensAllLive: ofProtecting((d) => d.opensAllLive ?? unknown('the marking of the device'), {
      called: 'poles of the residual current device',
    }),
    smoothDetected: smoothDetected(),
    suits: weigh(
      ['prompt', 'smoothDetected', 'opensAllLive'],
      (v) => v.prompt === true && v.smoothDetected === true && v.opensAllLive === true,
    ),
    markingOpen: weigh(
      ['residualOperatingCurrent', 'delayed'],
      (v) => isMissing(v.residualOperatingCurrent) || isMissing(v.delayed),
    ),
  },
  residualUpstream: {
    residualType: ofResidualUpstream(({ device }) => device.type, typeWords),
    bidirectional: ofResidualUpstream(({ device }) => device.bidirectional ?? unknown('the marking of the device'), {
      called: 'whether the device may be fed from both sides',
    }),
    pointsBehind: ofResidualUpstream((place) => pointsBehind(place).length),
    feedsBack: ofResidualUpstream((place) => feedingBack(outletsBehind(place))),
    typeSuits: typeSuits(),
    smoothResidualSum: sum('pointsBehind/smoothResidualCurrent'),
    smoothResidualWithstand: by(smoothCurrentWithstand, '531.3.3'),
    smoothAsked: weigh(['residualType', 'pointsBehind'], (v) => {
      if (isMissing(v.residualType)) return 'type not known';
      return v.residualType !== 'B' && v.pointsBehind !== 0 ? 'asked' : 'not asked';
    }),
    standingCurrentSum: sum('pointsBehind/standingCurrent'),
    standingCurrentLimit: by(standingCurrentLimitOf, '531.3.2'),
    ...residualLoad(),
  },
  pointsBehind: {
    directCurrentDetection: ofPointBehind(detectionOf, detectionWords),
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
    insideDescribed: ofResidualInside(({ device }) => device !== undefined),
    residualOperatingCurrent: ofResidualInside(({ device }) => device?.rating ?? smallestMade),
    standingCurrent: ofResidualInside(({ point }) => standingOf(point), {
      called: ({ point }) => standingWords(point),
    }),
    standingCurrentSum: same('standingCurrent'),
    feedsBack: ofResidualInside(({ point }) => feedingBack([point])),
    bidirectional: ofResidualInside(({ device }) => device?.bidirectional ?? unknown('the instructions of the point'), {
      called: ({ point }) => `whether the residual current device inside ${point.id} may be fed from both sides`,
    }),
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
  servedRuns: {
    deviceRating: ofServedRun((r) => r.device.rating, { called: (r) => `rating of the device of ${r.id}` }),
  },
  infeeds: {
    deviceRating: ofInfeed(({ device }) => device.rating, { called: 'rating of an infeed' }),
  },
  checks: [
    each(
      'additional',
      [
        chosen(
          weigh(['deviceThere'], ({ deviceThere }) => deviceThere === true),
          { true: pointChecks(individually), false: [pointProtected()] },
        ),
      ],
      ({ point }: AdditionalPlace) => point !== undefined,
    ),
    typeFits(generalPurposes),
    holds(
      c.residualAtOrigin,
      derive(['residualPlace'], ({ residualPlace }) => residualPlace === 'upstream'),
      choose('residualPlace', {
        upstream: set('a device stands upstream of the whole cable'),
        along: set('a device along the circuit protects no cable ahead of it'),
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
    each('residualInside', [
      chosen('insideDescribed', {
        true: [compare(c.standingCurrentBorne)],
        false: [
          adjusted(compare(c.standingCurrentBorne), [], (result) =>
            result.verdict === 'pass' ? result : opened(result, [insideAsked]),
          ),
        ],
      }),
    ]),
    notOverloaded(),
    each('residualUpstream', [fedFromBothSides(bothWays)]),
    each('residualInside', [fedFromBothSides(bothWays)]),
    chosen('boardFedBack', {
      yes: [compare(c.boardCarriesInfeed)],
      'not known': [
        adjusted(compare(c.boardCarriesInfeed), [], (result) =>
          result.verdict === 'pass' ? result : opened(result, [backAsked]),
        ),
      ],
      no: [],
    }),
  ],
});
