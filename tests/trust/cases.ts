import fc from 'fast-check';
import { bs7671, bs7671Demand } from '../../src/codes/bs7671/index.js';
import type { CheckResult, Verdict } from '../../src/core/index.js';
import { feederDemandOf } from '../../src/demand/feeder.js';
import { adequacyOf } from '../../src/demand/index.js';
import { assess, hasCode, type Installation, known, overall, squareMillimetres } from '../../src/index.js';
import { byCable, labels, pathsOf, type Run } from '../../src/installation/index.js';
import { readSurvey } from '../../src/io/index.js';
import { withAllWanted } from '../../src/site/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';
import { premises, soundCircuit, soundHouse, soundStretch } from '../hazards/sound.js';
import { surveyDocuments } from '../support/surveys.js';
import { asHeld, changedAt, type Found, factsOf } from './facts.js';

const code = bs7671('2018+A2:2022');

/** What is judged of an installation: a circuit, its supply, or what a feeder has to carry. */
type Subject = readonly ['circuit' | 'feeder', run: string] | readonly ['supply'];

/** The worst verdict by check, and that of the whole; undefined where the installation is refused. */
type Verdicts = ReadonlyMap<string, Verdict>;
const worst: readonly Verdict[] = ['fail', 'not-determined', 'pass', 'not-required'];
const dwelling = { premises: 'dwelling' } as const;

function judged(installation: Installation, [of, run]: Subject): readonly CheckResult[] {
  if (of === 'supply') return adequacyOf(bs7671Demand, installation, dwelling).results;
  if (of === 'feeder') return feederDemandOf(bs7671Demand, installation, run, dwelling).results;
  return assess(code, installation, run, premises).results;
}

function judge(installation: Installation, subject: Subject): Verdicts | undefined {
  try {
    const results = judged(installation, subject);
    const found = new Map<string, Verdict>([['the whole', overall(results).verdict]]);
    for (const { check, verdict, weight } of results) {
      if (weight !== 'rule') continue;
      const before = found.get(check);
      if (before === undefined || worst.indexOf(verdict) < worst.indexOf(before)) found.set(check, verdict);
    }
    return found;
  } catch (e) {
    if (hasCode(e, 'invalid-input') || hasCode(e, 'unknown-definition')) return undefined;
    throw e;
  }
}

/**
 * Checks that pass without a fact and fail with it, or are not asked without it though nothing else objects then. Where
 * something fails without the fact that holds with it, such as that no device is there, the fact says of which device the
 * others speak, and nothing can be compared.
 */
function better(silent: Verdicts, said: Verdicts): readonly string[] {
  const blocks = (v: Verdict | undefined) => v === 'fail' || v === 'not-determined';
  const asksElsewhere = [...silent].some(([c, v]) => blocks(v) && !blocks(said.get(c)));
  if ([...silent].some(([c, v]) => v === 'fail' && said.get(c) !== 'fail')) return [];
  // where all of it fails, or the fact is asked for by a check that fails with it, checks that rest on it are not asked
  const asks = [...silent].some(([c, v]) => v === 'not-determined' && said.get(c) === 'fail' && c !== 'the whole');
  const elsewhere = asksElsewhere || asks || silent.get('the whole') === 'fail';
  return [...said].flatMap(([check, verdict]) => {
    const before = silent.get(check) ?? (elsewhere ? 'not-determined' : 'not-required');
    return verdict === 'fail' && !blocks(before) ? [check] : [];
  });
}

/** Circuits that were there before, followed from their boards, so that what stands on them is surveyed and not chosen. */
export const standing = ({ board, ...rest }: Installation): Installation => {
  const all = (b: Installation['board']): Installation['board'] => ({
    ...b,
    runs: b.runs.map((run) => ({
      ...run,
      existing: true,
      fromTails: known(false, 'seen'),
      jointsAccessible: known(true, 'followed'),
      feeds: run.feeds.map((o) => (o.kind === 'board' ? all(o) : o)),
    })),
  });
  return { ...rest, board: all(board) };
};
/** A circuit in flat cable that goes on in armoured cable from a joint. */
const joinedCircuit = soundCircuit({
  stretches: [
    soundStretch({ name: 'house' }),
    soundStretch({
      name: 'drive',
      jointAccessible: known(true, 'a box on the wall'),
      cable: {
        construction: 'armoured',
        material: 'copper',
        insulation: 'thermosetting-90',
        cores: 3,
        area: known(squareMillimetres(10), 'read off it'),
        protective: 'core',
      },
    }),
  ],
});
export const houses: readonly Installation[] = [
  soundHouse(),
  standing(soundHouse()),
  ...Object.values(surveyDocuments).map((d) => withAllWanted(readSurvey(d))),
  soundHouse([joinedCircuit]),
  standing(soundHouse([joinedCircuit])),
  ...fc.sample(arbitraryInstallation({ joined: true }), { numRuns: 30, seed: 11 }),
  ...fc.sample(arbitraryInstallation(), { numRuns: 90, seed: 7 }).map((h, i) => (i % 2 === 0 ? h : standing(h))),
];

