// What the bundler leaves of classes and of tests for the other platform: a twentieth to a tenth of a bundle.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { minify } from 'terser';

const CACHE = fileURLToPath(new URL('../../.cache/smaller/', import.meta.url));

/** The text of a bundle, made as small as can be. It takes a while, so the last of each name is kept. */
export async function smaller(file) {
  const text = readFileSync(file, 'utf8');
  const name = file.slice(file.lastIndexOf('/') + 1);
  const key = createHash('sha256').update(text).digest('hex').slice(0, 16);
  const kept = `${CACHE}${name}/${key}`;
  if (existsSync(kept)) return readFileSync(kept, 'utf8');
  // The program is one expression that whoever starts it calls, and is read byte by byte.
  const { code } = await minify(text, {
    compress: { expression: true },
    mangle: true,
    format: { ascii_only: true },
  });
  if (!code) throw new Error(`nothing is left of ${file}`);
  rmSync(`${CACHE}${name}`, { recursive: true, force: true });
  mkdirSync(`${CACHE}${name}`, { recursive: true });
  writeFileSync(kept, code);
  return code;
}
