// node tools/docs/library-page.mjs: runs the worked examples of docs/library.md from the packed library and writes down
// what they print now.
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { libraryProject, printed } from '../setup/library-project.mjs';
import { root } from '../setup/steps.mjs';

const block = /```console\n\$ node (\S+)\n[\s\S]*?```/g;
const page = join(root, 'docs', 'library.md');
const text = readFileSync(page, 'utf8');
const { folder } = await libraryProject();
const outputs = new Map();
for (const [, name] of text.matchAll(block)) outputs.set(name, await printed(folder, name));
rmSync(folder, { recursive: true });
writeFileSync(
  page,
  text.replace(block, (_, name) => `\`\`\`console\n$ node ${name}\n${outputs.get(name)}\`\`\``),
);
