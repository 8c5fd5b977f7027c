import { expect, test } from 'vitest'
import { fruitsWith } from '../../trade/facts/index.ts'
import { csv, entriesOf, nurseryOf, read } from '../fixtures/read-files.ts'
import { nameTree } from './name-tree.ts'

const facts = fruitsWith({ fruits: [], sets: [] })
const named = (
  tree: string | null,
  cells: { cultivar?: string; fruit?: string; interstem?: string } = {},
) => {
  const { cultivar, others, interstem, rootstock, size } = nameTree(
    { tree, fruit: null, cultivar: null, rootstock: null, form: null, size: null, ...cells },
    facts,
  )
  return { cultivar, others, interstem, rootstock, size }
}

// Ways in which lists write it: common practice, no source.
test.each([
  [
    'Apple ‘Amber Russet’, ‘Winter Lantern’ on Layer Nine, 3 l pot',
    ['Winter Lantern'],
    null,
    'Layer Nine',
    '3 l pot',
  ],
  ['Apple ‘Amber Russet’ + ‘Winter Lantern’ & ‘Saltwind’', ['Winter Lantern', 'Saltwind'], null, null, ''],
  ['Apple ‘Amber Russet’ on interstem ‘Old Abbot’ on Layer Nine', [], 'Old Abbot', 'Layer Nine', ''],
  [
    'Apple "Amber Russet", "Winter Lantern" with an interstem Old Abbot',
    ['Winter Lantern'],
    'Old Abbot',
    null,
    '',
  ],
  [
    'Apfel ‘Amber Russet’ mit Zwischenveredlung ‘Old Abbot’ auf Layer Nine',
    [],
    'Old Abbot',
    'Layer Nine',
    '',
  ],
])(
  '"%s" names what else is worked on the tree, and what stands between',
  (tree, others, interstem, rootstock, size) => {
    expect(named(tree)).toEqual({ cultivar: 'Amber Russet', others, interstem, rootstock, size })
  },
)

test('in columns of their own, cultivars are parted by semicolons, and the interstem has its column', () => {
  expect(
    named(null, { fruit: 'Apple', cultivar: 'Amber Russet; Winter Lantern', interstem: 'Old Abbot' }),
  ).toMatchObject({ cultivar: 'Amber Russet', others: ['Winter Lantern'], interstem: 'Old Abbot' })
})

const orders = (...trees: (readonly [tree: string, interstem: string | null])[]) =>
  csv(
    'orders.csv',
    ['Order', 'Buyer', 'Tree', 'Interstem', 'How many', 'Needed by'],
    ...trees.map(([tree, interstem], at) => [`O${at}`, 'A buyer', tree, interstem, 20, '2028-03-01']),
  )

test('an order of a tree of two cultivars with an interstem makes the kind by the ways for so many unions; however it is written next time, it is the same', async () => {
  const nursery = nurseryOf(await read([orders(['Apple ‘Amber Russet’, ‘Winter Lantern’', 'Old Abbot'])]))
  const [tree] = [...nursery.kinds.values()].filter(({ form }) => form !== 'rootstock')
  expect(tree).toMatchObject({
    name: 'Apple ‘Amber Russet’, ‘Winter Lantern’ on interstem ‘Old Abbot’',
    form: 'multi-worked',
  })
  const names = (ids: readonly string[]) => ids.map(id => nursery.cultivars.get(id as never)!.name)
  expect(names(tree!.cultivars)).toEqual(['Amber Russet', 'Winter Lantern'])
  expect(names([tree!.interstem!])).toEqual(['Old Abbot'])
  expect(tree!.ways.length).toBeGreaterThan(0)
  for (const { protocol, rootstocks } of tree!.ways) {
    const { name, takes } = nursery.protocols.get(protocol)!
    expect(name).toMatch(/2 cultivars on one tree, with an interstem$/)
    expect(takes.flatMap(one => (one.what === 'material' ? [one.part] : []))).toEqual(['scion', 'interstem'])
    expect(rootstocks).toHaveLength(1)
  }
  const again = await read(
    [
      orders(
        ['Apple ‘Winter Lantern’ + ‘Amber Russet’ with interstem ‘Old Abbot’', null],
        ['Apple ‘Amber Russet’; ‘Winter Lantern’', 'OLD ABBOT'],
      ),
    ],
    { nursery },
  )
  expect(again.questions).toEqual([])
  expect(new Set(again.told.map(({ body }) => body.kind))).not.toContain('kind-set/1')
  // One cultivar of them alone, or a third with them, is another tree; where nothing is said of an interstem, it is the only such tree there is.
  const other = await read(
    [
      orders(
        ['Apple ‘Amber Russet’', null],
        ['Apple ‘Amber Russet’, ‘Winter Lantern’', null],
        ['Apple ‘Amber Russet’, ‘Winter Lantern’, ‘Saltwind’', 'Old Abbot'],
      ),
    ],
    { nursery },
  )
  expect(entriesOf(other).filter(({ body }) => body.kind === 'kind-set/1').length).toBe(2)
})

test('where no way can be done so many times on one stock, the kind is made and said to have no way', async () => {
  const six = ['A', 'B', 'C', 'D', 'E', 'F'].map(letter => `‘${letter}pple Bell’`).join(', ')
  const reading = await read([orders([`Apple ${six}`, null])])
  expect(reading.assumptions.map(({ says }) => says).join(' ')).toContain('no way to make it is known')
})

test('a price list with names and prices alone makes its kinds', async () => {
  const list = csv(
    'price list.csv',
    ['Name', 'Price'],
    ['Fig ‘Amber Jar’', 9],
    ['Apple ‘Amber Russet’, ‘Saltwind’', 29],
  )
  const kinds = [...nurseryOf(await read([list])).kinds.values()].filter(({ form }) => form !== 'rootstock')
  expect(kinds.map(({ name, price }) => [name, price])).toEqual([
    ['Fig ‘Amber Jar’', 9],
    ['Apple ‘Amber Russet’, ‘Saltwind’', 29],
  ])
})
