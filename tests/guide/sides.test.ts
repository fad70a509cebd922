// Both sides in one print: each in an order that can be done, the common work once, and what both take.
import { describe, expect, it } from 'vitest';
import { walkBlocks } from '../../compiler/src/document/blocks.js';
import { plain } from '../../compiler/src/document/inline.js';
import { lower, needsOf, spaced, WHEEL } from './lower-helper.js';

const HEAD = `procedure T-1: Wheel, change

use "catalogue.bay"

applies to van
`;

describe('sides', () => {
  const sided = `${HEAD}sides left, right

preparation
  step: Safe
    chock wheels-behind
removal
  step: Off
    remove wheel-nut, wheel
installation
  step: On
    install wheel, wheel-nut
completion
  step: Done
    lower vehicle
    torque wheel-nut
    unchock wheels-behind
`;

  it('print one side as any other job', () => {
    expect(lower(sided, { side: 'left' }).lines).not.toContain('(left)');
    expect(lower(sided, { side: 'left' }).document.identity).toMatchObject({
      side: 'Left side',
      print: 'left-en',
    });
  });

  it('say what a print is for, and nothing where one print is for all', () => {
    const printedFor = (text: string, choice: Parameters<typeof lower>[1] = {}) =>
      lower(text, choice).block('masthead').printedFor;
    expect(printedFor(sided, { side: 'left' })).toMatchObject({ title: 'Left side', options: [] });
    expect(printedFor(WHEEL, { option: { axle: 'heavy' } })).toMatchObject({
      title: 'Axle heavy',
      options: [],
    });
    expect(printedFor(WHEEL)).toBeUndefined();
  });

  it('hand over work on both at the first of them', () => {
    const at = sided.indexOf('install wheel, wheel-nut');
    expect(lower(sided, { sheet: 'off-now', at }).block('off-now').at).toBe('After 2.2, Off, left');
    const told = (offset: number) => {
      const { groups, torques, rail } = lower(sided, { sheet: 'off-now', at: offset }).block('off-now');
      const open = groups
        .filter(({ title }) => title !== 'Placed for the job' && title !== 'Vehicle up')
        .flatMap(({ title, rows }) =>
          rows.map(({ what, since, next }) =>
            spaced(`${title}: ${plain(what)}, ${since} to ${plain(next ?? [])}`),
          ),
        );
      return [rail, open, torques.map(({ number, joint }) => `${number} ${joint}`)];
    };
    expect(told(at)).toEqual([
      { off: 2, loose: 0 },
      ['Off the vehicle: Wheel nuts (5, left), 2.1 to 3.2', 'Off the vehicle: Road wheel (left), 2.2 to 3.1'],
      [],
    ]);
    expect(told(sided.indexOf('torque wheel-nut'))).toEqual([
      { off: 0, loose: 2 },
      ['To torque: Wheel nuts (5, left), 3.2 to 6.2', 'To torque: Wheel nuts (5, right), 5.2 to 6.3'],
      ['6.2 Wheel nuts, left', '6.3 Wheel nuts, right'],
    ]);
  });

  it('print both with the common work once, each in an order that can be done', () => {
    expect(lower(sided).lines).toEqual([
      '# 1 Safe',
      '1.1 Chock the rear wheels. {0 off, 0 to torque}',
      '# 2 Off, left',
      '2.1 Remove the wheel nuts (5, left). {1 off, 0 to torque}',
      '2.2 Remove the road wheel (left). {2 off, 0 to torque}',
      'Off now, 2: wheel nuts (5, left) and road wheel (left).',
      '# 3 On, left',
      '3.1 Install the road wheel (left). {1 off, 0 to torque}',
      '3.2 Install the wheel nuts (5, left), by hand. {0 off, 1 to torque}',
      '# 4 Off, right',
      '4.1 Remove the wheel nuts (5, right). {1 off, 1 to torque}',
      '4.2 Remove the road wheel (right). {2 off, 1 to torque}',
      'Off now, 2: wheel nuts (5, right) and road wheel (right). To torque, 1: wheel nuts (5, left).',
      '# 5 On, right',
      '5.1 Install the road wheel (right). {1 off, 1 to torque}',
      '5.2 Install the wheel nuts (5, right), by hand. {0 off, 2 to torque}',
      '# 6 Done',
      '6.1 Lower the vehicle. {0 off, 2 to torque}',
      '6.2 Torque the wheel nuts (5, left). {0 off, 1 to torque}',
      '6.3 Torque the wheel nuts (5, right). {0 off, 0 to torque}',
      '6.4 Take the chocks away from the rear wheels. {0 off, 0 to torque}',
    ]);
  });

  it('pump the pedal once behind the work on both', () => {
    const text = `${sided.replace('    unchock wheels-behind', '    pump pedal\n    unchock wheels-behind')}
places
  pedal: Brake pedal
`;
    expect(
      lower(text)
        .lines.filter((line) => line.startsWith('6.'))
        .map((line) => line.replace(/ \{.*/, '')),
    ).toEqual([
      '6.1 Lower the vehicle.',
      '6.2 Torque the wheel nuts (5, left).',
      '6.3 Torque the wheel nuts (5, right).',
      '6.4 Pump the brake pedal.',
      '6.5 Take the chocks away from the rear wheels.',
    ]);
  });

  it('load the suspension under each arm in its turn', () => {
    const text = `${HEAD}sides left, right

parts
  arm: Lower arm

fasteners
  bush-bolt: Bush bolts
    2 of M12x1.5, class 10.9, hex 18 mm
    torque 90 N·m, at ride height

preparation
  step: Up
    raise vehicle with jack at sills
installation
  step: Torque at ride height
    load suspension at arm with jack
    torque bush-bolt, 90 N·m
    unload suspension at arm
completion
  step: Down
    lower vehicle
`;
    expect(lower(text).lines.map((line) => line.replace(/ \{.*/, ''))).toEqual([
      '# 1 Up',
      '1.1 Raise the vehicle at the sill lifting points with the trolley jack.',
      '# 2 Torque at ride height, left',
      '2.1 Load the suspension at the lower arm with the trolley jack.',
      '2.2 Torque the bush bolts (2, left).',
      '2.3 Unload the suspension at the lower arm.',
      '# 3 Torque at ride height, right',
      '3.1 Load the suspension at the lower arm with the trolley jack.',
      '3.2 Torque the bush bolts (2, right).',
      '3.3 Unload the suspension at the lower arm.',
      '# 4 Down',
      '4.1 Lower the vehicle.',
    ]);
  });

  const joint = (work: string) => `${HEAD}sides left, right

parts
  cover: Axle cover
    held by cover-bolt
    sealed with paste on face

fasteners
  cover-bolt: Cover bolts
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m

supplies
  paste: Sealing paste
    sealant
    amount 5 mL
    fit within 10 min
    fill after 2 h
  lube: Pin grease
    grease

temporary
  sheet: Sheet over the opening
    behind cover

places
  face: Cover face

installation
  step: Close
    ${work.split('; ').join('\n    ')}
`;

  it('put the sealant on each face just before its own cover, with what covers each opening', () => {
    const { lines, document } = lower(
      joint('place sheet; remove sheet; apply paste to face; install cover, cover-bolt; wait 5 min'),
    );
    expect(lines.filter((line) => !line.startsWith('[')).map((line) => line.split(' {')[0])).toEqual([
      '# 1 Close, left',
      '1.1 Place the sheet over the opening.',
      '1.2 Remove the sheet over the opening.',
      '1.3 Apply sealing paste to the cover face.',
      '1.4 Install the axle cover (left).',
      '1.5 Install the cover bolts (4, left), by hand.',
      '1.6 Wait 5 min.',
      '# 2 Close, right',
      '2.1 Place the sheet over the opening.',
      '2.2 Remove the sheet over the opening.',
      '2.3 Apply sealing paste to the cover face.',
      '2.4 Install the axle cover (right).',
      '2.5 Install the cover bolts (4, right), by hand.',
      '2.6 Wait 5 min.',
    ]);
    // Nothing is filled here, so nothing waits for it.
    const clocks = [...walkBlocks(document.blocks)].flatMap((block) =>
      block.kind === 'row' ? block.beside.flatMap((box) => (box.kind === 'clock' ? [box.id] : [])) : [],
    );
    expect(clocks).toEqual(['fit-within-r1-3', 'wait-r1-6', 'fit-within-r2-3', 'wait-r2-6']);
  });

  it('wait once where both sides have come to it', () => {
    const { lines } = lower(joint('torque cover-bolt; wait 5 min; chock wheels-behind'));
    expect(lines).toEqual([
      '# 1 Close',
      '1.1 Torque the cover bolts (4, left). {0 off, 0 to torque}',
      '1.2 Torque the cover bolts (4, right). {0 off, 0 to torque}',
      '1.3 Wait 5 min. {0 off, 0 to torque}',
      '1.4 Chock the rear wheels. {0 off, 0 to torque}',
    ]);
  });

  it('tell the sides apart on a face too, where the step is for both', () => {
    expect(lower(joint('torque cover-bolt; inspect face; chock wheels-behind')).lines).toEqual([
      '# 1 Close',
      '1.1 Torque the cover bolts (4, left). {0 off, 0 to torque}',
      '1.2 Inspect the cover face (left). {0 off, 0 to torque}',
      '1.3 Torque the cover bolts (4, right). {0 off, 0 to torque}',
      '1.4 Inspect the cover face (right). {0 off, 0 to torque}',
      '1.5 Chock the rear wheels. {0 off, 0 to torque}',
    ]);
  });

  it('add up what both take, declared or said', () => {
    const supplies = (work: string, choice = {}) =>
      needsOf(lower(joint(work), choice)).filter((line) => line.startsWith('Supplies'));
    expect(supplies('apply paste to face; install cover')).toEqual([
      'Supplies: Sealing paste, 10 mL (0.34 US fl oz) | 1.1, 2.1',
    ]);
    expect(supplies('apply paste to face; install cover', { side: 'left' })).toEqual([
      'Supplies: Sealing paste, 5 mL (0.17 US fl oz) | 1.1',
    ]);
    expect(supplies('apply lube, 60 g, to face; install cover')).toEqual([
      'Supplies: Pin grease, 120 g (4.23 oz) | 1.1, 2.1',
    ]);
    expect(supplies('chock wheels-behind; apply paste to sills; chock wheels-behind')).toEqual([
      'Supplies: Sealing paste, 5 mL (0.17 US fl oz) | 1.2',
    ]);
  });

  it('come back for both in one line, and the record of this visit does not wait for it', () => {
    const { lines, document } = lower(joint('torque cover-bolt; recheck cover-bolt, after 50 km'));
    expect(lines.at(-1)).toBe(
      '1.3 Recheck the cover bolts (8, left and right) after 50 km (31.1 mi). {0 off, 0 to torque}',
    );
    const rows = [...walkBlocks(document.blocks)].flatMap((block) => (block.kind === 'row' ? [block] : []));
    expect(rows.map(({ isLater }) => isLater ?? false)).toEqual([false, false, true]);
    const record = lower(joint('torque cover-bolt; recheck cover-bolt, after 50 km')).block('record-torques');
    expect(record.rows.map(({ joint: name, count }) => [name, count])).toEqual([
      ['Cover bolts, left', 4],
      ['Cover bolts, right', 4],
      ['Cover bolts, recheck', 8],
    ]);
  });
});
