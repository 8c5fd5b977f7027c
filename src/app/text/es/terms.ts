import { entryPhrases } from './entry-phrases.ts'
import { fruits, methods } from './fruits-and-methods.ts'
import { measures } from './measures.ts'
import { phrases } from './phrases.ts'
import { refusals } from './refusals.ts'
import { cautions, steps, tasks } from './steps-and-work.ts'

/** Single words of the trade, and where figures come from. */
const words = {
  published: 'publicado',
  'common practice': 'práctica común',
  'from memory': 'de memoria',
  'recorded here': 'registrado aquí',
  'set by the nursery': 'fijado por el vivero',
  seed: 'semilla',
  seeds: 'semillas',
  cutting: 'estaquilla',
  layer: 'acodo',
  layers: 'acodos',
  bud: 'yema',
  buds: 'yemas',
  graft: 'injerto',
  grafts: 'injertos',
  plant: 'planta',
  plants: 'plantas',
  'scion stick': 'púa',
  'scion sticks': 'púas',
  budwood: 'varetas con yemas',
  'stick of budwood': 'vareta con yemas',
  branch: 'rama',
  branches: 'ramas',
  shoot: 'brote',
  shoots: 'brotes',
  offset: 'hijuelo',
  offsets: 'hijuelos',
  'standing tree': 'árbol en pie',
  'standing trees': 'árboles en pie',
  'young mother tree': 'planta madre joven',
  'plant begun': 'planta iniciada',
  hour: 'hora',
  grafting: 'injerto de púa',
  budding: 'injerto de yema',
  layering: 'acodado',
  potting: 'enmacetado',
  general: 'trabajo general',
  germinated: 'germinadas',
  sprouted: 'brotadas',
  rooted: 'enraizadas',
  united: 'soldadas',
  alive: 'vivas',
  saleable: 'vendibles',
  'mother block': 'campo de plantas madre',
  'seed house': 'semillero',
  'mist bed': 'mesa de nebulización',
  'hot bed': 'cama caliente',
  'healing tent': 'túnel de prendimiento',
  'cold store': 'cámara fría',
  'shade house': 'umbráculo',
  tunnel: 'túnel',
  'standing ground': 'era de macetas',
  'field row': 'línea de vivero',
  rootstock: 'patrón',
  interstem: 'madera intermedia',
  scion: 'púa',
  'whole plant': 'planta entera',
  clean: 'limpia',
  positive: 'positivo',
  unclear: 'dudoso',
  mother: 'planta madre',
  batch: 'lote',
  bench: 'mesa',
  lineage: 'familia',
  'own-root plant': 'planta sobre sus raíces',
  'scion plant': 'planta injertada',
  'top-working': 'reinjerto en copa',
}

/** Protocols for several unions, by what is added to the name of the one for one. */
const unions = Object.entries({
  ', # cultivars on one tree': ', # cultivares en un árbol',
  ', with an interstem': ', con madera intermedia',
  ', # cultivars on one tree, with an interstem': ', # cultivares en un árbol, con madera intermedia',
})

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

/** What a method is called in its fruit's protocol, and what a protocol warns of where little is known. */
const protocols = Object.fromEntries(
  Object.entries(fruits).flatMap(([fruit, frutal]) => [
    [
      `No figures are known for ${fruit.toLowerCase()} by this method: general figures, try a few first.`,
      `No se conocen cifras de este método para ${lower(frutal)}: cifras generales, pruebe antes con unas pocas.`,
    ],
    [
      `This method rarely succeeds with ${fruit.toLowerCase()}.`,
      `Este método rara vez sale bien con ${lower(frutal)}.`,
    ],
    ...Object.entries(methods).flatMap(([method, método]) => [
      [`${fruit}: ${method.toLowerCase()}`, `${frutal}: ${lower(método)}`],
      [`${fruit}: ${method.toLowerCase()}, rootstock`, `${frutal}: ${lower(método)}, patrón`],
      ...unions.map(([added, añadido]) => [
        `${fruit}: ${method.toLowerCase()}${added}`,
        `${frutal}: ${lower(método)}${añadido}`,
      ]),
    ]),
  ]),
)

/** What records and facts say in English, in Spanish. A `#` stands for a number. */
export const terms: Readonly<Record<string, string>> = {
  ...phrases,
  ...entryPhrases,
  ...refusals,
  ...protocols,
  ...fruits,
  ...methods,
  ...steps,
  ...tasks,
  ...cautions,
  ...measures,
  ...words,
}
