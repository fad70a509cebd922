// Usual practice of the trade as rules, on by default. All of it is common practice without a published source, and no
// more than that: local codes, the maker's data and the house come first. A house switches a rule off by name in its
// settings, with the reason; a house rule that asks the same takes the place of the starter rule.
import { bindFile } from '../names/bind.js';
import { parse } from '../syntax/index.js';
import { type Rule, readRule } from './rule-model.js';

const STARTER_FILE = '(starter pack)';

/** The rules bind by kind and mark alone; starter-marks.ts says what each mark means. */
export const STARTER_TEXT = `catalogue: Usual practice

rules
  usual-chocks: Chock a wheel before the vehicle goes onto stands.
    before support vehicle
    require chock any place
  usual-stands: Nobody works on a vehicle that only a jack holds.
    never remove any part
    while vehicle raised
  usual-suspension: The suspension does not move with a caliper hung from it.
    never lower or load any machine
    while any part marked brake-caliper hung
  usual-pedal: Pump the pedal before the vehicle moves, after a piston has been pushed back.
    after push-back any thing marked brake-caliper
    require pump or test any thing
    before road-test vehicle
  usual-pedal-bled: Try the pedal before the vehicle moves, after the brakes have been bled.
    after bleed any circuit marked brake
    require pump or test or inspect any thing
    before road-test vehicle
  usual-reservoir: Look at the fluid reservoir after a piston has been pushed back.
    after push-back any thing marked brake-caliper
    require check-level or top-up or inspect any fluid
  usual-pedal-still: Nobody presses the pedal with a caliper off.
    never pump any thing marked brake-pedal
    while any part marked brake-caliper off
  usual-selector: The selector stays where it is with a caliper off.
    never set any condition marked selector
    while any part marked brake-caliper off
  usual-recheck: Wheel nuts are checked again after the first distance.
    after install any part marked wheel
    require recheck any fastener
  usual-restraint-ignition: The ignition is off before a restraint connector is touched.
    never disconnect any connection marked restraint
    while any condition marked ignition on
  usual-restraint-battery: The battery is off before a restraint connector is touched.
    never disconnect any connection marked restraint
    while any connection marked battery-negative connected
  usual-restraint-wait: Restraint modules hold a charge: wait after the battery is off.
    before disconnect any connection marked restraint
    require wait 1 min
    since disconnect any connection marked battery-negative
  usual-battery-off: The negative lead comes off first.
    never disconnect any connection marked battery-positive
    while any connection marked battery-negative connected
  usual-battery-on: The negative lead goes on last.
    never connect any connection marked battery-positive
    while any connection marked battery-negative connected
  usual-wiring: The battery is off before engine wiring is opened.
    never disconnect any connection marked engine-wiring
    while any connection marked battery-negative connected
  usual-fuel-pressure: Let the pressure off before a fuel line is opened.
    before disconnect or separate any connection marked fuel
    require relieve any thing
  usual-fuel-leaks: Look for leaks after a fuel line has been joined.
    after connect any connection marked fuel
    require inspect or test any thing
  usual-recover: Refrigerant is recovered before its line is opened.
    before disconnect or separate any connection marked air-conditioning
    require recover any fluid
  usual-evacuate: A refrigerant circuit is evacuated before it is charged.
    before charge any fluid marked air-conditioning
    require evacuate any circuit
  usual-line-pressure: Let the pressure off before a pressure line is opened.
    before disconnect or separate any connection marked pressure-line
    require relieve any thing
  usual-caps: An open hydraulic line is capped or joined again in the same step.
    after disconnect any connection marked hydraulic
    require cap or plug or connect it
    before step ends
  usual-hv-low: The low-voltage battery is off before the power side is opened.
    never disconnect any connection marked high-voltage
    while any connection marked battery-negative connected
  usual-hv-lock-out: The service plug is kept from going back in before the power side is opened.
    before disconnect any connection marked high-voltage
    require place or lock or tag or store any thing marked lock-out
    since disconnect any connection marked service-plug
  usual-hv-wait: The power side holds a charge: wait after the service plug is out.
    before disconnect any connection marked high-voltage
    require wait 10 min
    since disconnect any connection marked service-plug
  usual-hv-dead: Prove that the power side is dead after the service plug is out.
    before disconnect any connection marked high-voltage
    require measure or test any thing
    since disconnect any connection marked service-plug
  usual-spring: A loaded spring is held back before its nut, or the part it sits in, is touched.
    before loosen or remove any thing marked loaded-spring
    require compress any thing
  usual-uncage-lines: A power spring is let go only with its air lines joined.
    never release or remove any thing marked caging-bolt
    while any connection marked pressure-line disconnected
  usual-uncage-air: A power spring is let go only while air holds it back.
    never release or remove any thing marked caging-bolt
    while any condition marked spring-brake applied
  usual-phase: What must go back as it sat gets a mark or a lock before it comes off.
    before remove or separate or disconnect any thing marked in-phase
    require mark or lock any thing
  usual-pressure-cap: A cap under pressure is opened cold.
    never remove any thing marked pressure-cap
    while any condition marked engine-heat hot
  usual-tagged: Nothing is started with a tag on it.
    never run or road-test any machine
    while vehicle tagged
  usual-look-inside: Look inside an open gear case before it is closed.
    after remove any part marked open-gears
    require inspect any thing
    before install any part marked open-gears
  usual-nothing-turns: Nothing turns under power with a gear case open.
    never run or road-test any machine
    while any part marked open-gears off
  usual-openings: An engine is not run with a rag, plug or cover in an opening.
    never run engine
    while any temporary marked in-opening placed
  usual-clean-first: Clean around a line before dirt can fall into it.
    before disconnect or separate any connection marked keep-clean
    require clean any thing
  usual-codes: Read the fault memory after a sensor has been joined again.
    after connect any connection marked sensor
    require scan or read or clear any machine
`;

let rules: readonly Rule[] | undefined;

export function starterRules(): readonly Rule[] {
  rules ??= bindFile(STARTER_FILE, parse(STARTER_TEXT, STARTER_FILE).tree)
    .things.map((t) => readRule(t, true))
    .filter((r) => r !== undefined);
  return rules;
}
