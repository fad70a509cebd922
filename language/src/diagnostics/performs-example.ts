// The example of the findings about performing from another procedure: a mirror that is looked at by the steps of another.

/** The procedure that performs: what stands below its title, the number it names, and the mark below the line. */
interface Performing {
  readonly status?: string;
  readonly from: string;
  readonly mark?: string;
}

/** Both files; `status` is the line of the one that is performed from, none where it has no status. */
export function mirrorLook(own: Performing, status?: string): string {
  const marked = own.mark === undefined ? '' : `# ${'^'.repeat(28)} ${own.mark}\n`;
  return `--- file: a.bay
procedure A-1: Mirror, replace
${lineOf(own.status)}
inspection
  perform mirror-look from ${own.from}
${marked}--- file: b.bay
procedure ${own.from}: Mirror, look at
${lineOf(status)}
places
  mirror-glass: Mirror glass

inspection
  operation mirror-look: Look at the mirror
    step: Look at the mirror
      clean mirror-glass
`;
}

const lineOf = (status: string | undefined): string => (status === undefined ? '' : `status ${status}\n`);
