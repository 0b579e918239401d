import type { Highs } from 'highs';
import * as highsModule from 'highs';

/** A linear programme `least <= x <= most`, rows `from <= Σ a·x <= to`. */
export interface LinearProgramme {
  readonly objective: readonly number[];
  readonly least: readonly number[];
  readonly most: readonly number[];
  readonly rows: readonly {
    readonly who: readonly number[];
    readonly by: readonly number[];
    readonly from?: number;
    readonly to?: number;
  }[];
}

// its declarations are those of a CommonJS module, its import is an ES module: say once what the default export is
const highs: Highs = await (highsModule as unknown as { default: () => Promise<Highs> }).default();

/** Maximum of a linear programme by a general solver from outside this project, or undefined when there is none. */
export function maximum({
  objective,
  least,
  most,
  rows,
}: LinearProgramme): { value: number; x: Float64Array } | undefined {
  const starts = [0];
  for (const { who } of rows) starts.push(starts.at(-1)! + who.length);
  const infinity = highs.infinity;
  return highs.withModel(
    {
      numCols: objective.length,
      numRows: rows.length,
      sense: highs.constants.objectiveSense.maximize,
      colCost: [...objective],
      colLower: [...least],
      colUpper: most.map((m) => (m === Number.POSITIVE_INFINITY ? infinity : m)),
      rowLower: rows.map((r) => r.from ?? -infinity),
      rowUpper: rows.map((r) => r.to ?? infinity),
      matrix: {
        format: 'csr',
        numRows: rows.length,
        numCols: objective.length,
        starts,
        indices: rows.flatMap((r) => [...r.who]),
        values: rows.flatMap((r) => [...r.by]),
      },
    },
    (model) => {
      const optimal = (presolve: 'on' | 'off') => {
        model.options.set({
          output_flag: false,
          primal_feasibility_tolerance: 1e-9,
          dual_feasibility_tolerance: 1e-9,
          presolve,
        });
        model.run();
        return model.getModelStatus() === highs.constants.modelStatus.optimal;
      };
      // what is done before solving takes some programmes that are feasible by a billionth for infeasible
      if (!optimal('on') && !optimal('off')) return undefined;
      return { value: model.getObjectiveValue(), x: model.getSolution().colValue };
    },
  );
}
