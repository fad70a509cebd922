// Which one is meant where a job has an old and a new one: what is made ready to go on, and what is scrapped.
import { expect, it } from 'vitest';
import { HEAD, lower } from './lower-helper.js';

const JOB = `${HEAD}
parts
  seal: Shaft seal
    held by seal-screw
    renew

fasteners
  seal-screw: Seal screws
    2 of M6x1.0, class 8.8, hex 10 mm
    torque 8 N·m, per "T-1"
    renew

supplies
  grease: Grease
  paste: Seal paste

tools
  driver: Seal driver

removal
  step: Off
    remove seal-screw
    press seal with driver
    remove seal

installation
  step: On
    lubricate seal with grease
    apply paste to seal
    press seal with driver
    install seal, seal-screw
    lubricate seal with grease
    torque seal-screw
    scrap seal, seal-screw, axle-oil
`;

it('says new of what is made ready to go on, and old of what is scrapped', () => {
  const said = lower(JOB)
    .lines.filter((line) => /^\d.*seal/.test(line))
    .map((line) => line.replace(/ \{.*/, ''));
  expect(said).toEqual([
    '1.1 Remove the seal screws (2).',
    '1.2 Press the shaft seal with the seal driver.',
    '1.3 Remove the shaft seal.',
    '2.1 Lubricate the new shaft seal with grease.',
    '2.2 Apply seal paste to the new shaft seal.',
    '2.3 Press the new shaft seal with the seal driver.',
    '2.4 Install the new shaft seal.',
    '2.5 Install the new seal screws (2), by hand.',
    '2.6 Lubricate the shaft seal with grease.',
    '2.7 Torque the seal screws (2).',
    '2.8 Scrap the old shaft seal, the old seal screws (2) and old axle oil.',
  ]);
});

it('says so in languages that would have to bend the word', () => {
  const said = lower(JOB, { language: 'fr' }).lines.find((line) => line.startsWith('2.8'));
  expect(said).toMatch(/\(2,\spièce\susagée\)/);
});

it('says neither where the same one goes back on', () => {
  const { lines } = lower(JOB.replaceAll('    renew\n', ''));
  expect(lines.find((line) => line.startsWith('2.1'))).toContain('Lubricate the shaft seal');
});
