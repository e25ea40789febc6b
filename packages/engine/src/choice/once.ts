/** The same work, done when first asked for and not again. */
export function once<Value>(work: () => Value): () => Value {
  let known: { value: Value } | null = null;
  return () => {
    known ??= { value: work() };
    return known.value;
  };
}
