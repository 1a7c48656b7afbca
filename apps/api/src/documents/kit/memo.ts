/**
 * Remembers what was made for a key, up to a number of keys; then it starts anew. The same words,
 * signs and codes come on every label of a run, so most of the work is done once.
 */
export const memo = <Value>(limit: number): ((key: string, make: () => Value) => Value) => {
  const kept = new Map<string, Value>();
  return (key, make) => {
    const known = kept.get(key);
    if (known !== undefined) return known;
    const made = make();
    if (kept.size >= limit) kept.clear();
    kept.set(key, made);
    return made;
  };
};
