import { demoGarden, demoLines } from './demo-garden.ts';
import { heedSignals } from './heed-signals.ts';
import { firstSpeaker } from './options/speaker-for.ts';
import { print } from './output/print.ts';
import { run } from './run.ts';

// `npm start`: the plan for the demo garden; further arguments (`--today`, `--units us`) are passed on
heedSignals();
const passedOn = process.argv.slice(2);
const { say } = await firstSpeaker(passedOn);
await print(`${demoLines(say).join('\n')}\n\n`);
const common = ['--at', demoGarden.at, '--sun', String(demoGarden.sunHours), ...passedOn];
process.exitCode = await run(['where', ...common]);
if (process.exitCode === 0) {
  await print('\n');
  process.exitCode = await run(['season', ...common, ...demoGarden.plan]);
}
