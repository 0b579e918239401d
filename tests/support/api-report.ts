import ts from 'typescript';
import type { Entry } from './entries.js';

/**
 * The public face as text: every exported declaration of each entry, without comments, in order of name. What an
 * earlier entry has already shown is only named.
 */
export function apiReport(entries: readonly Entry[]): string {
  const file = (entry: Entry) => `dist/${entry.name}.d.ts`;
  const program = ts.createProgram(entries.map(file), {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    types: [],
    noEmit: true,
  });
  const checker = program.getTypeChecker();
  const printer = ts.createPrinter({ removeComments: true, neverAsciiEscape: true } as ts.PrinterOptions);
  const shown = new Map<ts.Symbol, string>();

  const describe = (exported: ts.Symbol, entry: Entry): string => {
    const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
    const earlier = shown.get(symbol);
    if (earlier) return `${exported.name}: see ${earlier}`;
    shown.set(symbol, entry.specifier);
    const text = (symbol.declarations ?? []).map((declaration) => {
      const whole = ts.isVariableDeclaration(declaration) ? declaration.parent.parent : declaration;
      return printer.printNode(ts.EmitHint.Unspecified, whole, declaration.getSourceFile());
    });
    const own = exported.name === symbol.name ? '' : `as ${exported.name}: `;
    return own + text.join('\n').replace(/^(export )?(declare )?/gm, '');
  };

  return entries
    .map((entry) => {
      const source = program.getSourceFile(file(entry));
      const module = source && checker.getSymbolAtLocation(source);
      const names = module ? [...checker.getExportsOfModule(module)].sort((a, b) => (a.name < b.name ? -1 : 1)) : [];
      return `==== ${entry.specifier}\n\n${names.map((name) => `${describe(name, entry)}\n`).join('')}`;
    })
    .join('\n');
}
