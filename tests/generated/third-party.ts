// The list of what others made and the command carries or asks for, with licences, read from the lock file.
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly link?: boolean;
  readonly resolved?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Fonts that are shipped, with where their licence stands. */
const FONTS = [['Atkinson Hyperlegible Next', 'OFL-1.1', 'compiler/fonts/OFL.txt']] as const;

const NOT_NAMED = 'not named';

export function thirdPartyPage(): string {
  const rows = shippedWith('compiler').map(
    ({ name, version, license }) => `| ${name} | ${version} | ${license} |`,
  );
  const fonts = FONTS.map(
    ([name, license, text]) => `| ${name} | ${license} | ${text.replace('compiler/', '')} |`,
  );
  return `# What others made

<!-- Made from the lock file by \`npm run generate\`. -->

Baywright itself is under the MIT licence (LICENSE). It carries these fonts:

| Font | Licence | Text |
| --- | --- | --- |
${fonts.join('\n')}

and these packages, bundled or asked for on installing:

| Package | Version | Licence |
| --- | --- | --- |
${rows.join('\n')}
`;
}

/** Registry packages that a workspace needs to run, with those that they need, by name. */
function shippedWith(workspace: string): { name: string; version: string; license: string }[] {
  const lock = JSON.parse(readFileSync(`${ROOT}/package-lock.json`, 'utf8')) as {
    packages: Record<string, Locked>;
  };
  const found = new Map<string, Locked>();
  const visit = (path: string): void => {
    const entry = lock.packages[path];
    if (entry === undefined || found.has(path)) return;
    found.set(path, entry);
    if (entry.link === true && entry.resolved !== undefined) visit(entry.resolved);
    for (const name of Object.keys({ ...entry.dependencies, ...entry.optionalDependencies })) {
      const at = resolveFrom(lock.packages, path, name);
      if (at !== undefined) visit(at);
    }
  };
  visit(workspace);
  return [...found]
    .filter(([path, entry]) => path.includes('node_modules/') && entry.link !== true)
    .map(([path, { version = '', license = NOT_NAMED }]) => ({
      name: path.replace(/^.*node_modules\//, ''),
      version,
      license,
    }))
    .sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : a.version < b.version ? -1 : 1))
    .filter((one, i, all) => one.name !== all[i - 1]?.name || one.version !== all[i - 1]?.version);
}

/** Where Node finds a package that the one at \`path\` asks for. */
function resolveFrom(
  packages: Readonly<Record<string, Locked>>,
  path: string,
  name: string,
): string | undefined {
  for (let at = path; ; at = at.replace(/\/?(?:node_modules\/)?[^/]+(?:\/[^/]+)?$/, '')) {
    const candidate = at === '' ? `node_modules/${name}` : `${at}/node_modules/${name}`;
    if (packages[candidate] !== undefined) return candidate;
    if (at === '') return undefined;
  }
}

/** What is shipped without a licence: fonts whose text is not there, packages that name none. */
export const missingLicences = (): string[] => [
  ...FONTS.map(([, , text]) => text).filter((text) => !existsSync(`${ROOT}/${text}`)),
  ...shippedWith('compiler').flatMap(({ name, license }) => (license === NOT_NAMED ? [name] : [])),
];
