/** The public face is what `docs/api-report.txt` says. After an intended change: `npm run generated`. */
import { expect, test } from 'vitest';
import { apiReport } from '../support/api-report.js';
import { entries } from '../support/entries.js';

test('no unintended change of the public face', async () => {
  await expect(apiReport(entries)).toMatchFileSnapshot('../../docs/api-report.txt');
}, 60_000);
