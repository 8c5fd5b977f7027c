import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { client } from '../../data/client.ts'
import { look } from '../../data/queries.ts'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { whoNow } from '../../data/who.ts'
import { useDone } from '../../parts/done.tsx'
import { RefusedLine } from '../../parts/refused-line.tsx'
import { SomeOf } from '../../parts/some-of.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'

/** What was brought in so far, each taken back by one press; what others rest on stays, and it is said why. */
export function BroughtIn() {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  const names = useNames()
  const done = useDone()
  const queries = useQueryClient()
  const { data: all } = useQuery(look.broughtIn())
  const takeBack = useMutation({
    mutationFn: (id: string) => client.takeBack(id, whoNow()),
    onSuccess: ({ strikes }) => {
      const count = strikes.length
      if (count > 0)
        done.tell(t('imports.brought.struck', { count, shown: format.number(count) }), {
          entries: strikes.map(id => ({ id })),
          kept: true,
        })
      void queries.invalidateQueries({ queryKey: look.broughtIn().queryKey })
    },
  })
  if (all === undefined || all.length === 0) return null
  const stay = takeBack.data?.stay ?? 0
  const problem = takeBack.error
  return (
    <section className="sheet stack">
      <div>
        <h2>{t('imports.brought.title')}</h2>
        <p className="soft small">{t('imports.brought.says')}</p>
      </div>
      <ul className="brought">
        {all.map(({ id, at, by, files, written, standing }) => (
          <li key={id}>
            <div>
              <p>{format.list(files)}</p>
              <p className="soft small">
                {t('imports.brought.one', {
                  day: format.fullDay(deviceDay(new Date(at))),
                  by: by === null ? t('batch.nobody') : names.person(by),
                  written: format.number(written),
                  standing: format.number(standing),
                })}
              </p>
            </div>
            {standing > 0 && (
              <Button
                className="plain"
                isDisabled={takeBack.isPending}
                aria-label={`${t('imports.brought.takeBack')}: ${format.list(files)}`}
                onPress={() => takeBack.mutate(id)}
              >
                {t('imports.brought.takeBack')}
              </Button>
            )}
          </li>
        ))}
      </ul>
      {problem !== null && <RefusedLine problem={problem} />}
      {takeBack.data !== undefined && stay > 0 && (
        <div role="status">
          <p className="warn">{t('imports.brought.stay', { count: stay, shown: format.number(stay) })}</p>
          <SomeOf
            items={takeBack.data.reasons.map(({ entry, says, for: rests, on }) => ({
              key: entry,
              says: t('imports.brought.because', {
                says: tell(says),
                rests: tell(rests),
                day: format.fullDay(on),
              }),
            }))}
          />
        </div>
      )}
    </section>
  )
}
