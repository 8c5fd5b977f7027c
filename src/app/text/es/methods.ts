/** La biblioteca de métodos; `drawn` dice de cada dibujo qué hay en él. */
export const methods = {
  title: 'Métodos',
  says: 'Cómo se hace cada corte: qué hacer, qué mirar y por qué. Cada cifra dice de dónde viene.',
  findHint: 'Método o propósito',
  empty: 'Ningún método coincide.',
  used_one: '{{shown}} de sus protocolos',
  used_other: '{{shown}} de sus protocolos',
  all: 'Todos los métodos',
  missing: 'No existe ese método.',
  how: 'Cómo se hace',
  print: 'Imprimir la ficha de mesa',
  printSmall: 'En A5, por las dos caras',
  goodFor: 'Para',
  notFor: 'No para',
  needs: {
    title: 'Lo que necesita',
    tools: 'A mano',
    wood: 'Madera',
    stock: 'Patrón',
    season: 'Cuándo',
  },
  steps: {
    title: 'Paso a paso',
    look: 'Mire:',
    why: 'Por qué:',
    number: 'Paso {{shown}}',
    says: 'Práctica común. Arriba es arriba en todos los dibujos.',
  },
  legend: {
    title: 'Líneas en los dibujos',
    cambium: 'cámbium',
    bark: 'corteza',
    wood: 'madera, cara cortada',
    knife: 'camino de la hoja',
    move: 'se mueve así',
    gone: 'se quita',
    tie: 'atadura',
    wax: 'cera o mástic',
  },
  figures: {
    title: 'Cifras',
    says: 'Lo usual, y el margen que abarca nueve casos de diez. Hormona: solo un margen; siga la etiqueta.',
    measure: 'Medida',
    typical: 'Usual',
    range: 'Margen',
    basis: 'Base',
    own: 'Sus protocolos',
    interpolated: 'extremos publicados, medio entre ellos',
    rangeRemembered: 'medio publicado, margen de memoria',
    sources: 'Fuentes',
  },
  fruits: {
    title: 'Frutales que se hacen así',
    says: 'La parte que sale bien, según los datos o usted. Lo que cuenta está con el frutal.',
    none: 'Los datos no conocen ningún frutal que se haga así.',
    line: '{{importance}}, {{share}} ({{range}}), {{basis}}',
  },
  own: {
    title: 'Lo suyo junto a lo incorporado',
    says: 'Lo que enseñaron sus propios lotes de este método, en la fase que dice si salió bien. Las demás fases están en Prendimiento.',
    none: 'Aquí aún no se ha contado ningún lote de este método. Lo que el plan supone está en los protocolos.',
    unused: 'Aquí ninguna clase se hace con este método.',
    kind: 'Clase y fase',
    yours: 'Suyo',
    builtIn: 'Incorporado',
    batches: 'Lotes',
    counted: '{{survived}} de {{entered}}',
    rates: 'Todas las tasas',
    protocols: 'Protocolos con este método',
  },
  failures: { title: 'Cómo se ve el fallo', cause: 'Porque' },
  aftercare: {
    title: 'Cuidados por semana',
    weeks: 'Semanas {{from}} a {{to}}',
    says: 'Contadas desde la operación; práctica común. El plan va por los días de su protocolo.',
  },
  cautions: { title: 'Precauciones' },
  card: {
    kind: 'Ficha de mesa',
    key: 'Cifras clave',
    aftercare: 'Cuidados',
    wk: 'sem {{from}}–{{to}}',
    tray: 'Bandeja',
    batch: 'Lote',
    name: 'Nombre',
    date: 'Fecha',
    mother: 'Madre',
    number: 'Número',
    ownMark: 'propia',
    foot: 'Cifras: p publicada, c práctica común, m de memoria, propia: de sus protocolos. Siga la etiqueta, las normas locales y el ejercicio autorizado.',
    mark: {
      published: 'p',
      'common practice': 'c',
      'from memory': 'm',
      'recorded here': '',
      'set by the nursery': '',
    },
  },
  drawn: {
    seedFloat:
      'Un recipiente con agua: la semilla sana está en el fondo, una que flota se saca y está tachada.',
    seedSown: 'Un alveolo en corte: la semilla está de lado, tan honda bajo la superficie como es de gruesa.',
    seedUp: 'Una semilla germinada en el suelo: la raíz baja recta, el brote sube recto con tres hojas.',
    seedPricked:
      'Dos macetas hondas: en una la raíz cuelga recta, en la otra está doblada hacia arriba y tachada.',
    seedlingWorkable:
      'Una planta de semilla en maceta con un solo tallo recto; un calibre la mide a la altura de injertar.',
    softTaken:
      'Un brote tierno con hojas, cortado de través bajo un nudo; al lado, una punta que se partió limpia al doblarla.',
    softMade:
      'Una estaquilla con la base abajo: corte recto bajo un nudo, dos hojas de abajo quitadas, dos de arriba a la mitad, punta conservada.',
    dipped: 'La base misma de una estaquilla con hojas está en un plato poco hondo con la solución.',
    mistBed:
      'Una mesa en corte: estaquillas bajo dos boquillas de nebulización, tubos de calor debajo, un termómetro junto a las bases.',
    cuttingRooted:
      'Una estaquilla en su maceta, callo y raíces en la base, hojas nuevas arriba; la cubierta clara se levanta por un lado.',
    semiTaken: 'Un brote firme con hojas: cortado bajo un nudo en la base leñosa, y la punta tierna quitada.',
    semiWounded:
      'La base de una estaquilla, ampliada: una tira larga de corteza quitada de un lado, cámbium en los dos bordes de la herida.',
    hardCut:
      'Un ramo sin hojas en trozos: cada uno recto en la base e inclinado arriba, la punta fina se tira; una flecha señala arriba.',
    hardBundled:
      'Dos manojos atados de pie en una caja, bases parejas en sustrato húmedo sobre calor, puntas al aire; un termómetro junto a las bases.',
    hardStuck:
      'Una estaquilla sin hojas puesta honda y derecha: dos yemas sobre el suelo, tres debajo, tierra apretada contra ella.',
    hardRooted: 'La misma estaquilla con raíces en base y nudos, y hojas en sus dos yemas de arriba.',
    cladodeCut: 'Un tallo suculento con costillas, cortado por su unión estrecha; una flecha señala arriba.',
    cladodeDried:
      'El tallo de pie sobre listones en sombra con aire; su base, recortada en cono alrededor del eje desnudo.',
    cladodeStuck: 'El tallo puesto poco hondo en una maceta y atado dos veces a un tutor.',
    cladodeRooted: 'El tallo con un haz de raíces en la base y un brote nuevo arriba.',
    rootDug:
      'Una planta en el suelo abierto: una raíz cortada recta junto al tallo e inclinada en el extremo lejano.',
    rootPieces:
      'Tres trozos de raíz de pie: cada uno plano arriba e inclinado abajo; una flecha señala arriba.',
    rootLaid:
      'Trozos gruesos de pie en una maceta, extremo plano justo bajo la superficie; un trozo fino tendido en una bandeja.',
    rootShot:
      'Un trozo de raíz en maceta: dos brotes con hojas de su extremo plano, raíces nuevas de su pie inclinado.',
    ringCut:
      'Una rama con un anillo de corteza quitado, vez y media tan ancho como gruesa es la rama; cámbium resbaladizo aún en la madera desnuda.',
    ringScraped: 'La navaja raspa el cámbium del anillo desnudo; la hormona se pincela en el labio superior.',
    ringPacked:
      'Musgo húmedo apretado alrededor del anillo, que pasa bien de los dos labios; dos gotas escurridas de él.',
    ringWrapped: 'La bola de musgo envuelta en film, atada abajo y arriba, con una etiqueta colgando.',
    ringRooted:
      'Raíces se extienden del labio superior por la bola envuelta; la rama se corta bajo la atadura de abajo.',
    layerPotted:
      'El acodo en maceta bajo malla de sombra: cepellón entero, hojas a la mitad, tallo atado a un tutor.',
    stoolCut: 'Una cepa a ras de suelo: cinco tallos cortados a tocones cortos.',
    moundFirst: 'Cinco brotes jóvenes salen de la cepa; el sustrato está aporcado hasta media altura.',
    moundFull: 'El montículo es más alto, los brotes más largos; salen raíces de sus bases cubiertas.',
    moundLifted:
      'El montículo ya no está; cinco brotes con raíces en la base se cortan justo encima de la cepa.',
    layerBent:
      'Un brote bajo doblado desde su madre hasta una zanja, con la punta vuelta otra vez hacia arriba.',
    layerNicked:
      'La curva ampliada: un corte inclinado por debajo hacia la punta, mantenido abierto; cámbium en los dos bordes.',
    layerPegged: 'La curva sujeta bajo tierra con una horquilla; la punta atada a un tutor y etiquetada.',
    layerSevered: 'Raíces en la curva enterrada; el brote se corta entre ellas y la madre.',
    wedgeScion:
      'Una púa por dos lados: como cuña estrecha con cámbium en los dos bordes, y con su cara cortada en arco.',
    wedgeStock:
      'Un patrón descabezado sobre sus hojas, el anillo de cámbium en su corte, hendido por el medio.',
    wedgeFit:
      'La cuña metida en la hendidura hasta que asientan sus hombros: una línea de cámbium baja por cada lado.',
    wedgeTied:
      'La unión atada de abajo arriba, vuelta sobre vuelta; la punta encerada; una etiqueta en el patrón.',
    wedgeBagged: 'El injerto en maceta con una bolsa clara sobre púa y unión, atada por debajo de la unión.',
    wedgePushed: 'La púa con hojas; la cinta cortada por detrás, un brote del patrón quitado.',
    limbCleft: 'Una rama serrada, hendida por el medio y abierta con una cuña metida desde arriba.',
    cleftScion: 'Una púa cortada en cuña larga; en sección, su lado de fuera, con corteza, es el más grueso.',
    cleftSet: 'Dos púas en los dos extremos de la hendidura, con sus cuñas dentro de la rama.',
    cleftSection:
      'La rama desde arriba: dos cuñas en la hendidura, el cámbium de cada una sobre el anillo de cámbium de la rama.',
    cleftSealed:
      'Cera sobre toda la cara serrada, por la hendidura y en las dos puntas de las púas; una etiqueta.',
    stoneSeedling:
      'Una planta de semilla muy joven sobre su hueso; se corta unos dedos por encima del hueso.',
    stoneSplit: 'El tallo corto, con el hueso, hendido por el medio desde su corte.',
    stoneFit:
      'La cuña de una púa metida en el tallo corto sobre el hueso: cámbium sobre cámbium por los dos lados.',
    stonePotted:
      'El injerto atado en maceta con el hueso justo bajo la superficie, bajo una tienda clara; una etiqueta.',
    whipSlant:
      'Púa arriba, patrón abajo, cortados en un mismo bisel largo, dos veces tan largo como grueso es el tallo.',
    whipTongue: 'Los dos biseles con una lengüeta cada uno; flechas los empujan uno hacia otro.',
    whipShut: 'Los dos trabados: lengüeta tras lengüeta, el cámbium sigue por los dos lados.',
    whipOneSide: 'Una púa más fina puesta a un lado del patrón: el cámbium sigue solo por ese lado.',
    whipTied: 'La unión vendada de abajo arriba, tres yemas por encima, punta encerada, una etiqueta.',
    hotPipe:
      'Tres injertos cruzan un canal caliente: uniones dentro, raíces en sustrato húmedo a un lado, yemas en el frío al otro.',
    hotCallus: 'La unión con cordones de callo en sus bordes por los dos lados.',
    hotPlanted: 'El injerto plantado con la unión sobre el suelo, raíces abajo, hojas abriéndose.',
    omegaCut: 'Púa con lengüeta redonda y estaquilla patrón con su hueco; una yema del patrón está quitada.',
    omegaShut: 'La lengüeta en su hueco: el cámbium sigue por los dos lados.',
    waxDipped: 'El injerto cabeza abajo, púa y unión sumergidas en cera templada; un termómetro en la cera.',
    callusBox:
      'Injertos de pie en una caja de sustrato húmedo sobre calor, uniones en aire húmedo y templado, puntas enceradas.',
    onCuttingRooted:
      'El injerto en maceta: raíces al pie del patrón, callo en la unión, un brote de la yema de la púa.',
    nurseGrafted:
      'Una planta nodriza sobre su semilla grande en maceta; una punta del patrón clonal va en cuña y atada abajo.',
    etiolated: 'A oscuras, del injerto crece un brote largo y blanco con hojas diminutas.',
    etiolatedRinged:
      'El brote blanco anillado cerca del pie y herido, dentro de una manga de sustrato; hojas a la luz arriba.',
    clonalRooted: 'Las raíces del brote clonal llenan la manga; la planta nodriza se corta por debajo.',
    doubleScion:
      'En el tallo clonal enraizado va una púa del cultivar, en cuña y atada; una etiqueta debajo.',
    twoPlants: 'Un patrón en maceta junto a un árbol; se acerca a una rama del mismo grosor.',
    twoFaces:
      'Dos tallos con caras de igual largo y altura en los lados que se van a juntar; cámbium alrededor de cada cara.',
    twoJoined: 'Los dos tallos cara con cara, atados arriba y abajo; el cámbium de uno pasa al del otro.',
    twoSevered: 'Sobre la atadura se corta la cabeza del patrón; debajo se corta la púa de su madre.',
    veneerStock:
      'Un patrón con una cara larga y poco honda en el costado, que acaba en una muesca; cámbium en los dos bordes.',
    veneerScion: 'Una púa con yema terminal: su cara larga en arco y, de lado, el corte corto de su pie.',
    veneerFit:
      'De lado: el pie de la púa está en la muesca, su cara sobre el patrón. De frente: cámbium en sus dos bordes y a través del pie.',
    veneerTied: 'Púa y patrón vendados juntos de abajo arriba, yema terminal libre, una etiqueta.',
    veneerTopped: 'La púa con hojas; la cabeza del patrón se corta justo encima de la unión.',
    barkSlit:
      'Una rama serrada con su anillo de cámbium; la corteza está rajada desde el borde y sus orillas levantadas.',
    barkScion: 'Una púa de lado con hombro y bisel largo, y de frente con su cara larga.',
    barkSet:
      'De lado: la púa metida entre corteza levantada y madera, cara hacia la madera, hombro sobre la rama.',
    barkSealed:
      'Tres púas alrededor del borde; cera en la cara y las rajas, dos ataduras en la rama, puntas enceradas.',
    flapStock:
      'Un patrón descabezado con la corteza bajada en solapas, cámbium en sus caras de dentro; la madera desnuda está cortada.',
    flapScion:
      'Una púa con caras planas a lo largo de su pie, cámbium en los bordes de cada una, corteza en las esquinas.',
    flapSet: 'La púa sobre la madera del patrón; las solapas subidas sobre sus caras y sujetas.',
    flapWrapped:
      'Papel de aluminio y bolsa clara alrededor de la unión, atados abajo y arriba; punta encerada; una etiqueta.',
    budStick:
      'Una vareta con los limbos quitados y los pecíolos dejados; al lado una yema ampliada, su escudete cortado de abajo arriba.',
    tCut: 'Una T cortada en la corteza del patrón, sus labios levantados de la madera.',
    tSlid: 'El escudete con su yema baja entre los labios.',
    tSeated:
      'El escudete asentado: la yema bien por debajo de la barra, su parte alta recortada a ras de ella, donde cámbium toca cámbium.',
    tTied: 'Ataduras debajo y encima de la yema, de abajo arriba; la yema libre; una etiqueta.',
    budForced:
      'La yema se ha hecho brote; el patrón está cortado encima en bisel, sus propios brotes quitados.',
    chipStock:
      'Una muesca en el patrón de lado, con el labio inclinado hacia dentro y abajo; y su cara en arco de frente.',
    chipBud: 'Una astilla con su yema sale de la vareta: la misma forma que la muesca.',
    chipFit: 'La astilla en la muesca, pie tras el labio, de lado y de frente; cámbium alrededor del borde.',
    chipOneSide:
      'Una astilla más estrecha que la muesca, puesta a su lado izquierdo, donde cámbium toca cámbium.',
    chipTied: 'Toda la astilla vendada con film de abajo arriba; una etiqueta.',
    patchTaken: 'Un rectángulo de corteza con su yema, quitado de lado de la vareta.',
    patchStock:
      'Una ventana del mismo tamaño abierta en el patrón, su corteza doblada hacia abajo; dentro se ve el cámbium.',
    patchFit: 'El parche en la ventana, yema arriba, tocando los cuatro bordes; la solapa recortada debajo.',
    patchTied: 'Ataduras encima y debajo del parche, la yema libre; una etiqueta.',
    suckerDug:
      'Una planta madre y un hijuelo de hoja estrecha, las dos bases en el suelo; el corte baja entre ellas.',
    suckerPared: 'El hijuelo solo: piel de fuera y raíces de la base peladas, parte alta acortada.',
    suckerPlanted: 'El hijuelo en maceta, base apenas cubierta, tierra apretada contra él.',
    suckerGrown: 'El hijuelo con tres hojas nuevas y raíces nuevas.',
    cormPared: 'Un cormo con las bases de las hojas quitadas, yemas a la vista en filas.',
    cormCrossed:
      'El cormo desde arriba: una cruz cortada en el punto de crecimiento, yemas en anillo alrededor.',
    cormBed: 'Tres cormos a ras de sustrato húmedo en un cajón, cubiertos con film, con calor debajo.',
    cormShoots: 'Un cormo con cuatro brotes con hojas; uno con raíces propias está cortado.',
    flaskOpened: 'Un frasco abierto con tres plantitas enraizadas en gel; la tapa está quitada.',
    flaskRinsed: 'Las raíces de una plantita se enjuagan en un cuenco; flotan trozos de gel.',
    plugDome: 'Plantitas en tacos bajo una cúpula cerrada y malla de sombra.',
    plugWeaned: 'Plantitas más grandes con raíces; la cúpula se levanta por un lado.',
  },
}
