import type { FileChooser, Locator, Page } from 'playwright-core'

/** How a person works a page. What can be done by one pair of hands must be done by the other. */
export interface Hands {
  /** Goes to a screen by its name in the navigation. */
  goTo(screen: string): Promise<void>
  press(what: Locator): Promise<void>
  /** Replaces what a field says. */
  write(field: Locator, text: string): Promise<void>
  /** Chooses from a field that finds by typing. */
  find(field: Locator, text: string): Promise<void>
  chooseFiles(button: Locator): Promise<FileChooser>
}

const exact = (name: string) => ({ name, exact: true })

export const withMouse = (page: Page): Hands => ({
  goTo: screen => page.getByRole('navigation').getByRole('link', exact(screen)).first().click(),
  press: what => what.click(),
  write: (field, text) => field.fill(text),
  find: async (field, text) => {
    await field.fill(text)
    await page.getByRole('option').first().click()
  },
  chooseFiles: async button => {
    const choosing = page.waitForEvent('filechooser')
    await button.click()
    return choosing
  },
})

const MOST_TABS = 250

/** Never touches the mouse: Tab until the thing has the focus, and the keys that a person would press on it. */
export const withKeys = (page: Page): Hands => {
  const tabTo = async (what: Locator): Promise<void> => {
    await what.waitFor({ state: 'attached' })
    for (let tabs = 0; tabs < MOST_TABS; tabs++) {
      if (await what.evaluate(element => element === document.activeElement)) return
      await page.keyboard.press('Tab')
    }
    throw new Error(`${what} is not reached by Tab.`)
  }
  const press = async (what: Locator): Promise<void> => {
    await tabTo(what)
    await page.keyboard.press('Enter')
  }
  const write = async (field: Locator, text: string): Promise<void> => {
    await tabTo(field)
    await page.keyboard.press('Control+A')
    await page.keyboard.type(text)
  }
  return {
    goTo: async screen => {
      await page.keyboard.press('Control+K')
      await page.getByPlaceholder('A screen, batch, order').waitFor()
      await page.keyboard.type(screen)
      await page.getByRole('menuitem').first().filter({ hasText: screen }).waitFor()
      await page.keyboard.press('Enter')
      await page.getByRole('dialog').waitFor({ state: 'detached' })
    },
    press,
    write,
    find: async (field, text) => {
      await write(field, text)
      await page.getByRole('option').first().waitFor()
      await page.keyboard.press('ArrowDown')
      await page.keyboard.press('Enter')
    },
    chooseFiles: async button => {
      const choosing = page.waitForEvent('filechooser')
      await press(button)
      return choosing
    },
  }
}

/** A form that was just opened has the focus on its first field: a field whose list would open with it is passed over. */
export const beginsAtFirstField = (): boolean => {
  const form = document.querySelector('[role="dialog"] form')
  const fields = 'input:not([type="file"], [role="combobox"]), select, textarea, [aria-checked="true"]'
  return form === null || document.activeElement === form.querySelector(fields)
}
