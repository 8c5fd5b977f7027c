import { expect, test } from 'vitest'
import { type FunnelPoint, layOutFunnel } from './funnel-layout.ts'

const point = (
  key: string,
  share: number,
  worth: number,
  standing: FunnelPoint['standing'],
): FunnelPoint => ({ key, name: key, share, worth, standing })
const points = [
  point('ana', 0.9, 200, 'above'),
  point('bo', 0.75, 20, 'within'),
  point('chi', 0.55, 190, 'far-below'),
  point('dee', 0.545, 180, 'far-below'),
]
const layout = layOutFunnel(0.75, points, 40, 640)
const pairs = (area: string) =>
  area
    .slice(1, -1)
    .split('L')
    .map(pair => pair.split(' ').map(Number) as [number, number])

test('the funnel is wide where few are counted and narrow where many are, the wider limits about the nearer', () => {
  const heightAt = ({ area }: { area: string }, end: 'first' | 'last') => {
    const edge = pairs(area)
    const half = edge.length / 2
    return end === 'first' ? edge.at(-1)![1] - edge[0]![1] : edge[half]![1] - edge[half - 1]![1]
  }
  for (const limits of [layout.near, layout.far])
    expect(heightAt(limits, 'first')).toBeGreaterThan(2 * heightAt(limits, 'last'))
  expect(heightAt(layout.far, 'last')).toBeGreaterThan(heightAt(layout.near, 'last'))
})

test('all points lie on the drawing, with the scale of the shares about them', () => {
  for (const { share, worth } of points) {
    expect(layout.x(worth)).toBeGreaterThan(40)
    expect(layout.x(worth)).toBeLessThanOrEqual(640)
    expect(share).toBeGreaterThanOrEqual(layout.shares[0]!)
    expect(layout.y(share)).toBeGreaterThanOrEqual(12)
    expect(layout.y(share)).toBeLessThanOrEqual(254)
  }
})

test('who stands outside is named, on the side where the name covers no other point', () => {
  expect(layout.names.map(({ key }) => key)).toEqual(['ana', 'chi', 'dee'])
  const toLeft = new Map(layout.names.map(name => [name.key, name.toLeft]))
  // Dee stands a little to the left of Chi, as high: one name goes to each side.
  expect([toLeft.get('chi'), toLeft.get('dee')]).toEqual([false, true])
})

test('names of those who stand in one place are set one under the other', () => {
  const alike = ['ana', 'bo', 'chi'].map(key => point(key, 0.55, 190, 'far-below'))
  const ys = layOutFunnel(0.75, alike, 40, 640).names.map(({ y }) => y)
  for (const [at, y] of ys.slice(1).entries()) expect(y - ys[at]!).toBeGreaterThanOrEqual(15)
})
