import { kindsOfNames, namesInShort } from '../../core/names.js';
import { waysOf } from '../../installation/beside.js';
import { pathTo, type Run } from '../../installation/index.js';
import { separateResidual } from '../../installation/ordering.js';
import type { Plan, PointPlan } from '../../site/index.js';
import { inGround } from '../../site/trench.js';
import { wholeJob } from '../../site/whole-job.js';
import { formatIn } from '../../units/index.js';
import { type Block, caution, grid, heading, list, paragraph } from '../block.js';
import { titleOf } from '../plan-checks.js';
import { cableOf, circuitWords, earthingOf, protectionOf } from '../plan-circuits.js';
import { conditionWords, standsFor } from '../plan-conditions.js';
import { itemWords, quantityOf } from '../plan-work.js';
import { comparisonWords } from '../sheet.js';
import { routePicture } from '../svg/index.js';
import { factOf, obtainOf } from '../unknown.js';
import type { ReportWords } from '../words/pages.js';
import { order } from './order.js';
import {
  type Alike,
  alike,
  capital,
  chargePointsOf,
  controlsOf,
  namesOf,
  type Page,
  type PageOptions,
  page,
  quotedNames,
  rangeOf,
  settingOf,
  worstOfEach,
} from './parts.js';

/** Open facts that are named on the page; the design file has them all. */
const MOST = 12;

/** What has to be known or confirmed before anybody installs. */
function first({ option, words }: Page): readonly Block[] {
  const { installer: w, customer } = words;
  const open = option.unknown.filter((u) => u.decides);
  const before = option.beforeWork.filter((b) => b.state === 'in-the-way' || b.whom !== 'customer');
  return [
    ...(before.length > 0
      ? [heading(2, w.before), ...list(before.map((b) => `${words.said(b.words, `before:${b.id}`)}.`))]
      : []),
    ...(open.length > 0
      ? [
          heading(2, w.open),
          ...list([
            ...open.slice(0, MOST).map((u) => {
              const obtain = obtainOf(u, words);
              return obtain === undefined ? factOf(u, words) : customer.answerOf(factOf(u, words), obtain);
            }),
            ...(open.length > MOST ? [customer.more(open.length - MOST)] : []),
          ]),
        ]
      : []),
    ...(option.conditions.length > 0
      ? [
          heading(2, w.confirm),
          paragraph(w.confirmWords),
          ...grid(
            '',
            w.confirmHead,
            option.conditions.map((c) => {
              const { title, assumed, confirm } = conditionWords(c, words);
              return [title, assumed, standsFor(c, words) ?? w.asAssumed, confirm, ''];
            }),
            [],
            [4],
          ),
        ]
      : []),
  ];
}

/** The lines that follow one another in every row of names, where rows are many and all of them go by turns. */
function inTurn(points: readonly PointPlan[]): string | undefined {
  const lineOf = new Map(points.map((p) => [p.point, linesOf(p.run)]));
  const rows = kindsOfNames(points.map((p) => p.point)).map((row) => row.map((name) => lineOf.get(name) ?? ''));
  const turn = rows[0]?.slice(0, 3) ?? [];
  const all = rows.every((row) => row.length > 3 && row.every((l, k) => l === turn[k % 3]));
  return rows.length > 2 && all && new Set(turn).size === 3 ? turn.join(', ') : undefined;
}

/** Line conductors of circuits: of many each line with what is on it. */
function linesOver(points: readonly PointPlan[], { installer: w }: ReportWords): string {
  const turn = inTurn(points);
  if (turn !== undefined) return w.inTurn(turn);
  const on = new Map<string, string[]>();
  for (const p of points) on.set(linesOf(p.run), [...(on.get(linesOf(p.run)) ?? []), p.point]);
  return points.length === 1
    ? [...on.keys()].join('')
    : [...on].map(([l, names]) => `${l}: ${namesInShort(names).join('; ')}`).join('. ');
}

const linesOf = (run: Run): string => run.lines.join(', ');

