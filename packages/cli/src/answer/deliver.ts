import { setImmediate } from 'node:timers/promises';
import { shown } from '@neckfall/words';
import { type OutputForm, outputForm, type RawOutputOptions } from '../options/place-options.ts';
import { jsonText } from '../output/json-text.ts';
import { openSink } from '../output/open-sink.ts';
import { tell } from '../output/tell.ts';
import type { Answer } from './answer.ts';

/**
 * Prints an answer or writes it to `--out`; warnings go to stderr, and into the document where that is JSON.
 *
 * @param change what the answer tells of as done: it is done once the answer can be given, before it is
 */
export async function deliver(answer: Answer, raw: RawOutputOptions, change?: () => void): Promise<void> {
  await hand(render(answer, outputForm(raw)), answer.warnings, raw.out, change);
}

/** Prints a text or some bytes, or writes them to the file of `--out`; warnings go to stderr. See {@link deliver}. */
export async function hand(
  content: string | Uint8Array,
  warnings: readonly string[],
  out: string | undefined,
  change?: () => void,
): Promise<void> {
  // Lets a Ctrl-C that came meanwhile end us before anything is written: signals are seen between two turns of
  // the event loop.
  await setImmediate();
  await setImmediate();
  const sink = await openSink(out);
  try {
    change?.();
  } catch (error) {
    sink.drop();
    throw error;
  }
  await sink.write(content);
  sink.keep();
  for (const warning of warnings) tell(warning);
}

function render(answer: Answer, form: OutputForm): string {
  if (form === 'json') return jsonText(answer.json(), 1);
  if (form === 'csv') return answer.csv();
  const lines = answer.text().split('\n');
  return lines.map((line) => shown(line)).join('\n');
}
