import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { FullBench } from '../../../api/index.ts'
import { SomeOf } from '../../parts/some-of.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useSayFull } from './use-say-full.ts'

/** The benches that will be too full, each with its first week and by how much, and the way to that week. */
export function FullAhead({ full }: { readonly full: readonly FullBench[] }) {
  const { t } = useTranslation()
  const format = useFormat()
  const say = useSayFull()
  if (full.length === 0) return null
  return (
    <section>
      <h2>{t('benches.full.title')}</h2>
      <SomeOf
        items={full.map(one => ({
          key: one.bench,
          says: (
            <>
              <Link to="/benches" search={{ week: one.week, bench: one.bench }} resetScroll={false}>
                {say(one)}
              </Link>
              <span className="soft">
                {' '}
                {t('benches.full.weeks', {
                  count: one.weeks.length,
                  shown: format.number(one.weeks.length),
                })}
              </span>
            </>
          ),
        }))}
      />
      <p className="soft small">{t('benches.full.marks')}</p>
    </section>
  )
}
