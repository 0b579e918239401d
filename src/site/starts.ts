import { endsOf, evaluate } from '../core/index.js';
import { type Installation, type Load, pathsOf } from '../installation/index.js';
import { equivalentCurrentOf, largestStartCurrentAnyAngle } from '../physics/power/motors.js';
import { amperes, formatIn, ohms, ratio } from '../units/index.js';
import type { SanityQuestion } from './sanity-question.js';

/** Largest lasting change of the voltage by equipment on a public supply. IEC 61000-3-3, from memory. */
const STEP = 0.033;
/** Voltage over nominal below which a charge point that watches the line may open. Common practice, no source. */
const WINDOW = 0.9;

const percent = (value: number): string => `${+(100 * value).toPrecision(2)} %`;

/**
 * A start, or the work of a welder, against the impedance at the origin: the whole loop counts, whatever the power factor, so that
 * the change is never more than what is said.
 */
function stepOf({ id, startCurrent, workingShare }: Load, { supply }: Installation): readonly SanityQuestion[] {
  const most = endsOf(startCurrent)?.[1];
  const loop = endsOf(supply.externalImpedance)?.[1];
  if (most === undefined || loop === undefined || supply.system.state !== 'known' || supply.system.value === 'TT')
    return [];
  const { nominalVoltage } = supply;
  const allowed = evaluate(largestStartCurrentAnyAngle, {
    dipLimit: ratio(STEP),
    nominalVoltage,
    resistance: ohms(loop),
    reactance: ohms(0),
  });
  if (most <= allowed) return [];
  const change = (most * loop) / nominalVoltage;
  const often = workingShare
    ? 'It works again and again, for which the limit of flicker is lower still: the network operator says what is allowed, or the maker which impedance it needs.'
    : `Up to ${formatIn(Math.floor(allowed), 'A')} change it by ${percent(STEP)}, as much as equipment on a public supply may: ask the network operator, who may allow less, or for a starter that draws less.`;
  const window =
    change >= 1 - WINDOW
      ? ` The voltage may fall below ${formatIn(WINDOW * nominalVoltage, 'V')}, where a charge point that watches it may open.`
      : '';
  return [
    {
      of: `the start of ${id}`,
      question: `Is it known how ${id} starts or works? ${formatIn(most, 'A')} change the voltage at the origin by up to ${percent(change)}. ${often}${window}`,
      provenance: 'memory',
    },
  ];
}

/** The current for cables and devices of a load that works by turns is at least that of the same heat. */
function heatOf({ id, current, startCurrent, workingShare }: Load): readonly SanityQuestion[] {
  const [working, share] = [endsOf(startCurrent)?.[1], endsOf(workingShare)?.[1]];
  const stated = endsOf(current)?.[1];
  if (working === undefined || share === undefined || stated === undefined) return [];
  const heat = evaluate(equivalentCurrentOf, { workingCurrent: amperes(working), workingShare: ratio(share) });
  if (stated >= heat * 0.98) return [];
  return [
    {
      of: `the load ${id}`,
      question: `Is ${formatIn(stated, 'A')} right for ${id}? ${formatIn(working, 'A')} for ${percent(share)} of the time heat a cable like ${formatIn(Math.round(heat * 10) / 10, 'A')} throughout: the largest effective current on its plate.`,
      provenance: 'derived',
    },
  ];
}

/** Questions about starts of motors and about loads that work by turns, such as welders. */
export const startQuestions = (installation: Installation): readonly SanityQuestion[] =>
  pathsOf(installation).flatMap(({ run }) =>
    run.feeds.flatMap((o) => (o.kind === 'load' ? [...stepOf(o, installation), ...heatOf(o)] : [])),
  );
