// The diagnostics of fasteners: threads, classes, heads, torques, orders.
import { threadUnreadable } from './f101-thread-unreadable.js';
import { threadNotListed } from './f102-thread-not-listed.js';
import { classUnknown } from './f103-class-unknown.js';
import { headAgainstThread } from './f104-head-against-thread.js';
import { overYield } from './f201-over-yield.js';
import { inchFootExchanged } from './f202-inch-foot-exchanged.js';
import { torqueLow } from './f203-torque-low.js';
import { torqueWithoutSource } from './f204-torque-without-source.js';
import { torqueWithoutFigure } from './f205-torque-without-figure.js';
import { tightenWithFigure } from './f206-tighten-with-figure.js';
import { orderImpossible } from './f207-order-impossible.js';
import { noWrench } from './f208-no-wrench.js';
import { wetOnDry } from './f209-wet-on-dry.js';
import { angleWithoutSnug } from './f210-angle-without-snug.js';
import { stageBeyond } from './f211-stage-beyond.js';
import { countAboveSet } from './f212-count-above-set.js';
import { stretchNotRenewed } from './f213-stretch-not-renewed.js';
import { adapterSettingUnknown } from './f214-adapter-setting-unknown.js';
import { threadsLeftBare } from './f215-threads-left-bare.js';
import { wrenchOutOfRange } from './f216-wrench-out-of-range.js';

export const FASTENER_DIAGNOSTICS = [
  threadUnreadable,
  threadNotListed,
  classUnknown,
  headAgainstThread,
  overYield,
  inchFootExchanged,
  torqueLow,
  torqueWithoutSource,
  torqueWithoutFigure,
  tightenWithFigure,
  orderImpossible,
  noWrench,
  wetOnDry,
  angleWithoutSnug,
  stageBeyond,
  countAboveSet,
  stretchNotRenewed,
  adapterSettingUnknown,
  threadsLeftBare,
  wrenchOutOfRange,
] as const;
