import { describe, expect, test } from 'vitest';
import { datesOf, editionGap, editionInForce, editions, standingOf } from '../../../src/codes/bs7671/editions.js';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import type { Aspect, AssessmentOptions } from '../../../src/codes/wiring-code.js';
import { amperes, type ChargePoint, type Installation, known, ohms, type Supply, unknown } from '../../../src/index.js';
import { caseOf, chargePoint, circuit, house, load, plainBreaker } from '../../support/house.js';
import { judged } from '../../support/judged.js';

const entered = ['2018', '2018+A1:2020', '2018+A2:2022', '2018+A3:2024'] as const;
type Entered = (typeof entered)[number];
/** What each edition says of a group of checks: of each result its check, verdict and weight. */
const byEdition = (group: Aspect, installation: Installation, options: AssessmentOptions = {}) =>
  Object.fromEntries(
    entered.map((edition) => [
      edition,
      judged(bs7671(edition), group, caseOf(installation, 'ev', options)).map(
        (r) => `${r.check}: ${r.verdict}${r.weight === 'advice' ? ' (advice)' : ''}`,
      ),
    ]),
  ) as unknown as Record<Entered, readonly string[]>;
/** A house whose charge point outdoors is on a PME supply. */
const outdoors = (point: Partial<ChargePoint>, supply: Partial<Supply> = {}) =>
  house([circuit({ feeds: [{ ...chargePoint, ...point }] }), circuit({ id: 'other', feeds: [load(10)] })], supply);

describe('editions of BS 7671', () => {
  test('A2 and A3 end on the day on which A4 has to be followed', () => {
    for (const edition of ['2018+A2:2022', '2018+A3:2024'] as const) {
      expect(editionInForce(edition, '2026-10-14')).toBe('in-force');
      expect(editionInForce(edition, '2026-10-15')).toBe('withdrawn');
    }
    expect(editionInForce('2018+A4:2026', '2026-04-14')).toBe('not-yet');
    expect(editionInForce('2018+A4:2026', '2026-04-15')).toBe('in-force');
  });

  test('on every day since 2018-07-02 at least one edition is in force', () => {
    for (const e of editions) {
      if (e.withdrawn === undefined) continue;
      const day = e.withdrawn;
      expect(editions.some((o) => editionInForce(o.edition, day) === 'in-force')).toBe(true);
    }
    expect(editions.every((e) => editionInForce(e.edition, '2018-07-01') === 'not-yet')).toBe(true);
  });

  test('what is no date is no answer', () => {
    for (const date of ['', '2026', '15/10/2026', '2026-13-01', '2026-10-15T00:00'])
      expect(editionInForce('2018+A2:2022', date)).toBe('unknown');
  });

  test('only the edition whose text could not be had leaves a gap, and every standing names it', () => {
    for (const e of editions) {
      expect(editionGap(e.edition) === undefined).toBe(e.text === 'available');
      expect(standingOf(e.edition)).toContain('A4:2026');
      expect(standingOf(e.edition)).toContain('not available');
    }
    expect(datesOf('2018+A3:2024').withdrawn).toBe('2026-10-15');
  });
});

test('results cite the edition that they are judged by', () => {
  for (const edition of entered) {
    const results = judged(
      bs7671(edition),
      'charge-point-earthing',
      caseOf(outdoors({ openPenDevice: known('open-pen-detection-touch-voltage') }), 'ev'),
    );
    expect(results[0]?.source).toMatchObject({ document: 'BS 7671', edition, clause: '722.411.4.1 (iii)' });
  }
});

