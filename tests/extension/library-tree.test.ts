// The library view: vehicles with their procedures, guides out of date, figures and where they are used.
import { expect, test } from 'vitest';
import { type LibraryNode, libraryTree } from '../../extension/src/views/library-tree.js';
import type { LibraryProcedure, Location } from '../../server/src/protocol.js';

const WORDS = {
  outOfDate: 'Guides out of date',
  figures: 'Where figures are used',
  anyVehicle: 'Any vehicle',
};
const NONE = { errors: 0, warnings: 0, questions: 0 };
const van = { name: 'maristow-300', title: 'Maristow 300 delivery van' };
const tractor = { name: 'corrow-y40', title: 'Corrow Y40 yard tractor' };
const at: Location = {
  uri: 'file:///a.bay',
  range: { start: { line: 3, character: 0 }, end: { line: 3, character: 4 } },
};

function procedure(number: string, more: Partial<LibraryProcedure> = {}): LibraryProcedure {
  return {
    uri: `file:///${number}.bay`,
    number,
    title: 'Work',
    vehicles: [van],
    status: 'draft',
    findings: NONE,
    ...more,
  };
}

/** The tree as indented lines. */
function outline(nodes: readonly LibraryNode[], indent = ''): string[] {
  return nodes.flatMap((node) => [
    `${indent}${node.label}${node.detail && ` (${node.detail})`}`,
    ...outline(node.children ?? [], `${indent}  `),
  ]);
}

test('an empty library has no groups', () => {
  expect(libraryTree({ procedures: [], specs: [] }, WORDS)).toEqual([]);
});

test('procedures stand by vehicle and number; one for two vehicles stands under both', () => {
  const procedures = [
    procedure('FH-12'),
    procedure('FH-2', { revision: 3, status: 'released' }),
    procedure('WH-1', { vehicles: [van, tractor] }),
    procedure('Z-1', { vehicles: [] }),
  ];
  expect(outline(libraryTree({ procedures, specs: [] }, WORDS))).toEqual([
    'Any vehicle',
    '  Z-1  Work (draft)',
    'Corrow Y40 yard tractor',
    '  WH-1  Work (draft)',
    'Maristow 300 delivery van',
    '  FH-2  Work (released, rev. 3)',
    '  FH-12  Work (draft)',
    '  WH-1  Work (draft)',
  ]);
});

test('a guide out of date says why', () => {
  const procedures = [procedure('FH-12', { outOfDate: 'hub bolt torque 105 → 115 N·m' })];
  expect(outline(libraryTree({ procedures, specs: [] }, WORDS))).toContain(
    '  FH-12  Work (hub bolt torque 105 → 115 N·m)',
  );
});

test('a figure lists its uses', () => {
  const specs = [
    {
      name: 'wheel-nut torque',
      title: 'Wheel nuts, torque',
      figure: '160 N·m',
      location: at,
      uses: [
        { label: 'WH-01 line 28', location: at },
        { label: 'FH-12 line 110', location: at },
      ],
    },
  ];
  expect(outline(libraryTree({ procedures: [], specs }, WORDS))).toEqual([
    'Where figures are used',
    '  Wheel nuts, torque (160 N·m · 2 ×)',
    '    WH-01 line 28',
    '    FH-12 line 110',
  ]);
});
