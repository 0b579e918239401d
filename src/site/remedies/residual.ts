import { known } from '../../core/index.js';
import {
  type Board,
  mayServe,
  type OvercurrentKind,
  outletsBelow,
  RCBO_B,
  type ResidualDevice,
  type Run,
  withResidualPart,
} from '../../installation/index.js';
import { type Amperes, amperes, milliamperes, ohms, seconds } from '../../units/index.js';
import type { Survey } from '../survey.js';
import {
  boardsTo,
  type Change,
  feedersTo,
  isKnown,
  item,
  leastOf,
  PUT_THERE,
  type Situation,
  type SurveyRemedy,
  sizeFrom,
  withExistingRun,
  withFirstBoard,
  withSupply,
  withWantedRuns,
} from './remedy.js';

type Type = 'A' | 'F' | 'B';
const types = ['AC', 'A', 'F', 'B'] as const;
type Device = ResidualDevice & { readonly serves?: readonly string[] };
type Retype = (device: Device) => Device;

const replaced = new Set<string>(['origin-of-circuit', 'origin-of-installation', 'along-circuit']);

/** Devices as they are now: where one was put there, nobody says any more that there is none. */
const described = <D extends Device>(before: readonly D[], residual: readonly D[]) =>
  residual.every((d, i) => d === before[i]) ? { residual } : { residual, noResidual: known(false, PUT_THERE) };

/** A board and those below it, with the residual current devices changed that stand on the way to the wanted points. */
function onTheWay(survey: Survey, change: Retype): { readonly survey: Survey; readonly changed: readonly Device[] } {
  const boards = boardsTo(survey);
  const feeders = new Set(feedersTo(survey).map((f) => f.id));
  const next = new Set([...feeders, ...survey.wanted.map((w) => w.run.id)]);
  const changed: Device[] = [];
  const each = (device: Device): Device => {
    const then = replaced.has(device.position) ? change(device) : device;
    if (then !== device) changed.push(then);
    return then;
  };
  const inRun = (run: Run): Run => ({
    ...run,
    ...(run.residual && feeders.has(run.id) ? described(run.residual, run.residual.map(each)) : {}),
    feeds: run.feeds.map((o) => (o.kind === 'board' && boards.has(o.id) ? inBoard(o) : o)),
  });
  const inBoard = (board: Board): Board => ({
    ...board,
    ...(board.residual
      ? described(
          board.residual,
          board.residual.map((d) => (d.serves && !d.serves.some((id) => next.has(id)) ? d : each(d))),
        )
      : {}),
    runs: board.runs.map(inRun),
  });
  const installation = { ...survey.installation, board: inBoard(survey.installation.board) };
  const wanted = withWantedRuns({ ...survey, installation }, (run) =>
    run.residual ? { ...run, ...described(run.residual, run.residual.map(change)) } : run,
  );
  return { survey: wanted, changed };
}

const ratedWords = (device: Device): string => {
  const rated = leastOf(device.ratedCurrent);
  const residual = leastOf(device.rating);
  return `${rated === undefined ? '' : `${rated} A, `}${residual === undefined ? '' : `${residual * 1000} mA `}`;
};

const typeOf = ({ type }: Device): string => (type.state === 'known' ? type.value : 'A');

/** Every device on the way that is of a lower type, or of one that is not known, is replaced by one of this type. */
function retyped({ survey }: Situation, type: Type): readonly Change[] {
  const lower = (d: Device) => d.type.state !== 'known' || types.indexOf(d.type.value) < types.indexOf(type);
  const found = onTheWay(survey, (d) => (lower(d) ? { ...d, type: known(type, PUT_THERE) } : d));
  const own = JSON.stringify(found.survey.wanted) !== JSON.stringify(survey.wanted);
  const { changed } = found;
  if (changed.length === 0 && !own) return [];
  const words = changed.map((d) => `RCD ${ratedWords(d)}type ${type}`);
  return [
    {
      survey: found.survey,
      what: [
        ...words.map((w) => `${w}, in place of the one that is there`),
        ...(own ? [`residual current device of the circuit of type ${type}`] : []),
      ].join('; '),
      items: words.map((w) => item('residual-device', w)),
      tasks: changed.length > 0 ? [['residual current device, replaced', changed.length]] : [],
    },
  ];
}

/** Ratings of residual current devices without overcurrent protection that are commonly sold, A: common practice, no source. */
const ratedCurrents = [25, 40, 63, 80, 100, 125];

