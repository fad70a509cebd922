// Every check beside syntax, state and rules, one row each.
import type { Check } from './check.js';

export const CHECKS: readonly Check[] = [];
