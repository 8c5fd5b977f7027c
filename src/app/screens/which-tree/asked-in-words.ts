import type { TFunction } from 'i18next'
import type { Question } from '../../../advice/index.ts'
import type { Format } from '../../text/format.ts'

/** The question as a line for the sheet. */
export function askedInWords(question: Question, t: TFunction<'text'>, format: Format): string {
  const { amount, ground, cultivar, wanted } = question
  return [
    wanted === 'any'
      ? t('whichTree.asked.any')
      : cultivar === ''
        ? t('whichTree.asked.namedAny')
        : t('whichTree.asked.named', { name: cultivar }),
    amount.kind === 'trees'
      ? t('whichTree.asked.trees', { count: amount.trees, shown: format.number(amount.trees) })
      : t('whichTree.asked.area', { shown: format.area(amount.squareMetres) }),
    ground.kind === 'ground'
      ? t('whichTree.asked.ground', { exposure: t(`whichTree.exposures.${ground.exposure}`) })
      : t('whichTree.asked.container', {
          litres: format.measure(ground.litres, 'litres'),
          winter: t(`whichTree.winters.${ground.winter}`),
        }),
    t('whichTree.asked.ahead', { years: format.number(question.yearsAhead) }),
  ].join(', ')
}
