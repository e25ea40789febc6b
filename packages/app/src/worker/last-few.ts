/** Keeps what was made last of each key, the oldest asked for let go first: `keep(key, make)`. */
export function lastFew<Value>(most: number): (key: string, make: () => Value) => Value {
  const kept = new Map<string, Value>();
  return (key, make) => {
    const value = kept.has(key) ? kept.get(key)! : make();
    kept.delete(key);
    kept.set(key, value);
    for (const oldest of kept.keys()) {
      if (kept.size <= most) break;
      kept.delete(oldest);
    }
    return value;
  };
}
