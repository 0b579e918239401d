import { isMissing, known, stated, unknown } from '../../core/index.js';
import { existingOn } from '../../demand/demand.js';
import { design, rangesOf } from '../../design/index.js';
import {
  type Board,
  type Cable,
  type Group,
  type Line,
  leavesTails,
  lineConductors,
  type OvercurrentKind,
  pathTo,
  type Run,
  type Stretch,
} from '../../installation/index.js';
import { amperes, metres, squareMillimetres } from '../../units/index.js';
import { eachFeeder } from '../alike-plans.js';
import { atItsDemand } from '../at-its-demand.js';
import { withAllWanted } from '../installed.js';
import { boardsOf } from '../option-survey.js';
import { placeOnLines } from '../place-on-lines.js';
import { type Survey, TO_BE_DESIGNED, type WantedPoint } from '../survey.js';
import { inGround } from '../trench.js';
import {
  type Change,
  feedersTo,
  isKnown,
  item,
  laidAnew,
  leastOf,
  PUT_THERE,
  type Situation,
  type SurveyRemedy,
  withBoards,
  withEachWanted,
  withExistingRun,
  withWantedRuns,
} from './remedy.js';
import { reliesNoMore, servingOthers } from './residual.js';

/** The drop at the temperature that the conductors really have, which is lower than the one of the tables. */
function dropTemperature({ survey }: Situation): readonly Change[] {
  // it moves neither way with a length: over ranges it would be worked out piece by piece
  if (survey.options.dropTemperature !== undefined || rangesOf(withAllWanted(survey)).length > 0) return [];
  return [
    {
      survey: { ...survey, options: { ...survey.options, dropTemperature: 'neighbours-at-full-load' } },
      what: 'voltage drop at the real temperature of the conductors, circuits beside it at full load',
    },
  ];
}

/** Flat twin and earth, as it is commonly bought. */
export const flatCable: Cable = {
  construction: 'flat-twin-and-earth',
  material: 'copper',
  insulation: 'thermoplastic-70',
  cores: 2,
  area: /* @__PURE__ */ unknown(TO_BE_DESIGNED),
  protective: 'bare-core',
};

/** Armoured cable as it is commonly bought for a charge point. */
export const armoured = (lines: number): Cable => ({
  construction: 'armoured',
  material: 'copper',
  insulation: 'thermosetting-90',
  cores: lines === 1 ? 3 : 5,
  ...(lines === 1 ? {} : { loadedCores: known(3) }),
  area: unknown(TO_BE_DESIGNED),
  protective: 'core',
});

/** What is wanted with a new cable: of the sections only those with a cable of their own are as they were, and a joint beside them. */
const withCables = (w: WantedPoint, cables: WantedPoint['cables']): WantedPoint => {
  const stretches = w.run.stretches.map((s, i, all) => {
    if (s.cable) return s;
    const anew = laidAnew(s);
    return all[i - 1]?.cable ? { ...anew, ...stated({ jointAccessible: s.jointAccessible }) } : anew;
  });
  return { ...w, cables, run: { ...w.run, cable: cables[0] as Cable, stretches } };
};

/** What is wanted in an armoured cable, where none that may be used is one. */
function withArmoured(w: WantedPoint): WantedPoint {
  const own = w.cables.filter((c) => c.construction === 'armoured');
  return withCables(w, own.length > 0 ? own : [armoured(w.run.lines.length)]);
}

/** Where the route lies in the ground and no cable that may be used is armoured. */
function armouredCable({ survey }: Situation): readonly Change[] {
  const lacks = (w: WantedPoint) =>
    w.run.stretches.some(inGround) && w.cables.every((c) => c.construction !== 'armoured');
  const changed = survey.wanted.filter(lacks);
  if (changed.length === 0) return [];
  return [
    {
      survey: withEachWanted(survey, (w) => (lacks(w) ? withArmoured(w) : w)),
      what: `armoured cable in place of one that is not for burial: ${changed.map((w) => w.run.id).join(', ')}`,
    },
  ];
}

