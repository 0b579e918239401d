import { type FactWords, fact, type Line } from '../../calculation/index.js';
import type { Fact, Known } from '../../core/index.js';
import type { Run, Stretch } from '../../installation/index.js';
import type { CircuitPlace } from '../wiring-code.js';

/** A section of the route of the circuit. */
export interface SectionPlace {
  readonly circuit: CircuitPlace;
  readonly section: Stretch;
}
/** A run of the way from the origin: the distribution circuits ahead, the circuit itself last. */
export interface RunPlace {
  readonly circuit: CircuitPlace;
  readonly run: Run;
  /** Whether it is the circuit itself. */
  readonly own: boolean;
}

/** What a circuit has several of. */
export const circuitScopes = {
  circuit: { things: (): readonly unknown[] => [] },
  sections: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly SectionPlace[] =>
      circuit.run.stretches.map((section) => ({ circuit, section })),
    title: ({ section }: SectionPlace) => section.name,
  },
  runs: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly RunPlace[] =>
      [...circuit.path.feeders, circuit.run].map((run) => ({ circuit, run, own: run === circuit.run })),
    title: ({ run }: RunPlace) => run.id,
  },
} as const;

/** A fact of the circuit. */
export const ofCircuit = <V>(
  read: (circuit: CircuitPlace) => Fact<V> | Known<V>,
  words?: FactWords<CircuitPlace>,
): Line<never, V> => fact(read, words);
/** A fact of a section of its route. */
export const ofSection = <V>(
  read: (place: SectionPlace) => Fact<V> | Known<V>,
  words?: FactWords<SectionPlace>,
): Line<never, V> => fact(read, words);
/** A fact of a run of the way from the origin. */
export const ofRun = <V>(read: (place: RunPlace) => Fact<V> | Known<V>, words?: FactWords<RunPlace>): Line<never, V> =>
  fact(read, words);
