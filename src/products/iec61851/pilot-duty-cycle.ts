import { formula } from '../../core/index.js';

/** Duty cycle that offers a current. IEC 61851-1 Table A.7. */
export const dutyCycleOf = /* @__PURE__ */ formula({
  id: 'pilot-duty-cycle',
  title: 'Duty cycle of the pilot signal for a current',
  inputs: ['pilotCurrent'],
  output: 'dutyCycle',
  constants: { knee: [51, 'A'], lower: [60, 'A'], upper: [250, 'A'], shift: [0.64, '1'] },
  expression: 'pilotCurrent <= knee ? pilotCurrent / lower : pilotCurrent / upper + shift',
  valid: { pilotCurrent: { least: 6, most: 80 } },
  compute: ({ pilotCurrent }) => (pilotCurrent <= 51 ? pilotCurrent / 60 : pilotCurrent / 250 + 0.64),
  source: {
    document: 'IEC 61851-1',
    edition: '2017',
    clause: 'Annex A, Table A.7',
    provenance: 'two-sources',
    note: 'there in percent: D = I / 0.6 up to 51 A, I / 2.5 + 64 above; the two do not meet, 51 A is 85.0 % and just above it 84.4 %',
  },
});

/** Current that a vehicle may take at a duty cycle. IEC 61851-1 Table A.8. */
export const pilotCurrentOf = /* @__PURE__ */ formula({
  id: 'pilot-current',
  title: 'Current that a duty cycle of the pilot signal offers',
  inputs: ['dutyCycle'],
  output: 'pilotCurrent',
  constants: {
    first: [0.1, '1'],
    knee: [0.85, '1'],
    last: [0.96, '1'],
    smallest: [6, 'A'],
    largest: [80, 'A'],
    lower: [60, 'A'],
    upper: [250, 'A'],
    shift: [0.64, '1'],
  },
  expression:
    'dutyCycle < first ? smallest : (dutyCycle <= knee ? lower * dutyCycle : (dutyCycle <= last ? upper * (dutyCycle - shift) : largest))',
  valid: { dutyCycle: { least: 0.08, most: 0.97 } },
  compute: ({ dutyCycle: d }) => (d < 0.1 ? 6 : d <= 0.85 ? 60 * d : d <= 0.96 ? 250 * (d - 0.64) : 80),
  source: {
    document: 'IEC 61851-1',
    edition: '2017',
    clause: 'Annex A, Table A.8',
    provenance: 'two-sources',
    note: 'there is a step at 85 %: 51 A there, 52.5 A just above',
  },
});