/** What is chosen of a new circuit. */
const choices = ['run.residual', 'run.ring', 'run.fromTails', 'cable.parallel', 'stretch.jointAccessible'];
/** The circuit that a fact is of, or of whose parts. */
function runAround(house: Installation, path: Found['path']): Run {
  let at: unknown = house;
  let found: unknown;
  for (const key of path) {
    at = (at as Record<string, unknown>)[key];
    if (typeof at === 'object' && at !== null && 'feeds' in at) found = at;
  }
  return found as Run;
}
/**
 * What a designer chooses, which no survey finds: an arrangement of the point (of what is left out the test of choices
 * shows what is taken), and of a circuit that is new the devices, whether it is a ring, where it leaves, how many cables
 * there are, and a joint within one of them, new on both sides.
 */
export const chosen = (house: Installation, { name, path }: Found): boolean => {
  if (name === 'chargePoint.earthing') return true;
  if (!choices.includes(name)) return false;
  const run = runAround(house, path);
  if (run.existing === true) return false;
  if (name !== 'stretch.jointAccessible') return true;
  const here = path.at(-2) as number;
  const stretches = run.stretches.slice(here - 1, here + 1).map(({ jointAccessible: _, ...rest }) => rest);
  return byCable({ ...run, stretches }).length === 1 && stretches.every((s) => s.existing !== true);
};

interface Home {
  readonly house: Installation;
  readonly subjects: readonly Subject[];
  readonly facts: readonly Found[];
}
/** The circuits of charge points, which were added last, and the boards that they leave; the supply; every feeder of a board. */
function subjectsOf(house: Installation): readonly Subject[] {
  const runs = pathsOf(house).map((p) => p.run);
  const feeders = runs.filter((run) => run.feeds.some((o) => o.kind === 'board'));
  return [
    ...runs.slice(-2).map((run) => ['circuit', run.id] as const),
    ['supply'],
    ...feeders.map((run) => ['feeder', run.id] as const),
  ];
}
const homes: readonly Home[] = houses.map((house) => ({
  house,
  subjects: subjectsOf(house),
  facts: factsOf(house).filter((f) => f.choices.length > 0 && !chosen(house, f)),
}));

/** Facts of which one says that there is none of the other: where the one is said, or is open, the other is left out. */
const besides: Readonly<Record<string, string>> = {
  'supply.bonding': 'noExtraneousParts',
  'mainSwitch.fuseAhead': 'noFuseAhead',
  'mainSwitch.noFuseAhead': 'fuseAhead',
  ...Object.fromEntries(
    ['board', 'run', 'chargePoint'].flatMap((of) => [
      [`${of}.residual`, 'noResidual'],
      [`${of}.noResidual`, 'residual'],
    ]),
  ),
};
function alone(house: Installation, { path, name }: Found): Installation {
  const other = besides[name];
  return other ? changedAt(house, [...path.slice(0, -1), other], undefined) : house;
}

/** The house without a fact: left out, or with a fact that says that nobody knows. */
export function without(house: Installation, fact: Found, left: boolean): Installation {
  const [how] = fact.field;
  const mayBe = how.endsWith('?');
  const out = mayBe && (left || !how.startsWith('fact'));
  return alone(changedAt(house, fact.path, out ? undefined : { state: 'unknown' }), fact);
}
export const may = ({ field: [how] }: Found): boolean => how.endsWith('?') || how.startsWith('fact');
export const said = (house: Installation, fact: Found, value: unknown) =>
  alone(changedAt(house, fact.path, asHeld(fact.field, value)), fact);

/** Facts that are worse the larger they are, or the smaller, whatever else is so. */
export const worse: Readonly<Record<string, 'up' | 'down'>> = {
  'stretch.length': 'up',
  'stretch.ambient': 'up',
  'stretch.insulated': 'up',
  'group.circuits': 'up',
  'supply.earthingConductor': 'down',
  'bonded.area': 'down',
  'board.bonding': 'down',
  'device.breakingCapacity': 'down',
  'device.groupingFactor': 'down',
  'residual.ratedCurrent': 'down',
  'mainSwitch.rating': 'down',
  'chargePoint.standingLeakage': 'up',
  'run.terminalTemperature': 'down',
};

