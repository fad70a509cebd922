// What is asked of the same object or text again and again is worked out once.

/** A function that works its answer out once for each object, and forgets it with the object. The answer must not be changed. */
export function once<Key extends object, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const kept = memory<Key, Value>();
  return (key) => kept(key, work);
}

/** The same where the work needs more than its object, of which the answer must not depend while the object lives. */
export function memory<Key extends object, Value>(): (key: Key, work: (key: Key) => Value) => Value {
  const known = new WeakMap<Key, { readonly value: Value }>();
  return (key, work) => {
    let answer = known.get(key);
    if (answer === undefined) {
      answer = { value: work(key) };
      known.set(key, answer);
    }
    return answer.value;
  };
}

/** More than a library has threads, or a long procedure texts. */
const MOST_TEXTS = 5000;

/**
 * A function that works its answer out once for each text, and forgets all when there are too many. The answer must not
 * be changed.
 */
export function onceForText<Value>(work: (text: string) => Value): (text: string) => Value {
  const known = new Map<string, { readonly value: Value }>();
  return (text) => {
    let answer = known.get(text);
    if (answer === undefined) {
      if (known.size >= MOST_TEXTS) known.clear();
      answer = { value: work(text) };
      known.set(text, answer);
    }
    return answer.value;
  };
}
