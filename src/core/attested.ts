import { CalculationError, type CorrectionPlace, invalidInput } from '../units/index.js';
import { columnName, type Guard, objections } from './laws.js';
import { attestorWords } from './provenance.js';
import { type Table, table } from './table.js';

/** Who compared figures with the print, when, and with which edition of it. @inline */
export interface Attestor {
  /** Name of the person. */
  readonly by: string;
  /** Day of the comparison, ISO. */
  readonly on: string;
  /** Edition of the copy, such as `2018+A2:2022`. */
  readonly edition: string;
}

/** A cell that the print has otherwise. @inline */
export interface Correction {
  /** Name of the column: its keys with spaces between. */
  readonly column: string;
  /** Key of the row. */
  readonly row: string | number;
  /** What the print has, in its own unit; `null` where it has no cell. */
  readonly printed: number | null;
  /** Why the figure stands although it breaks a law: what was looked at again. */
  readonly despite?: string;
}

/** What one person says of one table. @inline */
export interface Attestation extends Attestor {
  /** Identifier of the table, such as `bs7671/4d5`. */
  readonly table: string;
  /** Fingerprint of the figures that were compared, from the proof sheet. */
  readonly figures: string;
  /** Columns, by their names, and rows that were compared; every cell when absent. */
  readonly cells?: readonly { readonly column: string; readonly rows?: readonly (string | number)[] }[];
  /** Cells that the print has otherwise; they count as compared. */
  readonly corrections?: readonly Correction[];
}

/** A document of attestations, as `readAttestations` of `ohmwright/io` gives it. */
export interface Attestations {
  readonly format: 'attestations/1';
  readonly attestations: readonly Attestation[];
}

/** Tables as somebody attested them. @inline */
export interface AttestedTables {
  /** The tables that were compared, corrected, by their identifiers. */
  readonly tables: ReadonlyMap<string, Table>;
  /** What has to be said wherever a verdict is printed: attestations of another edition, figures that break a law. */
  readonly remarks: readonly string[];
  /** Tables that were compared and are not read here. */
  readonly aside: readonly string[];
}

const cellName = (column: string, row: string | number): string => `${column}, ${row}`;

/** @internal A fingerprint of the figures of a table as printed: another one means that other figures were compared. */
export function fingerprintOf(t: Pick<Table, 'columns' | 'rows'>): string {
  let hash = 0x811c9dc5;
  for (const char of JSON.stringify([t.columns, t.rows])) {
    hash ^= char.codePointAt(0) as number;
    hash = Math.imul(hash, 0x01000193) >>> 0;
  }
  return hash.toString(16).padStart(8, '0');
}

interface Said extends Attestor {
  readonly printed: number | null;
  readonly despite?: string;
}

/** What is wrong with an attestation, seen beside its table. */
function problemsOf(t: Table, { figures, cells = [], corrections = [] }: Attestation): string[] {
  const columns = new Set(t.columns.map(columnName));
  const rows = new Set(t.rows.map((r) => r[0]));
  const wrong: string[] = [];
  const now = fingerprintOf(t);
  if (figures !== now)
    wrong.push(`compares figures ${figures}, but those of ${t.id} are ${now} now: write the proof sheet again`);
  const known = (column: string, row?: string | number) => {
    if (!columns.has(column)) wrong.push(`${t.id} has no column ${column || '(without a name)'}`);
    if (row !== undefined && !rows.has(row)) wrong.push(`${t.id} has no row ${row}`);
  };
  for (const c of cells) for (const row of c.rows ?? [undefined]) known(c.column, row);
  for (const c of corrections) known(c.column, c.row);
  return wrong;
}

/** What an attestation says of each cell that it covers. */
function saidBy(t: Table, { by, on, edition, cells, corrections = [] }: Attestation): Map<string, Said> {
  const found = new Map<string, Said>();
  for (const [row, ...printed] of t.rows)
    for (const [c, key] of t.columns.entries()) {
      const column = columnName(key);
      const among =
        cells === undefined ||
        cells.some((x) => x.column === column && (x.rows === undefined || x.rows.includes(row as string | number)));
      if (among)
        found.set(cellName(column, row as string), { printed: (printed[c] ?? null) as number | null, by, on, edition });
    }
  for (const { column, row, printed, despite } of corrections)
    found.set(cellName(column, row), { printed, by, on, edition, ...(despite === undefined ? {} : { despite }) });
  return found;
}

/** The table with its attested cells; what two attestations have otherwise is refused. */
function merged(t: Table, all: readonly Attestation[]): ReadonlyMap<string, Said> {
  const found = new Map<string, Said>();
  for (const one of all)
    for (const [at, said] of saidBy(t, one)) {
      const before = found.get(at);
      if (before && before.printed !== said.printed) {
        const words = ({ printed, ...who }: Said) => `${printed ?? 'no cell'} (${attestorWords(who)})`;
        throw new CalculationError(
          'contradicting-attestations',
          `${t.id}, ${at}: attested as ${words(before)} and as ${words(said)}`,
          { table: t.id, cell: at, attested: [before, said].map(({ by, on, printed }) => ({ by, on, printed })) },
        );
      }
      // who found the print otherwise, and said why, is kept
      if (!before || (before.despite === undefined && said.despite !== undefined)) found.set(at, said);
    }
  return found;
}

