import fc from 'fast-check';
import { lusolve } from 'mathjs';
import type { NodeLoad } from '../../../src/physics/four-wire-network.js';
import type { Impedance } from '../../../src/physics/index.js';
import type { FaultNetwork, LoadNetwork } from '../../../src/physics/power/index.js';

/** A branch of one conductor, its impedance and the voltage in it, between nodes by name; `0` is the reference. */
interface Wire {
  readonly from: string;
  readonly to: string;
  readonly impedance: Impedance;
  readonly emf?: readonly [number, number];
  /** Current that flows whatever the voltage, A: no impedance then. */
  readonly current?: readonly [number, number];
  /** Of a transformer: its `from` is divided by this. */
  readonly ratio?: number;
}

/**
 * Currents of all wires and potentials of all nodes by Kirchhoff's two laws, a row for each node and each wire, in real
 * arithmetic of twice the size, by a general solver.
 */
export function kirchhoff(wires: readonly Wire[]) {
  const nodes = [...new Set(wires.flatMap((w) => [w.from, w.to]))].filter((n) => n !== '0');
  const n = nodes.length + wires.length;
  const matrix = Array.from({ length: 2 * n }, () => new Array<number>(2 * n).fill(0));
  const right = new Array<number>(2 * n).fill(0);
  const add = (row: number, column: number, re: number, im = 0) => {
    const put = (i: number, j: number, v: number) => {
      (matrix[i] as number[])[j] = ((matrix[i] as number[])[j] as number) + v;
    };
    put(row, column, re);
    put(row, column + n, -im);
    put(row + n, column, im);
    put(row + n, column + n, re);
  };
  wires.forEach((w, k) => {
    const column = nodes.length + k;
    const ratio = w.ratio ?? 1;
    for (const [name, sign, turns] of [
      [w.from, 1, 1 / ratio],
      [w.to, -1, 1],
    ] as const) {
      const i = nodes.indexOf(name);
      if (i < 0) continue;
      add(i, column, sign * turns); // Kirchhoff at the node
      if (!w.current) add(column, i, sign * turns); // voltage along the wire
    }
    if (w.current) {
      add(column, column, 1);
      right[column] = w.current[0];
      right[column + n] = w.current[1];
    } else {
      add(column, column, -w.impedance.resistance, -w.impedance.reactance);
      right[column] = -(w.emf?.[0] ?? 0);
      right[column + n] = -(w.emf?.[1] ?? 0);
    }
  });
  const x = (lusolve(matrix, right) as unknown as number[][]).map((v) => v[0] as number);
  const of = (i: number) => [x[i] as number, x[i + n] as number] as const;
  return {
    potential: (name: string) => (name === '0' ? ([0, 0] as const) : of(nodes.indexOf(name))),
    current: (k: number) => of(nodes.length + k),
  };
}

const phasor = (voltage: number, k: number) =>
  [voltage * Math.cos((-2 * Math.PI * k) / 3), voltage * Math.sin((-2 * Math.PI * k) / 3)] as const;
const none: Impedance = { resistance: 0, reactance: 0 };

/** The network by Kirchhoff's laws, loads drawn again at the voltages found. */
export function solvedByKirchhoff(network: LoadNetwork) {
  const name = (node: string, k: number) => `${node}/${k}`;
  const wires: Wire[] = [];
  for (const s of network.sources) {
    for (const k of [0, 1, 2])
      wires.push({ from: '0', to: name(s.node, k), impedance: s.impedance ?? none, emf: phasor(s.voltage, k) });
    wires.push({ from: '0', to: name(s.node, 3), impedance: none });
  }
  for (const node of network.stars ?? []) wires.push({ from: '0', to: name(node, 3), impedance: none });
  const places = network.branches.map((b) =>
    [b.line, b.line, b.line, b.neutral].map((impedance, k) => {
      if (!impedance) return undefined;
      const ratio = k < 3 && b.ratio !== undefined ? { ratio: b.ratio } : {};
      return wires.push({ from: name(b.from, k), to: name(b.to, k), impedance, ...ratio }) - 1;
    }),
  );
  const fixed = wires.length;
  const drawn = (load: NodeLoad, u: readonly [number, number]): readonly [number, number] => {
    const size = Math.hypot(...u);
    const angle = Math.atan2(u[1], u[0]);
    if (load.kind === 'current')
      return [load.current * Math.cos(angle - load.angle), load.current * Math.sin(angle - load.angle)];
    if (load.kind === 'power') {
      const apparent = Math.hypot(load.active, load.reactive) / size;
      const turned = angle - Math.atan2(load.reactive, load.active);
      return [apparent * Math.cos(turned), apparent * Math.sin(turned)];
    }
    const through = size / Math.hypot(load.resistance, load.reactance);
    const turned = angle - Math.atan2(load.reactance, load.resistance);
    return [through * Math.cos(turned), through * Math.sin(turned)];
  };
  let voltages = network.loads.map((l) => phasor(network.sources[0]?.voltage as number, l.line));
  for (let round = 0; ; round++) {
    const all = [
      ...wires,
      ...network.loads.map(
        (l, i): Wire => ({
          from: name(l.node, l.line),
          to: name(l.node, 3),
          impedance: none,
          current: drawn(l.load, voltages[i] as readonly [number, number]),
        }),
      ),
    ];
    const solved = kirchhoff(all);
    const next = network.loads.map((l) => {
      const [a, b] = [solved.potential(name(l.node, l.line)), solved.potential(name(l.node, 3))];
      return [a[0] - b[0], a[1] - b[1]] as const;
    });
    const moved = Math.max(
      ...next.map((v, i) => Math.hypot(v[0] - (voltages[i]?.[0] as number), v[1] - (voltages[i]?.[1] as number))),
    );
    voltages = next;
    if (moved < 1e-10 || round > 80)
      return {
        loads: voltages.map((v) => Math.hypot(...v)),
        branches: places.map((list) => list.map((k) => (k === undefined ? 0 : Math.hypot(...solved.current(k))))),
        fixed,
      };
  }
}

