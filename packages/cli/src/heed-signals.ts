/** Ctrl-C ends the process with 130; a reader that closes stderr must not end it with a stack trace. */
export function heedSignals(): void {
  process.once('SIGINT', () => process.exit(130));
  process.stderr.on('error', () => {});
}
