// Plugs, hoses, pipes, joints: taken apart, capped, joined.
import { describe } from 'vitest';
import { example } from './job.js';

const PLUG = `
parts
  lamp: Lamp
connections
  lead: Lead
    on lamp
`;
const PIPE = `
circuits
  clutch-circuit: Circuit
    uses fluid
fluids
  fluid: Clutch fluid
connections
  pipe: Pipe
    held by union
    in clutch-circuit
fasteners
  union: Union
    1 of M10x1.0
    torque 14 N·m, per ?
`;
const JOINT = `
parts
  arm: Arm
    held by joint
connections
  joint: Ball joint
    held by pinch
fasteners
  pinch: Pinch bolt
    1 of M10x1.5
    torque 55 N·m, per ?
`;

describe('disconnect', () => {
  example(
    'and never connect',
    PLUG,
    `
    disconnect lead
#   ^^^^^^^^^^^^^^^ S302`,
  );
  example(
    'twice',
    PLUG,
    `
    disconnect lead
    disconnect lead
#   ^^^^^^^^^^^^^^^ S101 already disconnected
    connect lead`,
  );
  example(
    'with its union tight',
    PIPE,
    `
    disconnect pipe
#   ^^^^^^^^^^^^^^^ S103 held by \`union\`
    remove union
    connect pipe
    install union
    torque union
    fill fluid
    bleed clutch-circuit
    check-level fluid`,
  );
});

describe('connect', () => {
  example(
    'what was never taken apart',
    PLUG,
    `
    connect lead
#   ^^^^^^^^^^^^ S102 still on`,
  );
  example(
    'before the part it sits on',
    PLUG,
    `
    disconnect lead
    remove lamp
    connect lead
#   ^^^^^^^^^^^^ S201 \`lamp\`
    clean lamp
    install lamp`,
  );
  example(
    'at the part, which the next line fits',
    PLUG,
    `
    disconnect lead
    remove lamp
    connect lead
    install lamp`,
  );
});

describe('cap', () => {
  example(
    'and connect takes the cap off as well',
    PLUG,
    `
    disconnect lead
    cap lead
    connect lead`,
  );
  example(
    'what is still joined',
    PLUG,
    `
    cap lead
#   ^^^^^^^^ S102
    disconnect lead
    connect lead`,
  );
  example(
    'uncap what was not capped',
    PLUG,
    `
    disconnect lead
    uncap lead
#   ^^^^^^^^^^ S109
    connect lead`,
  );
});

describe('a connection that holds a part', () => {
  example(
    'is taken apart before the part comes off',
    JOINT,
    `
    remove pinch
    separate joint
    remove arm
    install arm
    connect joint
    install pinch
    torque pinch`,
  );
  example(
    'is still together',
    JOINT,
    `
    remove pinch
    remove arm
#   ^^^^^^^^^^ S103 held by \`joint\`
    separate joint
    install arm
    connect joint
    install pinch
    torque pinch`,
  );
  example(
    'is joined before its part is back',
    JOINT,
    `
    remove pinch
    separate joint
    remove arm
    connect joint
#   ^^^^^^^^^^^^^ S201 \`arm\`
    install arm
    install pinch
    torque pinch`,
  );
});

describe('a circuit that was opened', () => {
  example(
    'is filled, bled and looked at',
    PIPE,
    `
    remove union
    disconnect pipe
    connect pipe
    install union
    torque union
    fill fluid
    bleed clutch-circuit
    check-level fluid`,
  );
  example(
    'is never bled',
    PIPE,
    `
    remove union
    disconnect pipe
#   ^^^^^^^^^^^^^^^ S308
    connect pipe
    install union
    torque union
    fill fluid`,
  );
  example(
    'is bled while open',
    PIPE,
    `
    remove union
    disconnect pipe
    fill fluid
#   ^^^^^^^^^^ S203
    bleed clutch-circuit
    connect pipe
    install union
    torque union
    check-level fluid`,
  );
  example(
    'is bled with nothing in it',
    PIPE,
    `
    remove union
    disconnect pipe
    connect pipe
    install union
    torque union
    bleed clutch-circuit
#   ^^^^^^^^^^^^^^^^^^^^ S209 \`fluid\`
    fill fluid
    check-level fluid`,
  );
});

describe('a hose that is renewed', () => {
  example(
    'is off first, and connected new',
    PLUG,
    `
    disconnect lead
    renew lead
    connect lead`,
  );
  example(
    'while it is still on',
    PLUG,
    `
    renew lead
#   ^^^^^^^^^^ S115 \`lead\`
    disconnect lead
    connect lead`,
  );
});

const HOSE = `
parts
  fan: Fan
    behind hose
connections
  hose: Hose
`;

describe('a hose in the way', () => {
  example(
    'comes off first and goes on last',
    HOSE,
    `
    disconnect hose
    remove fan
    install fan
    connect hose`,
  );
  example(
    'is still on',
    HOSE,
    `
    remove fan
#   ^^^^^^^^^^ S104 \`fan\` cannot be reached: \`hose\`
    install fan`,
  );
  example(
    'goes on too early',
    HOSE,
    `
    disconnect hose
    remove fan
    connect hose
#   ^^^^^^^^^^^^ S201
    install fan`,
  );
});

describe('a circuit of compressed air', () => {
  example(
    'holds no fluid and has no bleed screw: nothing is to be bled',
    `
circuits
  air-system: Air system
connections
  air-line: Air line
    in air-system
`,
    `
    relieve air-system
    disconnect air-line
    connect air-line`,
  );
});
