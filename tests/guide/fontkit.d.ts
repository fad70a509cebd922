// The part of fontkit that the test of the shipped type reads; the package brings no types of its own.
declare module 'fontkit' {
  interface Face {
    readonly characterSet: readonly number[];
    readonly unitsPerEm: number;
    readonly layout: (
      text: string,
      features: readonly string[],
    ) => { readonly positions: readonly { readonly xAdvance: number }[] };
  }
  /** A face, or a collection of several. */
  export function create(data: Uint8Array): Face | { readonly fonts: readonly Face[] };
}
