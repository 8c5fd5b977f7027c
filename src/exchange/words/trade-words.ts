import {
  foldName,
  type Material,
  type MethodId,
  type PlaceKind,
  type Skill,
  type TreeForm,
} from '../../trade/index.ts'

/** Words of the trade as lists have them, in several languages; from memory. */
type Words<T extends string> = Readonly<Record<T, string>>

const placeWords: Words<PlaceKind> = {
  'mother block':
    'mother block, stock block, stool bed, scion block, mutterquartier, mutterbeet, parc a bois, pied mere, campo madre',
  'seed house':
    'seed house, germination, germination house, seed tray, anzucht, aussaat, semis, semillero, germinatoio',
  'mist bed':
    'mist bed, mist, mist house, fog, fog house, propagation, propagator, prop bed, spruhnebel, nebelbeet, brumisation, nebulizacion, nebulizzazione',
  'hot bed': 'hot bed, bottom heat, heated bed, warmbeet, bodenheizung, couche chaude, cama caliente',
  'healing tent':
    'healing tent, healing, grafting tent, callus room, callusing, veredlungszelt, heilzelt, chambre de reprise',
  'cold store':
    'cold store, cold room, cooler, fridge, kuhlhaus, kuhllager, chambre froide, camara fria, cella frigo',
  'shade house':
    'shade house, shade, shadehouse, lath house, net house, schattenhalle, schattenhaus, ombriere, sombra, umbraculo, ombraio',
  tunnel:
    'tunnel, poly tunnel, polytunnel, hoop house, greenhouse, glasshouse, glass house, folientunnel, gewachshaus, foliehaus, serre, tunel, invernadero, serra, kas, estufa',
  'standing ground':
    'standing ground, container ground, container field, outdoors, standing area, yard, stellflache, containerflache, freiland, aire de culture, contenedores, piazzale',
  'field row':
    'field row, field, nursery row, open ground, rows, quartier, feld, acker, baumschulquartier, plein champ, campo, vivaio, kwekerij',
}

const skillWords: Words<Skill> = {
  grafting:
    'grafting, graft, grafter, veredeln, veredlung, pfropfen, greffe, greffage, injertar, injerto, innesto, enten',
  budding: 'budding, bud, budder, okulieren, okulation, ecussonnage, yema, gemma, oculeren',
  cuttings:
    'cuttings, cutting, sticking, stecklinge, steckling, bouturage, boutures, esquejes, estaquillas, talee, stekken',
  layering:
    'layering, air layering, layers, air layers, marcotting, marcots, abmoosen, marcottage, acodo, acodos, margotta',
  seed: 'seed, sowing, seeds, aussaat, saen, semis, siembra, semina, zaaien',
  potting: 'potting, potting on, topfen, rempotage, trasplante, rinvaso, oppotten',
  general:
    'general, all round, other, labour, weeding, watering, allgemein, general work, divers, varios, hilfe',
}

