// What is chosen when a guide is printed and does not change what it says.

const PAPERS = ['a4', 'letter'] as const;
export const PRINTS = ['bay', 'training', 'walk'] as const;
const PDF_STANDARDS = ['ua-1', 'a-2a', 'a-3a'] as const;

export interface PrintOptions {
  readonly paper: (typeof PAPERS)[number];
  /** `bay` is short, `training` tells why, `walk` has a wide margin to write in while the job is tried out. */
  readonly print: (typeof PRINTS)[number];
  /** One accent colour; black carries all meaning without it. */
  readonly colour: boolean;
  /** Signal words and signs of protection in the colours of the safety standards. */
  readonly safetyColours: boolean;
  /** The binding edge alternates, and the record starts on a sheet of its own. */
  readonly twoSided: boolean;
  /** Accessible (PDF/UA-1) unless an archive format is asked for. */
  readonly standard: (typeof PDF_STANDARDS)[number];
  /** Seconds since 1970 for the file's time stamp: SOURCE_DATE_EPOCH, or the revision's date. Same input, same bytes. */
  readonly timestamp?: number;
}

export const DEFAULT_PRINT: PrintOptions = {
  paper: 'a4',
  print: 'bay',
  colour: false,
  safetyColours: false,
  twoSided: false,
  standard: 'ua-1',
};
