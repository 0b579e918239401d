import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { compare } from './compare.js';

if (!existsSync('dist/index.js')) throw new Error('dist is missing: run `npm run build` first');

/** A fresh process that runs one script and ends. */
const script =
  (text: string, type = 'module') =>
  (): unknown =>
    execFileSync(process.execPath, [`--input-type=${type}`, '--eval', text]);
const built = (name: string) => JSON.stringify(new URL(`file://${process.cwd()}/dist/${name}.js`));

export default [
  compare('a process that loads the package', {
    anchor: 'an empty script',
    processes: true,
    ways: {
      'an empty script': script(''),
      'import of the root': script(`import ${built('index')}`),
      'require of the root': script(`require(${JSON.stringify(`${process.cwd()}/dist/index.cjs`)})`, 'commonjs'),
      'import of ohmwright/bs7671': script(`import ${built('bs7671')}`),
      'import of ohmwright/site': script(`import ${built('site')}`),
      'import of mathjs': script(`import 'mathjs'`),
    },
  }),
];
