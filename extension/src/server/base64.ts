// Bytes as base64 and back, with what browsers and Node both have.

export function toBase64(bytes: Uint8Array): string {
  const chunk = 0x8000;
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += chunk)
    parts.push(String.fromCharCode(...bytes.subarray(at, at + chunk)));
  return btoa(parts.join(''));
}

export function fromBase64(text: string): Uint8Array {
  return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
}
