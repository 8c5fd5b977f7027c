import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { LifePicture } from '../../pictures/life/life-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'

/** A batch's life, step by step, with where it stands now. */
export function BatchLife({ view }: { readonly view: BatchView }) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  return (
    <LifePicture
      title={t('batch.life')}
      begun={view.row.number}
      steps={view.steps.map(({ step, name, place, entered, left, lost }) => {
        const here = view.portions.filter(portion => portion.step === step && portion.number > 0)
        return {
          name,
          place: t(`trade.place.${place}`),
          entered,
          left,
          lost,
          now: here.reduce((sum, { number }) => sum + number, 0),
          where: format.list(
            here.map(({ bench, since }) =>
              `${names.bench(bench)} ${t('batch.stepSince', { day: format.day(since) })}`.trim(),
            ),
          ),
        }
      })}
    />
  )
}
