import { describe, expect, test } from 'vitest';
import {
  amperes,
  celsius,
  hasCode,
  hertz,
  kelvinMetresPerWatt,
  kelvins,
  metres,
  squareMillimetres,
} from '../../../../src/index.js';
import { ageingByTenKelvin, ageingOfCableDay } from '../../../../src/physics/heat/definitions.js';
import { buriedCable, cyclicRating } from '../../../../src/physics/heat/index.js';
import { armouredBuild } from '../../../../src/products/bs5467/build.js';

const cable = buriedCable({
  cable: armouredBuild({ metal: 'copper', cores: 4, conductorArea: squareMillimetres(35) }),
  loadedConductors: 3,
  surroundings: {
    where: 'ground',
    groundTemperature: celsius(15),
    soilResistivity: kelvinMetresPerWatt(1.2),
    burialDepth: metres(0.6),
  },
  operatingTemperature: celsius(90),
  frequency: hertz(50),
});
const day = (of: (hour: number) => number) =>
  Array.from({ length: 24 }, (_, hour) => amperes(of(hour) * cable.steadyCapacity));

describe('ageing of a buried cable over a day', () => {
  test('at its steady capacity for ever it ages as it is made to', () => {
    expect(ageingOfCableDay({ cable, currents: day(() => 1) })).toBeCloseTo(1, 6);
    expect(ageingOfCableDay({ cable, currents: day(() => 1), activationTemperature: kelvins(11_604.5) })).toBeCloseTo(
      1,
      6,
    );
  });

  test('half the current for ever: a quarter of the rise, by hand', () => {
    // 15 °C and a quarter of 75 K: 33.75 °C, 56.25 K below 90 °C; 2^-5.625 = 0.02026
    expect(ageingOfCableDay({ cable, currents: day(() => 0.5) })).toBeCloseTo(0.02026, 5);
  });

  test('the peak that a night permits reaches the operating temperature for hours only: it ages slower than for ever', () => {
    const night = (hour: number) => (hour < 7 ? 1 : 0.15);
    const { superposedFactor } = cyclicRating(cable, day(night));
    const rate = ageingOfCableDay({ cable, currents: day((h) => superposedFactor * night(h)) });
    expect(rate).toBeLessThan(0.5);
    // never less than an hour at the end of the block and the rest of the day as cold as the ground
    expect(rate).toBeGreaterThan(1 / 24);
  });

  test('more current never ages less, and an overload ages more than for ever', () => {
    const rates = [0.4, 0.7, 1, 1.1, 1.2].map((k) =>
      ageingOfCableDay({ cable, currents: day((hour) => (hour < 7 ? k : 0.2)) }),
    );
    expect([...rates].sort((a, b) => a - b)).toEqual(rates);
    expect(ageingOfCableDay({ cable, currents: day(() => 1.05) })).toBeGreaterThan(
      ageingByTenKelvin({ conductorTemperature: celsius(97), operatingTemperature: celsius(90) }),
    );
  });

  test('what is no day is refused', () => {
    for (const currents of [day(() => 0), day(() => 1).slice(1)])
      expect(() => ageingOfCableDay({ cable, currents })).toThrow(
        expect.toSatisfy((e: unknown) => hasCode(e, 'invalid-input')),
      );
  });
});
