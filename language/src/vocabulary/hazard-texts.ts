// The usual texts of hazards in each output language. Common practice, no source: local codes, the vehicle maker's data and
// licensed practice come first, and the graver texts say so. To be read by a native technician before they are printed.
import type { Words } from './kinds.js';

export const HAZARD_TEXTS = {
  lifting: {
    en: "A vehicle that falls can kill. Chock it on level ground, lift it at its lifting points, and set it on rated stands before anyone reaches under it. Follow the maker's data and local codes.",
    es: 'Un vehículo que cae puede matar. Cálcelo en suelo nivelado, elévelo por sus puntos de elevación y apóyelo en caballetes homologados antes de trabajar debajo. Siga los datos del fabricante y las normas locales.',
    fr: 'Un véhicule qui tombe peut tuer. Le caler sur sol plan, le lever à ses points de levage et le poser sur des chandelles adaptées avant de passer dessous. Suivre les données du constructeur et les règles locales.',
    de: 'Ein herabfallendes Fahrzeug kann töten. Auf ebenem Boden gegen Wegrollen sichern, an den Hebepunkten anheben und auf zugelassene Böcke setzen, bevor jemand darunter greift. Herstellerangaben und örtliche Vorschriften beachten.',
  },
  springs: {
    en: "A loaded spring can kill. Use a rated compressor, keep clear of its axis, and let the load off slowly. Follow the maker's data.",
    es: 'Un muelle cargado puede matar. Use un compresor homologado, no se ponga en su eje y libere la carga despacio. Siga los datos del fabricante.',
    fr: 'Un ressort comprimé peut tuer. Utiliser un compresseur adapté, rester hors de son axe et relâcher la charge lentement. Suivre les données du constructeur.',
    de: 'Eine gespannte Feder kann töten. Zugelassenen Spanner verwenden, nicht in der Achse stehen, langsam entspannen. Herstellerangaben beachten.',
  },
  'brake-hydraulics': {
    en: "Brake fluid hurts eyes and skin, and a brake with air in it does not stop the vehicle. Wear eye protection, use fresh fluid of the grade on the cap, and prove a firm pedal before the vehicle moves. Follow the maker's data.",
    es: 'El líquido de frenos daña ojos y piel, y un freno con aire no detiene el vehículo. Use gafas, líquido nuevo del grado del tapón y compruebe un pedal firme antes de mover el vehículo. Siga los datos del fabricante.',
    fr: "Le liquide de frein blesse les yeux et la peau, et un frein avec de l'air n'arrête pas le véhicule. Porter des lunettes, employer du liquide neuf du grade indiqué et vérifier une pédale ferme avant de rouler. Suivre les données du constructeur.",
    de: 'Bremsflüssigkeit schadet Augen und Haut, und eine Bremse mit Luft hält das Fahrzeug nicht. Schutzbrille tragen, frische Flüssigkeit der angegebenen Sorte verwenden und vor dem Bewegen festen Pedaldruck prüfen. Herstellerangaben beachten.',
  },
  'fluid-pressure': {
    en: "A jet of oil pierces skin, and air under pressure throws parts. Lower or block the load, let the pressure off and prove zero before a line is opened. Never feel for a leak by hand. A wound from a jet goes to a doctor at once. Follow the maker's data and local codes.",
    es: 'Un chorro de aceite perfora la piel y el aire a presión lanza piezas. Baje o bloquee la carga, quite la presión y compruebe que es cero antes de abrir una línea. Nunca busque una fuga con la mano. Una herida de chorro necesita un médico enseguida. Siga los datos del fabricante y las normas locales.',
    fr: "Un jet d'huile perce la peau et l'air sous pression projette des pièces. Abaisser ou bloquer la charge, faire tomber la pression et vérifier qu'elle est nulle avant d'ouvrir une conduite. Ne jamais chercher une fuite à la main. Une blessure par jet exige aussitôt un médecin. Suivre les données du constructeur et les règles locales.",
    de: 'Ein Ölstrahl durchdringt die Haut, und Druckluft schleudert Teile. Last absenken oder abstützen, Druck ablassen und auf null prüfen, bevor eine Leitung geöffnet wird. Nie mit der Hand nach einem Leck fühlen. Eine Wunde durch einen Strahl muss sofort zum Arzt. Herstellerangaben und örtliche Vorschriften beachten.',
  },
  'hot-fluid': {
    en: "Hot fluid burns. Let it cool until it is only warm to the hand, and open a system under pressure slowly. Follow the maker's data and local codes.",
    es: 'El fluido caliente quema. Déjelo enfriar hasta que esté solo templado y abra despacio un sistema con presión. Siga los datos del fabricante y las normas locales.',
    fr: "Un fluide chaud brûle. Le laisser refroidir jusqu'à ce qu'il soit tiède et ouvrir lentement un circuit sous pression. Suivre les données du constructeur et les règles locales.",
    de: 'Heiße Flüssigkeit verbrüht die Haut. Bis handwarm abkühlen lassen und ein System unter Druck langsam öffnen. Herstellerangaben und örtliche Vorschriften beachten.',
  },
  fuel: {
    en: "Fuel vapour can explode. Let the pressure off, keep flames and sparks away, ventilate, and have an extinguisher at hand. Follow the maker's data and local codes.",
    es: 'El vapor de combustible puede explotar. Libere la presión, aleje llamas y chispas, ventile y tenga un extintor a mano. Siga los datos del fabricante y las normas locales.',
    fr: 'Les vapeurs de carburant peuvent exploser. Faire tomber la pression, éloigner flammes et étincelles, ventiler et garder un extincteur à portée. Suivre les données du constructeur et les règles locales.',
    de: 'Kraftstoffdampf kann explodieren. Druck ablassen, Flammen und Funken fernhalten, lüften, Feuerlöscher bereithalten. Herstellerangaben und örtliche Vorschriften beachten.',
  },
  battery: {
    en: "A battery can burst and its acid hurts eyes and skin. Take the negative lead off first and put it on last, wear eye protection, and keep sparks away. Follow the maker's data and local codes.",
    es: 'Una batería puede reventar y su ácido daña ojos y piel. Quite primero el cable negativo y póngalo el último, use gafas y evite chispas. Siga los datos del fabricante y las normas locales.',
    fr: "Une batterie peut éclater et son acide blesse les yeux et la peau. Débrancher d'abord le câble négatif, le rebrancher en dernier, porter des lunettes et éviter les étincelles. Suivre les données du constructeur et les règles locales.",
    de: 'Eine Batterie kann bersten, ihre Säure schadet Augen und Haut. Minusleitung zuerst ab- und zuletzt anklemmen, Schutzbrille tragen, Funken vermeiden. Herstellerangaben und örtliche Vorschriften beachten.',
  },
  restraints: {
    en: "An airbag or belt tensioner can fire and kill. Ignition off, battery off, then wait the time of the vehicle's own data. Never probe its circuit with a meter. Trained persons only, by the maker's data and local codes.",
    es: 'Un airbag o pretensor puede dispararse y matar. Quite el contacto, desconecte la batería y espere el tiempo que indican los datos del vehículo. No mida nunca en su circuito. Solo personal formado, según el fabricante y las normas locales.',
    fr: 'Un airbag ou un prétensionneur peut se déclencher et tuer. Contact coupé, batterie débranchée, puis attendre le temps indiqué pour le véhicule. Ne jamais faire de mesure sur son circuit. Personnel formé seulement, selon le constructeur et les règles locales.',
    de: 'Ein Airbag oder Gurtstraffer kann auslösen und töten. Zündung aus, Batterie ab, dann die Wartezeit des Fahrzeugs einhalten. Nie an seinem Stromkreis messen. Nur geschulte Personen, nach Herstellerangaben und örtlichen Vorschriften.',
  },
  refrigerant: {
    en: 'Refrigerant freezes skin and eyes and drives out air. Recover it with certified equipment, never vent it, wear goggles and gloves, ventilate, keep flames away. Certified technicians only, by local law.',
    es: 'El refrigerante congela piel y ojos y desplaza el aire. Recupérelo con equipo certificado, nunca lo libere, use gafas y guantes, ventile y aleje las llamas. Solo técnicos certificados, según la ley local.',
    fr: "Le fluide frigorigène gèle la peau et les yeux et chasse l'air. Le récupérer avec un appareil certifié, ne jamais le relâcher, porter lunettes et gants, ventiler, sans flamme. Techniciens certifiés seulement, selon la loi locale.",
    de: 'Kältemittel verursacht Erfrierungen und verdrängt Luft. Mit zertifiziertem Gerät absaugen, nie ablassen, Brille und Handschuhe tragen, lüften, keine Flammen. Nur zertifizierte Personen, nach örtlichem Recht.',
  },
  'high-voltage': {
    en: "High voltage kills. Lock the system out, wait the time of the maker's data, and prove zero volts with a rated meter before touching it. Insulated gloves. Qualified persons only, by local codes.",
    es: 'La alta tensión mata. Bloquee el sistema, espere el tiempo que indica el fabricante y compruebe la ausencia de tensión con un medidor adecuado antes de tocarlo. Guantes aislantes. Solo personal cualificado, según las normas locales.',
    fr: "La haute tension tue. Consigner le système, attendre le temps indiqué par le constructeur et vérifier l'absence de tension avec un appareil adapté avant d'y toucher. Gants isolants. Personnel habilité seulement, selon les règles locales.",
    de: 'Hochvoltspannung tötet. System gegen Wiedereinschalten sichern, Wartezeit des Herstellers einhalten, Spannungsfreiheit mit geeignetem Messgerät feststellen. Isolierhandschuhe. Nur Fachkundige, nach örtlichen Vorschriften.',
  },
  'fibre-dust': {
    en: 'Lining dust may hold asbestos or other fibres that harm the lungs. Do not blow it off or brush it dry. Wet it or use an enclosed vacuum, and follow local codes.',
    es: 'El polvo de forros puede contener amianto u otras fibras que dañan los pulmones. No lo sople ni lo cepille en seco. Mójelo o aspírelo con un equipo cerrado y siga las normas locales.',
    fr: "La poussière de garniture peut contenir de l'amiante ou d'autres fibres nocives aux poumons. Ne pas souffler ni brosser à sec. Mouiller ou aspirer en enceinte, selon les règles locales.",
    de: 'Belagstaub kann Asbest oder andere lungenschädliche Fasern enthalten. Nicht abblasen oder trocken bürsten. Nass oder mit geschlossenem Sauger arbeiten, örtliche Vorschriften beachten.',
  },
  'moving-belts': {
    en: "Belts and fans catch hands, hair and clothing. Keep clear of them while the engine runs. Follow the maker's data and local codes.",
    es: 'Correas y ventiladores atrapan manos, pelo y ropa. Manténgase lejos con el motor en marcha. Siga los datos del fabricante y las normas locales.',
    fr: 'Courroies et ventilateurs happent mains, cheveux et vêtements. Rester à distance moteur tournant. Suivre les données du constructeur et les règles locales.',
    de: 'Riemen und Lüfter erfassen Hände, Haare und Kleidung. Bei laufendem Motor Abstand halten. Herstellerangaben und örtliche Vorschriften beachten.',
  },
  'solvent-and-dust': {
    en: "Vapour and dust harm the lungs and can catch fire. Ventilate, keep flames away, wear gloves and the mask that the safety data sheet names. Follow the maker's data and local codes.",
    es: 'El vapor y el polvo dañan los pulmones y pueden arder. Ventile, aleje llamas, use guantes y la máscara de la ficha de seguridad. Siga los datos del fabricante y las normas locales.',
    fr: 'Vapeurs et poussières nuisent aux poumons et peuvent prendre feu. Ventiler, éloigner les flammes, porter gants et masque de la fiche de sécurité. Suivre les données du constructeur et les règles locales.',
    de: 'Dämpfe und Staub schaden der Lunge und können brennen. Lüften, Flammen fernhalten, Handschuhe und die Maske des Sicherheitsdatenblatts tragen. Herstellerangaben und örtliche Vorschriften beachten.',
  },
} as const satisfies Readonly<Record<string, Words>>;
