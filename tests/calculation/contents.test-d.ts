/** What a contents list that is not whole comes to: it does not compile. Each line says what is wrong with it. */
import { test } from 'vitest';
import { by, compare, contents, derive, differing, each, set, sum } from '../../src/calculation/index.js';
import { metres, volts } from '../../src/index.js';
import { carries, checks, dropLimited, dropOf, figures, list, scopes } from './toy.js';

const { totalDrop: _without, ...withoutDrop } = figures.circuit;

test('a whole list compiles, and so does one that differs from it', () => {
  list();
  differing(list(), { figures: { circuit: { nominalVoltage: set(volts(240), 'invented') } } });
  differing(list(), { checks: { warmth: { noRule: 'no longer' } } });
});

test('a figure that nothing gives', () => {
  // @ts-expect-error 'nothing gives': 'totalDrop'
  contents({ scopes, figures: { ...figures, circuit: withoutDrop }, checks });
});

test('a line that reads an entry of a list that is not above it', () => {
  const totalDrop = derive(['voltageDrop'], ({ voltageDrop }) => voltageDrop);
  // @ts-expect-error 'nothing gives': 'voltageDrop', which is a figure of each section
  contents({ scopes, figures: { ...figures, circuit: { ...figures.circuit, totalDrop } }, checks });
});

test('a line that gathers what no section has', () => {
  const totalDrop = sum('sections/phaseDrop');
  // @ts-expect-error 'nothing gives': 'sections/phaseDrop'
  contents({ scopes, figures: { ...figures, circuit: { ...figures.circuit, totalDrop } }, checks });
});

test('a check of a figure that nothing gives, for the circuit and for each section', () => {
  const drop = [compare(dropLimited, { as: { dropRatio: 'phaseDrop' } })];
  // @ts-expect-error 'nothing gives': 'phaseDrop'
  contents({ scopes, figures, checks: { ...checks, drop } });
  const warmth = [each('sections', [compare(carries, { as: { capacity: 'phaseDrop' } })])];
  // @ts-expect-error 'nothing gives': 'sections~phaseDrop'
  contents({ scopes, figures, checks: { ...checks, warmth } });
});

test('a figure in the unit of another', () => {
  const nominalVoltage = set(metres(230));
  // @ts-expect-error 'given in another unit or kind': 'nominalVoltage'
  contents({ scopes, figures: { ...figures, circuit: { ...figures.circuit, nominalVoltage } }, checks });
  // @ts-expect-error length is played by something of another unit or kind
  by(dropOf, 'D 1', { length: 'nominalVoltage' });
});

test('a difference that takes away what is still needed, or brings what is not whole', () => {
  // @ts-expect-error 'nothing gives': 'phaseDrop'
  differing(list(), { checks: { drop: [compare(dropLimited, { as: { dropRatio: 'phaseDrop' } })] } });
});
