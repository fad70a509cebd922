// Synthetic procedures, the same content in each notation: groups of a part with its bolts, taken off and put back.
// Invented data, made by a rule, so that every run and every machine measures the same texts.

/** What a procedure of about `lines` Baywright lines is about. `options`: two-valued options that its lines turn on. */
export function procedure(number, lines, options = 0) {
  const count = Math.max(1, Math.round((lines - 12) / 11));
  return {
    number,
    title: 'Synthetic job',
    options,
    groups: Array.from({ length: count }, (_, i) => ({
      part: `part-${i}`,
      partTitle: `Part ${i}`,
      bolt: `bolt-${i}`,
      boltTitle: `Bolts of part ${i}`,
      torque: 20 + (i % 6),
      option: options > 0 ? `option-${i % options}` : undefined,
    })),
  };
}

export function bay({ number, title, groups }, uses = 'catalogue.bay') {
  const when = ({ option }) => (option ? `, when ${option} yes` : '');
  return [
    `procedure ${number}: ${title}`,
    '',
    `use "${uses}"`,
    '',
    'applies to van',
    'labour 1 h',
    '',
    'parts',
    ...groups.flatMap((g) => [`  ${g.part}: ${g.partTitle}`, `    held by ${g.bolt}`]),
    '',
    'fasteners',
    ...groups.flatMap((g) => [
      `  ${g.bolt}: ${g.boltTitle}`,
      '    4 of M8x1.25, class 8.8, hex 13 mm',
      `    torque ${g.torque} N·m, per "S-1"`,
    ]),
    '',
    'removal',
    ...groups.flatMap((g) => [
      `  step: Take part ${g.part.slice(5)} off`,
      `    remove ${g.bolt}, ${g.part}${when(g)}`,
    ]),
    '',
    'installation',
    ...groups.flatMap((g) => [
      `  step: Fit part ${g.part.slice(5)}`,
      `    install ${g.part}, ${g.bolt}${when(g)}`,
      `    torque ${g.bolt}${when(g)}`,
    ]),
    '',
  ].join('\n');
}

/** The longest that a shop may want on one guide: `steps` steps of which every seventh has a fastener of its own. */
export function longJob(number, steps) {
  const fasteners = Math.round((steps * 3) / 20);
  const looks = Array.from({ length: steps - 2 * fasteners }, (_, i) => [
    `  step: Look at part ${i % fasteners}, round ${Math.floor(i / fasteners) + 1}`,
    `    inspect part-${i % fasteners}: No crack, no wear.`,
  ]);
  return bay(procedure(number, fasteners * 11 + 12)).replace(
    '\ninstallation\n',
    `\ninspection\n${looks.flat().join('\n')}\n\ninstallation\n`,
  );
}

export function catalogue(options = 0, title = 'Synthetic van') {
  return [
    `catalogue: ${title}`,
    '',
    'sources',
    '  S-1: Sheet 1',
    '',
    'vehicles',
    '  van: Van',
    '    years 2018 to 2025',
    ...Array.from({ length: options }, (_, i) => `    option option-${i} yes, no`),
    '',
    'places',
    '  rear-wheels: Rear wheels',
    '',
  ].join('\n');
}

/** The same as data, as a house would keep it in YAML or JSON. */
export function data({ number, title, groups }) {
  return {
    procedure: number,
    title,
    use: ['catalogue'],
    applies: 'van',
    labour: '1 h',
    parts: Object.fromEntries(groups.map((g) => [g.part, { title: g.partTitle, 'held by': [g.bolt] }])),
    fasteners: Object.fromEntries(
      groups.map((g) => [
        g.bolt,
        {
          title: g.boltTitle,
          count: 4,
          thread: 'M8x1.25',
          class: '8.8',
          hex: '13 mm',
          torque: `${g.torque} N·m`,
          per: 'S-1',
        },
      ]),
    ),
    removal: groups.map((g) => ({
      step: `Take part ${g.part.slice(5)} off`,
      do: [{ remove: [g.bolt, g.part] }],
    })),
    installation: groups.map((g) => ({
      step: `Fit part ${g.part.slice(5)}`,
      do: [{ install: [g.part, g.bolt] }, { torque: [g.bolt] }],
    })),
  };
}

const names = { type: 'array', items: { type: 'string', pattern: '^[a-z][a-z0-9-]*$' } };
const steps = {
  type: 'array',
  items: {
    type: 'object',
    additionalProperties: false,
    required: ['step', 'do'],
    properties: {
      step: { type: 'string' },
      do: {
        type: 'array',
        items: {
          type: 'object',
          additionalProperties: false,
          minProperties: 1,
          maxProperties: 1,
          properties: { remove: names, install: names, torque: names },
        },
      },
    },
  },
};
const entry = (properties) => ({
  type: 'object',
  additionalProperties: {
    type: 'object',
    additionalProperties: false,
    required: ['title'],
    properties: { title: { type: 'string' }, ...properties },
  },
});

