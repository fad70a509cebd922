/** The sentences that the client asks the editor to translate, sorted. */
export function l10nStrings(): string[];
