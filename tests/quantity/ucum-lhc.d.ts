// The part of the UCUM library that the tests call; it ships no types.
declare module '@lhncbc/ucum-lhc' {
  interface Conversion {
    readonly status: string;
    readonly toVal: number | null;
  }
  interface Utils {
    convertUnitTo(from: string, value: number, to: string): Conversion;
  }
  const ucum: { readonly UcumLhcUtils: { getInstance(): Utils } };
  export default ucum;
}
