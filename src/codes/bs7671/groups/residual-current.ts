import {
  adjusted,
  any,
  by,
  choose,
  chosen,
  compare,
  derive,
  each,
  fact,
  holds,
  missingOf,
  open,
  same,
  set,
  sum,
  unjudged,
  weigh,
  when,
  whereSmallest,
} from '../../../calculation/index.js';
import {
  type Fact,
  factValue,
  type Gap,
  isMissing,
  type Known,
  known,
  type Missing,
  missing,
  reaches,
  unknown,
} from '../../../core/index.js';
import {
  type ChargePoint,
  type Load,
  outletsBelow,
  residualInside,
  residualUnlisted,
  residualUpstream,
} from '../../../installation/index.js';
import { smoothCurrentWithstand } from '../../../products/en61008/smooth-current.js';
import { type Amperes, milliamperes } from '../../../units/index.js';
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
  isPartOfBreaker,
  limitsOf,
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
import { residualLoadOf, standingCurrentLimitOf } from '../residual-checks.js';
import { pointProtected } from './additional-protection.js';

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
const behindAsked: Gap = {
  kind: 'fact',
  fact: 'circuits behind the residual current device',
  obtain: 'list every circuit that leaves the board, and say that the list is complete',
};
const insideAsked: Gap = {
  kind: 'fact',
  fact: 'residual current device inside the charge point',
  obtain: 'its instructions: the rated residual current, or that there is none',
};
/** What stands inside a point at worst. */
const smallestMade = /* @__PURE__ */ known(
  /* @__PURE__ */ milliamperes(10),
  'none is described: the smallest in use, common practice, no source',
);
const typeWords = { called: 'type of the residual current device' };
const detectionWords = { called: 'detection of 6 mA direct current' };
/** What the cable of a vehicle that is plugged into a socket-outlet does, whatever stands ahead. */
const byCable = /* @__PURE__ */ known(true, 'IEC 62752, one source: the cable of the vehicle opens at 6 mA');
const detectionAsked = /* @__PURE__ */ unknown('the charge point’s instructions');

const types = ['AC', 'A', 'F', 'B'] as const;
type TypeFact = Fact<(typeof types)[number]>;

/** Equipment that converters feed or that converts itself: its maker alone says what residual current it has. */
const byMaker: readonly Load['purpose'][] = [
  'heat-pump',
  'motor',
  'air-conditioning',
  'charge-point',
  'generation',
  'storage',
];

/** Type of residual current device that an outlet asks for at least; where type AC is for general purposes, by its purpose too. */
const typeAskedBy = (o: Load | ChargePoint, generalPurposes: boolean): TypeFact => {
  if (o.kind === 'charge-point') return known('A');
  if (generalPurposes && o.residualType?.state !== 'known' && !byMaker.includes(o.purpose)) return known('AC');
  if (o.residualType) return o.residualType;
  return unknown(
    `the instructions of ${o.id}: which type stands ahead of it; A for electronics of which they say nothing`,
  );
};

/** What the verdict on a type rests on. */
const typeBecause =
  (generalPurposes: boolean) =>
  (v: { readonly residualType: (typeof types)[number]; readonly typesAsked: readonly TypeFact[] }) => {
    if (v.residualType === 'AC' && !generalPurposes)
      return 'type AC is left for fixed equipment that is known to have no direct-current component';
    if (v.residualType === 'B') return 'type B detects smooth direct current too';
    const least = Math.max(...v.typesAsked.map((t) => (t.state === 'known' ? types.indexOf(t.value) : 0)));
    return `what is fed asks for type ${types[least]} at least`;
  };

/** Whether smooth direct current of a charge point is detected, by the device or beside it. */
const smoothDetected = () =>
  choose('residualType', {
    AC: set(false),
    A: same('directCurrentDetection'),
    F: same('directCurrentDetection'),
    B: set(true),
  });

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

const standingOf = (p: ChargePoint) => p.standingLeakage ?? unknown('the data sheet');
const standingWords = (p: ChargePoint) => `standing current of ${p.id}`;
const withPoints = (place: ResidualUpstreamPlace) => pointsBehind(place).length > 0;

/**
 * Residual current devices of a circuit. BS 7671 531.3, 722.531.3.101.
 */
