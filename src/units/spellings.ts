/** One way in which the trade writes a unit. */
export interface Spelling {
  /** The text after the number. */
  readonly text: string;
  /** Canonical units in one of these. */
  readonly factor: number;
  /** Whether `format` may choose it. Formatting takes the largest that leaves at least 1. */
  readonly prints?: true;
}

const plain = (text: string): readonly Spelling[] => [{ text, factor: 1, prints: true }];

/**
 * Every spelling of a unit that is read or printed: one closed list, so that what is printed can be read again.
 * Proven against a general unit library in the tests.
 */
export const spellings = {
  A: [
    { text: 'kA', factor: 1e3, prints: true },
    { text: 'A', factor: 1, prints: true },
    { text: 'mA', factor: 1e-3, prints: true },
  ],
  V: [
    { text: 'kV', factor: 1e3, prints: true },
    { text: 'V', factor: 1, prints: true },
    { text: 'mV', factor: 1e-3 },
  ],
  Ω: [
    { text: 'MΩ', factor: 1e6, prints: true },
    { text: 'Mohm', factor: 1e6 },
    { text: 'kΩ', factor: 1e3 },
    { text: 'kohm', factor: 1e3 },
    { text: 'Ω', factor: 1, prints: true },
    { text: 'ohm', factor: 1 },
    { text: 'mΩ', factor: 1e-3 },
    { text: 'mohm', factor: 1e-3 },
  ],
  'Ω/m': [
    { text: 'mΩ/m', factor: 1e-3, prints: true },
    { text: 'mohm/m', factor: 1e-3 },
    { text: 'Ω/km', factor: 1e-3 },
    { text: 'ohm/km', factor: 1e-3 },
    { text: 'Ω/m', factor: 1 },
    { text: 'ohm/m', factor: 1 },
  ],
  'V/(A·m)': [
    { text: 'mV/A/m', factor: 1e-3, prints: true },
    { text: 'mV/(A·m)', factor: 1e-3 },
    { text: 'V/(A·m)', factor: 1 },
    { text: 'V/A/m', factor: 1 },
  ],
  m: [
    { text: 'km', factor: 1e3 },
    { text: 'm', factor: 1, prints: true },
    { text: 'mm', factor: 1e-3 },
  ],
  mm: /* @__PURE__ */ plain('mm'),
  'mm²': [
    { text: 'mm²', factor: 1, prints: true },
    { text: 'mm2', factor: 1 },
    { text: 'mm^2', factor: 1 },
  ],
  'm²': [
    { text: 'm²', factor: 1, prints: true },
    { text: 'm2', factor: 1 },
    { text: 'm^2', factor: 1 },
  ],
  W: [
    { text: 'MW', factor: 1e6, prints: true },
    { text: 'kW', factor: 1e3, prints: true },
    { text: 'W', factor: 1, prints: true },
  ],
  VA: [
    { text: 'MVA', factor: 1e6, prints: true },
    { text: 'kVA', factor: 1e3, prints: true },
    { text: 'VA', factor: 1, prints: true },
  ],
  var: [
    { text: 'kvar', factor: 1e3, prints: true },
    { text: 'var', factor: 1, prints: true },
  ],
  Wh: [
    { text: 'MWh', factor: 1e6, prints: true },
    { text: 'kWh', factor: 1e3, prints: true },
    { text: 'Wh', factor: 1, prints: true },
  ],
  '°C': [
    { text: '°C', factor: 1, prints: true },
    { text: 'degC', factor: 1 },
  ],
  K: /* @__PURE__ */ plain('K'),
  s: [
    { text: 'h', factor: 3600, prints: true },
    { text: 'min', factor: 60, prints: true },
    { text: 's', factor: 1, prints: true },
    { text: 'ms', factor: 1e-3, prints: true },
  ],
  d: [
    { text: 'days', factor: 1, prints: true },
    { text: 'day', factor: 1 },
    { text: 'd', factor: 1 },
  ],
  'A²s': [
    { text: 'A²s', factor: 1, prints: true },
    { text: 'A2s', factor: 1 },
    { text: 'A^2 s', factor: 1 },
    { text: 'kA²s', factor: 1e3 },
  ],
  'K·m/W': [
    { text: 'K·m/W', factor: 1, prints: true },
    { text: 'K m/W', factor: 1 },
    { text: 'K.m/W', factor: 1 },
  ],
  'W/m': /* @__PURE__ */ plain('W/m'),
  Ω·m: [
    { text: 'Ω·m', factor: 1, prints: true },
    { text: 'ohm m', factor: 1 },
    { text: 'Ω m', factor: 1 },
  ],
  '1': [
    { text: '', factor: 1, prints: true },
    { text: '%', factor: 0.01 },
  ],
  '°': [
    { text: '°', factor: 1, prints: true },
    { text: 'deg', factor: 1 },
  ],
  Hz: /* @__PURE__ */ plain('Hz'),
  'A·√s/mm²': /* @__PURE__ */ plain('A·√s/mm²'),
  'J/(K·mm³)': /* @__PURE__ */ plain('J/(K·mm³)'),
  Ω·mm: [
    { text: 'Ω·mm', factor: 1, prints: true },
    { text: 'Ω·mm²/m', factor: 1e-3 },
  ],
  '1/K': /* @__PURE__ */ plain('1/K'),
  'A/s': /* @__PURE__ */ plain('A/s'),
  'm²/s': /* @__PURE__ */ plain('m²/s'),
} as const satisfies Readonly<Record<string, readonly Spelling[]>>;

/** A canonical unit of this library. */
export type CanonicalUnit = keyof typeof spellings;
