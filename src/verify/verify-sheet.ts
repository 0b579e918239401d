import type { Calculator } from '../calculation/index.js';
import { calculatorOf } from '../codes/bs7671/calculators.js';
import { editions } from '../codes/bs7671/editions.js';
import { calculator as iec60364 } from '../codes/iec60364/contents.js';
import { aspects } from '../codes/wiring-code.js';
import { type Check, type CheckResult, judge, overall, type SheetDocument, type SheetLine } from '../core/index.js';
import { same } from '../core/same.js';
import { shown } from '../units/index.js';
import { assumedBehindRules } from './assumed.js';
import { type Definition, type Definitions, definitions, sortDefinitions } from './definitions.js';
import { type ById, type Conclusion, FigureReader, type Line, type SheetProblem } from './figures.js';
import { type Addresses, alternativesOf, type Listed, listedIn, listsOf, notListed } from './listed.js';
import { sameGaps } from './same.js';

/** What the verification of a sheet came to. */
export interface Verification {
  /** Whether what stands on the sheet is right; what it amounts to is in `conclusions`, and a sheet without any says nothing. */
  readonly ok: boolean;
  /** What the sheet and its parts amount to; of a sheet from which that was cut away there is none. */
  readonly conclusions: readonly Conclusion[];
  /**
   * What no second calculation can confirm, each with its place: remarks, statements that somebody makes, limits that are
   * stated and stand in no contents list or table, that a check is not required, that no further check was due of those that some
   * circuits need, or none at all where no code is named. The facts that a sheet starts from, and which of them were assumed, are its
   * givens and not among them: whether it is the sheet of this circuit the survey has to tell.
   */
  readonly takenAsStated: readonly SheetProblem[];
  /** Everything that was found, in the order of the sheet. */
  readonly problems: readonly SheetProblem[];
}

const byId = <T extends { readonly id: string }>(own: readonly T[], extra: readonly T[]) =>
  new Map([...own, ...extra].map((d) => [d.id, d] as const));
const allById = (extra: Definitions): ById => ({
  formulas: byId(definitions.formulas, extra.formulas),
  procedures: byId(definitions.procedures, extra.procedures),
  tables: byId(definitions.tables, extra.tables),
  checks: byId(definitions.checks, extra.checks),
});

/** Aspects for which a code has no rule, or an edition no text, answer without a check that could be looked up. */
const openAspect = /* @__PURE__ */ (() => new RegExp(`^(${aspects.join('|')})-(rule|by-edition)$`))();

/** One part of a sheet while it is read: its figures, what is judged by them, and what the whole amounts to. */
class Reader extends FigureReader {
  readonly results: CheckResult[] = [];
  /** Edition by document that results cite. */
  private readonly judgedBy: Map<string, string>;
  declare protected readonly parts: Map<string, Reader>;
  private readonly above: Reader | undefined;
  /** Results here and below when something was said of the whole. */
  private closedAt: number | undefined;

  constructor(
    document: SheetDocument,
    defined: ById,
    problems: SheetProblem[],
    private readonly listed: Listed,
    private readonly listOf: (id: string) => Addresses,
    above?: Reader,
  ) {
    super(document, defined, problems, above);
    this.judgedBy = above?.judgedBy ?? new Map();
    this.above = above;
  }

  read(): undefined {
    for (const line of this.document.lines) {
      this.at++;
      this.id = line.id;
      try {
        this.kinds(line.kind === 'check' || line.kind === 'result' ? line.result : line);
        const other = line.id === undefined ? undefined : notListed(line, this.listOf(line.id));
        if (other) this.wrong(other);
        this.line(line);
      } catch (error) {
        this.wrong(`the line cannot be read: ${error instanceof Error ? error.message : String(error)}`);
      }
    }
    this.at = 0;
    if (this.closedAt !== undefined && this.below().length > this.closedAt)
      this.wrong('results stand after what they amount to');
  }

  /** Results of this part and of those below it. */
  private below(): readonly CheckResult[] {
    return [...this.parts.values()].flatMap((p) => (p === this ? this.results : p.below()));
  }