export const residualCurrent = ({
  individually = c.oneDevicePerPoint,
  generalPurposes = false,
  bothWays = c.residualMarkedBothWays,
}: ResidualEdition = {}) => ({
  circuit: {
    // charge points of the circuit itself have checks of their own, apart from socket-outlets
    typesAsked: ofCircuit(({ run }) =>
      run.feeds
        .flatMap((o) => (o.kind === 'charge-point' && o.mode !== 2 ? [] : o.kind === 'board' ? outletsBelow(o) : [o]))
        .map((o) => typeAskedBy(o, generalPurposes)),
    ),
    // heaters of water may have no direct-current component: of them alone type AC may do
    onlyHeaters: ofCircuit(
      ({ run }) =>
        generalPurposes ||
        outletsBelow(run).every(
          (o) => o.kind === 'charge-point' || o.residualType || o.purpose.endsWith('water-heating'),
        ),
    ),
    // position
    residualPlace: ofCircuit(({ path, run }) => {
      if (residualUpstream(path).length > 0) return 'upstream';
      const [open] = residualUnlisted(path);
      if (open) return missing({ kind: 'fact', fact: unlistedWords(open), obtain: unlistedObtain(open) });
      if (residualAlong(run).length > 0) return 'along';
      return run.feeds.some((o) => o.kind === 'charge-point' && residualInside(o)) ? 'inside' : 'none';
    }),
    // of what was there before somebody has to say it; what is new has what is described
    noneUpstream: ofCircuit(
      ({ path, run }) =>
        run.existing === true &&
        residualUpstream(path).length === 0 &&
        residualUnlisted(path).length === 0 &&
        aheadOfEnd(run).length === 0,
    ),
    cableDepends: weigh(
      [...asksForDevice, 'concealed', 'system', 'residualPlace', 'noneUpstream'],
      (v): Known<boolean> => {
        if (v.concealed === true || v.system === 'TT') return true;
        if (v.noneUpstream === true && asksForDevice.some((reason) => v[reason] === true)) return true;
        // with a device upstream nobody has to know it
        const gone = missingOf([v.system, v.concealed]);
        return gone.missing.length > 0 && v.residualPlace !== 'upstream' ? gone : gone.missing.length > 0;
      },
    ),
    // what feeds back
    boardFedBack: ofCircuit(({ board }) => feedingBack(board.runs.flatMap(outletsBelow))),
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
    markingOpen: any('protecting/markingOpen'),
    // one of which nobody says whether it is there may be the one that decides
    unlistedAhead: ofAdditional<true>(({ circuit }) => {
      const [open] = residualUnlisted(circuit.path);
      return open ? missing({ kind: 'fact', fact: unlistedWords(open), obtain: unlistedObtain(open) }) : true;
    }),
    listedAhead: weigh(
      ['suitableThere', 'unlistedAhead'],
      (v): Known<true> => (v.suitableThere === true ? true : v.unlistedAhead),
    ),
    protectingKnown: weigh(['suitableThere', 'severalDevices', 'markingOpen', 'listedAhead'], (v): Known<true> => {
      if (isMissing(v.listedAhead)) return v.listedAhead;
      const open = v.suitableThere !== true && v.severalDevices === true && v.markingOpen === true;
      return open ? missing(smallestAsked) : true;
    }),
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
    // where a maker has to say it, type B does in any case, and type AC in none
    typeSuits: weigh(
      ['residualType', 'typesAsked', 'onlyHeaters'],
      ({ residualType: type, typesAsked: asked, onlyHeaters }): Known<boolean> => {
        if (isMissing(type) || isMissing(asked)) return missingOf([type, asked]);
        const rank = types.indexOf(type);
        const [open] = asked.flatMap((t) => (t.state === 'known' ? [] : [factValue(typeWords.called, t)]));
        if (asked.some((t) => t.state === 'known' && types.indexOf(t.value) > rank)) return false;
        if (open === undefined || type === 'B') return true;
        return type === 'AC' && onlyHeaters !== true ? false : (open as Missing);
      },
    ),
    smoothResidualSum: sum('pointsBehind/smoothResidualCurrent'),
    smoothResidualWithstand: by(smoothCurrentWithstand, '531.3.3'),
    smoothAsked: weigh(['residualType', 'pointsBehind'], (v) => {
      if (isMissing(v.residualType)) return 'type not known';
      return v.residualType !== 'B' && v.pointsBehind !== 0 ? 'asked' : 'not asked';
    }),
    standingCurrentSum: sum('pointsBehind/standingCurrent'),
    standingCurrentLimit: by(standingCurrentLimitOf, '531.3.2'),
    residualRatedCurrent: ofResidualUpstream(
      ({ device }) => device.ratedCurrent ?? unknown('the marking of the device'),
      {
        called: 'rated current of the residual current device',
      },
    ),
    aheadRating: fact((place: ResidualUpstreamPlace) => limitsOf(place).ahead.rating, {
      called: (place) => limitsOf(place).aheadName,
    }),
    limitedAheadAlone: ofResidualUpstream((place) => limitsOf(place).boards.length === 0),
    allBehindListed: ofResidualUpstream((place) =>
      limitsOf(place).boards.every(({ complete }) => complete?.state === 'known' && complete.value),
    ),
    servedRating: when('allBehindListed', sum('servedRuns/deviceRating'), open(behindAsked)),
    // where one of the two is not known, the other decides only if it is small enough
    loadLimitedBy: weigh(
      ['residualRatedCurrent', 'aheadRating', 'servedRating', 'limitedAheadAlone'],
      ({ residualRatedCurrent: carries, aheadRating: ahead, servedRating: served, limitedAheadAlone: alone }) => {
        if (alone === true) return 'the device ahead';
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
  pointsBehind: {
    directCurrentDetection: ofPointBehind(
      (p) => (p.mode === 2 ? byCable : (p.directCurrentDetection ?? detectionAsked)),
      detectionWords,
    ),
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
    chosen(
      derive(['typesAsked'], ({ typesAsked }) => typesAsked.some((t) => t.state !== 'known' || t.value !== 'AC')),
      {
        true: [
          each('residualUpstream', [
            holds(
              c.residualTypeSuits,
              'typeSuits',
              derive(['residualType', 'typesAsked'], typeBecause(generalPurposes)),
            ),
          ]),
        ],
        false: [],
      },
    ),
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
    each(
      'residualUpstream',
      [
        compare(c.residualNotOverloaded, {
          applies: ofResidualUpstream<true | string>(({ device: { overloadDeclared: says } }) =>
            known(
              says?.state === 'known' && says.value
                ? 'Its maker declares it protected by the devices around it.'
                : true,
            ),
          ),
        }),
      ],
      (place: ResidualUpstreamPlace) => !isPartOfBreaker(place),
    ),
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
