import { describe, expect, it } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { amperes, assess, between, type Installation, known, type Run, unknown } from '../../src/index.js';
import { load } from '../support/house.js';
import { garageFeeder, pointAlone, rcd, slow } from './residual-circuits.js';
import { metresOf, premises, soundCircuit, soundHouse, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const judged = (installation: Installation, run = 'ev') => assess(code, installation, run, premises);
const failing = (installation: Installation, run = 'ev') =>
  judged(installation, run).overall.failed.map((r) => r.check);

describe('what is not known is open, and does not fail what may be sound', () => {
  it('a device of its own whose rating nobody read, behind one of 100 mA', () => {
    const own = (rating: ReturnType<typeof rcd>['rating']) =>
      soundHouse(
        [soundCircuit({ residual: [{ ...rcd(30), position: 'origin-of-circuit', rating }] })],
        {},
        { residual: [slow()] },
      );
    expect(failing(own(known(amperes(0.03))))).toEqual([]);
    const open = judged(own(unknown('its front'))).overall;
    expect(open.failed.map((r) => r.check)).toEqual([]);
    expect(open.verdict).toBe('not-determined');
  });

  it('a neighbour behind the feeder whose current nobody read', () => {
    const garage = (current: Parameters<typeof load>[1]) =>
      soundHouse([
        garageFeeder({ stretches: [soundStretch({ length: metresOf(60) })] }, [
          pointAlone({ stretches: [soundStretch({ length: metresOf(5) })] }),
          soundCircuit({ id: 'kiln', feeds: [load(0, { id: 'kiln unit', ...current })] }),
        ]),
      ]);
    const open = judged(garage({ current: unknown('rating plate') }));
    expect(open.overall.failed.filter((r) => r.check === 'voltage-drop')).toEqual([]);
  });

  it('a range of ratings on a ring of which one is right', () => {
    const run = soundCircuit();
    const ring = (rating: Run['device']['rating']): Run => ({
      ...run,
      ring: true,
      device: { ...run.device, rating },
      cable: { ...run.cable, area: known(2.5 as never, 'marking') },
      feeds: [load(20, { id: 'sockets', purpose: 'socket-outlets', accessories: known('BS 1363', 'seen') })],
    });
    const capacity = (rating: Run['device']['rating']) =>
      assess(code, soundHouse([ring(rating)]), 'ev', { ...premises, makersLetThrough: 12_000 }).aspects.find(
        (a) => a.aspect === 'coordination',
      )?.verdict;
    expect(capacity(known(amperes(32)))).toBe('pass');
    expect(capacity(known(amperes(63)))).toBe('fail');
    expect(capacity(between(amperes(16), amperes(64), 'marking worn'))).toBe('not-determined');
  });

  it('a group of checks never passes while a fact that decides in it is not known', () => {
    const device = { ...soundCircuit().device, energyClass: unknown('marking') };
    const verdictOf = (of: Installation) =>
      judged(of).aspects.find((found) => found.aspect === 'protective-conductor')?.verdict;
    expect(verdictOf(soundHouse())).toBe('pass');
    expect(verdictOf(soundHouse([soundCircuit({ device })]))).toBe('not-determined');
  });
});
