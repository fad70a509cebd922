// The small files in which the register diagnostics show what is wrong and what is right.

/** A procedure of a given number in a library, with lines below its head. */
export function libraryFile(path: string, number: string, ...head: readonly string[]): string {
  return `--- file: ${path}
procedure ${number}: Mirror, look at
${head.map((l) => `${l}\n`).join('')}
places
  mirror-glass: Mirror glass

inspection
  step: Look at the mirror
    clean mirror-glass
`;
}