/** A residual current device of a larger rated current than what it is judged against. */
function larger({ survey, result }: Situation): readonly Change[] {
  const asked = result.limit?.value ?? largestAsked(result.alternatives);
  const rating = asked === undefined ? undefined : sizeFrom(ratedCurrents, asked);
  if (rating === undefined) return [];
  const found = onTheWay(survey, (d) => {
    const now = leastOf(d.ratedCurrent);
    return now !== undefined && now < rating ? { ...d, ratedCurrent: known(amperes(rating), PUT_THERE) } : d;
  });
  const own = JSON.stringify(found.survey.wanted) !== JSON.stringify(survey.wanted);
  if (found.changed.length === 0 && !own) return [];
  const words = found.changed.map((d) => `RCD ${ratedWords(d)}type ${typeOf(d)}`);
  return [
    {
      survey: found.survey,
      what: [
        ...words.map((w) => `${w}, in place of the one that is there`),
        ...(own ? [`residual current device of the circuit of ${rating} A`] : []),
      ].join('; '),
      items: words.map((w) => item('residual-device', w)),
      tasks: found.changed.length > 0 ? [['residual current device, replaced', found.changed.length]] : [],
    },
  ];
}

/** Of alternatives of which one has to hold the least that is asked. */
export function largestAsked(alternatives: Situation['result']['alternatives']): number | undefined {
  const asked = (alternatives ?? []).flatMap((a) => (a.verdict === 'fail' && a.limit ? [a.limit.value] : []));
  return asked.length > 0 ? Math.min(...asked) : undefined;
}

/** What the circuit of a point is given as a device of its own: combined, double pole, of both directions. */
export const ownResidual = (rating: Amperes = milliamperes(30), type: Type = 'A'): ResidualDevice => ({
  position: 'origin-of-circuit',
  type: known(type, PUT_THERE),
  rating: known(rating, PUT_THERE),
  delay: known('general', PUT_THERE),
  opensAllLive: known(true, PUT_THERE),
  bidirectional: known(true, PUT_THERE),
});

/** The device ahead of a circuit with a residual current part: of the curve that it has, B where it is a fuse. */
export const combinedLike = ({ kind }: Run['device']): OvercurrentKind =>
  kind.state === 'known' ? withResidualPart(kind.value) : RCBO_B;

/** The devices of a board that stand ahead of a circuit on it. */
export const aheadOn = ({ residual = [] }: Board, run: Run): readonly Device[] =>
  residual.filter((d) => mayServe(d, run));

/** What stands on a board without the circuits that leave it: it serves the others, or goes with them. */
export const servingOthers = ({ residual }: Board, gone: ReadonlySet<string>): Pick<Board, 'residual'> =>
  residual
    ? {
        residual: residual.flatMap((d) => {
          const serves = d.serves?.filter((id) => !gone.has(id));
          return serves === undefined ? [d] : serves.length > 0 ? [{ ...d, serves }] : [];
        }),
      }
    : {};

/** The type of a device that takes the place of those: no lower than theirs, nor than what the maker of a load asks for. */
export function typeInstead(run: Run, ahead: readonly Device[] = []): Type {
  const asked = outletsBelow(run).flatMap((o) => (o.kind === 'load' && o.residualType ? [o.residualType] : []));
  const all = [...(run.residual ?? []), ...ahead].map((d) => d.type).concat(asked);
  const order = all.map((t) => (t.state === 'known' ? types.indexOf(t.value) : 0));
  return types[Math.max(1, ...order)] as Type;
}

/** Whether a circuit has a residual current device of its own, or its point one inside. */
const hasOwn = (run: Run): boolean =>
  (run.residual ?? []).length > 0 || run.feeds.some((o) => o.kind === 'charge-point' && o.residual);

/** A circuit with an RCBO of its own; fuses of the board make way for it. */
const withOwn = (run: Run, ahead: readonly Device[] = []): Run => ({
  ...run,
  device: { ...run.device, kind: known(combinedLike(run.device), PUT_THERE) },
  residual: [
    ownResidual(milliamperes(30), ahead.length > 0 ? typeInstead(run, ahead) : 'A'),
    ...(run.residual ?? []).filter((r) => r.position === 'inside-equipment'),
  ],
  noResidual: known(false, PUT_THERE),
});

/** A circuit as it stands on a board where each has an RCBO. */
export const asOnNewBoard = (run: Run, before: Board): Run => (hasOwn(run) ? run : withOwn(run, aheadOn(before, run)));

/** A circuit that leaves the devices of its board, on which it relied: it has one of its own then. */
export const reliesNoMore = (run: Run, board: Board): Run =>
  aheadOn(board, run).length > 0 ? asOnNewBoard(run, board) : run;

