// The findings of grammar and layout: G1 where lines stand and what they miss, G2 what is written on them.
import type { DiagnosticDef } from './define.js';
import { tabIndent } from './g101-tab-indent.js';
import { oneSpaceIndent } from './g102-one-space-indent.js';
import { unevenIndent } from './g103-uneven-indent.js';
import { nothingBelow } from './g104-nothing-below.js';
import { titleMissing } from './g105-title-missing.js';
import { colonMissing } from './g106-colon-missing.js';
import { textMissing } from './g107-text-missing.js';
import { colonBeforeBlock } from './g108-colon-before-block.js';
import { trailingComma } from './g109-trailing-comma.js';
import { textBelowRemark } from './g110-text-below-remark.js';
import { stepMissing } from './g112-step-missing.js';
import { openingMissing } from './g113-opening-missing.js';
import { secondOpening } from './g114-second-opening.js';
import { nestedTooDeep } from './g115-nested-too-deep.js';
import { workInCatalogue } from './g116-work-in-catalogue.js';
import { blockEmpty } from './g117-block-empty.js';
import { resultMissing } from './g118-result-missing.js';
import { unknownWord } from './g201-unknown-word.js';
import { wordOutOfPlace } from './g202-word-out-of-place.js';
import { unexpected } from './g203-unexpected.js';
import { operandMissing } from './g204-operand-missing.js';
import { quoteOpen } from './g205-quote-open.js';
import { strayCharacter } from './g206-stray-character.js';
import { reservedName } from './g207-reserved-name.js';
import { operandForm } from './g208-operand-form.js';
import { referenceOpen } from './g209-reference-open.js';

/** Every diagnostic of layout and grammar. */
export const GRAMMAR_DIAGNOSTICS: readonly DiagnosticDef<never>[] = [
  tabIndent,
  oneSpaceIndent,
  unevenIndent,
  nothingBelow,
  titleMissing,
  colonMissing,
  textMissing,
  colonBeforeBlock,
  trailingComma,
  textBelowRemark,
  stepMissing,
  openingMissing,
  secondOpening,
  nestedTooDeep,
  workInCatalogue,
  blockEmpty,
  resultMissing,
  unknownWord,
  wordOutOfPlace,
  unexpected,
  operandMissing,
  quoteOpen,
  strayCharacter,
  reservedName,
  operandForm,
  referenceOpen,
];
