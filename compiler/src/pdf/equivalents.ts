// Characters that the shipped type does not have and that another it has says as well.

export const EQUIVALENTS: Readonly<Record<string, string>> = {
  '\u00B5': '\u03BC', // micro sign: Greek mu
  '\u2126': '\u03A9', // ohm sign: Greek omega
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '\u2013',
  '\u2015': '\u2014',
  '\u2032': "'", // minutes, feet
  '\u2033': '"', // seconds, inches
  '\u2007': '\u00A0',
  '\u202F': '\u00A0',
  '\u200A': ' ',
  '\u2002': ' ',
  '\u2003': ' ',
  '\u215B': '1\u20448',
  '\u215C': '3\u20448',
  '\u215D': '5\u20448',
  '\u215E': '7\u20448',
  '\u2192': '>',
  '\u2300': '\u00D8', // diameter sign
  '\u2713': '\u221A', // check mark
  '\u22C5': '\u00B7', // dot operator
};
