// Usual practice of the trade as rules, on by default. All of it is common practice without a published source; a house
// switches a rule off by name in its settings, with the reason.
import { bindFile } from '../names/bind.js';
import { parse } from '../syntax/index.js';
import { readRule, type Rule } from './rule-model.js';

export const STARTER_FILE = '(starter pack)';

export const STARTER_TEXT = `catalogue: Usual practice

rules
  usual-chocks: Chock a wheel before the vehicle goes up.
    before raise vehicle
    require chock any place
  usual-stands: Nobody works on a vehicle that only a jack holds.
    never remove any part
    while vehicle raised
  usual-rags: An engine is not run with a rag, cap or cover left in it.
    never run engine
    while any temporary placed
  usual-recheck: Wheel nuts are checked again after the first distance.
    after install any part marked wheel
    require recheck any fastener
`;

let rules: readonly Rule[] | undefined;

export function starterRules(): readonly Rule[] {
  rules ??= bindFile(STARTER_FILE, parse(STARTER_TEXT, STARTER_FILE).tree).things.map((t) => readRule(t, true)).filter((r) => r !== undefined);
  return rules;
}
