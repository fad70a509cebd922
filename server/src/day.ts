// The day in the shop, for the server and the command alike.

/** The day on the wall of the shop, not that of Greenwich: what is signed in the morning is signed that day. */
export function dayOf(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  return [String(now.getFullYear()).padStart(4, '0'), two(now.getMonth() + 1), two(now.getDate())].join('-');
}
