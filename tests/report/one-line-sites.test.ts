import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { type Board, known, metres } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { oneLineDiagram } from '../../src/report/index.js';
import { withAllWanted } from '../../src/site/index.js';
import { circuit, house, load, stretch } from '../support/house.js';

const diagram = (name: string): string => {
  const file = new URL(`../../docs/examples/surveys/sites/${name}.json`, import.meta.url);
  const survey = readSurvey(JSON.parse(readFileSync(file, 'utf8')));
  return oneLineDiagram(
    withAllWanted(survey),
    name,
    survey.wanted.map((w) => w.run.id),
  );
};

it('every board along a riser is drawn, tapped from one line', () => {
  const svg = diagram('tower');
  for (let n = 1; n <= 8; n++) expect(svg).toContain(`>floor ${n}, at ${3.5 * n} m<`);
});
it('many new circuits that look alike stand as one, with their number', () => {
  const svg = diagram('car-park');
  expect(svg.match(/10 × deck/g)).toHaveLength(20);
  const width = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]);
  expect(width).toBeLessThan(400); // as wide as a telephone, however many there are
});

/** Corners of the lines of a picture, path by path. */
const cornersOf = (svg: string): readonly (readonly (readonly [x: number, y: number])[])[] =>
  [...svg.matchAll(/<path class="ink" d="(M[^"]*)"/g)].map(([, d = '']) => {
    let at: readonly [number, number] = [0, 0];
    return [...d.matchAll(/([MLHV])([-\d.]+)(?: ([-\d.]+))?/g)].map(([, kind, a, b]) => {
      at = kind === 'H' ? [Number(a), at[1]] : kind === 'V' ? [at[0], Number(a)] : [Number(a), Number(b)];
      return at;
    });
  });

it('a riser runs beside the boards that it feeds, and crosses none of their circuits', () => {
  const long = cornersOf(diagram('tower')).flatMap((corners) =>
    corners.flatMap(([x, y], i) => {
      const next = corners[i + 1];
      return next && next[0] === x && Math.abs(next[1] - y) > 100 ? [x] : [];
    }),
  );
  // between the busbar at 20 and those of the floors at 40
  expect(long).toEqual([30]);
});
it('a ring of boards is drawn as one: it leaves its device, passes every board, and comes back to it', () => {
  const board = (id: string, at: number): Board => ({
    kind: 'board',
    id,
    at: metres(at),
    complete: known(true),
    runs: [circuit({ id: `circuit of ${id}`, feeds: [load(10, { id: `heater of ${id}` })] })],
  });
  const ring = circuit({
    id: 'ring',
    ring: true,
    stretches: [stretch({ length: known(metres(120)) })],
    feeds: [board('shed', 90), board('gate', 20), board('barn', 60)],
  });
  const svg = oneLineDiagram(house([ring]), 'Yard');
  // in the order in which the ring meets them, whatever the order of the survey
  expect([...svg.matchAll(/>(\w+), at (\d+) m</g)].map((m) => m.slice(1))).toEqual([
    ['gate', '20'],
    ['barn', '60'],
    ['shed', '90'],
  ]);
  const paths = cornersOf(svg);
  // the longest line of the picture that leaves the busbar alone
  const loop = paths.find((c) => c.length === 10 && c.some(([, y]) => Math.abs(y - (c[0]?.[1] ?? y)) > 100));
  const [[from, below] = [0, 0]] = loop ?? [];
  const [to, above] = loop?.at(-1) ?? [0, 0];
  expect([to, below - above]).toEqual([from, 16]);
  // the symbol of the device ends where both legs begin
  expect(
    paths.some((c) => c.some(([x, y]) => x === from && y === below) && c.some(([x, y]) => x === to && y === above)),
  ).toBe(true);
  // each board is tapped from the leg that goes out
  const [down = 0] = (loop ?? []).flatMap(([x, y], i) => ((loop?.[i + 1]?.[1] ?? y) - y > 100 ? [x] : []));
  expect(paths.filter((c) => c.length === 3 && c[0]?.[0] === down && (c[1]?.[0] ?? 0) > down)).toHaveLength(3);
});
it('ways side by side stand one below the other, each with its device, and end in one line to their board', () => {
  const feeder = circuit({
    id: 'first feeder',
    beside: [{ ...circuit(), id: 'second feeder', stretches: [stretch()] }].map(({ id, device, stretches }) => ({
      id,
      device: { ...device, kind: known({ standard: 'BS 88-2' }) },
      stretches,
    })),
    device: { ...circuit().device, kind: known({ standard: 'BS 88-2' }) },
    feeds: [{ kind: 'board', id: 'barn', complete: known(true), runs: [] }],
  });
  const svg = oneLineDiagram(house([feeder]), 'Barn');
  for (const name of ['first feeder', 'second feeder', 'barn']) expect(svg).toContain(`>${name}<`);
  expect(svg.match(/fuse 32 A, BS 88-2, 2 × 6 mm²/g)).toHaveLength(2);
});
