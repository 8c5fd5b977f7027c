import { expect, test } from 'vitest'
import { fruitsWith } from '../../trade/facts/index.ts'
import { nameTree } from './name-tree.ts'

const builtIn = fruitsWith({ fruits: [], sets: [] })
const none = { tree: null, fruit: null, cultivar: null, rootstock: null, form: null, size: null }
const named = (tree: string) => {
  const { species, cultivar, rootstock, size, form } = nameTree({ ...none, tree }, builtIn)
  return [species?.id, cultivar, rootstock, size, form]
}

// Invented cultivars; the fruits' names in other languages are common names.
test.each([
  ["Fig 'Brown Pilgrim'", ['fig', 'Brown Pilgrim', null, '', undefined]],
  ['Fig ‘Brown Pilgrim’, 3 l pot', ['fig', 'Brown Pilgrim', null, '3 l pot', undefined]],
  ['Fig - Brown Pilgrim', ['fig', 'Brown Pilgrim', null, '', undefined]],
  ['Brown Pilgrim fig', ['fig', 'Brown Pilgrim', null, '', undefined]],
  ["Ficus carica 'Brown Pilgrim'", ['fig', 'Brown Pilgrim', null, '', undefined]],
  ['Ficus carica Brown Pilgrim', ['fig', 'Brown Pilgrim', null, '', undefined]],
  ['FIG, BROWN PILGRIM', ['fig', 'BROWN PILGRIM', null, '', undefined]],
  ['Feigenbaum Brown Pilgrim', ['fig', 'Brown Pilgrim', null, '', undefined]],
  ['Higuera "Brown Pilgrim"', ['fig', 'Brown Pilgrim', null, '', undefined]],
  ["Apple 'Evening Bell' on Layer Nine", ['apple', 'Evening Bell', 'Layer Nine', '', undefined]],
  ['Apfel Evening Bell auf Layer Nine', ['apple', 'Evening Bell', 'Layer Nine', '', undefined]],
  ["Plum 'Smith on Sea'", ['plum', 'Smith on Sea', null, '', undefined]],
  ['Sour cherry ‘Long Vigil’ bare root', ['cherry', 'Long Vigil', null, 'bare root', undefined]],
  ['Citrus ×latifolia', ['lime', null, null, '', undefined]],
  // As a town's register of trees writes it (open data of Flensburg, CC0: "ga_lang").
  ['Prunus avium, Vogel-Kirsche', ['cherry', null, null, '', undefined]],
  ['Persimmon seedling', ['persimmon', null, null, '', 'seedling']],
  ['Apple rootstock Layer Nine', ['apple', 'Layer Nine', null, '', 'rootstock']],
  ['Long Vigil®', [undefined, 'Long Vigil', null, '', undefined]],
] as const)('%s', (text, expected) => {
  expect(named(text)).toEqual(expected)
})

test('a fruit, cultivar, rootstock and size in columns of their own are taken from there', () => {
  const { species, cultivar, rootstock, size } = nameTree(
    {
      ...none,
      fruit: 'Pommier',
      cultivar: "'Evening Bell'",
      rootstock: 'Layer Nine',
      size: 'racines nues',
    },
    builtIn,
  )
  expect([species?.id, cultivar, rootstock, size]).toEqual([
    'apple',
    'Evening Bell',
    'Layer Nine',
    'racines nues',
  ])
})
