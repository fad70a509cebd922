// The server's own words in German.
import type { Texts } from './en.js';

export const DE: Texts = {
  when: (variants) => `bei ${variants}`,
  counted: (done, all) => `${done} von ${all}`,
  andMore: (names, more) => `${names} und ${more} weitere`,

  checkingLibrary: 'Bibliothek wird geprüft',
  readingLibrary: 'Bibliothek wird gelesen',
  suppressedNothing: (entries) =>
    `Diese Einträge von baywright.findings.suppress lassen nichts weg: ${entries}`,
  notStarted: 'Baywright wurde noch nicht gestartet.',
  notOurs: (uri) => `${uri ?? 'Das Dokument'} ist keine Baywright-Datei dieses Ordners.`,

  mendAll: (count, name) => `Alle ${count} Befunde „${name}“ in dieser Datei beheben`,
  importFor: (path, name) => `${path} für ${name} verwenden`,
  performFrom: (operation, number) => `${operation} aus ${number} ausführen`,
  acceptHere: (code) => `${code} hier hinnehmen, mit Begründung`,
  applySafe: 'Alle sicheren Korrekturen anwenden',
  organiseImports: 'Importe ordnen',
  fittingHalf: 'Den Einbau aus dem Ausbau schreiben',
  moveTo: (name, file) => `${name} nach ${file} verschieben`,
  writeAs: (quantity) => `Als ${quantity} schreiben`,
  referTo: (reference) => `Statt der Zahl auf ${reference} verweisen`,
  splitStep: 'Den Schritt hier teilen',
  toOperation: (steps, again) =>
    `${steps === 1 ? 'Diesen Schritt' : 'Diese Schritte'} zu einem Arbeitsgang machen${again === 0 ? '' : `, noch ${again}-mal ausgeführt`}`,

  off: (count) => `${count} ab`,
  backOn: (count) => `${count} wieder dran`,
  owed: (count) => (count === 0 ? 'nichts offen' : `${count} offen`),
  usedBy: (count) =>
    count === 0
      ? 'von keiner anderen Anweisung benutzt'
      : count === 1
        ? 'von 1 Anweisung benutzt'
        : `von ${count} Anweisungen benutzt`,

  beforeLine: (state) => `Vor dieser Zeile: ${state}`,
  mayMean: (word, units) => `„${word}“ kann ${units.join(' oder ')} heißen.`,
  asksThat: 'Verlangt',
  comesOffAfter: (names, more) => `Ausbau nach ${more > 0 ? `${more} weiteren, ` : ''}${names}`,
  setOnWrench: (torque, name) => `Am Schlüssel **${torque}** einstellen für ${name}`,
  ofDrag: (torque) => `${torque} Klemmmoment`,
  adapterOn: (adapter, offset, wrench, lever) => `${adapter} mit ${offset} mm auf ${wrench} mit ${lever} mm`,
  fromTo: (low, high) => `${low} bis ${high}`,
  preload: (force, percent) => `Vorspannkraft ${force}, ${percent} % der Prüfkraft`,
  withFriction: (low, high) => `(je nach Reibung ${low} bis ${high})`,
  pitch: (length) => `Steigung ${length}`,
  stressArea: (area) => `Spannungsquerschnitt ${area}`,
  strength: (proof, tensile) => `Prüfspannung ${proof} MPa, Zugfestigkeit ${tensile} MPa`,
  wrench: (name) => `Schlüssel: ${name}`,
  stepsComeTo: (handsOn, waiting, all) =>
    `Die Schritte ergeben **${handsOn}** Handarbeit (übliche Minuten der reinen Arbeit), ${waiting ?? 'keine'} Wartezeit, ${all} insgesamt`,
  lastsFrom: (least) => `Hält ab ${least} bis zum nächsten Service`,
  newLasts: (services) => `ein neues hält ${services} ${services === 1 ? 'Service' : 'Services'}`,
  fresh: 'neu',
  since: (step) => `seit „${step}“`,

  mayBeLeftOut: 'Kann entfallen.',
  oneOrMore: 'Eines oder mehrere, mit Kommas.',
  notYet: (names) => `Noch nicht: zuerst ${names}.`,
  undeclared: 'benutzt und nicht angegeben',
  ofASet: 'aus einem Satz',
  mark: 'Merkmal',
  thread: 'Gewinde',
  anotherValue: 'Ein weiterer Wert.',
  anotherOption: 'Eine weitere Ausstattung.',
  alternative: 'Nennt eine Alternative.',
  onlyForThese: 'Nur für diese Varianten.',
  lineOnlyFor: 'Die Zeile gilt nur für diese Varianten.',
  existsOnlyOn: 'Das gibt es nur bei diesen Varianten.',
  fromProcedure: 'Die Anweisung, in der der Arbeitsgang steht.',
  usual: 'üblich',
  belowLimit: 'Der Messwert liegt unter der Grenze.',
  aboveLimit: 'Der Messwert liegt über der Grenze.',
  outsideLimit: 'Der Messwert liegt unter oder über der Grenze.',
  withinLimit: 'Der Messwert liegt in seinen Grenzen.',
  isRejected: 'Was geprüft wurde, taugt nicht mehr.',
  isNeeded: 'Es geht nicht von selbst ab oder an.',
  stepSnippet: 'Ein Schritt mit seiner ersten Zeile.',
  partSnippet: 'Ein Teil mit dem, was es hält.',
  fastenerSnippet: 'Ein Satz Schrauben mit Gewinde, Kopf und Drehmoment.',
  procedureSnippet: 'Eine Anweisung von der ersten Zeile bis zum ersten Schritt.',
  retainer: 'ohne Gewinde',
  notKnownYet: 'noch nicht bekannt',
  turnBack: 'Vor der nächsten Stufe zurückgedreht.',
  nextStage: 'Eine weitere Stufe des Drehmoments.',
  setSnippet: 'Wie viele, mit welchem Gewinde und welchem Kopf.',
  entrySnippet: 'Ein Eintrag mit seinem Titel.',
  catalogueSnippet: 'Ein Katalog von der ersten Zeile bis zum Fahrzeug.',
  measureSnippet: 'Eine Messung, und was jenseits der Grenze getan wird.',
  inspectSnippet: 'Ein Blick, und was das Teil unbrauchbar macht.',
  liftSnippet: 'Keile, Heben und Abstützen, mit der Warnung davor.',
  fromYear: 'Das erste Modelljahr.',
  whatDay: 'Der Tag, etwa 2026-10-05.',
  byWhom: 'Wer unterschrieben hat.',

  noNameHere: 'Hier steht kein angegebener Name, der umbenannt werden kann.',
  notAName: (name) =>
    `„${name}“ kann kein Name sein: Buchstaben, Ziffern und einzelne Bindestriche, mit einem Buchstaben am Anfang.`,
  notSmall: (name) => `„${name}“ kann kein Name sein: Namen werden klein geschrieben.`,
  reserved: (name) => `„${name}“ kann kein Name sein: Das Wort bedeutet etwas in der Sprache.`,
  nameTaken: (name, title) => `„${name}“ ist schon der Name von ${title}.`,
  notAWord: (word) =>
    `„${word}“ kann hier nicht stehen: kleine Buchstaben, Ziffern und einzelne Bindestriche.`,
  wordTaken: (word, beside) => `„${word}“ steht schon neben „${beside}“.`,

  noGuides: 'Anleitungen macht der Befehl baywright, der hier fehlt.',
  noSigning: 'Unterschrieben und ausgegeben wird mit dem Befehl baywright, der hier fehlt.',
  noPreview: 'Die Vorschau macht der Befehl baywright, der hier fehlt.',
};