/** Checks that a larger value of such a fact may well meet: less current flows at the end of a longer feeder. */
const eased: Readonly<Record<string, readonly string[]>> = { 'stretch.length': ['breaking-capacity'] };

/** What is tried: a fact that nobody knows, two of them, or one that is worse than it was. */
export const kinds = ['one fact', 'two facts', 'a worse value'] as const;
export type Kind = (typeof kinds)[number];

/** A case: a house, what is judged of it, facts, and what they may turn out to be, in two ways. */
const drawn = (kind: Kind) =>
  fc.nat(homes.length - 1).chain((h) => {
    const { house, subjects, facts: all } = homes[h] as Home;
    const open = kind === 'a worse value' ? all.filter((f) => f.name in worse) : all.filter(may);
    // facts of the house at large count as often as those of one of its many circuits
    const names = [...new Set(open.map((f) => f.name))];
    const fact = fc
      .constantFrom(...names)
      .chain((name) => fc.constantFrom(...open.filter((f) => f.name === name)))
      .chain((f) =>
        fc.record({
          fact: fc.constant(f),
          value: fc.constantFrom(...f.choices),
          other: fc.constantFrom(...f.choices),
          left: fc.boolean(),
        }),
      );
    const count = kind === 'two facts' ? 2 : 1;
    return fc.record({
      number: fc.constant(h),
      house: fc.constant(house),
      subject: fc.constantFrom(...subjects),
      facts: fc.array(fact, { minLength: count, maxLength: count }),
    });
  });

/** What a number of cases came to. */
export interface Tried {
  /** Cases that were drawn. */
  readonly cases: number;
  /** Those in which something fails with the fact, so that the other side could be better. */
  readonly compared: number;
  /** Where the other side is better. */
  readonly violations: readonly string[];
}

/** Draws cases of a kind and compares what is said of both sides. */
export function tried(kind: Kind, count: number, seed: number): Tried {
  const found = new Set<string>();
  let compared = 0;
  for (const { number, house, subject, facts: of } of fc.sample(drawn(kind), { numRuns: count, seed })) {
    const where = `house ${number}, ${subject.join(' ')}`;
    const shown = () => of.map(({ fact, value }) => `${fact.path.join('.')} = ${JSON.stringify(value)}`).join(', ');
    if (kind === 'a worse value') {
      const [{ fact, value, other }] = of as [(typeof of)[0]];
      const [low, high] = [value, other].sort((a, b) => (a as number) - (b as number));
      if (low === high) continue;
      const [good, bad] = worse[fact.name] === 'up' ? [low, high] : [high, low];
      const better = judge(said(house, fact, good), subject);
      const bare = judge(said(house, fact, bad), subject);
      if (!better || !bare) continue;
      compared++;
      for (const [check, verdict] of better)
        if (verdict === 'fail' && bare.get(check) === 'pass' && !eased[fact.name]?.includes(check))
          found.add(`${where}: ${fact.path.join('.')} = ${good} fails ${check}, ${bad} passes`);
      continue;
    }
    const known = judge(
      of.reduce((h, { fact, value }) => said(h, fact, value), house),
      subject,
    );
    if (!known || ![...known.values()].includes('fail')) continue;
    const bare = of.reduce((h, { fact, left }) => without(h, fact, left), house);
    // of two facts the one may have made of a circuit that was there one that is new
    if (of.some(({ fact }) => chosen(bare, fact))) continue;
    const silent = judge(bare, subject);
    if (!silent) continue;
    compared++;
    for (const check of better(silent, known)) found.add(`${where}: ${shown()}: ${check}`);
  }
  return { cases: count, compared, violations: [...found].sort() };
}

/** Charge points whose arrangement is left out, and the same with what is taken for it: that of the device built in. */
export const openArrangements = (): readonly (readonly [left: Verdicts | undefined, stated: Verdicts | undefined])[] =>
  homes.flatMap(({ house, subjects, facts }) =>
    factsOf(house)
      .filter(({ name }) => name === 'chargePoint.earthing')
      .flatMap(({ path }) =>
        labels.openPenDevice
          .filter((device) => device !== 'none')
          .flatMap((device) => {
            const built = changedAt(house, [...path.slice(0, -1), 'openPenDevice'], { state: 'known', value: device });
            const left = changedAt(built, path, undefined);
            return facts.length === 0
              ? []
              : subjects
                  .filter(([what]) => what === 'circuit')
                  .map((subject) => [judge(left, subject), judge(changedAt(built, path, device), subject)] as const);
          }),
      )
      .slice(0, 9),
  );