/** A new cable where the one that lies there and was to be kept does not do: of its kind, or armoured where that is not made for the way. */
function newCable({ survey, plan, result }: Situation): readonly Change[] {
  const unmet = new Set(
    plan.points.flatMap(({ run, assessment }) =>
      assessment.results.some((r) => r.check === result.check && r.verdict === result.verdict) ? [run.id] : [],
    ),
  );
  // what is only open is looked into first, but for a cable without a protective conductor
  const hopeless = ({ cables }: WantedPoint) =>
    result.verdict === 'fail' || cables.every((c) => c.protective === 'none');
  const keepsAll = (w: WantedPoint) =>
    unmet.has(w.run.id) && w.cables.every((c) => c.area.state === 'known') && hopeless(w);
  const changed = survey.wanted.filter(keepsAll);
  if (changed.length === 0) return [];
  const area = unknown(TO_BE_DESIGNED);
  const then = withEachWanted(survey, (w) => {
    const [kept] = w.cables;
    if (!keepsAll(w) || !kept) return w;
    const { protectiveArea: _with, sizeName: _called, ...kind } = kept;
    const unfit = kept.protective === 'none' || w.run.stretches.some(inGround);
    return unfit ? withArmoured({ ...w, cables: [] }) : withCables(w, [{ ...kind, area }]);
  });
  return [
    {
      survey: then,
      what: `new cable for ${changed.map((w) => w.run.id).join(', ')} in place of the one that is there`,
    },
  ];
}

/** One circuit more beside a stretch; how many there are stays open where nobody knows it. */
const besideOneMore = (stretch: Stretch): Stretch => {
  const { group } = stretch;
  if (!group) return stretch;
  const { circuits } = group;
  const more: Group['circuits'] =
    circuits.state === 'known'
      ? known(circuits.value + 1, 'with the feeder that runs there')
      : circuits.state === 'between'
        ? { ...circuits, least: circuits.least + 1, most: circuits.most + 1 }
        : circuits;
  return { ...stretch, group: { ...group, circuits: more } };
};

/** A survey in which no load control below the origin holds these points any more: their circuits no longer pass it. */
const withoutControls = (survey: Survey, points: ReadonlySet<string>): Survey =>
  withBoards(survey, (board) => {
    const { control, ...rest } = board;
    if (!control || board.id === survey.installation.board.id) return board;
    const controls = control.controls.filter((id) => !points.has(id));
    return controls.length > 0 ? { ...rest, control: { ...control, controls } } : rest;
  });

/** The circuit leaves the board at the origin and runs beside the feeder, then on as it was. */
function fromOrigin({ survey }: Situation): readonly Change[] {
  const installation = withAllWanted(survey);
  const origin = survey.installation.board.id;
  const moved = survey.wanted.filter((w) => w.from !== origin);
  if (moved.length === 0) return [];
  const ids = new Set(moved.map((w) => w.run.id));
  const released = withoutControls(survey, new Set(moved.flatMap((w) => w.run.feeds.map((o) => o.id))));
  const boards = new Map(boardsOf(survey.installation.board).map((b) => [b.id, b]));
  const parted = withBoards(released, (board) => (board.residual ? { ...board, ...servingOthers(board, ids) } : board));
  const then = withEachWanted(parted, (wanted) => {
    if (wanted.from === origin) return wanted;
    const w = { ...wanted, run: reliesNoMore(wanted.run, boards.get(wanted.from) as Board) };
    const feeders = pathTo(installation, w.run.id)?.feeders ?? [];
    const along = feeders.flatMap((f) =>
      f.stretches.map((s) => besideOneMore({ ...laidAnew(s), name: `way of ${f.id}: ${s.name}` })),
    );
    const onward = { ...w, from: origin, run: { ...w.run, stretches: [...along, ...w.run.stretches] } };
    return along.some(inGround) ? withArmoured(onward) : onward;
  });
  return [
    {
      survey: then,
      what: `own circuit from ${origin} for ${moved.flatMap((w) => w.run.feeds.map((o) => o.id)).join(', ')}, along the way of the feeder`,
    },
  ];
}

