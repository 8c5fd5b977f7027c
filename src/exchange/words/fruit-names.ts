import type { Fruits, Species } from '../../trade/facts/index.ts'
import { foldName } from '../../trade/index.ts'

/**
 * What the fruits are called besides their names in the facts: English, German, French, Spanish, Italian, Portuguese,
 * Dutch. Common names, from memory; one that means several fruits stands with the one most grown.
 */
const otherNames: Readonly<Record<string, string>> = {
  mango: 'mangue, mangobaum, manguier, manga, mangueira',
  avocado: 'aguacate, palta, avocat, avocatier, abacate, abacateiro, alligator pear',
  lychee: 'litchi, litschi, lichi, lichia, litchee, leechee',
  longan: 'lungan, dragon eye, longane, longanier',
  macadamia: 'macadamia nut, macadamianuss, noix de macadamia, makadamia',
  guava: 'guave, goyave, goyavier, guayaba, guayabo, goiaba, goiabeira',
  feijoa: 'pineapple guava, ananas guave, goiaba serrana',
  carambola: 'star fruit, starfruit, sternfrucht, carambole, carambolo',
  sapodilla: 'sapota, sapotille, sapotillier, chicozapote, breiapfel, naseberry',
  jackfruit: 'jakfruit, jaca, jacquier, jackfrucht, nangka',
  orange_sweet:
    'orange, oranges, naranja, naranjo, apfelsine, oranger, arancio, arancia, laranja, laranjeira, sinaasappel',
  lemon: 'zitrone, citron, citronnier, limon, limonero, limone, limao, limoeiro, citroen',
  lime: 'limette, lima, key lime, tahiti lime, persian lime, lime acide, limoen',
  white_sapote: 'zapote blanco, weisse sapote, sapote blanche, casimiroa',
  loquat:
    'japanische wollmispel, wollmispel, nespola, nespolo giapponese, nispero, neflier du japon, nespera',
  persimmon: 'kaki, kakibaum, caqui, caki, plaqueminier, sharon, japanese persimmon, cachi',
  pomegranate:
    'granatapfel, grenade, grenadier, granada, granado, melograno, melagrana, roma, romazeira, granaatappel',
  fig: 'figs, fig tree, feige, feigenbaum, figue, figuier, higo, higuera, fico, figo, figueira, vijg',
  mulberry: 'maulbeere, maulbeerbaum, murier, mure, mora, morera, gelso, amoreira, moerbei',
  olive: 'olivenbaum, olbaum, olivier, olivo, aceituna, oliveira, olijf',
  passionfruit:
    'passion fruit, maracuja, passionsfrucht, fruit de la passion, granadilla, parcha, grenadille',
  dragon_fruit: 'dragonfruit, pitaya, pitahaya, drachenfrucht',
  jaboticaba: 'jabuticaba, baumstammkirsche',
  cherimoya_atemoya: 'cherimoya, atemoya, chirimoya, cherimole, anone, anona, custard apple, rahmapfel',
  wax_jambu: 'wax apple, water apple, rose apple, jambu, wachsapfel, jamalac, pomme d eau',
  coffee: 'kaffee, cafe, cafeier, cafeto, caffe, koffie, arabica, robusta',
  cacao: 'cocoa, kakao, cacaoyer, cacau',
  banana: 'plantain, banane, bananier, platano, plantano, bananeira, banaan',
  apple:
    'apples, apple tree, apfel, apfelbaum, pomme, pommier, manzana, manzano, mela, melo, maca, macieira, appel',
  pear: 'pears, pear tree, birne, birnbaum, poire, poirier, pera, peral, pero, pereira, peer, nashi, asian pear',
  plum: 'plums, pflaume, pflaumenbaum, zwetschge, zwetsche, prune, prunier, ciruela, ciruelo, susina, susino, prugna, ameixa, ameixeira, pruim, mirabelle, gage, damson',
  peach:
    'peaches, nectarine, pfirsich, nektarine, peche, pecher, melocoton, melocotonero, durazno, pesca, pesco, pessego, pessegueiro, perzik, nectarina',
  cherry:
    'cherries, sweet cherry, sour cherry, kirsche, susskirsche, sauerkirsche, cerise, cerisier, cereza, cerezo, ciliegia, ciliegio, cereja, cerejeira, kers, griotte',
  apricot:
    'apricots, aprikose, marille, abricot, abricotier, albaricoque, albaricoquero, damasco, albicocca, albicocco, abrikoos',
  walnut: 'persian walnut, walnuss, noix, noyer, nogal, nuez, noce, nogueira, walnoot',
  pecan: 'pecan nut, pekannuss, pacane, pacanier, pecana, noz peca',
  hazelnut:
    'hazel, filbert, cobnut, haselnuss, hasel, noisette, noisetier, avellana, avellano, nocciola, nocciolo, avela, hazelnoot',
  grape:
    'grapes, grapevine, grape vine, vine, weinrebe, rebe, traube, vigne, raisin, uva, vid, vite, videira, druif',
  blueberry:
    'blueberries, heidelbeere, blaubeere, myrtille, myrtillier, arandano, mirtillo, mirtilo, blauwe bes',
  kiwifruit: 'kiwi, kiwi fruit, actinidia, kiwier, kiwibeere',
}

const kept = new WeakMap<Fruits, ReadonlyMap<string, Species>>()

/** A nursery's own fruits come last: the name that it gives to one goes before what another may be called. */
function namesOf(fruits: Fruits): ReadonlyMap<string, Species> {
  const known = kept.get(fruits)
  if (known !== undefined) return known
  const map = new Map<string, Species>()
  for (const [id, line] of Object.entries(otherNames)) {
    const species = fruits.byId(id)
    if (species) for (const name of line.split(', ')) map.set(foldName(name), species)
  }
  for (const species of fruits.all)
    for (const name of [species.id.replaceAll('_', ' '), species.commonName, shortFruitName(species)])
      map.set(foldName(name), species)
  kept.set(fruits, map)
  return map
}

/** The fruit that goes by a common name. */
export const fruitByCommonName = (name: string, fruits: Fruits): Species | undefined =>
  namesOf(fruits).get(foldName(name))

/** As a label has it: "Lychee" for "Lychee (litchi)". */
export const shortFruitName = (species: Species): string =>
  species.commonName.replace(/\s*\(.*\)|\s+and\s.*/, '')
