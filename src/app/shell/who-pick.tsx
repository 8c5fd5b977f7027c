import { useQuery } from '@tanstack/react-query'
import { useTranslation } from 'react-i18next'
import { look } from '../data/queries.ts'
import { setWho, useWho } from '../data/who.ts'
import { Pick } from '../parts/pick.tsx'

/** Who writes on this device: every entry carries it. */
export function WhoPick() {
  const { t } = useTranslation()
  const { data } = useQuery(look.nursery())
  const people = data?.people ?? []
  return (
    <Pick
      label={t('shell.who.label')}
      value={useWho() ?? ''}
      options={[
        { id: '', name: t('shell.who.nobody') },
        ...people.map(({ id, name }) => ({ id: id as string, name })),
      ]}
      onPick={id => setWho(id === '' ? null : id)}
    />
  )
}
