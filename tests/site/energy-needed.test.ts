import { expect, test } from 'vitest';
import { between, hasCode, known, ratio, unknown, wattHours } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { energyOfBattery } from '../../src/site/energy-needed.js';
import { type Json, surveyDocument } from '../support/surveys.js';

const full = known(wattHours(60_000));

test('energy from the charge on arrival to that on departure, and its ends where a charge is known within a range', () => {
  // 60 kWh, 30 % to 80 %: 30 kWh
  expect(energyOfBattery({ holds: full, onArrival: known(ratio(0.3)), onDeparture: known(ratio(0.8)) })).toEqual({
    state: 'known',
    value: expect.closeTo(30_000, 6),
    by: '60 kWh from 30 % to 80 %',
  });
  // 20 to 40 % on arrival: 24 to 36 kWh
  expect(
    energyOfBattery({ holds: full, onArrival: between(ratio(0.2), ratio(0.4)), onDeparture: known(ratio(0.8)) }),
  ).toMatchObject({ state: 'between', least: expect.closeTo(24_000, 6), most: expect.closeTo(36_000, 6) });
  expect(energyOfBattery({ holds: full, onArrival: known(ratio(0.9)), onDeparture: known(ratio(0.8)) })).toMatchObject({
    state: 'known',
    value: 0,
  });
  expect(energyOfBattery({ holds: full, onArrival: unknown('ask'), onDeparture: known(ratio(0.8)) })).toEqual(
    unknown('ask'),
  );
});

const withVehicle = (change: (vehicle: Record<string, Json>) => void): Json => {
  const document = structuredClone(surveyDocument('easy-home')) as { wanted: { vehicle: Record<string, Json> }[] };
  change(document.wanted[0]?.vehicle as Record<string, Json>);
  return document as unknown as Json;
};
const battery = { holds: '60 kWh', onArrival: '30 %', onDeparture: '80 %' };

test('a survey may describe the battery in place of the energy, and not both, nor neither', () => {
  const read = readSurvey(
    withVehicle((v) => {
      delete v.energy;
      v.battery = battery;
    }),
  );
  expect(read.wanted[0]?.vehicle?.energy).toMatchObject({ value: expect.closeTo(30_000, 6) });
  const refused = (document: Json) => {
    try {
      readSurvey(document);
    } catch (error) {
      if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => [p.path.join('.'), p.id]);
    }
    return [];
  };
  expect(refused(withVehicle((v) => void Object.assign(v, { battery })))).toEqual([
    ['wanted.0.vehicle.energy', 'twice'],
  ]);
  expect(refused(withVehicle((v) => void Reflect.deleteProperty(v, 'energy')))).toEqual([
    ['wanted.0.vehicle.energy', 'missing'],
  ]);
});