/** The feeder designed anew for what it has to carry, its cable of the same kind where that is made for the way. */
function redesigned({ survey, plan, code }: Situation, feeder: Run): Run | undefined {
  const found = eachFeeder(plan.feeders).find((f) => f.run === feeder.id)?.demand;
  // of ways side by side nobody says which is to be replaced
  if (!found || feeder.beside || isMissing(found.worst) || feeder.device.kind.state !== 'known') return undefined;
  const { worst: demand } = found;
  // what is not made for the ground is not laid there again
  const methods = code.methodsFor?.(feeder);
  const unfit = feeder.stretches.some(
    (s) => inGround(s) && s.method.state === 'known' && methods?.includes(s.method.value) === false,
  );
  const kind = unfit ? armoured(feeder.lines.length) : feeder.cable;
  const options = atItsDemand(survey, found);
  const ratings = code.ratingsFor(feeder).filter((r) => r >= demand);
  const { jointsAccessible: _joints, ...rest } = feeder;
  // one cable all the way, from a way of its board where nobody knows that the old one left the tails
  const anew = {
    ...rest,
    existing: false,
    ...(leavesTails(feeder) ? {} : { fromTails: known(false, PUT_THERE) }),
    stretches: feeder.stretches.map(laidAnew),
  };
  const { chosen } = design(
    code,
    withAllWanted(withExistingRun(survey, feeder.id, ({ feeds }) => ({ ...anew, feeds }))),
    feeder.id,
    { cables: [kind], ratings },
    {
      ...options,
      lengths: false,
    },
  );
  if (!chosen) return undefined;
  const { area, rating, cable } = chosen;
  const { sizeName } = cable;
  return {
    ...anew,
    cable: { ...kind, ...(sizeName ? { sizeName } : {}), area: known(squareMillimetres(area), PUT_THERE) },
    device: { ...feeder.device, rating: known(amperes(rating), PUT_THERE) },
  };
}

/** The main switch of a board at the end of a feeder is no smaller than the device ahead of it. */
const raised = (board: Board, rating: Run['device']['rating']): Board =>
  board.mainSwitch?.rating.state === 'known' && rating.state === 'known' && board.mainSwitch.rating.value < rating.value
    ? { ...board, mainSwitch: { ...board.mainSwitch, rating } }
    : board;

/** Feeders that do not carry what is below them are replaced by larger ones. */
function largerFeeder(at: Situation): readonly Change[] {
  const failing = new Set(eachFeeder(at.plan.feeders).flatMap((f) => (f.overall.verdict === 'fail' ? [f.run] : [])));
  const found = feedersTo(at.survey).flatMap((f) => {
    const then = failing.has(f.id) ? redesigned(at, f) : undefined;
    return then ? [then] : [];
  });
  if (found.length === 0) return [];
  return [
    {
      survey: found.reduce(
        (s, f) =>
          withExistingRun(s, f.id, (run) => ({
            ...f,
            feeds: run.feeds.map((o) => (o.kind === 'board' ? raised(o, f.device.rating) : o)),
          })),
        at.survey,
      ),
      what: found
        .map((f) => {
          const { cable, device } = f;
          return `feeder ${f.id} replaced: ${cable.construction.replaceAll('-', ' ')} ${cable.area.state === 'known' ? cable.area.value : '?'} mm² behind ${device.rating.state === 'known' ? device.rating.value : '?'} A`;
        })
        .join('; '),
    },
  ];
}

/** Ways of another device that are tried for one feeder. */
const DEVICES = 3;

