// Sending without waiting.
/** Messages that a closing client no longer takes are lost, and nothing else is. */
export function quiet(sending: Promise<unknown>): void {
  sending.catch(() => undefined);
}
