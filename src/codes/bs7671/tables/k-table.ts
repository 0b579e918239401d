import { type LabelAxis, type Provenance, type Table, table } from '../../../core/index.js';
import { entered } from '../source.js';

/** A printed table of k. */
interface PrintOfK {
  readonly id: string;
  readonly clause: string;
  readonly of: string;
  readonly metals: readonly string[];
  /** What a row stands for. */
  readonly by: 'insulation' | 'condition';
  /** Initial temperature, final temperature (of each metal where they differ), k of each metal. */
  readonly rows: readonly (readonly [string, number, number | readonly number[], ...(number | null)[]])[];
}

const figures = {
  adiabaticFactor: { id: '', title: 'Factor k', unit: 'A·√s/mm²' },
  initialTemperature: { id: '-initial', title: 'Initial temperature', unit: '°C' },
  finalTemperature: { id: '-final', title: 'Final temperature', unit: '°C' },
} as const;

/** @internal k from a printed table of k, or a temperature that it goes with: each is a table of its own. */
export function kTable<P extends PrintOfK, O extends keyof typeof figures>(
  { id, clause, of, metals, by, rows }: P,
  cell: O,
  known: {
    readonly provenance: Provenance;
    readonly note?: string;
    readonly provenanceOf?: Readonly<Record<string, Provenance>>;
  },
): Table<
  readonly [
    LabelAxis<P['metals'][number]> & { readonly name: 'metal' },
    LabelAxis<P['rows'][number][0]> & { readonly name: P['by'] },
  ],
  O
> {
  const { provenanceOf, ...howWell } = known;
  const made = table({
    id: `${id}${figures[cell].id}`,
    title: `${figures[cell].title} of ${of}`,
    axes: [
      { name: 'metal', labels: metals },
      { name: by, labels: rows.map(([label]) => label) },
    ],
    columns: metals.map((metal) => [metal]),
    rows: rows.map(([label, initial, final, ...factors]) => [
      label,
      ...factors.map((k, i) => {
        if (k === null || cell === 'adiabaticFactor') return k;
        return cell === 'initialTemperature' ? initial : typeof final === 'number' ? final : (final[i] as number);
      }),
    ]),
    cell,
    unit: figures[cell].unit as never,
    source: { document: 'BS 7671', edition: entered, clause, ...howWell },
    ...(provenanceOf && { provenanceOf }),
  });
  return made as never;
}
