// What can be wrong with a settings file.
import { defineDiagnostic } from './define.js';

export const settingsUnreadable = defineDiagnostic<{ problem: string }>({
  code: 'R801',
  name: 'settings-not-json',
  severity: 'error',
  message: ({ problem }) => `the settings are not JSON: ${problem}`,
  advice: () => 'Until this is mended, the usual settings hold.',
  why: 'The settings file says what the shop is called, what paper it prints on and who may release a procedure. A file that cannot be read is not read in part: the usual settings hold until it is mended, so a guide printed meanwhile may lack the shop name or come out on the wrong paper.',
  wrong: '--- file: baywright.json\n{\n  "page": "A4",\n  "output": guides\n#           ^^^^^^ R801\n}\n',
  right: '--- file: baywright.json\n{\n  "page": "A4",\n  "output": "guides"\n}\n',
});

export const settingWrong = defineDiagnostic<{ path: string; expected: string; found: string }>({
  code: 'R802',
  name: 'setting-not-usable',
  severity: 'error',
  message: ({ path, expected, found }) => `${path}: expected ${expected}, found ${found}`,
  advice: () => 'Until this is mended, the usual value holds.',
  why: 'A setting with a value that means nothing would be passed over in silence, and the shop would go on believing that it holds. The message says which key it is, what may stand there and what was found.',
  wrong: '--- file: baywright.json\n{\n  "page": "A3"\n#         ^^^^ R802\n}\n',
  right: '--- file: baywright.json\n{\n  "page": "A4"\n}\n',
});

export const settingUnknown = defineDiagnostic<{ path: string; near: readonly string[] }>({
  code: 'R803',
  name: 'setting-unknown',
  severity: 'warning',
  message: ({ path, near }) =>
    `there is no setting ${path}${near.length === 0 ? '' : `; did you mean ${near.map((name) => `“${name}”`).join(' or ')}?`}`,
  why: 'A misspelt key does nothing, and nobody notices until a guide comes out wrong. Keys are listed in the reference and offered by the editor.',
  wrong: '--- file: baywright.json\n{\n  "outptu": "guides"\n# ^^^^^^^^ R803\n}\n',
  right: '--- file: baywright.json\n{\n  "output": "guides"\n}\n',
});

export const severityRefused = defineDiagnostic<{ key: string; problem: string }>({
  code: 'R804',
  name: 'severity-refused',
  severity: 'warning',
  message: ({ key, problem }) => `severity of “${key}”: ${problem}`,
  why: 'The severity of a warning, a question or a hint is the shop’s to choose. An error means that the job cannot be right as written: it stays an error in every library, and where a single line is known to be right, `accept CODE: reason` above it says so for all to read.',
  wrong: '--- file: baywright.json\n{\n  "severity": { "Z999": "off" }\n#               ^^^^^^ R804\n}\n',
  right: '--- file: baywright.json\n{\n  "severity": { "W": "off" }\n}\n',
});

export const starterRuleUnknown = defineDiagnostic<{ rule: string; near: readonly string[] }>({
  code: 'R805',
  name: 'starter-rule-unknown',
  severity: 'warning',
  message: ({ rule, near }) =>
    `no starter rule is called “${rule}”${near.length === 0 ? '' : `; near it: ${near.join(', ')}`}`,
  advice: () => 'Name a rule of the starter pack, or “all”.',
  why: 'A rule of usual practice is switched off by its name. A name that no rule has switches nothing off: the findings that the shop meant to do without go on, and nobody sees why. The names stand in the reference and in the findings themselves.',
  wrong:
    '--- file: baywright.json\n{\n  "starterRulesOff": [{ "rule": "usual-cap", "because": "No open lines here." }]\n#                               ^^^^^^^^^^^ R805\n}\n',
  right:
    '--- file: baywright.json\n{\n  "starterRulesOff": [{ "rule": "usual-caps", "because": "No open lines here." }]\n}\n',
});

export const SETTINGS_DIAGNOSTICS = [
  settingsUnreadable,
  settingWrong,
  settingUnknown,
  severityRefused,
  starterRuleUnknown,
] as const;
