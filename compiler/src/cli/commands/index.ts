// The table of commands, in the order in which help lists them. A new command is one file and one row.

import type { CommandDef } from '../command.js';
import build from './build.js';
import check from './check.js';
import compare from './compare.js';
import completions from './completions.js';
import convert from './convert.js';
import explain from './explain.js';
import exportData from './export.js';
import fittingHalf from './fitting-half.js';
import format from './format.js';
import importSpecs from './import.js';
import issue from './issue.js';
import masterList from './master-list.js';
import start from './new.js';
import order from './order.js';
import reissue from './reissue.js';
import server from './server.js';
import shim from './shim.js';
import sign from './sign.js';
import time from './time.js';
import torque from './torque.js';
import translate from './translate.js';
import whereUsed from './where-used.js';

export const COMMANDS: readonly CommandDef[] = [
  check,
  build,
  translate,
  format,
  start,
  fittingHalf,
  whereUsed,
  compare,
  sign,
  issue,
  masterList,
  reissue,
  exportData,
  importSpecs,
  explain,
  convert,
  torque,
  order,
  shim,
  time,
  completions,
  server,
];