describe('arrangements that earth a charge point, 722.411.4.1', () => {
  // A1:2020 brought (iv) and (v): training provider's summary of Section 722 as amended, January 2021, and a trade article
  test.each(['open-pen-detection-window', 'open-pen-detection-other'] as const)('%s came with A1', (device) => {
    const found = byEdition(
      'charge-point-earthing',
      outdoors({ openPenDevice: known(device), openPenEqualSafety: known(true) }),
    );
    expect(found['2018']).toContain('charge-point-earthing: fail');
    for (const edition of ['2018+A1:2020', '2018+A2:2022', '2018+A3:2024'] as const) {
      expect(found[edition]).toContain(`${device}: pass`);
      expect(found[edition].filter((r) => r.endsWith(': fail'))).toEqual([]);
    }
    const options = bs7671('2018').earthingOptions(caseOf(outdoors({}), 'ev'), chargePoint);
    expect(options.map((o) => o.arrangement)).not.toContain(device);
  });

  test('the touch-voltage device stands in every edition', () => {
    const found = byEdition(
      'charge-point-earthing',
      outdoors({ openPenDevice: known('open-pen-detection-touch-voltage') }),
    );
    for (const edition of entered) expect(found[edition]).toEqual(['open-pen-detection-touch-voltage: pass']);
  });

  // A2:2022 deleted (i): two persons on a forum of the institution that publishes the standard; its wording under A1 in two texts
  const balanced = { earthing: 'balanced-three-phase', lines: ['L1', 'L2', 'L3'] } as const;
  const options = {
    loadStates: [{ name: 'evening', currents: [80, 70, 70].map(amperes) as never }],
    // a vehicle alone on one line is balanced against nothing
    pointNeverAlone: 'contactor that opens without the other load',
  };
  test('a balanced three-phase load is an arrangement up to A1, and none since A2', () => {
    const found = byEdition('charge-point-earthing', outdoors(balanced, { phases: known(3) }), options);
    for (const edition of ['2018', '2018+A1:2020'] as const)
      expect(found[edition]).toEqual(['three-phase-installation: pass', 'open-pen-balanced-load: pass']);
    for (const edition of ['2018+A2:2022', '2018+A3:2024'] as const)
      expect(found[edition]).toEqual(['charge-point-earthing: fail']);
  });
  test('on a single phase it is none in any edition', () => {
    const found = byEdition('charge-point-earthing', outdoors({ earthing: 'balanced-three-phase' }));
    for (const edition of entered) expect(found[edition].some((r) => r.endsWith(': fail'))).toBe(true);
  });
  test('an electrode that holds the voltage down stands in every edition', () => {
    const supply = { electrode: { resistance: known(ohms(1)) } };
    const alone = { loadStates: [{ name: 'the point', currents: [32, 0, 0].map(amperes) as never }] };
    const found = byEdition('charge-point-earthing', outdoors({ earthing: 'low-electrode' }, supply), alone);
    for (const edition of entered) expect(found[edition][0]).toBe('open-pen-low-electrode: pass');
  });

  // A2:2022 dropped "single-phase installation" from (iv): three threads on a forum of the institution that publishes the standard
  test('the window device on three phases: not under A1, since A2 with advice of what it does not see', () => {
    const device = { openPenDevice: known('open-pen-detection-window') } as const;
    const found = byEdition('charge-point-earthing', outdoors(device, { phases: known(3) }));
    const margin = 'line-neutral-window-margin: pass (advice)';
    expect(found['2018']).toEqual(['charge-point-earthing: fail', margin]);
    expect(found['2018+A1:2020']).toEqual(['single-phase-installation: fail', margin]);
    for (const edition of ['2018+A2:2022', '2018+A3:2024'] as const)
      expect(found[edition]).toEqual([
        'open-pen-detection-window: pass',
        'line-neutral-window-sight: fail (advice)',
        margin,
      ]);
    // chosen and not fitted it fails in every edition
    const absent = { earthing: 'open-pen-detection-window', openPenDevice: known('none') } as const;
    const without = byEdition('charge-point-earthing', outdoors(absent, { phases: known(3) }));
    for (const edition of entered) expect(without[edition].some((r) => r.endsWith(': fail'))).toBe(true);
  });
  test('on one phase nothing is advised, on an unknown number the advice stays open', () => {
    const device = { openPenDevice: known('open-pen-detection-window') } as const;
    const sight = (phases: Supply['phases']) =>
      byEdition('charge-point-earthing', outdoors(device, { phases }))['2018+A2:2022'][1];
    expect(sight(known(1))).toBe('line-neutral-window-margin: pass (advice)');
    expect(sight(unknown())).toBe('line-neutral-window-sight: not-determined (advice)');
  });
});

describe('a residual current device for each charge point, 722.531.3.101', () => {
  // "individually" stood there in 2015, not in A1, and again in A2: a committee member's quotation and a portal of the trade
  const shared = house(
    [
      circuit({ device: plainBreaker, feeds: [chargePoint] }),
      circuit({ id: 'other', device: plainBreaker, feeds: [{ ...chargePoint, id: 'second' }] }),
    ],
    {},
    {
      residual: [{ position: 'origin-of-circuit', type: known('A'), rating: known(amperes(0.03)) }],
    },
  );
  test('is advice under A1, and a rule before and after', () => {
    const found = byEdition('residual-current', shared);
    const about = (edition: Entered) => found[edition].filter((r) => r.includes('one-per-point'));
    expect(about('2018+A1:2020')).toEqual(['residual-current-one-per-point-advised: fail (advice)']);
    for (const edition of ['2018', '2018+A2:2022', '2018+A3:2024'] as const)
      expect(about(edition)).toEqual(['residual-current-one-per-point: fail']);
  });
});

describe('arc detection, 421.1.7', () => {
  const sockets = house([
    circuit({
      feeds: [{ kind: 'load', id: 'ring', purpose: 'socket-outlets', current: known(amperes(20)), lines: ['L1'] }],
    }),
  ]);
  test('is recommended up to A1, and required in some premises since A2', () => {
    const options = { premises: { kind: known('care-home' as const), arcDetection: known(false) } };
    const found = byEdition('arc-detection', sockets, options);
    for (const edition of ['2018', '2018+A1:2020'] as const)
      expect(found[edition]).toEqual(['arc-detection-advised: fail (advice)']);
    for (const edition of ['2018+A2:2022', '2018+A3:2024'] as const)
      expect(found[edition]).toEqual(['arc-detection: fail']);
  });
  test('needs no premises where it is advice everywhere', () => {
    const found = byEdition('arc-detection', sockets, { premises: { kind: unknown(), arcDetection: known(true) } });
    expect(found['2018']).toEqual(['arc-detection-advised: pass (advice)']);
    expect(byEdition('arc-detection', house([circuit()]))['2018']).toEqual([
      'arc-detection-advised: not-required (advice)',
    ]);
  });
});
