import { termOf } from '../core/index.js';
import { own } from '../core/own.js';
import { parseQuantity, shown } from '../units/index.js';
import { type CanonicalUnit, spellings } from '../units/spellings.js';
import { formatNumber } from '../units/text.js';

type Value = string | number | boolean;

/** What the trade, or an earlier version, calls a choice; in small letters, without spaces and signs. */
const alsoCalled: Readonly<Record<string, Value>> = {
  pme: 'TN-C-S',
  tncspme: 'TN-C-S',
  mne: 'TN-C-S',
  sne: 'TN-S',
  cne: 'TN-C-S',
  earthrod: 'TT',
  rod: 'TT',
  single: 1,
  singlephase: 1,
  '1phase': 1,
  '1ph': 1,
  three: 3,
  threephase: 3,
  '3phase': 3,
  '3ph': 3,
  twinandearth: 'flat-twin-and-earth',
  twinearth: 'flat-twin-and-earth',
  te: 'flat-twin-and-earth',
  flattwinandearth: 'flat-twin-and-earth',
  swa: 'armoured',
  steelwirearmoured: 'armoured',
  flex: 'flexible',
  singles: 'single-core',
  cu: 'copper',
  al: 'aluminium',
  aluminum: 'aluminium',
  pvc: 'thermoplastic-70',
  thermoplastic: 'thermoplastic-70',
  xlpe: 'thermosetting-90',
  thermosetting: 'thermosetting-90',
  rubber: 'thermosetting-60',
  typea: 'A',
  typeac: 'AC',
  typef: 'F',
  typeb: 'B',
  s: 'selective',
  lights: 'lighting',
  sockets: 'socket-outlets',
  ring: 'socket-outlets',
  cooker: 'cooking',
  shower: 'instantaneous-water-heating',
  immersion: 'thermostatic-water-heating',
  ev: 'charge-point',
  solar: 'generation',
  pv: 'generation',
  battery: 'storage',
  house: 'dwelling',
  home: 'dwelling',
  flat: 'flats',
  shop: 'small-shop',
  touchvoltagedevice: 'open-pen-detection-touch-voltage',
  lineneutralwindowdevice: 'open-pen-detection-window',
  equaldevice: 'open-pen-detection-other',
  ttisland: 'tt-earthing',
  yes: true,
  y: true,
  true: true,
  no: false,
  n: false,
  false: false,
};

const bare = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, '');

/** Single letters that have to be put in, left out or changed to make one word the other; 3 for more than two. */
function apart(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 2) return 3;
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++)
      next.push(
        Math.min((next[j - 1] ?? 0) + 1, (row[j] ?? 0) + 1, (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)),
      );
    row = next;
  }
  return Math.min(3, row.at(-1) ?? 3);
}

/** The value among those allowed that is meant by another word for it, by the same letters, or by its number as text. */
export function meantChoice<T extends Value>(allowed: readonly T[], input: unknown): T | undefined {
  if (typeof input !== 'string' && typeof input !== 'number' && typeof input !== 'boolean') return undefined;
  const said = bare(String(input));
  const called = own(alsoCalled, said);
  const found =
    allowed.find((v) => bare(String(v)) === said) ??
    (called === undefined ? undefined : allowed.find((v) => v === called));
  if (found !== undefined) return found;
  // the figure alone, such as 61009 for EN 61009
  const ending = said.length >= 4 ? allowed.filter((v) => bare(String(v)).endsWith(said)) : [];
  return ending.length === 1 ? ending[0] : undefined;
}

/** The same, or one that is a slip of the pen or two away from what was written. */
export function nearChoice<T extends Value>(allowed: readonly T[], input: unknown): T | undefined {
  const meant = meantChoice(allowed, input);
  if (meant !== undefined || typeof input !== 'string') return meant;
  const said = bare(input);
  const near = allowed.filter((v) => said.length > 3 && apart(bare(String(v)), said) <= 2);
  return near.length === 1 ? near[0] : undefined;
}

/** How units are written and said, by the spelling that is read; in small letters without spaces, signs and a plural s. */
const unitWords: Readonly<Record<string, string>> = {
  amp: 'A',
  ampere: 'A',
  a: 'A',
  ma: 'mA',
  milliamp: 'mA',
  ka: 'kA',
  kiloamp: 'kA',
  v: 'V',
  volt: 'V',
  ohm: 'ohm',
  r: 'ohm',
  milliohm: 'mohm',
  megohm: 'Mohm',
  meter: 'm',
  metre: 'm',
  mtr: 'm',
  mt: 'm',
  m: 'm',
  millimetre: 'mm',
  millimeter: 'mm',
  mm: 'mm',
  sqmm: 'mm²',
  mmsq: 'mm²',
  mmsquared: 'mm²',
  squaremm: 'mm²',
  squaremillimetre: 'mm²',
  mm2: 'mm²',
  degree: '°C',
  degreec: '°C',
  deg: '°C',
  degc: '°C',
  c: '°C',
  celsius: '°C',
  kw: 'kW',
  kilowatt: 'kW',
  w: 'W',
  watt: 'W',
  kwh: 'kWh',
  kva: 'kVA',
  percent: '%',
  pc: '%',
  second: 's',
  sec: 's',
  hour: 'h',
  minute: 'min',
  millisecond: 'ms',
  hertz: 'Hz',
  hz: 'Hz',
};

