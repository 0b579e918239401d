import type { MathNode } from 'mathjs';
import type { Formula, Relation } from '../../src/core/index.js';
import { formatIn, termOf } from '../../src/index.js';
import { readExpression } from '../../src/verify/expression.js';

const greek: Readonly<Record<string, string>> = {
  α: '\\alpha',
  β: '\\beta',
  δ: '\\delta',
  ε: '\\varepsilon',
  μ: '\\mu',
  π: '\\pi',
  η: '\\eta',
  θ: '\\theta',
  κ: '\\kappa',
  λ: '\\lambda',
  ρ: '\\rho',
  τ: '\\tau',
  φ: '\\varphi',
  Δ: '\\Delta',
  Σ: '\\Sigma',
  Ω: '\\Omega',
  '∞': '\\infty',
  '²': '^2',
  '³': '^3',
  '·': '\\cdot',
  '°': '^{\\circ}',
  '√': '\\surd',
  ' ': '~',
};

/** Text upright, in signs that every renderer of TeX knows. */
const upright = (text: string): string => {
  const tex = [...text].map((c) => (greek[c] ? `${greek[c]} ` : c)).join('');
  return /[A-Za-z]/.test(text) ? `\\mathrm{${tex.trim()}}` : tex.trim();
};

const ATOM = /\(mV\/A\/m\)|[A-Za-z]+|\d+(?:\.\d+)?|_[^\s/()+]+|./gu;

/**
 * A symbol of the trade in TeX: `I_Δn` becomes I with the subscript upright.
 * @param symbol as the vocabulary writes it
 */
export function symbolTex(symbol: string): string {
  return (symbol.match(ATOM) ?? [])
    .map((atom) => {
      if (atom.startsWith('_')) return `_{${upright(atom.slice(1))}}`;
      if (atom.length === 1) return greek[atom] ? `${greek[atom]} ` : atom;
      if (/^(cos|sin)$/.test(atom)) return `\\${atom}`;
      return /^\d/.test(atom) ? atom : upright(atom);
    })
    .join('')
    .trim();
}

/**
 * A symbol of the trade in HTML, for running text and cells.
 * @param symbol as the vocabulary writes it
 */
export const symbolHtml = (symbol: string): string => symbol.replace(/_([^\s/()+]+)/g, '<sub>$1</sub>');

/** A number with its unit in TeX, as the trade prints it. */
function amountTex(value: number, unit: string): string {
  const [number = '', ...rest] = formatIn(value, unit, 6).split(' ');
  return rest.length > 0 ? `${number}~${upright(rest.join(' '))}` : number;
}

interface Node extends MathNode {
  readonly name: string;
  readonly value: number;
  readonly condition: MathNode;
  readonly trueExpr: MathNode;
  readonly falseExpr: MathNode;
}

const named: ReadonlyMap<number, string> = new Map([
  [Math.PI, '\\pi'],
  [Math.sqrt(3), '\\sqrt{3}'],
]);

/** Symbols that are a term of several: in brackets where they stand in an expression. */
const compound = /^(?!\(mV|cos|sin).*[\s/+²]|^\d/;

/** An expression of a definition in TeX: constants stand as numbers with units, conditions as cases. */
function expressionTex(f: Formula | Relation, text: string): string {
  const symbols = [...f.inputs, f.output, ...Object.keys(f.constants ?? {})];
  const options = {
    parenthesis: 'auto',
    handler: (any: MathNode): string | undefined => {
      const node = any as Node;
      if (node.type === 'SymbolNode') {
        const constant = f.constants?.[node.name];
        if (constant) return ` ${amountTex(...constant)} `;
        const symbol = termOf(node.name)?.symbol;
        if (symbol === undefined) return undefined;
        const tex = symbolTex(symbol);
        return compound.test(symbol) ? `\\left(${tex}\\right)` : ` ${tex} `;
      }
      if (node.type === 'ConstantNode') return named.get(node.value);
      if (node.type !== 'ConditionalNode') return undefined;
      const lines: string[] = [];
      let rest: Node = node;
      const inner = (n: MathNode) => (n.type === 'ParenthesisNode' ? (n as unknown as { content: Node }).content : n);
      for (; rest.type === 'ConditionalNode'; rest = inner(rest.falseExpr) as Node)
        lines.push(`${rest.trueExpr.toTex(options)} & \\text{if}~ ${rest.condition.toTex(options)}`);
      lines.push(`${rest.toTex(options)} & \\text{otherwise}`);
      return `\\begin{cases} ${lines.join(' \\cr ')} \\end{cases}`; // not \\\\: Markdown would eat one
    },
  };
  return readExpression(text, symbols)
    .tree.toTex(options)
    .replaceAll('<', '\\lt ')
    .replaceAll('>', '\\gt ')
    .replace(/\\[;,]/g, ' ')
    .replace(/\{\\left\(([^()]*)\\right\)\}(?!\^)/g, '{$1}') // brackets that a root or a fraction makes needless
    .replace(/(\\cdot|\\leq|\\geq|[-+])(?=[\w\\{])/g, '$1 ')
    .replace(/([^{( ])(\\cdot|[-+] )/g, '$1 $2')
    .replace(/ +/g, ' ')
    .replace(/([{(]) /g, '$1')
    .replace(/ ([}),])/g, '$1')
    .trim();
}

/**
 * What a formula or relation says, as one equation in TeX; a result that plays the role of an input bears a prime.
 * @param f the formula or relation
 */
export function equationTex(f: Formula | Relation): string {
  if (f.kind === 'relation') return `${f.terms.map((t) => expressionTex(f, t)).join(' + ')} = 0`.replace(/\+ -/g, '- ');
  const prime = f.inputs.includes(f.output) ? "'" : '';
  return `${symbolTex(termOf(f.output)?.symbol ?? f.output)}${prime} = ${expressionTex(f, f.expression)}`;
}