  /** What the results here and below amount to: each check that is due has one, and no other counts. */
  private overall(line: Line<'overall'>): undefined {
    const all = this.below();
    const quoted = all.flatMap((r) => r.alternatives ?? []);
    const [own, other] = [false, true].map((is) => all.filter((r) => quoted.some((q) => same(q, r)) === is));
    const left = [...(own ?? []), ...(other ?? [])];
    const counted = line.due.flatMap(({ check, verdict }) => {
      const at = left.findIndex((r) => r.check === check && r.verdict === verdict);
      if (at < 0) this.wrong(`the check ${check} is due as ${verdict} and stands nowhere above`);
      return at < 0 ? [] : left.splice(at, 1);
    });
    const among = (which: 'aside' | 'repeated', id: string) => this.listed.asked.some((a) => a.asked[which].has(id));
    // of results of which one decides and the others stand aside nothing says here that several decide
    for (const [k, { check, verdict }] of counted.entries())
      if (among('repeated', check) && counted.findIndex((c) => c.check === check) < k)
        this.stated(`that the result of ${check}, ${verdict}, is due beside another`);
    for (const r of left) {
      if (quoted.some((q) => same(q, r))) continue;
      const counts = counted.some((c) => c.check === r.check);
      if (among('aside', r.check) || (counts && among('repeated', r.check)))
        this.stated(`that the result of ${r.check}, ${r.verdict}, stands aside`);
      else this.wrong(`the result of ${r.check} is none of those that are due`);
    }
    const { assumed = [] } = line;
    if (!Array.isArray(assumed)) this.wrong(`what is assumed is ${shown(assumed)}; a list is due`);
    for (const one of assumedBehindRules(this.document))
      if (!assumed.includes(one)) this.wrong(`a rule rests on ${one}, which is assumed and not among the conditions`);
    const whole = overall(counted).verdict;
    const due = whole === 'pass' && assumed.length > 0 ? 'conditional' : whole;
    if (line.verdict !== due) this.wrong(`the whole is ${due}, not ${line.verdict}`);
    const { code } = line;
    if (!code) this.stated('that nothing else was due: no code is named whose checks have to be here');
    else {
      const found = this.listed.asked.find(({ of }) => of?.document === code.document && of.edition === code.edition);
      if (!found) this.wrong(`no contents list is of ${code.document}:${code.edition}`);
      for (const id of found?.asked.always ?? [])
        if (!line.due.some((d) => d.check === id)) this.wrong(`${code.document} asks for ${id}, which is not due here`);
      // what applies follows from facts of the circuit, which a sheet has only as far as it draws on them
      if (found) this.stated(`that of the checks that ${code.document} asks for in some circuits no others are due`);
    }
    if (this.closedAt !== undefined) this.wrong('the whole is concluded twice');
    this.closedAt = all.length;
    const { verdict } = line;
    this.told.conclusions.push({
      place: this.document.place,
      verdict,
      checks: line.due.length,
      ...(code ? { code } : {}),
    });
  }

  private line(line: SheetLine): undefined {
    switch (line.kind) {
      case 'given':
        return this.given(line);
      case 'label':
        return this.label(line);
      case 'look':
        return this.look(line);
      case 'step':
        return this.step(line);
      case 'run':
        return this.run(line);
      case 'gather':
        return this.gather(line);
      case 'same':
        return this.same(line);
      case 'check':
        return this.check(line);
      case 'result':
        return this.result(line);
      case 'overall':
        return this.overall(line);
      case 'note':
        return void this.stated(`a remark: ${line.text}`);
      case 'part':
        return this.part(line);
      default:
        throw new Error(`there is no kind of line ${shown((line as { kind: unknown }).kind)}`);
    }
  }

  private check(line: Line<'check'>): undefined {
    const { result } = line;
    const check = this.asCited(result);
    if (!check) return this.wrong(`there is no check ${result.check}`);
    this.results.push(result);
    const due = judge(check, this.evidence(check, line) as never, result.because);
    const { gaps, ...rest } = result;
    const { gaps: dueGaps, ...dueRest } = due;
    if (!same(rest, dueRest)) this.wrong(`the check ${check.id} comes to another result: ${due.verdict}`);
    if (!sameGaps(gaps ?? [], dueGaps ?? [])) this.wrong(`the check ${check.id} is blocked by other reasons`);
  }

