import { AxeBuilder } from '@axe-core/playwright'
import axe from 'axe-core'
import type { Page } from 'playwright-core'

/**
 * axe's objects, of which a page makes some hundred thousand, have their private fields in weak maps. Kept on the objects
 * themselves they are found and let go sooner: a third of what a reading takes.
 */
const source = `(() => {
  class WeakMap {
    #field = Symbol()
    has(of) { return Object.hasOwn(of, this.#field) }
    get(of) { return of[this.#field] }
    set(of, value) { of[this.#field] = value; return this }
    delete(of) { return delete of[this.#field] }
  }
  class WeakSet {
    #mark = new WeakMap()
    has(one) { return this.#mark.has(one) }
    add(one) { this.#mark.set(one, true); return this }
    delete(one) { return this.#mark.delete(one) }
  }
  ${axe.source}
})()`

/** A colour as axe reads it out of a text. */
type Color = Record<'r' | 'g' | 'b' | 'alpha', number>
type ColorClass = Color & { parseString(text: string): Color }

/**
 * Has axe work out each text of a colour once: it goes through a long reckoning for each word of a page, and there are few
 * colours.
 */
const readColoursOnce = (): void => {
  const { axe } = window as unknown as {
    axe: { commons: { color: { Color: { prototype: ColorClass } } } }
  }
  const { prototype } = axe.commons.color.Color
  const { parseString } = prototype
  const known = new Map<string, Color>()
  prototype.parseString = function (text) {
    const { r, g, b, alpha } = known.get(text) ?? parseString.call(this, text)
    known.set(text, { r, g, b, alpha })
    return Object.assign(this, { r, g, b, alpha })
  }
}

/**
 * axe (axe-core, rules after WCAG 2.2) on a page that has none yet, or again where it is: read in once, asked for faults and
 * not for all that is well.
 */
export async function axeOn(page: Page): Promise<AxeBuilder> {
  if (!(await page.evaluate(() => 'axe' in window))) {
    await page.evaluate(source)
    await page.evaluate(readColoursOnce)
  }
  return new AxeBuilder({ page, axeSource: 'undefined' })
    .setLegacyMode()
    .options({ resultTypes: ['violations'] })
}
