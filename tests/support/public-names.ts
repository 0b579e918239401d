import ts from 'typescript';
import { entries } from './entries.js';

/** A parameter of a public function. */
export interface PublicParameter {
  /** Its name; empty where it is taken apart at once. */
  readonly name: string;
  /** What the doc comment says of it, or undefined. */
  readonly doc: string | undefined;
  /** Canonical unit, where it is a quantity. */
  readonly unit: string | undefined;
  /** Its type as text. */
  readonly type: string;
  /** Whether it has to be given. */
  readonly required: boolean;
}

/** A public name, as a reader of its doc comment meets it. */
export interface PublicName {
  /** The name. */
  readonly name: string;
  /** Where it is declared, from the root of the project. */
  readonly file: string;
  /** What it is. */
  readonly kind: 'type' | 'class' | 'value' | 'definition' | 'rule' | 'function';
  /** Its doc comment without tags. */
  readonly doc: string;
  /** The texts of its tags by name, the parameters' left out. */
  readonly tags: Readonly<Record<string, readonly string[]>>;
  /** Parameters, of a function. */
  readonly parameters: readonly PublicParameter[];
  /** Type of the result, of a function. */
  readonly result: string;
  /** Canonical unit of the result, where it is a quantity, known or missing. */
  readonly resultUnit: string | undefined;
  /** Whether its code, or code that it calls, throws; what only the unit constructors refuse does not count. */
  readonly throws: boolean;
  /** Quantities among the members of a type or a class, with their unit and what their doc comments say. */
  readonly quantities: readonly { readonly name: string; readonly unit: string; readonly doc: string }[];
}

const definitionType = /^(Formula|Relation|Procedure|Table|Comparison|Span|Statement|Alternatives)\b/;

function program(root: string): ts.Program {
  const host = { ...ts.sys, onUnRecoverableConfigFileDiagnostic: () => undefined };
  const config = ts.getParsedCommandLineOfConfigFile(`${root}tsconfig.json`, {}, host);
  return ts.createProgram(
    entries.map((e) => root + e.source),
    config?.options ?? {},
  );
}

const resolved = (checker: ts.TypeChecker, s: ts.Symbol): ts.Symbol =>
  s.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(s) : s;

/** The functions of the project that throw, themselves or by what they call. */
function throwers(all: ts.Program, checker: ts.TypeChecker): ReadonlySet<ts.Symbol> {
  const calls = new Map<ts.Symbol, Set<ts.Symbol>>();
  const found = new Set<ts.Symbol>();
  const visit = (node: ts.Node, of: ts.Symbol | undefined): void => {
    let owner = of;
    if (ts.isFunctionDeclaration(node) && node.name) owner = checker.getSymbolAtLocation(node.name);
    if (ts.isVariableDeclaration(node) && node.initializer && ts.isArrowFunction(node.initializer))
      owner = checker.getSymbolAtLocation(node.name);
    if (ts.isTryStatement(node)) {
      if (node.catchClause) visit(node.catchClause, owner);
      return;
    }
    if (owner && ts.isThrowStatement(node)) found.add(owner);
    if (owner && ts.isCallExpression(node)) {
      const { expression: e } = node;
      const callee = checker.getSymbolAtLocation(ts.isPropertyAccessExpression(e) ? e.name : e);
      if (callee) {
        const own = calls.get(owner) ?? new Set();
        calls.set(owner, own.add(resolved(checker, callee)));
      }
    }
    ts.forEachChild(node, (child) => visit(child, owner));
  };
  for (const file of all.getSourceFiles())
    if (!file.fileName.includes('node_modules') && !file.fileName.endsWith('/units/constructors.ts'))
      visit(file, undefined);
  for (let grew = true; grew; ) {
    grew = false;
    for (const [caller, own] of calls)
      if (!found.has(caller) && [...own].some((s) => found.has(s))) {
        found.add(caller);
        grew = true;
      }
  }
  return found;
}

/** The text of a comment or tag. */
const textOf = (parts: readonly ts.SymbolDisplayPart[] | undefined): string =>
  (parts ?? [])
    .map((p) => p.text)
    .join('')
    .trim();

/** The unit of a quantity, or of the one quantity of a union such as `Known<Amperes>`. */
function unitOf(checker: ts.TypeChecker, type: ts.Type): string | undefined {
  if (type.isUnion()) {
    const units = new Set(type.types.map((t) => unitOf(checker, t)).filter((u) => u !== undefined));
    return units.size === 1 ? [...units][0] : undefined;
  }
  const brand = type.getProperty('~unit');
  const unit = brand && checker.getTypeOfSymbol(brand);
  return unit?.isStringLiteral() ? unit.value : undefined;
}

