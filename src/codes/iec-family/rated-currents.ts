import { table } from '../../core/index.js';
import type { Run } from '../../installation/index.js';
import { type Amperes, amperes } from '../../units/index.js';

/** Preferred rated currents of overcurrent devices, by product standard; the cell repeats the rating where it is listed. EN 60898, EN 61009, BS 88, BS 1361, BS 3036, BS 1362. */
export const ratedCurrents = /* @__PURE__ */ table({
  id: 'products/rated-currents',
  title: 'Preferred rated currents of overcurrent devices',
  axes: [
    {
      name: 'standard',
      labels: ['EN 60898', 'EN 61009', 'BS 88-2', 'BS 88-3', 'BS 1361', 'BS 3036', 'BS 1362'],
    },
    { name: 'deviceRating', unit: 'A', between: 'exact' },
  ],
  rows: `
    2     -   -   2   -   -   -  -
    3     -   -   -   -   -   -  3
    4     -   -   4   -   -   -  -
    5     -   -   -   5   5   5  5
    6     6   6   6   -   -   -  -
    8     8   8   -   -   -   -  -
    10   10  10  10   -   -   -  -
    13   13  13   -   -   -   - 13
    15    -   -   -   -  15  15  -
    16   16  16  16  16   -   -  -
    20   20  20  20  20  20  20  -
    25   25  25  25   -   -   -  -
    30    -   -   -   -  30  30  -
    32   32  32  32  32   -   -  -
    40   40  40  40   -   -   -  -
    45    -   -   -  45  45  45  -
    50   50  50  50   -   -   -  -
    60    -   -   -   -  60  60  -
    63   63  63  63  63   -   -  -
    80   80  80  80  80  80   -  -
    100 100 100 100 100 100 100  -
    125 125 125 125   -   -   -  -
    160   -   - 160   -   -   -  -
    200   -   - 200   -   -   -  -
    250   -   - 250   -   -   -  -
    315   -   - 315   -   -   -  -
    400   -   - 400   -   -   -  -`,
  cell: 'deviceRating',
  unit: 'A',
  source: {
    document: 'EN 60898, EN 61009, BS 88, BS 1361, BS 3036, BS 1362',
    provenance: 'one-source',
    note: 'fuses to BS 88, BS 1361, BS 3036 and BS 1362 stood in two texts; 8 A breakers are recalled; BS 88-2 listed up to 400 A',
  },
});

/** Rated currents of the device kind of a run, in ascending order; none where the kind is not known or not listed. */
export function ratingsFor(run: Run): readonly Amperes[] {
  const { kind } = run.device;
  if (kind.state !== 'known' || kind.value.standard === 'BS 3871') return [];
  const { standard } = kind.value;
  return ratedCurrents
    .offers('deviceRating')
    .map((r) => amperes(r as number))
    .filter((deviceRating) => ratedCurrents.find({ standard, deviceRating }) !== undefined);
}