function corrected(t: Table, said: ReadonlyMap<string, Said>): Table {
  const { axes, columns, cell, unit, id, title, source } = t;
  const names = columns.map(columnName);
  const rows = t.rows.map(([row, ...cells]) => [
    row as string | number,
    ...cells.map(
      (v, c) => said.get(cellName(names[c] as string, row as string))?.printed ?? absent(said, names[c], row, v),
    ),
  ]);
  return table({
    ...{ id, title, axes, columns, rows, cell, unit, source },
    ...(t.per === undefined ? {} : { per: t.per }),
    ...(t.printed === undefined ? {} : { printed: t.printed }),
    ...(t.provenanceOf ? { provenanceOf: t.provenanceOf } : {}),
    ...(t.notes ? { notes: t.notes } : {}),
    attested: new Map([...(t.attested ?? []), ...said]),
  }) as unknown as Table;
}

/** A cell that nobody speaks of as it was; one that the print has not is none. */
const absent = (said: ReadonlyMap<string, Said>, column: string | undefined, row: unknown, before: unknown) =>
  said.has(cellName(column ?? '', row as string)) ? null : (before as number | null);

/** A correction that breaks a law is refused, unless somebody says why it stands: then that is remarked on. */
function objected(before: Table, after: Table, said: ReadonlyMap<string, Said>, laws: readonly Guard[]): string[] {
  const known = objections(before, laws);
  const broken = [...objections(after, laws)].filter((o) => !known.has(o));
  if (broken.length === 0) return [];
  const names = before.columns.map(columnName);
  const places: CorrectionPlace[] = before.rows.flatMap(([row, ...cells]) =>
    cells.flatMap((was, c) => {
      const at = cellName(names[c] as string, row as string);
      const now = said.get(at);
      return now && now.printed !== was ? [{ cell: at, was: was as number | null, printed: now.printed }] : [];
    }),
  );
  const bare = places.filter((p) => said.get(p.cell)?.despite === undefined);
  if (bare.length === 0)
    return broken.map((law) => {
      const words = places.map((p) => `${p.cell}: ${p.printed ?? 'no cell'} (${said.get(p.cell)?.despite})`);
      return `${before.id} as corrected breaks a law, ${law}, and is kept because of what was said: ${words.join('; ')}`;
    });
  throw new CalculationError(
    'correction-breaks-law',
    `${before.id}: ${bare.map((p) => `${p.cell} as ${p.printed ?? 'no cell'} instead of ${p.was ?? 'no cell'}`).join('; ')} breaks ${broken.join('; ')}. Look at the print again; if it stands there, say why in "despite"`,
    { table: before.id, laws: broken, corrections: bare },
  );
}

/** @internal By what attestations are taken. */
export interface AttestingBy {
  /** The tables that may be attested: those that are read. */
  readonly tables: readonly Table[];
  /** Tables that are not read and belong to the laws of those that are. */
  readonly beside?: readonly Table[];
  /** Document and edition that is judged by: a copy of it counts, whatever edition a table was entered from. */
  readonly document: string;
  readonly edition: string;
  /** Laws that the figures of a table obey. */
  lawsOf(t: Table, others: ReadonlyMap<string, Table>): readonly Guard[];
}

/**
 * @internal Tables as attestations have them: cells corrected, and each known as attested by name and day. The tables that
 * are handed in stay as they are. Throws `invalid-input` for a column or row that does not exist, corrections of a table that is not read, or figures that
 * have changed since they were compared, `contradicting-attestations` where two say otherwise of one cell, and
 * `correction-breaks-law` where a corrected cell breaks a law and nobody says why it stands.
 */
export function attestedTables(documents: readonly Attestations[], by: AttestingBy): AttestedTables {
  const known = new Map(by.tables.map((t) => [t.id, t]));
  const remarks: string[] = [];
  const aside = new Set<string>();
  const problems: { path: (string | number)[]; message: string }[] = [];
  const taken = new Map<Table, Attestation[]>();
  for (const [d, document] of documents.entries())
    for (const [i, one] of document.attestations.entries()) {
      const path = [d, 'attestations', i];
      const t = known.get(one.table);
      if (!t) {
        aside.add(one.table);
        if (one.corrections?.length)
          problems.push({ path: [...path, 'table'], message: `${one.table} is corrected, but not read here` });
        continue;
      }
      const { document: of, edition = '' } = t.source;
      const editions = [...edition.split(' and '), ...(of === by.document ? [by.edition] : [])].filter(Boolean);
      if (editions.length > 0 && !editions.includes(one.edition)) {
        remarks.push(
          `${t.id}: what ${attestorWords(one)} compared takes no part; the figures are of ${editions.join(' and ')}`,
        );
        continue;
      }
      problems.push(...problemsOf(t, one).map((message) => ({ path, message })));
      taken.set(t, [...(taken.get(t) ?? []), one]);
    }
  if (problems.length > 0) throw invalidInput('the attestations', problems);
  const tables = new Map<string, Table>();
  const said = new Map<Table, ReadonlyMap<string, Said>>();
  for (const [t, all] of taken) {
    said.set(t, merged(t, all));
    tables.set(t.id, corrected(t, said.get(t) as ReadonlyMap<string, Said>));
  }
  const after = new Map([...(by.beside ?? []).map((t) => [t.id, t] as const), ...known, ...tables]);
  for (const [t, of] of said)
    remarks.push(...objected(t, tables.get(t.id) as Table, of, by.lawsOf(tables.get(t.id) as Table, after)));
  return { tables, remarks, aside: [...aside] };
}