/** Another device ahead of a feeder that the one that is there does not protect: smaller, or of curve B, for what it has to carry. */
function otherDevice({ survey, plan, code, result }: Situation): readonly Change[] {
  const failing = eachFeeder(plan.feeders).filter((f) => f.overall.verdict === 'fail');
  const [found] = feedersTo(survey).flatMap((run) => {
    const demand = failing.find((f) => f.run === run.id)?.demand.worst;
    const now = leastOf(run.device.rating);
    return demand === undefined || isMissing(demand) || now === undefined || run.device.kind.state !== 'known'
      ? []
      : [{ run, demand, now, kind: run.device.kind.value }];
  });
  if (!found) return [];
  const { run, demand, now, kind } = found;
  // a circuit-breaker of a slower curve that does not open in time gives way to one of curve B first
  const slow = result.check === 'automatic-disconnection' && 'type' in kind && (kind.type === 'C' || kind.type === 'D');
  const then = slow ? ({ ...kind, type: 'B' } as OvercurrentKind) : kind;
  return code
    .ratingsFor(run)
    .filter((rating) => rating >= demand && (slow ? rating <= now : rating < now))
    .reverse()
    .slice(0, DEVICES)
    .map((rating) => ({
      survey: withExistingRun(survey, run.id, (r) => ({
        ...r,
        device: { ...r.device, kind: known(then, PUT_THERE), rating: known(rating, PUT_THERE) },
      })),
      what: `device of ${rating} A${slow ? ', curve B,' : ''} ahead of ${run.id} in place of ${now} A`,
      items: [item('protective-device', `fuse or circuit-breaker ${rating} A${slow ? ', curve B' : ''}`)],
    }));
}

/** Single-phase points go where the most loaded line is lowest. */
function otherLines({ survey, plan }: Situation): readonly Change[] {
  const { phases } = survey.installation.supply;
  if (phases.state !== 'known' || phases.value !== 3) return [];
  const base = lineConductors.map((line) => existingOn(plan.supply.demand, line));
  if (base.some(isMissing)) return [];
  const installation = withAllWanted(survey);
  const settingOf = (w: WantedPoint) =>
    w.run.feeds.reduce(
      (sum, o) => sum + (o.kind === 'charge-point' && o.setting.state === 'known' ? o.setting.value : 0),
      0,
    );
  const single = survey.wanted.filter((w) => w.run.lines.length === 1);
  for (const w of survey.wanted)
    if (!single.includes(w))
      for (const line of w.run.lines) {
        const at = lineConductors.indexOf(line);
        base[at] = amperes((base[at] as number) + settingOf(w));
      }
  const { lines: found } = placeOnLines(
    base as unknown as [number, number, number],
    single.map((w) => {
      const may = pathTo(installation, w.run.id)?.feeders.at(-1)?.lines;
      return { id: w.run.id, current: settingOf(w), on: w.run.lines[0] as Line, ...(may ? { may } : {}) };
    }),
  );
  const goes = new Map(Object.entries(found));
  const moved = survey.wanted.filter((w) => goes.has(w.run.id) && goes.get(w.run.id) !== w.run.lines[0]);
  if (moved.length === 0) return [];
  return [
    {
      survey: withEachWanted(survey, (w) => {
        const line = goes.get(w.run.id);
        if (line === undefined) return w;
        const feeds = w.run.feeds.map((o) => (o.kind === 'charge-point' ? { ...o, lines: [line] } : o));
        return { ...w, run: { ...w.run, lines: [line], feeds } };
      }),
      what: moved.map((w) => `${w.run.feeds.map((o) => o.id).join(', ')} on ${goes.get(w.run.id)}`).join('; '),
    },
  ];
}

/** Whether a stretch lies in thermal insulation, or above a ceiling with it. */
const insulatedIn = ({ insulated, method }: Stretch): boolean =>
  (insulated !== undefined && !isKnown<number>(insulated, 0)) ||
  (method.state === 'known' && insulatedMethods.includes(method.value));
