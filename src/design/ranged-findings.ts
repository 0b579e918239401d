import type { Findings } from '../codes/wiring-code.js';
import { isMissing, missing } from '../core/index.js';
import type { RangedPoint } from './ranged-points.js';

/** An end of a range as it is printed. */
export const digits = (value: number): string => String(Number(value.toPrecision(4)));

/** What is the same everywhere; a figure that is not is missing, with its range. */
function merged(all: readonly unknown[], name: string): unknown {
  const values = [...new Set(all)];
  const [first] = values;
  if (values.length === 1 || new Set(values.map((v) => JSON.stringify(v))).size === 1) return first;
  const open = values.find(isMissing);
  if (open) return open;
  if (values.every((v) => typeof v === 'number')) {
    const [least, most] = [Math.min(...values), Math.max(...values)];
    return missing({ kind: 'fact', fact: name, obtain: `lies between ${digits(least)} and ${digits(most)}` });
  }
  const each = (key: string | number): unknown =>
    merged(
      values.map((v) => (v as Record<string | number, unknown>)[key]),
      typeof key === 'string' ? key : name,
    );
  if (values.every((v) => Array.isArray(v))) return (first as unknown[]).map((_, i) => each(i));
  if (!values.every((v) => typeof v === 'object' && v !== null)) return undefined;
  const keys = new Set(values.flatMap((v) => Object.keys(v as object)));
  return Object.fromEntries([...keys].map((key) => [key, each(key)] as const).filter(([, v]) => v !== undefined));
}

/** Findings that are the same at every point; a figure that is not is missing, with its range. */
export const findingsOver = (points: readonly RangedPoint[]): Findings =>
  merged(
    points.map((p) => p.findings),
    'findings',
  ) as Findings;