/** Whether a circuit has a device of its own of which everything is said that one for a charge point needs. */
const isFit = ({ residual = [] }: Run): boolean =>
  residual.some(
    (d) =>
      d.position === 'origin-of-circuit' &&
      d.type.state === 'known' &&
      (leastOf(d.rating) ?? 1) <= 0.03 &&
      !isKnown(d.delay, 'selective'),
  );

/** The circuit gets an RCBO of its own; where something is only open, one that has none, or none that is known to do. */
function combined({ survey, result }: Situation): readonly Change[] {
  const lacks = (run: Run) => result.verdict === 'fail' || !isFit(run);
  if (!survey.wanted.some(({ run }) => lacks(run))) return [];
  return [
    {
      survey: withWantedRuns(survey, (run) => (lacks(run) ? withOwn(run) : run)),
      what: 'RCBO of the circuit, 30 mA type A, opening all live conductors',
    },
  ];
}

/** The devices of the circuits open every live conductor, or may be fed from both sides. */
const withMarking =
  (mark: 'opensAllLive' | 'bidirectional', what: string) =>
  ({ survey }: Situation) => {
    let any = false;
    const changed = withWantedRuns(survey, (run) => ({
      ...run,
      ...(run.residual
        ? described(
            run.residual,
            run.residual.map((r) => {
              if (r[mark]?.state === 'known' && r[mark].value) return r;
              any = true;
              return { ...r, [mark]: known(true, PUT_THERE) };
            }),
          )
        : {}),
    }));
    return any ? [{ survey: changed, what }] : [];
  };

/** Only the circuits that are there stay behind the devices of the board; the new ones leave it ahead of them. */
function aheadOfDevices(at: Situation): readonly Change[] {
  const { survey, result } = at;
  // where a device with time delay does, the circuits stay behind it
  if (result.check === 'residual-current-selectivity' && delayed(at).length > 0) return [];
  const { board } = survey.installation;
  const added = new Set(survey.wanted.map((w) => w.run.id));
  const behind = board.residual?.some((d) => !d.serves || d.serves.some((id) => added.has(id)));
  if (!board.residual || !behind || survey.wanted.some((w) => w.from !== board.id)) return [];
  const residual = board.residual.flatMap((d) => {
    const served = d.serves ?? board.runs.filter((r) => mayServe(d, r)).map((r) => r.id);
    const serves = served.filter((id) => !added.has(id));
    return serves.length > 0 ? [{ ...d, serves }] : [];
  });
  const apart = withFirstBoard(
    withWantedRuns(survey, (run) => reliesNoMore(run, board)),
    { residual },
  );
  return [
    {
      survey: { ...apart, work: { ...apart.work, newEnclosure: known(true, PUT_THERE) } },
      what: 'small board for the new circuits beside the one that is there, fed ahead of its residual current device',
    },
  ];
}

/** What an electrode may measure and still be taken to last, Ω, as the code advises for this one. */
const lasting = ({ plan }: Situation): number | undefined =>
  plan.points
    .flatMap((p) => p.assessment.results)
    .flatMap((r) => (r.check === 'electrode-stability' && r.verdict === 'fail' && r.limit ? [r.limit.value] : []))[0];

/** Further rods, or a deeper one, until the electrode of the installation measures what lasts: that opens the devices, too. */
function electrode(at: Situation): readonly Change[] {
  const { survey } = at;
  const { electrode: old } = survey.installation.supply;
  const most = lasting(at);
  if (!old || most === undefined || (leastOf(old.resistance) ?? 0) <= most) return [];
  const resistance = known(ohms(most), `${PUT_THERE}: further rods until it measures at most ${most} Ω`);
  const { externalImpedance: loop } = survey.installation.supply;
  const now = loop.state === 'known' && loop.value > most ? { externalImpedance: resistance } : {};
  return [
    {
      survey: withSupply(survey, { electrode: { ...old, resistance }, ...now }),
      what: `earth electrode of at most ${most} Ω, by a deeper rod or further ones`,
      items: [item('electrode', 'earth rod with clamp and coupling', 1, 'set')],
      tasks: [['earth electrode with test', 1]],
    },
  ];
}

/** Devices ahead of the circuit that open with it get a time delay; not those of 30 mA, on which other circuits rely for protection of persons. */
function delayed({ survey }: Situation): readonly Change[] {
  const found = onTheWay(survey, (d) =>
    isKnown(d.delay, 'selective') || (leastOf(d.rating) ?? 0) < 0.1 - 1e-9
      ? d
      : { ...d, delay: known('selective', PUT_THERE) },
  );
  if (found.changed.length === 0) return [];
  const words = found.changed.map((d) => `RCD ${ratedWords(d)}type ${typeOf(d)}, with time delay`);
  return [
    {
      // the device of the point itself stays as it is
      survey: { ...found.survey, wanted: survey.wanted },
      what: `${words.join('; ')}, in place of the one that opens with the circuit`,
      items: words.map((w) => item('residual-device', w)),
      tasks: [['residual current device, replaced', found.changed.length]],
    },
  ];
}

