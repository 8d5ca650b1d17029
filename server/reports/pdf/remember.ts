/** The same function, asking only once for each key. */
export function remember<K, T>(find: (key: K) => T): (key: K) => T {
  const found = new Map<K, T>();
  return (key) => {
    let one = found.get(key);
    if (one === undefined) {
      one = find(key);
      found.set(key, one);
    }
    return one;
  };
}