/** The three-phase fault by Kirchhoff's laws: the voltage c U/√3 behind every source, the node bolted to the reference. */
export function faultByKirchhoff(network: FaultNetwork, node: string) {
  const voltage = (network.voltageFactor * network.lineVoltage) / Math.sqrt(3);
  const wires = network.branches.map((b): Wire => {
    const name = (n: string) => (n === 'source' ? '0' : n);
    const emf = b.from === 'source' ? voltage : b.to === 'source' ? -voltage : 0;
    return { from: name(b.from), to: name(b.to), impedance: b.impedance, emf: [emf, 0] };
  });
  const solved = kirchhoff([...wires, { from: node, to: '0', impedance: none }]);
  return {
    fault: Math.hypot(...solved.current(wires.length)),
    branches: wires.map((_, k) => Math.hypot(...solved.current(k))),
  };
}

const impedance = fc.record({
  resistance: fc.double({ min: 0.002, max: 0.05, noNaN: true }),
  reactance: fc.double({ min: 0, max: 0.03, noNaN: true }),
});
const load: fc.Arbitrary<NodeLoad> = fc.oneof(
  fc.record({
    kind: fc.constant('current' as const),
    current: fc.double({ min: 0.1, max: 60, noNaN: true }),
    angle: fc.double({ min: -1, max: 1.2, noNaN: true }),
  }),
  fc.record({
    kind: fc.constant('power' as const),
    active: fc.double({ min: 100, max: 8000, noNaN: true }),
    reactive: fc.double({ min: -3000, max: 5000, noNaN: true }),
  }),
  fc.record({
    kind: fc.constant('impedance' as const),
    resistance: fc.double({ min: 4, max: 500, noNaN: true }),
    reactance: fc.double({ min: -4, max: 4, noNaN: true }),
  }),
);

/** Networks with rings, cables in parallel, two transformers on unlike taps and unbalanced loads. */
export const loadNetworks: fc.Arbitrary<LoadNetwork> = fc
  .record({
    nodes: fc.integer({ min: 1, max: 4 }),
    cables: fc.array(fc.record({ line: impedance, neutral: impedance }), { minLength: 10, maxLength: 10 }),
    ends: fc.array(fc.tuple(fc.nat(1000), fc.nat(1000)), { minLength: 4, maxLength: 4 }),
    loads: fc.array(fc.tuple(fc.nat(1000), fc.constantFrom(0, 1, 2) as fc.Arbitrary<0 | 1 | 2>, load), {
      minLength: 1,
      maxLength: 6,
    }),
    grid: impedance,
    tap: fc.double({ min: 0.95, max: 1.05, noNaN: true }),
  })
  .map(({ nodes, cables, ends, loads, grid, tap }): LoadNetwork => {
    const names = ['board', ...Array.from({ length: nodes }, (_, i) => `n${i}`)];
    const [first, second, ...rest] = cables;
    const tree = names
      .slice(1)
      .map((to, i) => ({ name: to, from: names[Math.floor(i / 2)] as string, to, ...(rest[i] as (typeof rest)[0]) }));
    const extra = ends.flatMap(([a, b], i) => {
      const [from, to] = [names[a % names.length] as string, names[b % names.length] as string];
      return from === to ? [] : [{ name: `extra ${i}`, from, to, ...(rest[4 + i] as (typeof rest)[0]) }];
    });
    return {
      sources: [
        { node: 'grid', voltage: 240, impedance: { resistance: grid.resistance / 20, reactance: grid.reactance / 20 } },
      ],
      branches: [
        { name: 'first transformer', from: 'grid', to: 'board', line: first?.line as Impedance },
        { name: 'second transformer', from: 'grid', to: 'board', line: second?.line as Impedance, ratio: tap },
        ...tree,
        ...extra,
      ],
      loads: loads.map(([at, line, what]) => ({ node: names[at % names.length] as string, line, load: what })),
      stars: ['board'],
    };
  });

/** Networks with rings, two transformers and motors, for faults. */
export const faultNetworks: fc.Arbitrary<{ readonly network: FaultNetwork; readonly node: string }> = fc
  .record({ base: loadNetworks, motor: impedance, at: fc.nat(1000) })
  .map(({ base, motor, at }) => {
    const nodes = [...new Set(base.branches.map((b) => b.to))];
    return {
      node: nodes[at % nodes.length] as string,
      network: {
        lineVoltage: 400,
        voltageFactor: 1.05,
        branches: [
          { name: 'grid', from: 'source', to: 'grid', impedance: base.sources[0]?.impedance as Impedance },
          ...base.branches.map((b) => ({ name: b.name, from: b.from, to: b.to, impedance: b.line })),
          {
            name: 'motors',
            from: 'source',
            to: nodes[(at + 1) % nodes.length] as string,
            impedance: { resistance: 10 * motor.resistance, reactance: 10 * motor.reactance },
          },
        ],
      },
    };
  });
