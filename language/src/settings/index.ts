// The settings of a library: schema, reading, severities.
export { type KnownCode, readSettings, type SettingsReading } from './read.js';
export {
  DEFAULT_SETTINGS,
  SETTINGS_FILE,
  type Settings,
  settingsJsonSchema,
  settingsSchema,
} from './schema.js';
export { globMatcher, severityOf } from './severity.js';
