import { existsSync } from 'node:fs';

/** Where Chromium is, or undefined: tests in a browser are then skipped. `CHROMIUM` may name its path. */
export const chromiumPath = [process.env.CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser'].find(
  (path) => path && existsSync(path),
);
if (!chromiumPath)
  process.stderr.write('Browser tests skipped: no Chromium here. Install it, or set CHROMIUM to its path.\n');
