// Classes of characters, by code. Letters of any script may stand in names.

export const QUOTE = 0x22;
export const HASH = 0x23;
export const COLON = 0x3a;
export const COMMA_CODE = 0x2c;

/** A blank within a line of code. Line ends count: a comma carries code over them. */
export function isBlank(code: number): boolean {
  return (
    code === 0x20 ||
    (code >= 0x09 && code <= 0x0d) ||
    code === 0xa0 ||
    code === 0xfeff ||
    code === 0x3000 ||
    code === 0x1680 ||
    isUnicodeBlank(code)
  );
}

export function isDigit(code: number): boolean {
  return code >= 0x30 && code <= 0x39;
}

/** A letter or mark, in UTF-16: both halves of a pair outside the basic plane count as one of the letters there. */
export function isLetter(code: number): boolean {
  if (code < 0x80) return (code >= 0x61 && code <= 0x7a) || (code >= 0x41 && code <= 0x5a);
  if (code >= 0xd800 && code <= 0xdfff) return true;
  return /[\p{L}\p{M}]/u.test(String.fromCharCode(code));
}

function isUnicodeBlank(code: number): boolean {
  return (
    (code >= 0x2000 && code <= 0x200a) ||
    code === 0x2028 ||
    code === 0x2029 ||
    code === 0x202f ||
    code === 0x205f ||
    code === 0x85
  );
}
