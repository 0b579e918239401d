import { type Gap, notDetermined, type Source, statement } from '../../core/index.js';
import type { Aspect, Rule } from '../wiring-code.js';

/**
 * The rule of an aspect whose text could not be had: nothing is judged by it.
 * @param code the code, as cited
 * @param source where the rule would stand
 */
export const closedRule =
  (aspect: Aspect, code: string, source: Source, gap: Gap): Rule =>
  (_circuit, _findings, sheet) => {
    const check = statement({
      id: `${aspect}-by-edition`,
      title: `The circuit meets ${code} on ${aspect.replaceAll('-', ' ')}`,
      weight: 'rule',
      source,
    });
    return [sheet.result(notDetermined(check, gap))];
  };
