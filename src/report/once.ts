/**
 * A function that works its result out once for each first argument, for as long as that object lives. The further
 * arguments must go with the first one.
 */
export function oncePer<K extends object, Rest extends readonly unknown[], V>(
  work: (key: K, ...rest: Rest) => V,
): (key: K, ...rest: Rest) => V {
  const known = new WeakMap<K, { readonly value: V }>();
  return (key, ...rest) => {
    const found = known.get(key) ?? { value: work(key, ...rest) };
    known.set(key, found);
    return found.value;
  };
}
