// The server's own words in French.
import type { Texts } from './en.js';

export const FR: Texts = {
  when: (variants) => `pour ${variants}`,
  counted: (done, all) => `${done} sur ${all}`,
  andMore: (names, more) => `${names} et ${more} de plus`,

  checkingLibrary: 'Contrôle de la bibliothèque',
  readingLibrary: 'Lecture de la bibliothèque',
  suppressedNothing: (entries) => `Ces entrées de baywright.findings.suppress n’écartent rien : ${entries}`,
  notStarted: 'Baywright n’est pas encore démarré.',
  notOurs: (uri) => `${uri ?? 'Le document'} n’est pas un fichier Baywright de ce dossier.`,

  mendAll: (count, name) => `Corriger les ${count} constats « ${name} » de ce fichier`,
  importFor: (path, name) => `Utiliser ${path} pour ${name}`,
  performFrom: (operation, number) => `Exécuter ${operation} de ${number}`,
  acceptHere: (code) => `Accepter ${code} ici, avec un motif`,
  applySafe: 'Appliquer toutes les corrections sûres',
  organiseImports: 'Ranger les imports',
  fittingHalf: 'Écrire la repose à partir de la dépose',
  moveTo: (name, file) => `Déplacer ${name} vers ${file}`,
  writeAs: (quantity) => `Écrire ${quantity}`,
  referTo: (reference) => `Renvoyer à ${reference} au lieu d’un nombre`,
  splitStep: 'Couper l’étape ici',
  toOperation: (steps, again) =>
    `Faire de ${steps === 1 ? 'cette étape' : 'ces étapes'} une opération${again === 0 ? '' : `, exécutée encore ${again} fois`}`,

  off: (count) => `${count} ${count > 1 ? 'déposés' : 'déposé'}`,
  backOn: (count) => `${count} ${count > 1 ? 'reposés' : 'reposé'}`,
  owed: (count) => (count === 0 ? 'rien à faire encore' : `${count} à faire encore`),
  usedBy: (count) =>
    count === 0
      ? 'aucune autre procédure ne l’utilise'
      : count === 1
        ? 'utilisé par 1 procédure'
        : `utilisé par ${count} procédures`,

  beforeLine: (state) => `Avant cette ligne : ${state.slice(0, 1).toLowerCase()}${state.slice(1)}`,
  mayMean: (word, units) => `« ${word} » peut signifier ${units.join(' ou ')}.`,
  asksThat: 'Demande que',
  comesOffAfter: (names, more) => `Se dépose après ${more > 0 ? `${more} autres, ` : ''}${names}`,
  setOnWrench: (torque, name) => `Régler la clé à **${torque}** pour ${name}`,
  ofDrag: (torque) => `${torque} de couple de freinage`,
  adapterOn: (adapter, offset, wrench, lever) => `${adapter} de ${offset} mm sur ${wrench} de ${lever} mm`,
  fromTo: (low, high) => `${low} à ${high}`,
  preload: (force, percent) => `précharge ${force}, ${percent} % de la charge d’épreuve`,
  withFriction: (low, high) => `(de ${low} à ${high} selon le frottement)`,
  pitch: (length) => `Pas ${length}`,
  stressArea: (area) => `Section résistante ${area}`,
  strength: (proof, tensile) => `Contrainte d’épreuve ${proof} MPa, résistance à la traction ${tensile} MPa`,
  wrench: (name) => `clé : ${name}`,
  stepsComeTo: (handsOn, waiting, all) =>
    `Les étapes font **${handsOn}** de main-d’œuvre (minutes usuelles du travail seul), ${waiting ?? 'aucune'} d’attente, ${all} en tout`,
  lastsFrom: (least) => `Tient jusqu’au prochain entretien à partir de ${least}`,
  newLasts: (services) => `une pièce neuve tient ${services} ${services > 1 ? 'entretiens' : 'entretien'}`,
  fresh: 'neuf',
  since: (step) => `depuis « ${step} »`,

  mayBeLeftOut: 'Peut être omis.',
  oneOrMore: 'Un ou plusieurs, avec des virgules.',
  notYet: (names) => `Pas encore : d’abord ${names}.`,
  undeclared: 'utilisé et non déclaré',
  ofASet: 'd’un jeu',
  mark: 'marque',
  thread: 'filetage',
  anotherValue: 'Une autre valeur.',
  anotherOption: 'Une autre option.',
  alternative: 'Nomme une autre possibilité.',
  onlyForThese: 'Pour ces variantes seulement.',
  lineOnlyFor: 'La ligne ne vaut que pour ces variantes.',
  existsOnlyOn: 'N’existe que sur ces variantes.',
  fromProcedure: 'La procédure qui contient l’opération.',
  usual: 'd’usage',
  belowLimit: 'La mesure est sous sa limite.',
  aboveLimit: 'La mesure dépasse sa limite.',
  outsideLimit: 'La mesure est sous sa limite ou la dépasse.',
  withinLimit: 'La mesure est dans ses limites.',
  isRejected: 'Ce qui a été contrôlé n’est plus bon.',
  isNeeded: 'Cela ne vient pas ou n’entre pas tout seul.',
  stepSnippet: 'Une étape avec sa première ligne.',
  partSnippet: 'Une pièce avec ce qui la tient.',
  fastenerSnippet: 'Un jeu de vis avec filetage, tête et couple.',
  procedureSnippet: 'Une procédure, de sa première ligne à sa première étape.',
  retainer: 'sans filetage',
  notKnownYet: 'pas encore connu',
  turnBack: 'Desserré avant l’étape suivante.',
  nextStage: 'Une autre étape du couple.',
  setSnippet: 'Combien, de quel filetage et de quelle tête.',
  entrySnippet: 'Une entrée avec son titre.',
  catalogueSnippet: 'Un catalogue de la première ligne au véhicule.',
  fromYear: 'La première année-modèle.',
  whatDay: 'Le jour, comme 2026-10-05.',
  byWhom: 'Qui a signé.',

  noNameHere: 'Il n’y a pas ici de nom déclaré à changer.',
  notAName: (name) =>
    `« ${name} » ne peut pas être un nom : lettres, chiffres et traits d’union isolés, en commençant par une lettre.`,
  notSmall: (name) => `« ${name} » ne peut pas être un nom : les noms s’écrivent en minuscules.`,
  reserved: (name) => `« ${name} » ne peut pas être un nom : le mot a un sens dans le langage.`,
  nameTaken: (name, title) => `« ${name} » est déjà le nom de ${title}.`,
  notAWord: (word) =>
    `« ${word} » ne peut pas se mettre ici : minuscules, chiffres et traits d’union isolés.`,
  wordTaken: (word, beside) => `« ${word} » est déjà là à côté de « ${beside} ».`,

  noGuides: 'Les guides sont faits par la commande baywright, qui manque ici.',
  noSigning: 'On signe et diffuse avec la commande baywright, qui manque ici.',
  noPreview: 'L’aperçu est fait par la commande baywright, qui manque ici.',
};
