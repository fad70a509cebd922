// The server's own words in Spanish.
import type { Texts } from './en.js';

export const ES: Texts = {
  when: (variants) => `con ${variants}`,
  counted: (done, all) => `${done} de ${all}`,
  andMore: (names, more) => `${names} y ${more} más`,

  checkingLibrary: 'Comprobando la biblioteca',
  readingLibrary: 'Leyendo la biblioteca',
  suppressedNothing: (entries) => `Estas entradas de baywright.findings.suppress no omiten nada: ${entries}`,
  notStarted: 'Baywright aún no se ha iniciado.',
  notOurs: (uri) => `${uri ?? 'El documento'} no es un archivo Baywright de esta carpeta.`,

  mendAll: (count, name) => `Corregir los ${count} hallazgos «${name}» de este archivo`,
  importFor: (path, name) => `Usar ${path} para ${name}`,
  acceptHere: (code) => `Aceptar ${code} aquí, con un motivo`,
  applySafe: 'Aplicar todas las correcciones seguras',
  organiseImports: 'Ordenar las importaciones',
  fittingHalf: 'Escribir el montaje a partir del desmontaje',
  moveTo: (name, file) => `Mover ${name} a ${file}`,
  writeAs: (quantity) => `Escribir como ${quantity}`,
  referTo: (reference) => `Remitir a ${reference} en lugar de un número`,
  splitStep: 'Dividir el paso aquí',
  toOperation: (steps, again) =>
    `Convertir ${steps === 1 ? 'este paso' : 'estos pasos'} en una operación${again === 0 ? '' : `, realizada ${again === 1 ? 'una vez más' : `${again} veces más`}`}`,

  off: (count) => `${count} fuera`,
  backOn: (count) => `${count} de nuevo en su sitio`,
  owed: (count) => (count === 0 ? 'nada pendiente' : `${count} pendientes`),
  usedBy: (count) =>
    count === 0
      ? 'no lo usa ningún otro procedimiento'
      : count === 1
        ? 'lo usa 1 procedimiento'
        : `lo usan ${count} procedimientos`,

  beforeLine: (state) => `Antes de esta línea: ${state.slice(0, 1).toLowerCase()}${state.slice(1)}`,
  mayMean: (word, units) => `«${word}» puede significar ${units.join(' o ')}.`,
  asksThat: 'Exige que',
  comesOffAfter: (names, more) => `Se desmonta después de ${more > 0 ? `${more} más, ` : ''}${names}`,
  setOnWrench: (torque, name) => `Ajustar la llave a **${torque}** para ${name}`,
  ofDrag: (torque) => `${torque} de par de freno`,
  adapterOn: (adapter, offset, wrench, lever) => `${adapter} de ${offset} mm en ${wrench} de ${lever} mm`,
  fromTo: (low, high) => `${low} a ${high}`,
  preload: (force, percent) => `precarga ${force}, ${percent} % de la carga de prueba`,
  withFriction: (low, high) => `(de ${low} a ${high} según el rozamiento)`,
  wrench: (name) => `llave: ${name}`,
  stepsComeTo: (handsOn, waiting, all) =>
    `Los pasos suman **${handsOn}** de manos (minutos usuales del trabajo solo), ${waiting ?? 'nada'} de espera, ${all} en total`,
  lastsFrom: (least) => `Dura hasta el próximo servicio a partir de ${least}`,
  newLasts: (services) => `uno nuevo dura ${services} ${services === 1 ? 'servicio' : 'servicios'}`,
  fresh: 'nuevo',
  since: (step) => `desde «${step}»`,

  mayBeLeftOut: 'Puede omitirse.',
  oneOrMore: 'Uno o varios, con comas.',
  notYet: (names) => `Todavía no: primero ${names}.`,
  undeclared: 'usado y no declarado',
  ofASet: 'de un juego',
  mark: 'marca',
  thread: 'rosca',
  anotherValue: 'Otro valor.',
  anotherOption: 'Otra opción.',
  alternative: 'Nombra una alternativa.',
  onlyForThese: 'Solo para estas variantes.',
  lineOnlyFor: 'La línea vale solo para estas variantes.',
  existsOnlyOn: 'Solo existe en estas variantes.',
  fromProcedure: 'El procedimiento que tiene la operación.',
  usual: 'lo usual',
  belowLimit: 'La lectura está por debajo de su límite.',
  aboveLimit: 'La lectura está por encima de su límite.',
  outsideLimit: 'La lectura está por debajo o por encima de su límite.',
  isRejected: 'Lo que se miró no sirve.',
  isNeeded: 'No sale ni entra por sí solo.',
  stepSnippet: 'Un paso con su primera línea.',
  partSnippet: 'Una pieza con lo que la sujeta.',
  fastenerSnippet: 'Un juego de tornillos con rosca, cabeza y par.',
  procedureSnippet: 'Un procedimiento desde su primera línea hasta el primer paso.',
  retainer: 'sin rosca',
  notKnownYet: 'aún no se sabe',
  turnBack: 'Se gira hacia atrás antes de la etapa siguiente.',
  nextStage: 'Otra etapa del par.',
  setSnippet: 'Cuántos, con qué rosca y qué cabeza.',
  entrySnippet: 'Una entrada con su título.',
  catalogueSnippet: 'Un catálogo desde la primera línea hasta el vehículo.',
  fromYear: 'El primer año de modelo.',
  byWhom: 'Quién ha firmado.',

  noNameHere: 'Aquí no hay ningún nombre declarado que cambiar.',
  notAName: (name) =>
    `«${name}» no puede ser un nombre: letras, cifras y guiones sueltos, empezando por una letra.`,
  notSmall: (name) => `«${name}» no puede ser un nombre: los nombres van en minúsculas.`,
  nameTaken: (name, title) => `«${name}» ya es el nombre de ${title}.`,
  notAWord: (word) => `«${word}» no puede estar aquí: minúsculas, cifras y guiones sueltos.`,
  wordTaken: (word, beside) => `«${word}» ya está junto a «${beside}».`,

  noGuides: 'Las guías las hace el programa baywright, que no está aquí.',
  noSigning: 'Los procedimientos se firman y emiten con el programa baywright, que no está aquí.',
  noPreview: 'La vista previa la hace el programa baywright, que no está aquí.',
};