  /** The check of a result as one of the codes cites it, by the edition that the sheet was worked out by. */
  private asCited(result: CheckResult): Check | undefined {
    const check = this.defined.checks.get(result.check);
    const cited = this.listed.asked.flatMap((a) => a.asked.cited.get(result.check) ?? []);
    const source = cited.find((s) => same(s, result.source));
    return this.edited(check && source ? { ...check, source } : check, result);
  }

  /** A check as it is cited by the edition that the sheet was worked out by: one throughout. */
  private edited(check: Check | undefined, { source: { document, edition } }: CheckResult): Check | undefined {
    if (check?.source.document !== document || check.source.edition !== undefined || edition === undefined)
      return check;
    const known = this.listed.editions.some((e) => e.document === document && e.edition === edition);
    const before = this.judgedBy.get(document) ?? edition;
    if (!known || before !== edition) this.wrong(`the sheet is judged by ${document}:${edition}, and by ${before}`);
    this.judgedBy.set(document, before);
    return { ...check, source: { ...check.source, edition } };
  }

  private evidence(check: Check, line: Line<'check'>): Readonly<Record<string, unknown>> {
    const { result } = line;
    const open = { missing: result.gaps ?? [] };
    if (open.missing.length === 0 && result.verdict === 'not-determined' && check.kind !== 'any-of')
      this.wrong('what is not determined has to say why');
    const plain = () => line.uses.length > 0 && this.wrong(`the check ${check.id} uses no numbers`);
    switch (check.kind) {
      case 'at-most':
      case 'at-least':
        this.statedLimits(line, [check.limit]);
        return this.used(line, [check.value, check.limit]).due;
      case 'within':
        this.statedLimits(line, [check.least, check.most]);
        return this.used(line, [check.value, check.least, check.most]).due;
      case 'holds':
        plain();
        this.stated(`that ${check.id} ${line.holds === true ? 'holds' : 'does not hold, or is open'}`);
        return { holds: line.holds ?? open, because: result.because ?? '' };
      case 'any-of':
        plain();
        for (const one of result.alternatives ?? []) {
          if (!this.knows(one)) this.wrong(`the alternative ${one.check} stands nowhere above`);
          const permitted = check.of ? new Set(check.of) : alternativesOf(check.id, this.listed);
          if (permitted && !permitted.has(one.check)) this.wrong(`${one.check} is no alternative of ${check.id}`);
        }
        return { results: result.alternatives ?? [] };
      default: {
        const never: never = check;
        return never;
      }
    }
  }

  /** Limits that were taken down: by a line of a contents list they are those of the code, else as stated. */
  private statedLimits(line: Line<'check'>, limits: readonly string[]): undefined {
    for (const name of limits) {
      const from = line.ids?.[name];
      const cell = from === undefined ? this.scope.latest(name) : undefined;
      if (cell?.mustServe) this.stated(`the limit ${name}`);
    }
  }

  /** Whether a result stands on a line of this part, of one below it, or of one above it. */
  private knows(result: CheckResult): boolean {
    for (let reader: Reader | undefined = this; reader; reader = reader.above) if (reader.holds(result)) return true;
    return false;
  }

  private holds(result: CheckResult): boolean {
    if (this.results.some((r) => same(r, result))) return true;
    return [...this.parts.values()].some((p) => p !== this && p.holds(result));
  }

  private result(line: Line<'result'>): undefined {
    const { result } = line;
    const open = result.verdict === 'not-required' ? 'reason' : 'gaps';
    if (result.verdict !== 'not-required' && result.verdict !== 'not-determined')
      this.wrong(`${result.verdict} can only be the result of a check`);
    else if (result[open] === undefined || result[open]?.length === 0) this.wrong(`${result.verdict} has to say why`);
    for (const key of ['value', 'limit', 'most', 'margin'] as const)
      if (result[key] !== undefined) this.wrong(`a result that was not judged has no ${key}`);
    this.results.push(result);
    const check = this.asCited(result);
    if (check) {
      const { title, weight, source, caution } = check;
      const words = result.verdict === 'not-required' && result.caution === undefined ? undefined : caution;
      this.quoted({ ...result }, { title, weight, source, caution: words });
      if (result.verdict === 'not-required') this.excused(result);
    } else if (!openAspect.test(result.check)) this.wrong(`there is no check ${result.check}`);
  }

