import { table } from '../../../core/index.js';

/** Current that operates a fuse within 0.4 s and 5 s, worked back from the printed loop impedances. BS 7671 Appendix 3. */
export const fuseOperatingCurrents = /* @__PURE__ */ table({
  id: 'bs7671/fuse-operating-currents',
  title: 'Current that operates a fuse within 0.4 s and 5 s',
  axes: [
    { name: 'device', labels: ['BS 88-2.2', 'BS 88-2', 'BS 88-3', 'BS 1361', 'BS 1362', 'BS 3036'] },
    { name: 'operatingTime', unit: 's', between: 'exact' },
    { name: 'deviceRating', unit: 'A', between: 'exact' },
  ],
  // biome-ignore format: 0.4 s and 5 s of each
  columns: [
    ['BS 88-2.2', 0.4], ['BS 88-2.2', 5], ['BS 88-2', 0.4], ['BS 88-2', 5], ['BS 88-3', 0.4], ['BS 88-3', 5],
    ['BS 1361', 0.4], ['BS 1361', 5], ['BS 1362', 0.4], ['BS 1362', 5], ['BS 3036', 0.4], ['BS 3036', 5],
  ],
  rows: `
    3       -      -     -      -     -     -     -     - 14  9.9     -     -
    5       -      -     -      -    22    15    22    14  -    -    24    13
    6      27     17    28     18     -     -     -     -  -    -     -     -
    10     45     31    47     32     -     -     -     -  -    -     -     -
    13      -      -     -      -     -     -     -     - 95 60.1     -     -
    15      -      -     -      -     -     -  70.1    46  -    -  90.2    43
    16   85.2     55  89.8     55    95    56     -     -  -    -     -     -
    20  129.9     79 129.9     78 112.7    68 135.3  82.1  -    - 129.9  60.1
    25  159.7    100 170.4    100     -     -     -     -  -    -     -     -
    30      -      -     -      -     -     -   200   125  -    -   211  87.1
    32  221.2    125 221.2    125 239.6 140.2     -     -  -    -     -     -
    40      -  170.4     -  170.4     -     -     -     -  -    -     -     -
    45      -      -     -      -     - 221.2     - 239.6  -    -     - 144.7
    50      -  221.2     -  221.2     -     -     -     -  -    -     -     -
    60      -      -     -      -     -     -     - 328.6  -    -     - 205.4
    63      -  280.5     -  280.5     - 319.4     -     -  -    -     -     -
    80      -  403.5     -  403.5     -   434     -   460  -    -     -     -
    100     -  547.6     -    500     -   575     - 638.9  -    -     -   434
    125     -    697     -  676.5     -     -     -     -  -    -     -     -
    160     -    920     -  821.4     -     -     -     -  -    -     -     -
    200     - 1210.5     - 1210.5     -     -     -     -  -    -     -     -`,
  cell: 'operatingCurrent',
  unit: 'A',
  source: {
    document: 'BS 7671',
    edition: '2008 and 2008+A1:2011',
    clause: 'Tables 41.2 and 41.4, Appendix 3',
    provenance: 'derived',
    note: '230 V over the printed impedance: up to 2 % from the rounding of the print',
  },
  notes: [
    'No figure for 0.4 s above 32 A: the tables of 2008 and 2011 had none.',
    'The currents of Appendix 3 for 0.1 s, 0.2 s and 1 s were not available.',
  ],
});
