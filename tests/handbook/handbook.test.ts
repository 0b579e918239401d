import { expect, test } from 'vitest';
import { definitions } from '../../src/verify/definitions.js';
import { caseFiles } from '../support/case-files.js';
import { makeHandbook, readHandbook } from './handbook.mjs';
import { symbolHtml, symbolTex } from './tex.js';

const made = await makeHandbook();
const checkedIn = readHandbook();

test('the handbook is what the definitions say; `npm run handbook` writes it', () => {
  expect(Object.keys(checkedIn).sort()).toEqual(Object.keys(made).sort());
  for (const [name, text] of Object.entries(made)) expect.soft(checkedIn[name] === text, name).toBe(true);
});

test('every definition and every published case is in it', () => {
  const all = Object.values(definitions).flat();
  const text = Object.values(made).join('\n');
  for (const { id } of all) expect(text).toContain(`\`${id}\`, `);
  expect(text.match(/^### .+$/gm)?.length).toBe(all.length + 3);
  const ids = new Set(all.map((d) => d.id));
  const strangers = caseFiles.flatMap((f) => f.cases.flatMap((c) => c.exercises));
  expect(strangers.filter((id) => !ids.has(id))).toEqual([]);
});

test('nothing in it was lost on the way', () => {
  for (const [name, text] of Object.entries(made)) {
    expect([name, text.match(/undefined|NaN|\[object|Infinity/)?.[0]]).toEqual([name, undefined]);
    // links lead somewhere
    const anchors = (page: string) => new Set([...page.matchAll(/<a id="([^"]+)">/g)].map((m) => m[1]));
    for (const [, page, anchor] of text.matchAll(/\]\(([\w-]+\.md)?#([^)]+)\)/g))
      expect(anchors(made[page ?? name] ?? '')).toContain(anchor);
    // a row of a table has as many cells as its head
    for (const [block] of text.matchAll(/(?:^\|.*\n)+/gm)) {
      const widths = block
        .trim()
        .split('\n')
        .map((row) => row.replaceAll('\\|', '').split('|').length);
      expect([block.slice(0, 80), new Set(widths).size]).toEqual([block.slice(0, 80), 1]);
    }
  }
});

test('every formula bears an equation in which brackets close, and nothing that Markdown would take away', () => {
  const equations = Object.values(made).flatMap((text) =>
    [...text.matchAll(/^\$\$\n(.*)\n\$\$$/gm)].map((m) => m[1] ?? ''),
  );
  expect(equations.length).toBe(definitions.formulas.length);
  for (const tex of equations) {
    expect([tex, tex.split('{').length]).toEqual([tex, tex.split('}').length]);
    expect([tex, tex.split('\\left').length]).toEqual([tex, tex.split('\\right').length]);
    expect(tex).not.toMatch(/\\\\|\\[,;!{}%]|[<>Α-ωΩ°²√·]/);
  }
});

test('symbols of the trade are typeset', () => {
  expect(symbolTex('I_Δn')).toBe('I_{\\mathrm{\\Delta n}}');
  expect(symbolTex('ΔU/U_0')).toBe('\\Delta U/U_{0}');
  expect(symbolTex('k²S²')).toBe('k^2 S^2');
  expect(symbolTex('(mV/A/m)_r')).toBe('\\mathrm{(mV/A/m)}_{\\mathrm{r}}');
  expect(symbolTex('t_k,max')).toBe('t_{\\mathrm{k,max}}');
  expect(symbolHtml('I_b/(I_t C_g)')).toBe('I<sub>b</sub>/(I<sub>t</sub> C<sub>g</sub>)');
});
