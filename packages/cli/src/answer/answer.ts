/** What a command has to say, made only in the form that is asked for. */
export type Answer = {
  text(): string;
  json(): unknown;
  csv(): string;
  /** Sentences for stderr. */
  warnings: readonly string[];
};
