// The code of the first page: number and revision, for finding the current issue with a phone camera.
import { encode } from 'uqr';
import { type Drawing, type Inks, number } from './drawing.js';

/** A QR code (ISO/IEC 18004, error correction M, the first of the masks: trying all takes longer than the page) with its quiet zone, one unit a module. */
export function codeDrawing(text: string, { ink, paper }: Inks): Drawing {
  const { data, size } = encode(text, { ecc: 'M', border: 4, maskPattern: 0 });
  // Runs of dark modules in one path: small, and without hairlines between them.
  const runs = data
    .map((row, y) => {
      let path = '';
      for (let x = 0; x < row.length; x++) {
        if (!row[x]) continue;
        const start = x;
        while (row[x + 1]) x++;
        path += `M${number(start)} ${number(y)}h${x - start + 1}v1h-${x - start + 1}z`;
      }
      return path;
    })
    .join('');
  const field = `<rect width="${size}" height="${size}" fill="${paper}"/>`;
  return { width: size, height: size, body: `${field}<path d="${runs}" fill="${ink}"/>` };
}
