// The editor settings of Baywright. The manifest's settings, with their descriptions, are generated from this
// schema; the client and server read the values. What belongs to the house, not to one editor, stands in baywright.json.
import { z } from 'zod';

export const editorSettings = z.object({
  'findings.scope': z
    .enum(['open files', 'whole library'])
    .default('whole library')
    .describe('Which files show findings in the Problems panel.')
    .meta({ choices: ['Only files that are open.', 'Every procedure and catalogue in the folder.'] }),
  'findings.suppress': z
    .array(
      z.object({
        files: z.string().describe('Which files, from the folder of baywright.json: `drafts/**`.'),
        codes: z
          .array(z.string())
          .describe('Codes (`F204`), names of findings, or letters for a whole group (`W`).'),
      }),
    )
    .default([])
    .describe(
      'Findings left out in some files. Errors never are: those are accepted in the file, with a reason. Entries that silence nothing are reported.',
    ),
  'inlay.enabled': z
    .boolean()
    .default(true)
    .describe('Show hints inside the text. Off turns off all of them.'),
  'inlay.secondUnits': z
    .boolean()
    .default(true)
    .describe('Show the value in the other unit system behind each quantity.'),
  'inlay.jointFigures': z
    .boolean()
    .default(false)
    .describe('Show what a torque does to its joint (clamp force, share of proof load) behind the torque.'),
  'inlay.fasteners': z
    .boolean()
    .default(false)
    .describe('Show how many of a fastener there are, and its head, behind its name in a step.'),
  'inlay.renewed': z
    .boolean()
    .default(false)
    .describe('Show `new` behind parts and fasteners that are renewed, where they are installed.'),
  'lens.enabled': z
    .boolean()
    .default(true)
    .describe('Show above each phase what is off the vehicle and what is owed when it ends.'),
  'reference.address': z
    .string()
    .default('')
    .describe(
      'Address of a copy of the reference that the codes of findings lead to: it begins with https:// or file://. Empty: their pages open in the editor.',
    ),
  'preview.followCursor': z
    .boolean()
    .default(true)
    .describe('Scroll the preview with the cursor, and the text with the preview.'),
  'preview.paper': z
    .enum(['as printed', 'as the editor'])
    .default('as the editor')
    .describe('The colours of the preview.')
    .meta({ choices: ['Black on white, as the guide is printed.', 'The colours of the editor theme.'] }),
  'vehicleState.followCursor': z
    .boolean()
    .default(true)
    .describe(
      'Show the state of the vehicle at the line under the cursor. When off, it stays at the line where it was last shown.',
    ),
  'tasks.offer': z
    .boolean()
    .default(true)
    .describe('Offer tasks that check the library and build its guides.'),
  'trace.server': z
    .enum(['off', 'messages', 'verbose'])
    .default('off')
    .describe('Write the messages between the editor and the Baywright server to the Baywright log.')
    .meta({
      choices: ['Nothing is written.', 'One line for each message.', 'Each message with its content.'],
    }),
});

export type EditorSettings = z.output<typeof editorSettings>;
