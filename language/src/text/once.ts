// What is asked of the same object again and again is worked out once.

/** A function that works its answer out once for each object, and forgets it with the object. The answer must not be changed. */
export function once<Key extends object, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new WeakMap<Key, { readonly value: Value }>();
  return (key) => {
    let answer = known.get(key);
    if (answer === undefined) {
      answer = { value: work(key) };
      known.set(key, answer);
    }
    return answer.value;
  };
}
