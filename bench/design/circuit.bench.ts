import { bs7671 } from '../../src/codes/bs7671/index.js';
import { assess, permitted } from '../../src/design/index.js';
import { Working } from '../../src/design/working.js';
import {
  amperes,
  between,
  type CheckResult,
  type Installation,
  known,
  metres,
  ohms,
  recorder,
  restsOn,
  squareMillimetres,
  writeSheet,
} from '../../src/index.js';
import { compare } from '../compare.js';
import { judgeByHand } from './by-hand.js';
import type { Result } from './by-hand-checks.js';
import { circuit, drawnHouse, house, withLength } from './houses.js';

const code = bs7671('2018+A2:2022');
const RUN = circuit.id;

const near = (a: number | undefined, b: number | undefined) =>
  a === b || Math.abs((a ?? Number.NaN) - (b ?? Number.NaN)) <= 1e-10 * (1 + Math.abs(a ?? 0));
const finite = (x: number | undefined) => (Number.isFinite(x) ? x : undefined);

/** Where two ways of judging a circuit part, in words; nothing where they agree. */
function parting(assessed: readonly CheckResult[], byHand: readonly Result[]): string | undefined {
  const names = (of: readonly { readonly check: string; readonly verdict: string }[]) =>
    of.map((r) => `${r.check} ${r.verdict}`).join(', ');
  if (names(assessed) !== names(byHand)) return `assess: ${names(assessed)}\nby hand: ${names(byHand)}`;
  for (const [i, a] of assessed.entries()) {
    const b = byHand[i] as Result;
    const agree =
      a.weight === b.weight &&
      (a.verdict === 'not-determined' ||
        (near(a.value?.value, b.value) &&
          near(a.limit?.value, b.limit) &&
          near(a.most?.value, b.most) &&
          near(a.margin, finite(b.margin))));
    if (!agree) return `${a.check}: ${a.value?.value} against ${a.limit?.value}, by hand ${b.value} against ${b.limit}`;
    const inside = parting(a.alternatives ?? [], b.alternatives ?? []);
    if (inside) return `${a.check}: ${inside}`;
  }
  return undefined;
}

function mustAgree(installation: Installation, what: string): void {
  const { results, overall } = assess(code, installation, RUN);
  const byHand = judgeByHand(installation, RUN);
  const parted =
    parting(results, byHand.results) ??
    (overall.verdict === byHand.verdict ? undefined : `${overall.verdict}, by hand ${byHand.verdict}`);
  if (parted) throw new Error(`${what} is judged otherwise by hand\n${parted}`);
}

const feeder = { length: 14, rating: amperes(50) };
const lengths = Array.from({ length: 32 }, (_, i) => 5 + i / 2);
const plain = lengths.map((length) => house(withLength(length)));
const fed = lengths.map((length) => house(withLength(length), feeder));
for (const installation of [...plain, ...fed]) mustAgree(installation, 'a house that is timed');
for (let seed = 0; seed < 600; seed++) mustAgree(drawnHouse(seed), `drawn house ${seed}`);

/** The house with two facts known only within a range: the external impedance and the length of a section. */
const ranged = (installation: Installation, length: number): Installation => ({
  ...installation,
  supply: { ...installation.supply, externalImpedance: between(ohms(0.2), ohms(0.35)) },
  board: {
    ...installation.board,
    runs: installation.board.runs.map((run) =>
      run.id !== RUN
        ? run
        : {
            ...run,
            stretches: run.stretches.map((s, i) =>
              i === 1 ? { ...s, length: between(metres(length), metres(length + 4)) } : s,
            ),
          },
    ),
  },
});
const open = lengths.map((length, i) => ranged(plain[i] as Installation, length));

const rated = [32, 40].map((rating) =>
  house({ ...circuit, device: { ...circuit.device, rating: known(amperes(rating)) } }),
);
const sized = [6, 10].map((area) =>
  house({ ...circuit, cable: { ...circuit.cable, area: known(squareMillimetres(area)) } }),
);

/** A circuit that is assessed, and goes on with the facts of one house after the other. */
const another = (houses: readonly Installation[], lengths = false) => {
  const working = new Working(code, houses[0] as Installation, RUN, {});
  return (call: number) => {
    working.change(of(houses, call), {}, lengths);
    return working.results();
  };
};
const of = (houses: readonly Installation[], call: number) => houses[call % houses.length] as Installation;
const sheetOf = (installation: Installation) => {
  const sheet = recorder(RUN);
  assess(code, installation, RUN, {}, sheet);
  return writeSheet(sheet);
};

const written = sheetOf(plain[3] as Installation);

export default [
  compare('a circuit of a charge point judged by BS 7671', {
    anchor: 'by hand, straight-line code',
    ways: {
      'by hand, straight-line code': (call) => judgeByHand(of(plain, call), RUN),
      'assess, silent': (call) => assess(code, of(plain, call), RUN),
      'assess, sheet written': (call) => sheetOf(of(plain, call)),
      'what each result of a written sheet rests on': () => restsOn(written),
      'another length of an assessed circuit': another(plain, true),
      'another rating of its device': another(rated),
      'another size of its cable': another(sized),
      'assess, two ranged facts': (call) => assess(code, of(open, call), RUN),
      'permitted lengths': (call) => permitted(code, of(plain, call), RUN, { vary: 'length' }),
    },
  }),
  compare('the same behind a feeder', {
    anchor: 'by hand, straight-line code',
    ways: {
      'by hand, straight-line code': (call) => judgeByHand(of(fed, call), RUN),
      'assess, silent': (call) => assess(code, of(fed, call), RUN),
      'assess, sheet written': (call) => sheetOf(of(fed, call)),
    },
  }),
];