const methodWords: Words<MethodId> = {
  seed: 'seed, seedling, sown, samling, aussaat, semis, semilla, seme',
  softwood_cutting:
    'softwood cutting, softwood, soft cutting, grunsteckling, krautiger steckling, bouture herbacee',
  semi_hardwood_cutting:
    'semi hardwood cutting, semi hardwood, semihardwood, semi ripe, semi ripe cutting, cutting, cuttings, mist cutting, steckling, stecklinge, bouture, esqueje, talea, stek, halbverholzter steckling, bouture semi aoutee',
  hardwood_cutting:
    'hardwood cutting, hardwood, ripe cutting, steckholz, bouture ligneuse, bouture aoutee, estaca, estaquilla, talea legnosa',
  cladode_cutting: 'cladode cutting, cladode, stem piece',
  root_cutting: 'root cutting, wurzelschnittling, bouture de racine',
  air_layer:
    'air layer, air layering, marcot, marcotting, air layers, abmoosen, marcotte aerienne, acodo aereo, margotta',
  mound_layer: 'mound layer, stool bed, stooling, stool, layer bed, abriss, anhaufeln, marcottage en cepee',
  simple_layer: 'simple layer, layer, ground layer, absenker, marcotte, acodo',
  top_wedge_graft:
    'top wedge graft, cleft graft, wedge graft, top graft, graft, grafted, spaltpfropfen, greffe en fente, injerto de pua, innesto a spacco',
  epicotyl_graft: 'epicotyl graft, stone graft',
  veneer_graft: 'side veneer graft, veneer graft, side graft, veneer, seitliches anplatten, greffe de cote',
  whip_tongue_graft:
    'whip and tongue graft, whip and tongue, whip graft, bench graft, tongue graft, kopulation, gegenzungen, handveredlung, greffe anglaise, injerto ingles',
  bench_graft_hot_callus: 'hot callus graft, hot callus, hot pipe',
  bench_graft_on_cutting: 'cutting graft, graft on cutting, omega graft, tischveredlung',
  double_graft_clonal: 'clonal double graft, double graft',
  bark_graft: 'bark graft, rind graft, rindenpfropfen, greffe en couronne',
  cleft_graft_topwork: 'topwork, top working, cleft topwork, umveredeln, surgreffage',
  four_flap_graft: 'four flap graft, banana graft, four flap',
  approach_graft: 'approach graft, inarch, inarching, ablaktieren',
  t_bud: 't bud, t budding, shield bud, shield budding, okulation, ecusson, ecussonnage, escudete',
  chip_bud: 'chip bud, chip budding, chip, bud, budding, budded, chipveredlung, chip budding',
  patch_bud: 'patch bud, patch budding, plattenokulation',
  sucker: 'sucker, offset, division, offshoot, auslaufer, rejet, hijuelo, pollone',
  corm_macropropagation: 'corm, macropropagation',
  tissue_culture: 'tissue culture, micropropagation, in vitro, plug, meristem, gewebekultur',
}

const materialWords: Words<Material> = {
  seed: 'seed, seeds, fruit, stones, pips, samen, graines, semillas',
  cuttings: 'cuttings, cutting, stecklinge, steckholzer, boutures, esquejes',
  'scion sticks':
    'scion sticks, scions, scion wood, scionwood, grafting wood, reiser, edelreiser, greffons, puas',
  budwood: 'budwood, bud wood, budsticks, buds, augen, okuliermaterial, yemas',
  branches: 'branches, air layers, marcots, layers, aste, marcottes, acodos',
  shoots: 'shoots, stool shoots, layer shoots, triebe, pousses',
  offsets: 'offsets, suckers, divisions, auslaufer, rejets',
  'standing trees': 'standing trees, trees',
}

const formWords: Words<TreeForm> = {
  seedling: 'seedling, from seed, own seed, samling, semis, franco, seed grown',
  rootstock:
    'rootstock, stock, understock, unterlage, porte greffe, portainjerto, patron, portinnesto, onderstam',
  'cutting-grown':
    'cutting grown, cutting, own root, own roots, from cutting, steckling, wurzelecht, bouture',
  layered: 'layered, layer, air layer, marcot, air layered, abmoosen, marcotte',
  divided: 'divided, division, sucker, offset',
  worked: 'worked, grafted, budded, graft, veredelt, veredlung, greffe, greffee, injertado, innestato',
  'multi-worked': 'multi worked, family tree, multi graft, several kinds, familienbaum',
  reworked: 'reworked, top worked, topworked, umveredelt',
}

/** A word or phrase as the list above has it; else the longest one that stands whole inside the text. */
const finder = <T extends string>(words: Words<T>): ((text: string) => T | undefined) => {
  const entries = Object.entries<string>(words).flatMap(([value, line]) =>
    line.split(', ').map(word => [foldName(word), value as T] as const),
  )
  const exact = new Map([...entries].reverse())
  const longestFirst = [...entries].sort(([a], [b]) => b.length - a.length)
  return text => {
    const folded = foldName(text)
    return exact.get(folded) ?? longestFirst.find(([word]) => ` ${folded} `.includes(` ${word} `))?.[1]
  }
}

export const placeByWord = finder(placeWords)
export const skillByWord = finder(skillWords)
export const methodByWord = finder(methodWords)
export const materialByWord = finder(materialWords)
export const formByWord = finder(formWords)
