import { describe, expect, test } from 'vitest'
import { allSpecies, methodById, sourceById } from '../facts/index.ts'
import { markOfMethod } from '../mark-of-method.ts'
import { MethodId } from '../vocabulary.ts'
import { allGuides, benchFigures, Drawing, guideFigures, guideOf } from './index.ts'

describe('the guides', () => {
  test('cover every method of the vocabulary, each in its own words', () => {
    expect(allGuides().map(({ method }) => method)).toEqual([...MethodId.options])
    const summaries = allGuides().map(({ summary }) => summary)
    expect(new Set(summaries).size).toBe(summaries.length)
  })

  test('draw no step twice in one guide, and leave no drawing unused', () => {
    for (const { method, steps, pictured } of allGuides()) {
      const drawn = steps.map(({ drawing }) => drawing)
      expect(new Set(drawn).size, method).toBe(steps.length)
      expect(drawn, method).toContain(pictured)
    }
    const used = new Set(allGuides().flatMap(({ steps }) => steps.map(({ drawing }) => drawing)))
    expect(Drawing.options.filter(drawing => !used.has(drawing))).toEqual([])
  })

  test('warn of blades wherever wood is cut, and of hormone wherever one is named', () => {
    for (const { method, cautions } of allGuides()) {
      const cuts = markOfMethod(method) !== 'seed' && method !== 'tissue_culture'
      if (cuts) expect(cautions, method).toEqual(expect.arrayContaining(['blade', 'tools']))
      if (guideFigures(method).some(({ unit }) => unit === 'ppm'))
        expect(cautions, method).toContain('hormone')
    }
  })

  test('warn of hot wax where drawings or figures use it, of ladders where limbs are worked', () => {
    for (const { method, cautions } of allGuides())
      if (methodById(method).materials.waxMlPerPlant !== undefined)
        expect(cautions, method).toContain('hotWax')
    for (const method of ['air_layer', 'bark_graft', 'cleft_graft_topwork', 'four_flap_graft'] as const)
      expect(guideOf(method).cautions).toContain('ladder')
  })

  test('name a stock for every method that works one, and none where a plant stands on its own', () => {
    for (const { method, needs } of allGuides())
      expect(needs.stock !== null, method).toBe(['graft', 'bud'].includes(markOfMethod(method)))
  })

  test('go on from week to week without going back', () => {
    for (const { method, aftercare } of allGuides())
      for (const [index, { fromWeek }] of aftercare.entries())
        if (index > 0) expect(fromWeek, method).toBeGreaterThanOrEqual(aftercare[index - 1]!.toWeek)
  })
})

describe('the figures of a guide', () => {
  test('carry their basis, and a published one its document', () => {
    for (const method of MethodId.options) {
      const figures = guideFigures(method)
      expect(figures.length, method).toBeGreaterThan(1)
      for (const { name, figure } of figures) {
        expect(['published', 'common practice', 'from memory'], `${method} ${name}`).toContain(figure.basis)
        expect(figure.low <= figure.typical && figure.typical <= figure.high, `${method} ${name}`).toBe(true)
        if (figure.basis === 'published')
          expect(figure.sources.length, `${method} ${name}`).toBeGreaterThan(0)
        expect(figure.sources.every(id => sourceById(id) !== undefined)).toBe(true)
      }
    }
  })

  test('on the bench card are those of the hand: no orders, no hours', () => {
    for (const method of MethodId.options) {
      const names = benchFigures(method).map(({ name }) => name)
      expect(names.length, method).toBeGreaterThan(1)
      expect(
        names.filter(name => /tape|medium$|in an hour/.test(name)),
        method,
      ).toEqual([])
    }
    expect(benchFigures('air_layer').map(({ name }) => name)).toEqual(
      expect.arrayContaining(['width of the ring', 'days until it can move on']),
    )
    expect(benchFigures('top_wedge_graft').map(({ name }) => name)).toContain('stock stem at the cut')
  })

  test('name each measure once', () => {
    for (const method of MethodId.options) {
      const names = guideFigures(method).map(({ name }) => name)
      expect(new Set(names).size, method).toBe(names.length)
    }
  })

  // The species' own figures have their sources in the facts; the guide's general range must not contradict them.
  test('of the stem to be worked reach into what the facts know of each fruit', () => {
    const stems = (method: MethodId) =>
      guideOf(method).measures.filter(({ name }) => /^(stock (stem|thickness)|stem at)/.test(name))
    let compared = 0
    for (const species of allSpecies())
      for (const { method, materials } of species.ways) {
        const known = materials.stockDiameterMm
        if (known === undefined) continue
        for (const { figure } of stems(method)) {
          compared++
          expect(figure.low <= known.high && known.low <= figure.high, `${species.id} ${method}`).toBe(true)
        }
      }
    expect(compared).toBeGreaterThan(3)
  })

  test('of cleft and ring reach into the published ones', () => {
    for (const species of allSpecies()) {
      for (const { method, materials } of species.ways) {
        const cleft = materials.cleftDepthMm
        const wedge = guideOf(method).measures.find(({ name }) => name === 'length of the wedge')?.figure
        if (cleft !== undefined && wedge !== undefined)
          expect(wedge.low <= cleft.high && cleft.low <= wedge.high, species.id).toBe(true)
      }
    }
    // Ring over branch: the widths and diameters of the facts give the same ratio as the guide (YOUNG_MARCOT for the width).
    const { girdleWidthMm, branchDiameterMm } = methodById('air_layer').materials
    const ratio = girdleWidthMm!.typical / branchDiameterMm!.typical
    const rule = guideOf('air_layer').measures.find(({ name }) => name === 'ring against branch')!.figure
    expect(ratio).toBeGreaterThanOrEqual(rule.low)
    expect(ratio).toBeLessThanOrEqual(rule.high)
  })
})
