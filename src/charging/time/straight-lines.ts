/** The value at a place of straight lines between points in rising order; beyond them that of the last, ahead of them of the first. */
export function valueAlong(points: readonly (readonly [place: number, value: number])[], place: number): number {
  const next = points.findIndex(([p]) => p >= place);
  if (next <= 0) return points[next < 0 ? points.length - 1 : 0]![1];
  const [[s, a], [t, b]] = [points[next - 1]!, points[next]!];
  return a + ((b - a) * (place - s)) / (t - s);
}
