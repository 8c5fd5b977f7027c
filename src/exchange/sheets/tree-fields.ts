import type { Field } from './sheet-form.ts'

/** A kind of tree, said in one cell or in several: shared by orders, batches and kinds. */
export const treeFields = (example: {
  tree: string
  fruit?: string
  cultivar?: string
  rootstock?: string
  size?: string
}): readonly Field[] => [
  {
    id: 'tree',
    name: 'Tree',
    says: 'fruit and cultivar, as you call them: Fig ‘Brown Pilgrim’; several on one tree: Apple ‘Evening Bell’, ‘Saltwind’',
    words:
      'tree, kind, item, product, plant, article, description, plant name, variety name, full name, botanical name, taxon, artikel, pflanze, ware, bezeichnung, sorte und unterlage, produit, plante, designation, articulo, producto, planta, descripcion, articolo, prodotto, pianta, descrizione, artigo, omschrijving, plantnaam, line',
    form: 'text',
    example: example.tree,
  },
  {
    id: 'fruit',
    name: 'Fruit',
    says: 'the fruit alone, where cultivar has its own column',
    words:
      'fruit, species, crop, genus, fruit type, obst, obstart, art, fruchtart, espece, fruit espece, especie, fruta, cultivo, specie, frutto, coltura, soort, gewas, cultura',
    form: 'text',
    example: example.fruit ?? null,
  },
  {
    id: 'cultivar',
    name: 'Cultivar',
    says: 'the cultivar alone; several on one tree parted by semicolons',
    words:
      'cultivar, cultivars, variety, var, selection, clone, sorte, sortenname, variete, cultivar variete, variedad, varieta, variedade, ras, cultivar name, accession name',
    form: 'text',
    example: example.cultivar ?? null,
  },
  {
    id: 'rootstock',
    name: 'Rootstock',
    says: 'what it is worked on; empty for trees on their own roots',
    words:
      'rootstock, stock, understock, on rootstock, unterlage, porte greffe, portegreffe, portainjerto, patron, pie, portinnesto, porta enxerto, onderstam, root stock',
    form: 'text',
    example: example.rootstock ?? null,
  },
  {
    id: 'interstem',
    name: 'Interstem',
    says: 'the cultivar of the piece between stock and scion, where there is one',
    words:
      'interstem, interstock, inter stem, zwischenveredlung, zwischenstamm, stammbildner, intermediaire, greffe intermediaire, injerto intermedio, madera intermedia, innesto intermedio, intermedio, tussenstam',
    form: 'text',
    example: null,
  },
  {
    id: 'form',
    name: 'How made',
    says: 'seedling, cutting, air layer, grafted, budded, or the method by name',
    words:
      'how made, method, form, propagation, propagation method, made by, technique, protocol, vermehrung, vermehrungsart, methode, veredlungsart, mode de multiplication, metodo, tecnica, tipo',
    form: 'text',
    example: null,
  },
  {
    id: 'size',
    name: 'Size',
    says: 'as you sell it: 3 l pot, bare root',
    words:
      'size, pot, container, grade, pot size, tree size, grosse, topf, topfgrosse, qualitat, taille, conteneur, calibre, tamano, maceta, misura, vaso, tamanho, maat, potmaat',
    form: 'text',
    example: example.size ?? null,
  },
]