/** A spelling that is read, of a unit as somebody wrote it. */
function unitMeant(written: string): string | undefined {
  const all = Object.values(spellings).flat();
  if (all.some((s) => s.text !== '' && s.text === written)) return written;
  const said = written
    .toLowerCase()
    .replace(/[\s.^()-]/g, '')
    .replace('²', '2');
  return own(unitWords, said) ?? own(unitWords, said.replace(/s$/, ''));
}

/** A quantity that is meant by a text or a bare number, or what is wrong with it. */
export interface MeantQuantity {
  /** What should have been written. */
  readonly write?: string;
  /** Stable name of the slip. */
  readonly slip: 'no-unit' | 'decimal-comma' | 'unit-spelling' | 'wrong-unit' | 'not-a-quantity';
}

const reads = (text: string, unit: CanonicalUnit): boolean => {
  try {
    parseQuantity(text, unit);
    return true;
  } catch {
    return false;
  }
};

/**
 * What somebody meant who wrote what is no quantity of the unit.
 * @param preferred unit that a bare number is most likely in
 */
export function meantQuantity(unit: CanonicalUnit, input: unknown, preferred: string = unit): MeantQuantity {
  if (typeof input === 'number')
    return Number.isFinite(input) ? { slip: 'no-unit', write: `${input} ${preferred}` } : { slip: 'not-a-quantity' };
  if (typeof input !== 'string') return { slip: 'not-a-quantity' };
  const parts = /^\s*([+-]?[\d.,]+)\s*(.*?)\s*$/.exec(input);
  const [, digits = '', said = ''] = parts ?? [];
  const number = digits.replace(',', '.');
  if (!parts || !/^[+-]?\d+(\.\d+)?$/.test(number)) return { slip: 'not-a-quantity' };
  const comma = digits.includes(',');
  const spelled = said === '' ? preferred : unitMeant(said);
  if (spelled === undefined) return { slip: 'wrong-unit' };
  const write = `${number} ${spelled}`.trim();
  if (!reads(write, unit)) return { slip: 'wrong-unit' };
  return { slip: comma ? 'decimal-comma' : said === '' ? 'no-unit' : 'unit-spelling', write };
}

/** Amperes at 230 V, of a power that stands where a current is due. */
function currentOfPower(text: string): string | undefined {
  const kilowatts = /^\s*([\d.]+)\s*kw\s*$/i.exec(text)?.[1];
  return kilowatts === undefined ? undefined : `${formatNumber(Number(kilowatts) / 0.23)} A`;
}

/** What is wrong with a text that is no quantity of a role, in words, and what to write. */
export function quantityWords(
  name: string,
  input: unknown,
): { readonly slip: MeantQuantity['slip']; readonly message: string; readonly write?: string } {
  const unit = (termOf(name)?.unit ?? '1') as CanonicalUnit;
  const { slip, write } = meantQuantity(unit, input);
  const listed = [...new Set(spellings[unit].map((s) => s.text))].filter(Boolean);
  const words = termOf(name)?.words ?? name;
  const said = shown(input);
  const due = `${words} is due, in ${listed.join(', ') || 'a plain number or %'}`;
  const messages: Readonly<Record<MeantQuantity['slip'], string>> = {
    'no-unit': `is ${said}, without a unit; write '${write}'`,
    'decimal-comma': `is ${said}; a decimal has a point here: write '${write}'`,
    'unit-spelling': `is ${said}; write '${write}'`,
    'wrong-unit': `is ${said}; ${due}`,
    'not-a-quantity':
      typeof input === 'object' ? `has to be text with a unit, such as '1 ${unit}'` : `is ${said}; ${due}`,
  };
  const current =
    slip === 'wrong-unit' && unit === 'A' && typeof input === 'string' ? currentOfPower(input) : undefined;
  return {
    slip,
    message:
      current === undefined ? messages[slip] : `${messages[slip]}. At 230 V on one phase that power is ${current}`,
    ...(write === undefined ? {} : { write }),
  };
}
