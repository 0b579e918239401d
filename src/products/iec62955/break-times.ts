import { table } from '../../core/index.js';

/**
 * Longest break time of detectors of smooth direct residual current for charging. IEC 62955, IEC 62752. IEC 62955; IEC
 * 62752, Table 2; break times.
 */
export const smoothCurrentBreakTimes = /* @__PURE__ */ table({
  id: 'iec62955/break-times',
  title: 'Longest break time on smooth direct residual current',
  axes: [
    { name: 'detector', labels: ['IEC 62955', 'IEC 62752'] },
    { name: 'smoothResidualCurrent', unit: 'A', between: 'exact' },
  ],
  rows: `
    0.006  10   10
    0.06  0.3  0.3
    0.2   0.1    -
    0.3     - 0.04`,
  cell: 'disconnectionTime',
  unit: 's',
  source: { document: 'IEC 62955; IEC 62752', clause: 'Table 2; break times', provenance: 'one-source' },
  provenanceOf: { '0.006': 'two-sources' },
  notes: ['Neither may operate below 3 mA. IEC 62955: mode 3; IEC 62752: cable-mounted, mode 2.'],
});
