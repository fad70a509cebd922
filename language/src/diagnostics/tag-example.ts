// The small job in which the findings on tags show what is wrong and what is right.

/** A look over a gearbox: the lines that make the vehicle safe, and those that hand it back. */
export function tagExample(safe: readonly string[], handBack: readonly string[]): string {
  const lines = (own: readonly string[]): string => own.map((line) => `${line}\n`).join('');
  return `procedure A-5: Gearbox, look over

conditions
  selector: Gear selector
    park, neutral

preparation
  step: Make the vehicle safe
${lines(safe)}
completion
  step: Hand back
${lines(handBack)}`;
}
