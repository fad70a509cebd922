// The small file in which the message diagnostics show what is wrong and what is right.

/** A procedure with the given lines of messages before its only action. */
export function messageJob(...lines: readonly string[]): string {
  return `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
    held by mirror-clip

fasteners
  mirror-clip: Mirror clips
    2 of clip

removal
  step: Take the mirror off
${lines.map((l) => (l.startsWith('#') ? l : `    ${l}`)).join('\n')}
    remove mirror-clip, mirror

installation
  step: Fit the mirror
    install mirror, mirror-clip
`;
}
