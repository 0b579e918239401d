import { procedure } from '../../../core/index.js';
import { bodyProblems, conductorAttained, refuse, type StepInput, soilAttained } from './buried-body.js';

function checked({ body, time }: StepInput): void {
  refuse([
    ...bodyProblems(body, ['body']),
    ...(Number.isFinite(time) && time >= 0 ? [] : [{ path: ['time'], message: 'must be from 0 s' }]),
  ]);
}

/** Share of its final rise that the surface of a buried cable has reached some time after its load came on. IEC 60853-1. */
export const soilAttainment = /* @__PURE__ */ procedure({
  id: 'soil-attainment',
  title: 'Share of its final rise that the surface of a buried cable has reached',
  output: 'attainment',
  method:
    'heat of a line and of its image above the ground, by exponential integrals; neighbours of the same load alike',
  source: {
    document: 'IEC 60853-1',
    clause: 'attainment factor of the surface',
    provenance: 'memory',
    note: 'the cable is taken as soil inside: compared with the heat equation solved around a cable with a surface of its own',
  },
  run: (input: StepInput) => {
    checked(input);
    return soilAttained(input.body, input.time);
  },
});

/**
 * Share of its final rise that the conductor of a buried cable has reached some time after its load came on, with what the
 * cable stores itself. Heat conduction.
 */
export const conductorAttainment = /* @__PURE__ */ procedure({
  id: 'conductor-attainment',
  title: 'Share of its final rise that the conductor of a buried cable has reached',
  output: 'attainment',
  method:
    'two stores of heat in the cable and the soil outside its surface, by Laplace transform, inverted by the method of Stehfest',
  source: {
    document: 'Heat conduction',
    clause: 'cylinder with stores of its own in a half space',
    provenance: 'derived',
    note: 'IEC 60853-2 adds what the cable stores to a line in soil, and so counts the space of the cable twice',
  },
  run: (input: StepInput) => {
    checked(input);
    return conductorAttained(input.body, input.time);
  },
});
