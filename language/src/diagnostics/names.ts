// The diagnostics of names.
import { undeclared } from './n101-undeclared.js';
import { declaredTwice } from './n102-declared-twice.js';
import { hidesImport } from './n103-hides-import.js';
import { neverUsed } from './n104-never-used.js';
import { wrongKind } from './n201-wrong-kind.js';
import { wrongKindInClause } from './n202-wrong-kind-in-clause.js';
import { clauseNotForVerb } from './n203-clause-not-for-verb.js';
import { clauseMissing } from './n204-clause-missing.js';
import { clauseNotForKind } from './n205-clause-not-for-kind.js';
import { valueNotDeclared } from './n206-value-not-declared.js';
import { valueMissing } from './n207-value-missing.js';
import { objectMissing } from './n208-object-missing.js';
import { objectNotTaken } from './n209-object-not-taken.js';
import { countNotTaken } from './n210-count-not-taken.js';
import { countTooGreat } from './n211-count-too-great.js';
import { builtInMisused } from './n212-built-in-misused.js';
import { clauseForm } from './n213-clause-form.js';
import { relationCycle } from './n214-relation-cycle.js';
import { importNotFound } from './n301-import-not-found.js';
import { importCycle } from './n302-import-cycle.js';
import { importOutside } from './n303-import-outside.js';
import { unknownOperation } from './n304-unknown-operation.js';
import { performCycle } from './n305-perform-cycle.js';
import { unknownVehicle } from './n306-unknown-vehicle.js';
import { unknownSource } from './n307-unknown-source.js';
import { unknownReference } from './n308-unknown-reference.js';
import { unknownAttribute } from './n309-unknown-attribute.js';
import { ruleWord } from './n310-rule-word.js';

export const NAME_DIAGNOSTICS = [
  undeclared,
  declaredTwice,
  hidesImport,
  neverUsed,
  wrongKind,
  wrongKindInClause,
  clauseNotForVerb,
  clauseMissing,
  clauseNotForKind,
  valueNotDeclared,
  valueMissing,
  objectMissing,
  objectNotTaken,
  countNotTaken,
  countTooGreat,
  builtInMisused,
  clauseForm,
  relationCycle,
  importNotFound,
  importCycle,
  importOutside,
  unknownOperation,
  performCycle,
  unknownVehicle,
  unknownSource,
  unknownReference,
  unknownAttribute,
  ruleWord,
] as const;

export {
  builtInMisused,
  clauseForm,
  clauseMissing,
  clauseNotForKind,
  clauseNotForVerb,
  countNotTaken,
  countTooGreat,
  declaredTwice,
  hidesImport,
  importCycle,
  importNotFound,
  importOutside,
  neverUsed,
  objectMissing,
  objectNotTaken,
  performCycle,
  ruleWord,
  undeclared,
  unknownAttribute,
  unknownOperation,
  unknownReference,
  unknownSource,
  unknownVehicle,
  valueMissing,
  valueNotDeclared,
  wrongKind,
  wrongKindInClause,
};
