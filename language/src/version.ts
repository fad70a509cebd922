// The version of Baywright: all packages are released together under one number, and a test holds their manifests to it.
export const VERSION = '0.2.0';
