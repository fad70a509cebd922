// The one question that findings ask about a word that is nearly a known one.

/** "did you mean `hub` or `hub-nut`?"; nothing where no word is near. */
export function didYouMean(near: readonly string[]): string | undefined {
  return near.length === 0 ? undefined : `did you mean ${near.map((word) => `\`${word}\``).join(' or ')}?`;
}
