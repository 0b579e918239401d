import { table4D5 } from '../../src/codes/bs7671/definitions.js';
import { squareMillimetres } from '../../src/index.js';
import { compare } from '../compare.js';

// A thousand cells of a table of two axes, keys in turn; every way keeps its results.
const COUNT = 1000;
const methods = ['100', '101', '102', '103', 'C', 'A'] as const;
const areas = [1, 1.5, 2.5, 4, 6, 10, 16].map((a) => squareMillimetres(a));
const keys = Array.from({ length: COUNT }, (_, i) => ({
  method: methods[i % methods.length]!,
  conductorArea: areas[i % areas.length]!,
}));
const kept = new Float64Array(COUNT);

const nested = new Map(
  methods.map((method) => [
    method,
    new Map(areas.map((area) => [area, table4D5.get({ method, conductorArea: area }) as number])),
  ]),
);

export default [
  compare('one cell of a table', {
    anchor: 'nested maps by hand',
    per: COUNT,
    ways: {
      'nested maps by hand': () => {
        for (let i = 0; i < COUNT; i++) kept[i] = nested.get(keys[i]!.method)!.get(keys[i]!.conductorArea)!;
        return kept;
      },
      get: () => {
        for (let i = 0; i < COUNT; i++) kept[i] = table4D5.get(keys[i]!);
        return kept;
      },
      find: () => {
        for (let i = 0; i < COUNT; i++) kept[i] = table4D5.find(keys[i]!) ?? 0;
        return kept;
      },
    },
  }),
];
