import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What the compiler says of a snippet that imports the source. */
function diagnose(body: string): readonly string[] {
  const name = `${root}tests/units/snippet.ts`;
  const options: ts.CompilerOptions = {
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    types: [],
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
  };
  const host = ts.createCompilerHost(options);
  const read = host.getSourceFile.bind(host);
  host.getSourceFile = (file, ...rest) =>
    file === name ? ts.createSourceFile(file, body, ts.ScriptTarget.ES2022) : read(file, ...rest);
  host.fileExists = (file) => file === name || ts.sys.fileExists(file);
  const program = ts.createProgram([name], options, host);
  return ts.getPreEmitDiagnostics(program).map((d) => ts.flattenDiagnosticMessageText(d.messageText, '\n'));
}

test('mixing units does not compile, and the message names both', { timeout: 120_000 }, () => {
  const messages = diagnose(`
    import { amperes, atMost, kilowatts, metres, plus, volts, type Amperes } from '../../src/units/index.js';
    import { voltageDropTabulated } from '../../src/codes/iec-family/voltage-drop.js';
    import { millivoltsPerAmpereMetre } from '../../src/units/index.js';
    plus(amperes(1), metres(2));
    atMost(volts(1), amperes(2));
    const current: Amperes = kilowatts(7);
    const bare: Amperes = 7;
    voltageDropTabulated({ dropRate: millivoltsPerAmpereMetre(7.9), designCurrent: metres(32), length: metres(25) });
    export { current, bare };
  `);
  expect(messages).toHaveLength(5);
  const names = [
    ['"m"', '"A"'],
    ['"A"', '"V"'],
    ['"W"', '"A"'],
    ['number', 'Quantity<"A">'],
    ['"m"', '"A"'],
  ];
  // an alias says its own name: Metres is Quantity<"m">
  const alias: Record<string, string> = {
    '"m"': 'Metres',
    '"A"': 'Amperes',
    '"V"': 'Volts',
    '"W"': 'Watts',
    'Quantity<"A">': 'Amperes',
    number: 'number',
  };
  names.forEach((both, i) => {
    for (const unit of both) expect(messages[i]).toMatch(new RegExp(`${unit.replace(/[()]/g, '.')}|${alias[unit]}`));
  });
});
