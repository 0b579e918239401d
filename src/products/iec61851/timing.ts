import { table } from '../../core/index.js';

/** Times of the pilot function that a load control has to allow for. IEC 61851-1 Table A.6. */
export const pilotTimes = /* @__PURE__ */ table({
  id: 'iec61851/timing',
  title: 'Times of the pilot function',
  axes: [
    { name: 'end', labels: ['longest', 'shortest'] },
    {
      name: 'event',
      labels: [
        'vehicle follows a changed duty cycle',
        'vehicle stops drawing after the duty cycle goes to 100 %',
        'point opens when the vehicle is unplugged',
        'point opens after the vehicle is no longer ready',
        'point closes after the vehicle is ready and current is offered',
        'point changes the duty cycle after a new limit',
        'point opens under load when the vehicle does not stop',
        'point waits before it starts the pilot signal again',
        'point opens on state E or F',
      ],
    },
  ],
  rows: [
    ['vehicle follows a changed duty cycle', 5, null],
    ['vehicle stops drawing after the duty cycle goes to 100 %', 3, null],
    ['point opens when the vehicle is unplugged', 0.1, null],
    ['point opens after the vehicle is no longer ready', 0.1, null],
    ['point closes after the vehicle is ready and current is offered', 3, null],
    ['point changes the duty cycle after a new limit', 10, null],
    ['point opens under load when the vehicle does not stop', null, 6],
    ['point waits before it starts the pilot signal again', null, 3],
    ['point opens on state E or F', 3, null],
  ],
  cell: 'pilotTime',
  unit: 's',
  source: { document: 'IEC 61851-1', edition: '2017', clause: 'Annex A, Table A.6', provenance: 'one-source' },
  provenanceOf: { 'vehicle follows a changed duty cycle': 'two-sources', 'point opens on state E or F': 'two-sources' },
  notes: ['The duty cycle is not changed again during the 5 s in which the vehicle follows the last change.'],
});
