// Lowers the samples as the command does, for a look at what their readers get.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createLibrary, DIAGNOSTICS, readSettings, type Settings } from '@baywright/language';
import { type GuideChoice, lowerGuide } from '../../compiler/src/document/lower/index.js';

const SAMPLES = fileURLToPath(new URL('../../samples', import.meta.url));

export interface Samples {
  readonly settings: Settings;
  /** File names of the procedures. */
  readonly procedures: readonly string[];
  readonly lower: (path: string, choice?: Partial<GuideChoice>) => ReturnType<typeof lowerGuide>;
}

/** Of one library below the samples. */
export function openSamples(folder = ''): Samples {
  const file = (name: string) => {
    try {
      return readFileSync(join(SAMPLES, folder, name));
    } catch {
      return undefined;
    }
  };
  const { settings }: { settings: Settings } = readSettings(
    'baywright.json',
    file('baywright.json')?.toString('utf8') ?? '{}',
    DIAGNOSTICS,
  );
  const procedures = readdirSync(join(SAMPLES, folder, 'procedures')).filter((name) => name.endsWith('.bay'));
  const library = createLibrary(
    {
      read: (name) => file(name)?.toString('utf8'),
      list: () => procedures.map((name) => `procedures/${name}`),
    },
    settings,
  );
  const lower: Samples['lower'] = (path, choice = {}) => {
    const analysis = library.analyse(path);
    if (!analysis) throw new Error(`${path} is not there`);
    return lowerGuide(
      analysis,
      { sheet: 'guide', option: {}, units: settings.units, language: 'en', ...choice },
      { settings, bytes: file },
    );
  };
  return { settings, procedures, lower };
}