/** Cable, device, setting and earthing of circuits that are alike. */
function circuit(
  { first: point, points }: Alike,
  several: boolean,
  { option, words: { installer: w }, words }: Page,
): readonly Block[] {
  const earthing = earthingOf(point, words);
  const setting = settingOf(point);
  const lengths = points.flatMap((p) => (p.design.lengths?.intervals ?? []).slice(-1).map((i) => i.to.value as number));
  return [
    ...(several
      ? [
          heading(
            3,
            namesOf(
              points.map((p) => p.point),
              words,
            ),
          ),
        ]
      : []),
    ...list([
      // of one kind of circuit the answer says it
      ...(several ? [w.cable(cableOf(point.run, words)), w.device(protectionOf(point.run, words))] : []),
      ...separateResidual(point.run).map((device) => w.device(words.said(device, 'device'))),
      ...(setting === undefined ? [] : [w.setting(setting)]),
      ...(point.earthing.length === 0 ? [] : [earthing === undefined ? w.earthingOpen : w.earthing(earthing)]),
      // on a single phase there is nothing to choose
      ...(option.installation.supply.phases.state === 'known' && option.installation.supply.phases.value === 1
        ? []
        : [w.lines(linesOver(points, words))]),
      ...(lengths.length > 0 ? [w.longest(formatIn(Math.min(...lengths), 'm'))] : []),
    ]),
  ];
}

/** Load controls that are set alike, with what they are set to, A. */
function setTogether(controls: ReturnType<typeof controlsOf>): readonly (readonly [number, readonly string[]])[] {
  const by = new Map<number, string[]>();
  for (const { name, limit } of controls)
    if (limit.state === 'known') by.set(limit.value, [...(by.get(limit.value) ?? []), name]);
  return [...by];
}

/** Load controls by name; of many the first and the last. */
function limitersOf(names: readonly string[], words: ReportWords): string {
  const said = names.map((name) => words.said(name, 'control'));
  return said.length > 4 ? words.installer.limiters(said.length, said[0] ?? '', said.at(-1) ?? '') : said.join('; ');
}

/** The sections of a route, lengths over all that run alike. */
function sections(runs: readonly Run[], { words }: Page): readonly (readonly string[])[] {
  const over = (values: readonly ({ readonly state: string; readonly value?: number } | undefined)[], unit: string) => {
    const known = values.flatMap((f) => (f?.state === 'known' && f.value !== undefined ? [f.value] : []));
    return known.length === 0 ? '' : rangeOf(known, unit, words);
  };
  return (runs[0]?.stretches ?? []).map((s, i) => {
    const same = runs.map((r) => r.stretches[i]);
    return [
      s.name,
      over(
        same.map((x) => x?.length),
        'm',
      ) || words.installer.openQuantity,
      s.method.state === 'known' ? s.method.value : words.installer.openQuantity,
      s.containment === undefined ? '' : words.long.label(s.containment),
      over(
        same.map((x) => x?.depth),
        'm',
      ),
    ];
  });
}

/** What a picture of a route shows; nothing where a length is open or there is nothing to tell apart. */
function routeFigure(run: Run, from: string, title: string, words: ReportWords): readonly Block[] {
  const drawn = run.stretches.flatMap((s) => {
    const { name, length, depth, method, outdoors } = s;
    return length.state === 'known'
      ? [
          {
            name,
            length: length.value,
            ...(depth?.state === 'known' && inGround(s) ? { depth: depth.value } : {}),
            ...(method.state === 'known' ? { method: method.value } : {}),
            ...(outdoors ? { outdoors } : {}),
          },
        ]
      : [];
  });
  if (drawn.length < run.stretches.length || drawn.length < 2) return [];
  const to = chargePointsOf(run)[0]?.id ?? run.id;
  return [
    {
      kind: 'figure',
      svg: routePicture({ title, from, to, sections: drawn, words: words.pictures }),
      caption: words.installer.routeNote,
    },
  ];
}

function routes(kinds: readonly Alike[], of: Page): readonly Block[] {
  const { words, option } = of;
  const { installer: w } = words;
  const named = kinds.map(({ first: point, points }) => ({
    run: point.run,
    runs: points.map((p) => p.run),
    names: namesOf(
      points.map((p) => p.point),
      words,
    ),
  }));
  return [
    heading(2, w.route),
    ...named.flatMap(({ runs, names }) => grid(kinds.length > 1 ? names : '', w.routeHead, sections(runs, of))),
    // pictures stand side by side on paper
    ...named.flatMap(({ run, names }) =>
      routeFigure(run, pathTo(option.installation, run.id)?.boards.at(-1)?.id ?? '', `${w.route}: ${names}`, words),
    ),
  ];
}

