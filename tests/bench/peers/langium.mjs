// A small Langium grammar with braces: names declared and referred to, no semantics. In process, which spares it the
// protocol and every debounce.
import { peer } from '../measure.mjs';

const GRAMMAR = `grammar Procedure
entry Procedure: 'procedure' number=STRING title=STRING '{' (things+=Thing | phases+=Phase)* '}';
Thing: Part | Fastener;
Part: 'part' name=ID title=STRING '{' ('held' 'by' held+=[Fastener:ID] (',' held+=[Fastener:ID])*)? '}';
Fastener: 'fastener' name=ID title=STRING '{' 'count' count=INT 'thread' thread=STRING 'class' class=STRING
  'torque' torque=INT 'per' source=STRING '}';
Phase: 'phase' name=ID '{' steps+=Step* '}';
Step: 'step' title=STRING '{' statements+=Statement* '}';
Statement: verb=('remove' | 'install' | 'torque') things+=[Thing:ID] (',' things+=[Thing:ID])*;
hidden terminal WS: /\\s+/;
terminal ID: /[a-z][a-z0-9]*-[0-9]+|removal|installation/;
terminal INT returns number: /[0-9]+/;
terminal STRING: /"[^"]*"/;
`;

/** Services, with a way to make a document of a text and to replace the text of one. */
export async function langium() {
  const { createServicesForGrammar } = await peer('langium/grammar');
  const { URI } = await peer('langium');
  const { shared } = await createServicesForGrammar({ grammar: GRAMMAR });
  const options = { validation: true };
  let count = 0;
  return {
    async open(text) {
      const uri = URI.parse(`memory:///${count++}.txt`);
      const document = shared.workspace.LangiumDocumentFactory.fromString(text, uri);
      shared.workspace.LangiumDocuments.addDocument(document);
      await shared.workspace.DocumentBuilder.build([document], options);
      const errors = document.parseResult.parserErrors.length + (document.diagnostics?.length ?? 0);
      if (errors > 0)
        throw new Error(`the peer's own text has ${errors} errors: ${document.diagnostics?.[0]?.message}`);
      return document;
    },
    async replace(document, text) {
      shared.workspace.LangiumDocuments.deleteDocument(document.uri);
      const next = shared.workspace.LangiumDocumentFactory.fromString(text, document.uri);
      shared.workspace.LangiumDocuments.addDocument(next);
      await shared.workspace.DocumentBuilder.build([next], options);
      return next;
    },
  };
}
