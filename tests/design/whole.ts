import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  assess,
  type Cable,
  celsius,
  known,
  metres,
  type OvercurrentDevice,
  type Run,
  type Stretch,
  type Supply,
  squareMillimetres,
} from '../../src/index.js';
import { circuit, house, load, stretch, supply } from '../support/house.js';
import type { PublishedCase } from '../support/published.js';

/** A whole circuit that somebody worked out in print, of the house that tests share but for what the print says. */
export interface Whole {
  readonly current: number;
  readonly three?: boolean;
  readonly cable: Partial<Cable>;
  readonly size: number;
  readonly length: number;
  readonly route?: Partial<Stretch>;
  readonly device?: Partial<OvercurrentDevice>;
  readonly rating?: number;
  readonly supply?: Partial<Supply>;
  readonly thirdHarmonic?: Run['thirdHarmonic'];
}

const lines = ['L1', 'L2', 'L3'] as const;

export function assessed(w: Whole) {
  const base = circuit();
  const three = w.three ?? false;
  const run: Run = {
    ...base,
    lines: three ? lines : ['L1'],
    cable: {
      ...base.cable,
      ...w.cable,
      cores: three ? 4 : w.cable.protective === 'core' ? 3 : 2,
      area: known(squareMillimetres(w.size)),
    },
    device: { ...base.device, ...w.device, rating: known(amperes(w.rating ?? 32)) },
    stretches: [stretch({ length: known(metres(w.length)), ...w.route })],
    ...(w.thirdHarmonic === undefined ? {} : { thirdHarmonic: w.thirdHarmonic }),
    feeds: [load(w.current, { lines: three ? lines : ['L1'] })],
  };
  const change: Partial<Supply> = {
    ...(three ? { phases: known(3) } : {}),
    ...w.supply,
  };
  return assess(bs7671('2018+A2:2022'), { ...house([run]), supply: supply(change) }, run.id, {});
}

const figure = (v: unknown): number => (typeof v === 'number' ? v : Number.NaN);
export const drop = (w: Whole): number => figure(assessed(w).figures.totalDrop);
export const loop = (w: Whole): number => figure(assessed(w).figures.loopImpedance);
const result = (w: Whole, check: string) => assessed(w).results.find((r) => r.check === check);
export const required = (w: Whole): number => result(w, 'tabulated-capacity')?.limit?.value ?? Number.NaN;
export const tabulated = (w: Whole): number => result(w, 'tabulated-capacity')?.value?.value ?? Number.NaN;

export const whole = (
  id: string,
  about: string,
  source: PublishedCase['source'],
  provenance: PublishedCase['provenance'],
  ours: () => number,
  published: number,
  unit: string,
  tolerance: number,
  exercises: readonly string[],
  differs?: string,
): PublishedCase => ({
  ...{ id: `whole-${id}`, about, source, provenance, exercises, ours, published, unit, tolerance },
  ...(differs === undefined ? {} : { differs }),
});

/** The current for which the cable is chosen: of the lines, or of a neutral with third harmonics. */
export const chosenFor = (w: Whole): number => result(w, 'load-within-capacity')?.value?.value ?? Number.NaN;
/** Whether it is within the capacity as installed. */
export const carries = (w: Whole): boolean => result(w, 'load-within-capacity')?.verdict === 'pass';

export const armoured: Partial<Cable> = {
  construction: 'armoured',
  insulation: 'thermoplastic-70',
  cores: 4,
  protective: 'armour',
};
export const singles: Partial<Cable> = {
  construction: 'single-core',
  insulation: 'thermoplastic-70',
  cores: 2,
  protective: 'core',
};
export const at = (ambient: number, method: string, more: Partial<Stretch> = {}): Partial<Stretch> => ({
  ambient: known(celsius(ambient)),
  method: known(method as never),
  ...more,
});
