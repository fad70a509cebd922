// The version that `--version`, SARIF and the guides name; a test holds it to the package's own.
export const VERSION = '0.1.0';