const insulatedMethods: readonly string[] = ['100', '101', '102', '103'];
/** The same, as the survey says by its method. */
const isKnownIn = ({ method }: Stretch): boolean => method.state === 'known' && insulatedMethods.includes(method.value);

/** The cable of a new circuit is clipped where the insulation does not cover it. */
function clearOfInsulation({ survey, result }: Situation): readonly Change[] {
  // of what is open only that no cable is rated for the way is cured by another one
  const forNone = result.check === 'cable-for-the-route';
  if (result.verdict !== 'fail' && !forNone) return [];
  const names = new Set<string>();
  const clear = (stretch: Stretch): Stretch => {
    if (!(forNone ? isKnownIn(stretch) : insulatedIn(stretch))) return stretch;
    names.add(stretch.name);
    return {
      ...stretch,
      method: known('C', PUT_THERE),
      insulated: known(metres(0), PUT_THERE),
      containment: 'clipped',
    };
  };
  const then = withWantedRuns(survey, (run, w) =>
    w.cables.every((c) => c.area.state === 'known') ? run : { ...run, stretches: run.stretches.map(clear) },
  );
  if (names.size === 0) return [];
  return [{ survey: then, what: `cable clipped clear of the thermal insulation: ${[...names].join(', ')}` }];
}

const ofFeeder = [
  'device-carries-load',
  'load-within-capacity',
  'overload-limit',
  'grouped-device',
  'voltage-drop',
  'demand-within-main-switch',
];

/** What a feeder may fail by behind a device that is too large for it. */
const ofItsDevice = [
  'tabulated-capacity',
  'conventional-overload',
  'terminal-temperature',
  'automatic-disconnection',
  'line-withstand',
];

/** Remedies about cables, feeders and lines. */
export const routeRemedies: readonly SurveyRemedy[] = [
  {
    id: 'drop-temperature',
    title: 'The drop at the real temperature of the conductors',
    checks: ['voltage-drop'],
    ways: dropTemperature,
  },
  {
    id: 'armoured-cable',
    title: 'An armoured cable',
    checks: ['cable-for-the-ground', 'cable-for-the-route'],
    whenOpen: true,
    ways: armouredCable,
  },
  {
    id: 'clear-of-insulation',
    title: 'Another way for the cable, clear of the insulation',
    checks: ['tabulated-capacity', 'load-within-capacity', 'overload-limit', 'cable-for-the-route'],
    whenOpen: true,
    ways: clearOfInsulation,
  },
  {
    id: 'new-cable',
    title: 'A new cable in place of the one that is there',
    checks: [
      'tabulated-capacity',
      'load-within-capacity',
      'overload-limit',
      'conventional-overload',
      'terminal-temperature',
      'voltage-drop',
      'automatic-disconnection',
      'protective-conductor',
      'line-withstand',
      'cable-for-the-ground',
      'cable-for-the-route',
      'joint-accessible',
    ],
    whenOpen: true,
    ways: newCable,
  },
  {
    id: 'other-line',
    title: 'Single-phase points on the lines that have room',
    checks: ['demand-within-cut-out', 'demand-within-main-switch'],
    whenOpen: true,
    ways: otherLines,
  },
  {
    id: 'own-circuit',
    title: 'A circuit of its own from the origin',
    checks: /* @__PURE__ */ ofFeeder.concat('joint-accessible'),
    ways: fromOrigin,
  },
  {
    id: 'larger-feeder',
    title: 'A larger feeder',
    checks: /* @__PURE__ */ ofFeeder.concat(ofItsDevice, 'cable-for-the-ground', 'joint-accessible'),
    ways: largerFeeder,
  },
  {
    id: 'feeder-device',
    title: 'Another device ahead of a feeder',
    checks: ofItsDevice,
    ways: otherDevice,
  },
];
