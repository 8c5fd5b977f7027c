import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { Cultivar } from '../../../trade/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'

/** A cultivar's name and other names, and the leave to propagate it where it is protected. */
export function CultivarForm({
  cultivar,
  onClose,
}: {
  readonly cultivar: Cultivar
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const { licence } = cultivar
  const [said, setSaid] = useState({
    name: cultivar.name,
    synonyms: cultivar.synonyms.join('; '),
    pollination: cultivar.pollination,
    owner: licence?.owner ?? '',
    until: licence?.until ?? '',
  })
  const [allowed, setAllowed] = useState<number | null>(licence?.treesPerYear ?? null)
  const [fee, setFee] = useState(licence?.feePerTree ?? 0)
  const owner = said.owner.trim()
  const lacks = said.name.trim() === '' ? t('nursery.needName') : null
  const text = (key: keyof typeof said, label: string, type = 'text') => (
    <Field
      type={type}
      label={label}
      value={said[key]}
      onChange={value => setSaid({ ...said, [key]: value })}
    />
  )
  return (
    <EntryForm
      title={t('nursery.changeOf', { name: cultivar.name })}
      bodies={
        lacks === null
          ? [
              {
                kind: 'cultivar-set/1',
                cultivar: Cultivar.parse({
                  ...cultivar,
                  name: said.name.trim(),
                  synonyms: said.synonyms
                    .split(/[;,]/)
                    .map(one => one.trim())
                    .filter(one => one !== ''),
                  pollination: said.pollination.trim(),
                  licence:
                    owner === ''
                      ? null
                      : { owner, treesPerYear: allowed, until: said.until || null, feePerTree: fee },
                }),
              },
            ]
          : null
      }
      need={lacks ?? ''}
      told={t('nursery.kept', { name: said.name.trim() })}
      onClose={onClose}
    >
      {text('name', t('nursery.name'))}
      {text('synonyms', t('nursery.cultivar.synonyms'))}
      {text('pollination', t('nursery.cultivar.pollination'))}
      <p className="soft small">{t('nursery.cultivar.licenceSays')}</p>
      <div className="form-grid">
        {text('owner', t('nursery.cultivar.owner'))}
        <NumberAsked
          label={t('nursery.cultivar.allowed')}
          value={allowed}
          least={0}
          isWhole
          ifEmpty={t('nursery.cultivar.noBound')}
          onSay={setAllowed}
        />
        {text('until', t('nursery.cultivar.until'), 'date')}
        <NumberAsked
          label={t('nursery.cultivar.fee')}
          value={fee}
          least={0}
          onSay={value => value !== null && setFee(value)}
        />
      </div>
    </EntryForm>
  )
}