/** Feeders that are yet to be installed, those of one cable and device together. */
function feeders(of: Page): readonly Block[] {
  const { option, words } = of;
  const { installer: w, tester } = words;
  const kinds = new Map<
    string,
    { readonly said: readonly string[]; readonly names: string[]; readonly rows: (readonly string[])[] }
  >();
  for (const { run: id, alike: others = [], items } of option.feeders) {
    const run = items && pathTo(option.installation, id)?.run;
    for (const [k, way] of (run ? waysOf(run) : []).entries()) {
      const said = [w.cable(cableOf(way, words)), w.device(protectionOf(way, words)), w.lines(linesOf(way))];
      const kind = kinds.get(said.join()) ?? { said, names: [], rows: [] };
      const names = k === 0 ? [id, ...others] : [way.id];
      kind.names.push(...names);
      const name = quotedNames(names, words).join(', ');
      kind.rows.push(...sections([way], of).map((row, i) => [i === 0 ? name : '', ...row]));
      kinds.set(said.join(), kind);
    }
  }
  return [...kinds.values()].flatMap(({ said, names, rows }) => [
    heading(3, names.length === 1 ? tester.circuit(names[0] ?? '') : quotedNames(names, words).join(', ')),
    ...list(said),
    ...(names.length === 1
      ? grid(
          '',
          w.routeHead,
          rows.map((row) => row.slice(1)),
        )
      : grid('', [w.feeder, ...w.routeHead], rows)),
  ]);
}

/** Advice that is not met, and cables for which a maker is asked first. */
function heed({ option, words }: Page): readonly Block[] {
  const { installer: w } = words;
  const results = option.points.flatMap((p) => p.assessment.results);
  const advice = worstOfEach(results.filter((r) => r.weight === 'advice' && r.verdict === 'fail'));
  const asked = option.points.flatMap(({ letThroughFirst: ask }) =>
    ask
      ? [w.asked(formatIn(ask.area, 'mm²'), formatIn(ask.rating, 'A'), words.said(ask.obtain, 'obtain:letThrough'))]
      : [],
  );
  const items = [...advice.map((r) => w.heeded(titleOf(r, words), comparisonWords(r, words))), ...new Set(asked)];
  return items.length > 0 ? [heading(2, w.heed), ...list(items)] : [];
}

/**
 * The page for the installer: what to confirm, circuits and settings, the route, the order of work, the material.
 * @param plan a plan
 * @param options which option, and in which words
 * @returns blocks of one page or two, for any of the renderers
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { installerPage, renderText } from 'ohmwright/report';
 * import { planOf } from 'ohmwright/site';
 *
 * const plan = planOf(readSurvey(survey), { ...inGreatBritain('2018+A2:2022'), lengths: false, remedies: false });
 * renderText(installerPage(plan)).includes('Order of work'); // => true
 * ```
 */
export function installerPage(plan: Plan, options: PageOptions = {}): readonly Block[] {
  return page(
    plan,
    options,
    ({ installer }) => installer.title,
    ({ option, words }) => {
      const kinds = alike(option.points);
      const [kind] = kinds;
      return {
        kind: 'answer',
        verdict: option.overall.verdict,
        words: words.installer.answer[option.overall.verdict],
        text:
          kinds.length === 1 && kind
            ? `${capital(circuitWords(kind.first, words))}.`
            : `${words.said(option.title, `option:${option.id}`)}.`,
      };
    },
    (of) => {
      const { option, words } = of;
      const { installer: w } = words;
      const kinds = alike(option.points);
      return [
        ...list(
          worstOfEach(option.overall.failed)
            .slice(0, MOST)
            .map((r) => w.failed(titleOf(r, words), comparisonWords(r, words))),
        ),
        ...first(of),
        heading(2, w.circuit),
        ...kinds.flatMap((kind) => circuit(kind, kinds.length > 1, of)),
        ...list(
          setTogether(controlsOf(option.installation)).map(([limit, names]) =>
            w.limiter(limitersOf(names, words), formatIn(limit, 'A')),
          ),
        ),
        ...feeders(of),
        ...routes(kinds, of),
        ...order(of),
        heading(2, w.material),
        ...grid(
          '',
          w.materialHead,
          wholeJob(option).items.map((i) => [quantityOf(i, words), itemWords(i, words)]),
          [0],
        ),
        ...heed(of),
        caution(words.notInstallation),
      ];
    },
  );
}
