import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { HoldRow } from '../../api/index.ts'
import { useNames } from '../data/use-names.tsx'
import { useFormat } from '../text/use-format.tsx'
import { EntryForm } from './entry-form.tsx'
import { Field } from './field.tsx'
import { openedOf, useOpened } from './use-opened.ts'

/** Holds with their reasons; one that stands can be released, with a reason of its own. */
export function HoldList({ holds }: { readonly holds: readonly HoldRow[] }) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const [opened, open] = useOpened()
  const releasing = holds.find(({ id, released }) => released === null && id === openedOf(opened, 'release'))
  const by = (person: string | null) =>
    person === null ? '' : t('holds.by', { person: names.person(person) })
  return (
    <>
      <ul className="sentences holds">
        {holds.map(hold => (
          <li key={hold.id} className="row">
            <div>
              <p className="strong">
                {t(`holds.of.${hold.what === 'lineage' ? 'lineage' : hold.of.what}`, { name: hold.of.name })}
              </p>
              <p>{t('holds.stands', { day: format.fullDay(hold.since), by: by(hold.by), why: hold.why })}</p>
              {hold.released !== null && (
                <p className="soft">
                  {t('holds.wasReleased', {
                    day: format.fullDay(hold.released.on),
                    by: by(hold.released.by),
                    why: hold.released.why,
                  })}
                </p>
              )}
            </div>
            {hold.released === null && (
              <Button className="quiet" onPress={() => open(`release ${hold.id}`)}>
                {t('holds.release')}
              </Button>
            )}
          </li>
        ))}
      </ul>
      {releasing !== undefined && <Release hold={releasing} onClose={() => open(null)} />}
    </>
  )
}

function Release({ hold, onClose }: { readonly hold: HoldRow; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const [why, setWhy] = useState('')
  return (
    <EntryForm
      title={t('holds.releaseTitle', { name: hold.of.name })}
      bodies={why.trim() === '' ? null : [{ kind: 'hold-released/1', hold: hold.id, why: why.trim() }]}
      need={t('holds.need')}
      told={t('holds.released', { name: hold.of.name })}
      onClose={onClose}
    >
      <Field label={t('holds.releaseWhy')} value={why} onChange={setWhy} />
    </EntryForm>
  )
}
