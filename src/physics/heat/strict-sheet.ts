import {
  evaluate,
  type Formula,
  isMissing,
  type Name,
  type Relation,
  type Sheet,
  SilentSheet,
  type StepValues,
  type Vocabulary,
} from '../../core/index.js';

/** @internal A sheet that keeps nothing and throws the typed error of a step that has no result. */
export class StrictSheet extends SilentSheet {
  override part(_title: string): Sheet {
    return new StrictSheet(this.view());
  }

  override step<I extends Name, O extends Name>(formula: Formula<I, O> | Relation<I, O>, values: StepValues<I>) {
    const value = super.step(formula, values);
    return isMissing(value) ? evaluate(formula, values as Pick<Vocabulary, I>) : value;
  }
}
