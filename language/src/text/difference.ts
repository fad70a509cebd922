// Where a text differs from an earlier one.

/** The one stretch in which a text differs from an earlier one, in the places of both. */
export interface Difference {
  readonly start: number;
  readonly oldEnd: number;
  readonly newEnd: number;
}

/** The shortest such stretch: what stands before and behind it is the same in both. Linear time. */
export function difference(before: string, after: string): Difference {
  const most = Math.min(before.length, after.length);
  let head = 0;
  while (head < most && before.charCodeAt(head) === after.charCodeAt(head)) head += 1;
  let tail = 0;
  while (
    tail < most - head &&
    before.charCodeAt(before.length - 1 - tail) === after.charCodeAt(after.length - 1 - tail)
  )
    tail += 1;
  return { start: head, oldEnd: before.length - tail, newEnd: after.length - tail };
}