/** JSON Schema of {@link data}: its shape only, which is all that a schema can say. */
export const SCHEMA = {
  $schema: 'http://json-schema.org/draft-07/schema#',
  type: 'object',
  additionalProperties: false,
  required: ['procedure', 'title'],
  properties: {
    procedure: { type: 'string', pattern: '^[A-Z]+-[0-9]+$' },
    title: { type: 'string' },
    use: { type: 'array', items: { type: 'string' } },
    applies: { type: 'string' },
    labour: { type: 'string' },
    parts: entry({ 'held by': names }),
    fasteners: entry({
      count: { type: 'integer', minimum: 1 },
      thread: { type: 'string', pattern: '^M[0-9]+x[0-9.]+$' },
      class: { enum: ['8.8', '10.9', '12.9'] },
      hex: { type: 'string' },
      torque: { type: 'string', pattern: '^[0-9.]+ N·m$' },
      per: { type: 'string' },
    }),
    removal: steps,
    installation: steps,
  },
};

export function markdown({ number, title, groups }) {
  return [
    `# ${number}: ${title}`,
    '',
    'Applies to van. Labour 1 h.',
    '',
    '## Parts',
    '',
    ...groups.map((g) => `- **${g.part}**: ${g.partTitle}, held by *${g.bolt}*`),
    '',
    '## Fasteners',
    '',
    '| Name | What | Count | Thread | Class | Torque | Source |',
    '|---|---|---|---|---|---|---|',
    ...groups.map((g) => `| ${g.bolt} | ${g.boltTitle} | 4 | M8x1.25 | 8.8 | **${g.torque} N·m** | S-1 |`),
    '',
    '## Removal',
    '',
    ...groups.flatMap((g, i) => [
      `${i + 1}. Take part ${i} off`,
      '',
      `   - Remove *${g.bolt}* and *${g.part}*.`,
    ]),
    '',
    '## Installation',
    '',
    ...groups.flatMap((g, i) => [
      `${i + 1}. Fit part ${i}`,
      '',
      `   - Install *${g.part}* and *${g.bolt}*.`,
      `   - Torque *${g.bolt}* to **${g.torque} N·m**.`,
    ]),
    '',
  ].join('\n');
}

export function asciidoc({ number, title, groups }) {
  return [
    `= ${number}: ${title}`,
    '',
    'Applies to van. Labour 1 h.',
    '',
    '== Parts',
    '',
    ...groups.map((g) => `* *${g.part}*: ${g.partTitle}, held by _${g.bolt}_`),
    '',
    '== Fasteners',
    '',
    '|===',
    '|Name |What |Count |Thread |Class |Torque |Source',
    '',
    ...groups.map((g) => `|${g.bolt} |${g.boltTitle} |4 |M8x1.25 |8.8 |*${g.torque} N·m* |S-1`),
    '|===',
    '',
    '== Removal',
    '',
    ...groups.flatMap((g, i) => [`. Take part ${i} off`, `* Remove _${g.bolt}_ and _${g.part}_.`]),
    '',
    '== Installation',
    '',
    ...groups.flatMap((g, i) => [
      `. Fit part ${i}`,
      `* Install _${g.part}_ and _${g.bolt}_.`,
      `* Torque _${g.bolt}_ to *${g.torque} N·m*.`,
    ]),
    '',
  ].join('\n');
}

/** For the grammar of peers/langium.mjs. */
export function braces({ number, title, groups }) {
  return [
    `procedure "${number}" "${title}" {`,
    ...groups.flatMap((g) => [`  part ${g.part} "${g.partTitle}" {`, `    held by ${g.bolt}`, '  }']),
    ...groups.flatMap((g) => [
      `  fastener ${g.bolt} "${g.boltTitle}" {`,
      '    count 4 thread "M8x1.25" class "8.8"',
      `    torque ${g.torque} per "S-1"`,
      '  }',
    ]),
    '  phase removal {',
    ...groups.flatMap((g, i) => [
      `    step "Take part ${i} off" {`,
      `      remove ${g.bolt}, ${g.part}`,
      '    }',
    ]),
    '  }',
    '  phase installation {',
    ...groups.flatMap((g, i) => [
      `    step "Fit part ${i}" {`,
      `      install ${g.part}, ${g.bolt}`,
      `      torque ${g.bolt}`,
      '    }',
    ]),
    '  }',
    '}',
    '',
  ].join('\n');
}
