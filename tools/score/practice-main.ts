/** Prints common practice against the model: `npx tsx tools/score/practice-main.ts [NUMBER…]`, all checks without numbers. */
import { defaultPlantValues } from '../../packages/engine/src/index.ts';
import { practiceChecks } from './practice.ts';

const asked = process.argv.slice(2).map(Number);
const wrong = asked.find((number) => !practiceChecks[number - 1]);
if (wrong !== undefined) {
  process.stderr.write(`Checks are numbered 1 to ${practiceChecks.length}.\n`);
  process.exit(2);
}
for (const [at, check] of practiceChecks.entries()) {
  if (asked.length > 0 && !asked.includes(at + 1)) continue;
  for (const { name, holds, found, misses } of check(defaultPlantValues)) {
    process.stdout.write(`${holds ? 'holds' : 'FAILS'}  ${at + 1}. ${name}\n       ${found}\n`);
    for (const miss of misses) process.stdout.write(`       - ${miss}\n`);
  }
}
