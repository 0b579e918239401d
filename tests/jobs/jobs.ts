import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { ShortSurvey } from './base.js';

const folder = fileURLToPath(new URL('../../docs/jobs/', import.meta.url));

/** What a competent person decides, written down before the survey was planned. */
export interface Decision {
  /** Of the survey as it stands, remedies not yet done: `conditional` passes once what is listed is confirmed on site. */
  readonly verdict: 'pass' | 'conditional' | 'fail' | 'not-determined';
  /** Way of answering the survey, by the names of a plan. */
  readonly option?: string;
  /** Cable that is bought; further sizes are accepted by the same reasoning. */
  readonly cable?: { readonly kind: string; readonly area: readonly string[] };
  /** Overcurrent part of the device; further ratings are accepted. */
  readonly device?: { readonly rating: readonly string[]; readonly curve: string };
  /** Measure against an open PEN, where one is decided. */
  readonly earthing?: string;
  readonly operator?: 'notify-after' | 'apply-first' | 'not-determined';
  /** What is put right, by key, in words. */
  readonly remedies: Readonly<Record<string, string>>;
  /** What is confirmed on site, by key, with its limit. */
  readonly conditions: Readonly<Record<string, string>>;
  /** The question that is asked next, by key: one, or none. */
  readonly next: Readonly<Record<string, string>>;
  readonly reasons: readonly string[];
}

/** An everyday job. */
export interface Job {
  readonly name: string;
  readonly title: string;
  /** Where it was published, or that it is common practice without a source. */
  readonly source: string;
  readonly story: string;
  readonly survey: ShortSurvey;
  readonly decision: Decision;
  /** Where the plan says something else, by what is compared: why. */
  readonly differs?: Readonly<Record<string, string>>;
  /** Where the decision was wrong and has been put right: why. */
  readonly corrected?: Readonly<Record<string, string>>;
}

/** What is put right. */
export const remedyKeys: readonly string[] = [
  'bidirectional-device',
  'cut-out',
  'double-pole',
  'earthing-conductor',
  'electrode',
  'feeder-replacement',
  'isolator',
  'larger-fuse',
  'limiter',
  'limiter-fallback',
  'lower-setting',
  'main-bonding',
  'main-switch',
  'measure-demand',
  'mode-3-point',
  'new-cable',
  'other-line',
  'outbuilding-bonding',
  'own-residual-device',
  'point-with-open-pen-detection',
  'remove-load',
  'residual-selective',
  'residual-type',
  'route',
  'small-board',
  'smaller-fuse-ahead',
  'supply-earth',
  'tails',
  'tt-earthing',
  'unloop',
];

/** What is confirmed on site. */
export const conditionKeys: readonly string[] = [
  'board-rating',
  'bonding',
  'building-control',
  'cut-out-rating',
  'cut-out-sound',
  'distance-to-metal',
  'electrode-resistance',
  'external-impedance',
  'limiter-fallback',
  'looped',
  'maker',
  'metered-demand',
  'open-pen-device',
  'operator-consent',
  'owner-consent',
  'prospective-current',
  'standing-leakage',
  'supply-neutral',
];

/** What is asked next. */
export const questionKeys: readonly string[] = [
  'board-rating',
  'bonding',
  'cut-out-rating',
  'cut-out-sound',
  'distance-to-metal',
  'electrode-resistance',
  'external-impedance',
  'limiter-fallback',
  'looped',
  'metered-demand',
  'open-pen-device',
  'owner-consent',
  'standing-leakage',
  'system',
];

/** Every job of `docs/jobs`, in the order of their numbers. */
export const jobs: readonly Job[] = readdirSync(folder)
  .filter((f) => /^\d+-.*\.json$/.test(f))
  .sort((a, b) => Number.parseInt(a, 10) - Number.parseInt(b, 10))
  .map((f) => ({
    name: f.replace('.json', ''),
    ...(JSON.parse(readFileSync(folder + f, 'utf8')) as Omit<Job, 'name'>),
  }));
