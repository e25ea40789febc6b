import { refuse } from '../refusal/refusal.ts';

/** Prints all of a text, or of some bytes; a reader that closes early is no error. */
export function print(
  content: string | Uint8Array,
  stream: NodeJS.WritableStream = process.stdout,
): Promise<void> {
  return new Promise((resolve, reject) => {
    const fail = (error: NodeJS.ErrnoException) => {
      if (error.code === 'EPIPE' || error.code === 'ERR_STREAM_DESTROYED') resolve();
      else {
        const code = error.code === 'ENOSPC' ? 'stdout-full' : 'stdout-failed';
        reject(refuse(code, { exit: 3, values: { reason: error.code ?? error.message }, cause: error }));
      }
    };
    stream.once('error', fail);
    stream.write(content, (error) => {
      if (error) fail(error);
      else {
        stream.off('error', fail);
        resolve();
      }
    });
  });
}
