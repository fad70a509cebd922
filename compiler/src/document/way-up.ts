// Which way up a picture is to be seen: the note that a camera or program leaves in its file (Exif 2.32, tag 0x0112). In a PNG
// and a WebP the typesetter heeds it, and of browsers some: one output would show it the wrong way round.

/** 1 is as stored, 2 to 8 are turned or mirrored. Of PNG and WebP; undefined where nothing is noted. */
export function wayUp(data: Uint8Array): number | undefined {
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  try {
    const at = tiffAt(view);
    return at === undefined ? undefined : orientation(view, at);
  } catch (error) {
    // A note that points outside the file says nothing.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

const nameAt = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(at + i)));

/** Where the note begins: in the chunk `eXIf` of a PNG, in `EXIF` of a WebP. */
function tiffAt(view: DataView): number | undefined {
  const isWebp = nameAt(view, 0) === 'RIFF';
  for (let at = isWebp ? 12 : 8; at + 8 <= view.byteLength; ) {
    const name = nameAt(view, isWebp ? at : at + 4);
    const length = isWebp ? view.getUint32(at + 4, true) : view.getUint32(at);
    const inside = at + 8;
    // Some programs write the head that it has in a JPEG.
    if (name === 'EXIF' || name === 'eXIf') return nameAt(view, inside) === 'Exif' ? inside + 6 : inside;
    if (name === 'IEND') return undefined;
    at = inside + length + (isWebp ? length % 2 : 4);
  }
  return undefined;
}

function orientation(view: DataView, start: number): number | undefined {
  const isLittle = view.getUint16(start) === 0x4949;
  const first = start + view.getUint32(start + 4, isLittle);
  const count = view.getUint16(first, isLittle);
  for (let i = 0; i < count; i++) {
    const entry = first + 2 + i * 12;
    if (view.getUint16(entry, isLittle) === 0x0112) return view.getUint16(entry + 8, isLittle);
  }
  return undefined;
}
