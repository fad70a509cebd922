// The lookahead of the grammar, worked out when it is first asked for. A line uses few rules, and to work all of them
// out takes a third of the time in which the program starts.
import { type ILookaheadStrategy, LLkLookaheadStrategy } from 'chevrotain';

type Alternation = ILookaheadStrategy['buildLookaheadForAlternation'];
type Optional = ILookaheadStrategy['buildLookaheadForOptional'];

export class LazyLookahead extends LLkLookaheadStrategy {
  override buildLookaheadForAlternation(options: Parameters<Alternation>[0]): ReturnType<Alternation> {
    const build = () => super.buildLookaheadForAlternation(options);
    let look: ReturnType<Alternation> | undefined;
    return function (this: unknown, alternatives) {
      look ??= build();
      return look.call(this, alternatives);
    };
  }

  override buildLookaheadForOptional(options: Parameters<Optional>[0]): ReturnType<Optional> {
    const build = () => super.buildLookaheadForOptional(options);
    let look: ReturnType<Optional> | undefined;
    return function (this: unknown) {
      look ??= build();
      return look.call(this);
    };
  }
}
