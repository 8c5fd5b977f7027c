import type { Page } from 'playwright-core'

/** Words that lie over words of another line or column, as they are seen: cut off where their box is. */
export const wordsOverWords = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const looks = new Map<
      Element,
      {
        element: Element
        style: Record<'clipPath' | 'overflowX' | 'position' | 'display', string>
        edge: DOMRect
      }
    >()
    const lookOf = (element: Element) => {
      const known = looks.get(element)
      if (known !== undefined) return known
      const { clipPath, overflowX, position, display } = getComputedStyle(element)
      const look = {
        element,
        style: { clipPath, overflowX, position, display },
        edge: element.getBoundingClientRect(),
      }
      looks.set(element, look)
      return look
    }
    const around = (from: Element) => {
      const all: Element[] = []
      for (let one: Element | null = from; one !== null; one = one.parentElement) all.push(one)
      return all.map(lookOf)
    }
    const seen: { words: string; line: Element; layer: Element | undefined; box: DOMRect }[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) {
      const words = text.textContent!.trim()
      if (words === '' || !text.parentElement!.checkVisibility({ visibilityProperty: true })) continue
      const boxes = around(text.parentElement!)
      if (boxes.some(({ style }) => style.clipPath !== 'none')) continue
      const range = document.createRange()
      range.selectNodeContents(text)
      for (const box of range.getClientRects()) {
        let { left, top, right, bottom } = box
        for (const { element, style, edge } of boxes) {
          if (style.overflowX === 'visible' || element === document.documentElement) continue
          left = Math.max(left, edge.left)
          top = Math.max(top, edge.top)
          right = Math.min(right, edge.right)
          bottom = Math.min(bottom, edge.bottom)
        }
        if (right - left < 1 || bottom - top < 4) continue
        const line = boxes.find(({ style }) => style.display !== 'inline')!.element
        const layer = boxes.find(({ style }) => /fixed|sticky/.test(style.position))?.element
        seen.push({ words, line, layer, box: new DOMRect(left, top, right - left, bottom - top) })
      }
    }
    seen.sort((one, other) => one.box.top - other.box.top)
    const found = new Set<string>()
    for (const [at, one] of seen.entries())
      for (const other of seen.slice(at + 1)) {
        if (other.box.top >= one.box.bottom) break
        if (one.line === other.line || one.layer !== other.layer) continue
        const tall = Math.min(one.box.bottom, other.box.bottom) - other.box.top
        const wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left)
        if (wide > 1 && tall > Math.min(one.box.height, other.box.height) / 2)
          found.add(`${one.words.slice(0, 40)} | ${other.words.slice(0, 40)}`)
      }
    return [...found]
  })