  /** That a check is not required follows from facts; of a check that every circuit needs nothing excuses. */
  private excused({ check, because }: CheckResult): undefined {
    const asking = this.listed.asked.filter((a) => a.asked.cited.has(check));
    if (asking.length > 0 && !asking.some((a) => a.asked.excused.has(check)))
      this.wrong(`the check ${check} is required whatever the facts`);
    else this.stated(`that ${check} is not required${because === undefined ? '' : `: ${because}`}`);
  }

  private part(line: Line<'part'>): undefined {
    const { place, format } = line.part;
    const number = [...this.parts.keys()].length;
    const due = this.document.place ? `${this.document.place}.${number}` : `${number}`;
    if (place !== due || this.parts.has(place)) this.wrong(`the part stands at ${due}, not at ${place}`);
    if (format !== 'sheet/1') this.wrong(`the format ${shown(format)} is not known`);
    const part = new Reader(line.part, this.defined, this.problems, this.listed, this.listOf, this);
    this.parts.set(due, part);
    part.read();
  }
}

let own: Listed | undefined;
/** The contents lists of this library, laid out when first asked for, and others, which go before those of the same edition. */
function listedWith(codes: readonly Calculator[]): Listed {
  const ofEditions = () => [...editions.flatMap(({ edition }) => calculatorOf(edition) ?? []), iec60364()];
  own ??= listedIn(ofEditions());
  return codes.length === 0 ? own : listedIn([...codes, ...ofEditions()]);
}

/**
 * Verifies a whole sheet by a second, independent calculation: every value that a line uses is the latest of its role,
 * tables are read again, expressions are evaluated with units by a general calculator, relations are checked by what
 * their terms leave, procedures are run again, and checks are judged again. A line with an identifier has to be the one
 * that a contents list has in its place.
 * @param document a written sheet; it may come from anybody
 * @param extra definitions of the reader's own that the sheet quotes
 * @param codes contents lists of the reader's own by which it was worked out, beside those of this library
 * @returns everything that is wrong with it, what it amounts to, and what is taken as stated; it throws nothing
 * @example
 * ```ts
 * import { amperes, metres, millivoltsPerAmpereMetre, recorder, writeSheet } from 'ohmwright';
 * import { voltageDropTabulated } from 'ohmwright/bs7671';
 * import { verifySheet } from 'ohmwright/verify';
 *
 * const sheet = recorder('Drop');
 * const dropRate = sheet.given('dropRate', millivoltsPerAmpereMetre(7.3));
 * const designCurrent = sheet.given('designCurrent', amperes(32));
 * const length = sheet.given('length', metres(25));
 * sheet.step(voltageDropTabulated, { dropRate, designCurrent, length });
 *
 * verifySheet(writeSheet(sheet)).ok; // => true
 * ```
 */
export function verifySheet(
  document: SheetDocument,
  extra: readonly Definition[] = [],
  codes: readonly Calculator[] = [],
): Verification {
  const problems: SheetProblem[] = [];
  let told: Reader['told'] = { conclusions: [], stated: [] };
  try {
    const listed = listedWith(codes);
    const defined = allById(sortDefinitions(extra));
    const reader = new Reader(document, defined, problems, listed, listsOf(document, listed));
    if (document.format !== 'sheet/1')
      problems.push({ place: '', line: 0, message: `the format ${shown(document.format)} is not known` });
    if (document.place !== '') problems.push({ place: '', line: 0, message: 'a sheet begins at its own place' });
    told = reader.told;
    reader.read();
    reader.idle();
  } catch (error) {
    const message = `the sheet cannot be read: ${error instanceof Error ? error.message : String(error)}`;
    problems.push({ place: '', line: 0, message });
  }
  return { ok: problems.length === 0, conclusions: told.conclusions, takenAsStated: told.stated, problems };
}
