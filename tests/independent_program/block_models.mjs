// block_models.mjs PROGRAM: the bounds and optima of 50 random blocks against HiGHS, another solver of other authors,
// in its npm build. PROGRAM (block_models.cpp) writes the models and our answers; here each model is solved
// again and compared: relative difference at most 1e-6 for bounds, 1e-4 for whole blocks; without a solution, both say so.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const program = process.argv[2];
const here = createRequire(new URL('../../web/package.json', import.meta.url));
let start;
try {
  start = here('highs');
} catch {
  console.log('SKIPPED: the npm package highs is not installed; bounds and optima were not checked against it');
  process.exit(0);
}

const folder = mkdtempSync(join(tmpdir(), 'block_models_'));
const faults = [];
let solved = 0, without = 0;
try {
  execFileSync(program, [folder], { stdio: 'inherit' });
  const answers = readFileSync(join(folder, 'answers.txt'), 'utf8').trim().split('\n');
  for (const line of answers) {
    const [name, ours, mayDiffer] = line.split(' ');
    const highs = await start(); // anew for each: its memory does not shrink
    const theirs = highs.solve(readFileSync(join(folder, name + '.lp'), 'utf8'), { mip_rel_gap: 1e-6 });
    if (theirs.Status === 'Infeasible' || ours === 'none') {
      without += 1;
      if (theirs.Status !== 'Infeasible' || ours !== 'none')
        faults.push(`${name}: ours ${ours}, theirs ${theirs.Status}`);
      continue;
    }
    solved += 1;
    const difference = Math.abs(Number(ours) - theirs.ObjectiveValue) / Math.max(1, Math.abs(theirs.ObjectiveValue));
    if (theirs.Status !== 'Optimal' || !(difference <= Number(mayDiffer)))
      faults.push(`${name}: ours ${ours}, theirs ${theirs.ObjectiveValue} (${theirs.Status})`);
  }
  if (answers.length !== 50 || solved < 30 || without < 3) faults.push(`${answers.length} models, ${solved} with a solution, ${without} without`);
} finally {
  rmSync(folder, { recursive: true });
}
console.log(faults.length ? faults.map((f) => 'FAILED ' + f).join('\n') : `${solved} bounds and optima agree, ${without} have none by both`);
process.exit(faults.length ? 1 : 0);
