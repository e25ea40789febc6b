import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** What the compiler, at its strictest, says of a reader's program in a project. */
export function typeFaults(folder: string, way: 'nodenext' | 'bundler'): string[] {
  const file = join(folder, 'reader.ts');
  copyFileSync(fileURLToPath(new URL('./reader.ts', import.meta.url)), file);
  const program = ts.createProgram([file], {
    noEmit: true,
    strict: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: false,
    // what the compiler itself brings is not in question
    skipDefaultLibCheck: true,
    target: ts.ScriptTarget.ES2022,
    types: [],
    ...(way === 'nodenext'
      ? { module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext }
      : { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler }),
  });
  return ts
    .getPreEmitDiagnostics(program)
    .map(
      ({ messageText, file: at }) => `${at?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`,
    );
}