/** A device with time delay ahead of feeders that have none, where a fuse alone does not open in time. */
function aheadOfFeeder({ survey }: Situation): readonly Change[] {
  const { board } = survey.installation;
  const bare = feedersTo(survey).filter(
    (f) => board.runs.some((r) => r.id === f.id) && !f.residual?.length && aheadOn(board, f).length === 0,
  );
  const sizes = bare.map((f) => sizeFrom(ratedCurrents, leastOf(f.device.rating) ?? Number.NaN));
  if (bare.length === 0 || sizes.some((size) => size === undefined)) return [];
  return (['A', 'B'] as const).map((type) => {
    const put = (run: Run): Run => ({
      ...run,
      residual: [
        {
          ...ownResidual(milliamperes(100), type),
          ratedCurrent: known(amperes(sizes[bare.findIndex((f) => f.id === run.id)] as number), PUT_THERE),
          delay: known('selective', PUT_THERE),
          delayTime: known(seconds(0), PUT_THERE),
        },
      ],
      noResidual: known(false, PUT_THERE),
    });
    const words = bare.map((f, i) => `RCD ${sizes[i]} A, 100 mA type ${type} with time delay, ahead of ${f.id}`);
    return {
      survey: bare.reduce((then, f) => withExistingRun(then, f.id, put), survey),
      what: words.join('; '),
      items: words.map((w) => item('residual-device', w)),
      tasks: [['residual current device, replaced', bare.length]] as const,
    };
  });
}

const onType = ['smooth-current-upstream', 'residual-current-type'];

/** Remedies about residual current devices. */
export const residualRemedies: readonly SurveyRemedy[] = [
  {
    id: 'electrode',
    title: 'A better earth electrode',
    checks: ['electrode-stability', 'automatic-disconnection'],
    ways: electrode,
  },
  {
    id: 'residual-selective',
    title: 'A device with time delay ahead of the circuit',
    checks: ['residual-current-selectivity'],
    ways: delayed,
  },
  {
    id: 'double-pole',
    title: 'A device that opens line and neutral',
    checks: ['residual-current-poles'],
    whenOpen: true,
    ways: /* @__PURE__ */ withMarking(
      'opensAllLive',
      'residual current device of the circuit that opens all live conductors',
    ),
  },
  {
    id: 'both-ways',
    title: 'A device that may be fed from both sides',
    // by editions that leave it to the makers it is open, and never fails
    checks: ['residual-current-both-ways', 'residual-current-marked-both-ways'],
    whenOpen: true,
    ways: /* @__PURE__ */ withMarking(
      'bidirectional',
      'residual current device of the circuit that may be fed from both sides',
    ),
  },
  {
    id: 'own-residual-device',
    title: 'An RCBO for the circuit',
    checks: [
      'residual-current-rating',
      'residual-current-one-per-point',
      'residual-current-position',
      'residual-current-concealed-cable',
      'residual-current-type',
      'residual-current-poles',
      'residual-current-bath-or-shower',
      'automatic-disconnection',
    ],
    // on a new circuit it costs less to choose one than to find out
    whenOpen: true,
    ways: combined,
  },
  {
    id: 'feeder-residual-device',
    title: 'A residual current device ahead of a feeder',
    checks: ['automatic-disconnection', 'residual-current-position'],
    ways: aheadOfFeeder,
  },
  {
    id: 'residual-type-a',
    title: 'Residual current device of type A in place of type AC',
    checks: onType,
    whenOpen: true,
    ways: (at) => retyped(at, 'A'),
  },
  {
    id: 'ahead-of-residual-device',
    title: 'A small board ahead of the residual current device that is there',
    checks: /* @__PURE__ */ onType.concat(
      'standing-current',
      'residual-current-one-per-point',
      'residual-current-device-overload',
      'residual-device-at-origin-overload',
      'residual-current-selectivity',
    ),
    ways: aheadOfDevices,
  },
  {
    id: 'residual-type-b',
    title: 'Residual current device of type B',
    checks: onType,
    ways: (at) => retyped(at, 'B'),
  },
  {
    id: 'residual-rated-current',
    title: 'Residual current device of a larger rated current',
    checks: ['residual-current-device-overload', 'residual-device-at-origin-overload'],
    ways: larger,
  },
];