function parametersOf(checker: ts.TypeChecker, symbol: ts.Symbol, signature: ts.Signature): PublicParameter[] {
  const docs = symbol.getJsDocTags(checker).filter((t) => t.name === 'param');
  return signature.getParameters().map((p, i) => {
    const declared = p.valueDeclaration;
    const apart = declared !== undefined && ts.isParameter(declared) && !ts.isIdentifier(declared.name);
    // what is taken apart has no name: its comment stands at its place
    const tag = apart ? docs[i] : docs.find((t) => textOf(t.text).split(/\s/)[0] === p.name);
    const type = checker.getTypeOfSymbol(p);
    return {
      name: apart ? '' : p.name,
      doc: tag && textOf(tag.text).replace(/^\S+\s*/, ''),
      unit: unitOf(checker, type),
      type: checker.typeToString(type),
      required: !(declared && ts.isParameter(declared) && (declared.questionToken || declared.initializer)),
    };
  });
}

const isHidden = (member: ts.Symbol): boolean =>
  (member.declarations ?? []).some(
    (d) => ts.getCombinedModifierFlags(d) & (ts.ModifierFlags.Private | ts.ModifierFlags.Protected),
  );

/** The names that each entry exports, by its path. */
export function entryNames(root: string): ReadonlyMap<string, readonly string[]> {
  const all = program(root);
  const checker = all.getTypeChecker();
  return new Map(
    entries.map((entry) => {
      const file = all.getSourceFile(root + entry.source);
      const module = file && checker.getSymbolAtLocation(file);
      return [entry.path, module ? checker.getExportsOfModule(module).map((s) => s.name) : []];
    }),
  );
}

/** Every public name of every entry, each once, the definitions that collections hold, and the types that the reference shows inside them. */
export function publicNames(root: string): readonly PublicName[] {
  const all = program(root);
  const checker = all.getTypeChecker();
  const throwing = throwers(all, checker);
  const symbols = new Map<ts.Symbol, string>();
  for (const entry of entries) {
    const file = all.getSourceFile(root + entry.source);
    const module = file && checker.getSymbolAtLocation(file);
    for (const s of module ? checker.getExportsOfModule(module) : []) {
      const symbol = resolved(checker, s);
      const internal = symbol.getJsDocTags(checker).some((t) => t.name === 'internal');
      if (!internal && !symbols.has(symbol)) symbols.set(symbol, s.name);
    }
  }
  for (const file of all.getSourceFiles()) {
    const module = file.fileName.startsWith(`${root}src/`) && checker.getSymbolAtLocation(file);
    // what a collection of definitions holds is met as its member
    const collected = /\/(?<!verify\/)definitions\.ts$/.test(file.fileName);
    for (const s of module ? checker.getExportsOfModule(module) : []) {
      const symbol = resolved(checker, s);
      if (collected || s.getJsDocTags(checker).some((t) => t.name === 'inline')) symbols.set(symbol, s.name);
    }
  }
  return [...symbols].map(([symbol, name]): PublicName => {
    const declaration = symbol.declarations?.[0];
    const value = (symbol.flags & ts.SymbolFlags.Value) !== 0;
    const type = value ? checker.getTypeOfSymbol(symbol) : checker.getDeclaredTypeOfSymbol(symbol);
    const typeName = checker.typeToString(type);
    const signature = value ? type.getCallSignatures()[0] : undefined;
    const kindOf = (): PublicName['kind'] => {
      if (!value) return 'type';
      if (symbol.flags & ts.SymbolFlags.Class) return 'class';
      if (definitionType.test(typeName)) return 'definition';
      if (typeName === 'Rule') return 'rule';
      return signature ? 'function' : 'value';
    };
    const kind = kindOf();
    const tags: Record<string, string[]> = {};
    for (const t of symbol.getJsDocTags(checker))
      if (t.name !== 'param') tags[t.name] = [...(tags[t.name] ?? []), textOf(t.text)];
    const members =
      symbol.flags & (ts.SymbolFlags.Interface | ts.SymbolFlags.Class) ? [...(symbol.members?.values() ?? [])] : [];
    return {
      name,
      file: declaration?.getSourceFile().fileName.slice(root.length) ?? '',
      kind,
      doc: textOf(symbol.getDocumentationComment(checker)),
      tags,
      parameters: kind === 'function' && signature ? parametersOf(checker, symbol, signature) : [],
      result: signature ? checker.typeToString(signature.getReturnType()) : '',
      resultUnit: signature && unitOf(checker, signature.getReturnType()),
      throws: throwing.has(symbol),
      quantities: members.flatMap((m) => {
        const type = checker.getTypeOfSymbol(m);
        const unit = unitOf(checker, type) ?? type.aliasTypeArguments?.map((t) => unitOf(checker, t))[0];
        return unit && !isHidden(m) ? [{ name: m.name, unit, doc: textOf(m.getDocumentationComment(checker)) }] : [];
      }),
    };
  });
}
