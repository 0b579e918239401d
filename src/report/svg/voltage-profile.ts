import { formatIn } from '../../units/index.js';
import { axes, legend, linear, lineSample, n, path, picture, strokes, text } from './picture.js';

/** What a picture of the voltage along the route shows. */
export interface VoltageProfileInput {
  readonly title: string;
  /** A line for each case, such as nominal and smallest supply voltage: distance in m, voltage in V. */
  readonly series: readonly {
    readonly name: string;
    readonly points: readonly (readonly [distance: number, voltage: number])[];
  }[];
  /** Voltages that are marked: the limit of the drop, the window of a device. */
  readonly limits: readonly { readonly name: string; readonly voltage: number }[];
  /** Where one stretch ends and the next begins, m. */
  readonly stretches: readonly { readonly name: string; readonly end: number }[];
}

/**
 * Voltage along the route from the origin to the point.
 * @param input lines, limits and stretches; distances in m, voltages in V
 * @returns an SVG as text
 * @example
 * ```ts
 * import { voltageProfilePicture } from 'ohmwright/report';
 *
 * const svg = voltageProfilePicture({
 *   title: 'The route',
 *   series: [{ name: 'nominal', points: [[0, 230], [25, 224]] }],
 *   limits: [{ name: 'limit', voltage: 218.5 }],
 *   stretches: [{ name: 'hall', end: 25 }],
 * });
 * svg.startsWith('<svg'); // => true
 * ```
 */
export function voltageProfilePicture(input: VoltageProfileInput): string {
  const area = { left: 70, right: 700, top: 40, bottom: 330 };
  const points = input.series.flatMap((s) => s.points);
  const voltages = [...points.map((p) => p[1]), ...input.limits.map((l) => l.voltage)];
  const [low, high] = [Math.min(...voltages), Math.max(...voltages)];
  const room = Math.max(1, (high - low) * 0.08);
  const end = Math.max(1, ...points.map((p) => p[0]), ...input.stretches.map((s) => s.end));
  const x = linear(0, end, area.left, area.right);
  const y = linear(low - room, high + room, area.bottom, area.top);
  const lines = input.series.map(
    (s, k) =>
      `<path class="ink" stroke-width="2"${strokes[k] ? ` stroke-dasharray="${strokes[k]}"` : ''} d="${path(s.points.map(([d, v]) => [x(d), y(v)] as const))}"/>`,
  );
  const limits = input.limits.map(
    (l) =>
      `<path class="ink" stroke-dasharray="3 3" d="M${area.left} ${n(y(l.voltage))}H${area.right}"/>${text(area.right - 4, y(l.voltage) - 4, `${l.name} ${formatIn(l.voltage, 'V', 4)}`, 'text-anchor="end"')}`,
  );
  let from = 0;
  const stretches = input.stretches.map((s, k) => {
    const middle = (x(from) + x(s.end)) / 2;
    const width = x(s.end) - x(from);
    from = s.end;
    const words = s.name.length * 6.2 > width ? String(k + 1) : s.name;
    return `<path class="soft" stroke-width="2" d="M${n(x(s.end))} ${area.top}V${area.bottom}"/>${text(middle, area.bottom - 6, words, 'text-anchor="middle" font-size="10"')}`;
  });
  const key = legend(
    area.left,
    area.bottom + 62,
    input.series.map((s, k) => ({ sample: lineSample(strokes[k % strokes.length] ?? ''), words: s.name })),
  );
  const last = input.series.map((s) => `${s.name} ${formatIn(s.points.at(-1)?.[1] ?? 0, 'V', 4)}`).join(', ');
  return picture(
    {
      title: input.title,
      description: `Voltage along the route; at the end: ${last}.`,
      width: 740,
      height: area.bottom + 72 + key.height,
    },
    `${text(area.left, 22, input.title, 'font-weight="600"')}${axes(area, x, y, { x: 'distance from the origin, m', y: 'voltage, V' })}${stretches.join('')}${limits.join('')}${lines.join('')}${key.svg}`,
  );
}
