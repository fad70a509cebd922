// Quotation marks as word processors curl them.

const CURLED = /[“”„‟«»]/;
/** What straight marks enclose, or one curled mark. A mark straight after a digit is an inch mark. */
const QUOTED_OR_CURLED = /(?<!\d)"[^"\n]*"|[“”„‟«»]/g;

/** The same code with straight marks for curled ones; what stands between straight marks stays as it is. */
export function straightQuotes(code: string): string {
  return CURLED.test(code) ? code.replace(QUOTED_OR_CURLED, (text) => (text.length > 1 ? text : '"')) : code;
}
