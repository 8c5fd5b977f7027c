/** Text by key, any depth. */
export interface Tree {
  readonly [key: string]: string | Tree
}

/**
 * The catalogue with every plural form that the language has. Spanish has a third one, for whole millions, which differs
 * from the usual one only where the number is written as a word; here numbers are figures.
 */
export function withEveryForm(tree: Tree, language: string): Tree {
  const forms = new Intl.PluralRules(language).resolvedOptions().pluralCategories
  const whole: Record<string, string | Tree> = {}
  for (const [key, said] of Object.entries(tree)) {
    if (typeof said !== 'string') whole[key] = withEveryForm(said, language)
    else {
      whole[key] = said
      const base = /^(.*)_other$/.exec(key)?.[1]
      if (base !== undefined)
        for (const form of forms) whole[`${base}_${form}`] ??= tree[`${base}_${form}`] ?? said
    }
  }
  return whole
}
