import type { TFunction } from 'i18next'
import type { Answer, TreeWay } from '../../../advice/index.ts'

/** How a way is called on screens and sheets. */
export function nameOfWay(way: TreeWay, t: TFunction<'text'>): string {
  if (way.method === 'air_layer' && way.form === 'layered') return t('whichTree.airLayer')
  if (way.method === 'tissue_culture') return t('whichTree.flask')
  const form = t(`whichTree.form.${way.form}`, { year: way.reworkedInYear ?? 0 })
  return way.form === 'worked' && way.rootstock !== null
    ? t('whichTree.on', { form, stock: way.rootstock.name })
    : form
}

/** Names of the ways of an answer by their id; offers of one form are told apart by their label. */
export function wayNames(answer: Answer, t: TFunction<'text'>): (id: string) => string {
  const names = new Map<string, string>()
  for (const { way } of answer.ways) {
    const name = nameOfWay(way, t)
    const isTwin = answer.ways.some(other => other.way.id !== way.id && nameOfWay(other.way, t) === name)
    names.set(
      way.id,
      isTwin && way.offer !== null ? t('whichTree.offered', { way: name, label: way.offer.label }) : name,
    )
  }
  return id => names.get(id) ?? id
}
