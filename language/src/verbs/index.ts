// Every verb of the language, in alphabetical order. A new verb is a file here and two lines below.
import type { VerbDef } from '../vocabulary/verb.js';
import { adjust } from './adjust.js';
import { align } from './align.js';
import { apply } from './apply.js';
import { backOff } from './back-off.js';
import { balance } from './balance.js';
import { bend } from './bend.js';
import { bleed } from './bleed.js';
import { calibrate } from './calibrate.js';
import { cap } from './cap.js';
import { charge } from './charge.js';
import { checkLevel } from './check-level.js';
import { chock } from './chock.js';
import { clamp } from './clamp.js';
import { clean } from './clean.js';
import { clear } from './clear.js';
import { compress } from './compress.js';
import { connect } from './connect.js';
import { cover } from './cover.js';
import { crimp } from './crimp.js';
import { cut } from './cut.js';
import { deflate } from './deflate.js';
import { disconnect } from './disconnect.js';
import { drain } from './drain.js';
import { drill } from './drill.js';
import { dry } from './dry.js';
import { evacuate } from './evacuate.js';
import { fill } from './fill.js';
import { flush } from './flush.js';
import { hang } from './hang.js';
import { heat } from './heat.js';
import { inflate } from './inflate.js';
import { inspect } from './inspect.js';
import { install } from './install.js';
import { level } from './level.js';
import { load } from './load.js';
import { lock } from './lock.js';
import { loosen } from './loosen.js';
import { lower } from './lower.js';
import { lubricate } from './lubricate.js';
import { mark } from './mark.js';
import { measure } from './measure.js';
import { move } from './move.js';
import { place } from './place.js';
import { plug } from './plug.js';
import { press } from './press.js';
import { prime } from './prime.js';
import { program } from './program.js';
import { pry } from './pry.js';
import { pull } from './pull.js';
import { pump } from './pump.js';
import { purge } from './purge.js';
import { pushBack } from './push-back.js';
import { raise } from './raise.js';
import { read } from './read.js';
import { recheck } from './recheck.js';
import { record } from './record.js';
import { recover } from './recover.js';
import { release } from './release.js';
import { relieve } from './relieve.js';
import { remove } from './remove.js';
import { renew } from './renew.js';
import { reset } from './reset.js';
import { roadTest } from './road-test.js';
import { run } from './run.js';
import { scan } from './scan.js';
import { scrap } from './scrap.js';
import { separate } from './separate.js';
import { set } from './set.js';
import { snug } from './snug.js';
import { soak } from './soak.js';
import { stake } from './stake.js';
import { store } from './store.js';
import { support } from './support.js';
import { tag } from './tag.js';
import { tap } from './tap.js';
import { test } from './test.js';
import { tie } from './tie.js';
import { tighten } from './tighten.js';
import { tilt } from './tilt.js';
import { topUp } from './top-up.js';
import { torque } from './torque.js';
import { turn } from './turn.js';
import { uncap } from './uncap.js';
import { unchock } from './unchock.js';
import { uncover } from './uncover.js';
import { unload } from './unload.js';
import { unlock } from './unlock.js';
import { unplug } from './unplug.js';
import { untag } from './untag.js';
import { untie } from './untie.js';
import { ventilate } from './ventilate.js';
import { wait } from './wait.js';
import { wear } from './wear.js';
import { weigh } from './weigh.js';

/** All verbs, sorted by word. */
export const VERBS: readonly VerbDef[] = [
  adjust,
  align,
  apply,
  backOff,
  balance,
  bend,
  bleed,
  calibrate,
  cap,
  charge,
  checkLevel,
  chock,
  clamp,
  clean,
  clear,
  compress,
  connect,
  cover,
  crimp,
  cut,
  deflate,
  disconnect,
  drain,
  drill,
  dry,
  evacuate,
  fill,
  flush,
  hang,
  heat,
  inflate,
  inspect,
  install,
  level,
  load,
  lock,
  loosen,
  lower,
  lubricate,
  mark,
  measure,
  move,
  place,
  plug,
  press,
  prime,
  program,
  pry,
  pull,
  pump,
  purge,
  pushBack,
  raise,
  read,
  recheck,
  record,
  recover,
  release,
  relieve,
  remove,
  renew,
  reset,
  roadTest,
  run,
  scan,
  scrap,
  separate,
  set,
  snug,
  soak,
  stake,
  store,
  support,
  tag,
  tap,
  test,
  tie,
  tighten,
  tilt,
  topUp,
  torque,
  turn,
  uncap,
  unchock,
  uncover,
  unload,
  unlock,
  unplug,
  untag,
  untie,
  ventilate,
  wait,
  wear,
  weigh,
];

/** The verb of a word. */
export const VERB_BY_WORD: ReadonlyMap<string, VerbDef> = new Map(VERBS.map((verb) => [verb.word, verb]));
