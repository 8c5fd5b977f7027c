import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { Site } from '../../../record/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { useFormat } from '../../text/use-format.tsx'

/** Where the nursery lies. */
export function SiteForm({ site, onClose }: { readonly site: Site | null; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const format = useFormat()
  const [name, setName] = useState(site?.name ?? '')
  const [at, setAt] = useState<{
    readonly latitude: number | null
    readonly longitude: number | null
    readonly height: number | null
  }>({
    latitude: site?.latitudeDegrees ?? null,
    longitude: site?.longitudeDegrees ?? null,
    height: site?.heightMetres ?? null,
  })
  const lacks =
    name.trim() === '' ? t('nursery.needName') : at.latitude === null ? t('nursery.site.needLatitude') : null
  return (
    <EntryForm
      title={t('nursery.site.title')}
      bodies={
        lacks === null
          ? [
              {
                kind: 'site-set/1',
                site: Site.parse({
                  name: name.trim(),
                  latitudeDegrees: at.latitude,
                  longitudeDegrees: at.longitude ?? 0,
                  heightMetres: at.height ?? 0,
                }),
              },
            ]
          : null
      }
      need={lacks ?? ''}
      told={t('nursery.site.kept', { name: name.trim() })}
      onClose={onClose}
    >
      <p className="soft">{t('nursery.site.says')}</p>
      <Field label={t('nursery.name')} value={name} onChange={setName} />
      <div className="form-grid">
        <NumberAsked
          label={t('nursery.site.latitude')}
          value={at.latitude}
          least={-90}
          most={90}
          ifEmpty=""
          onSay={latitude => setAt({ ...at, latitude })}
        />
        <NumberAsked
          label={t('nursery.site.longitude')}
          value={at.longitude}
          least={-180}
          most={180}
          ifEmpty=""
          onSay={longitude => setAt({ ...at, longitude })}
        />
        <NumberAsked
          label={t('nursery.site.height', { unit: format.shown('m').unit })}
          value={at.height}
          least={-500}
          most={6000}
          ifEmpty=""
          shown={format.shown('m')}
          onSay={height => setAt({ ...at, height })}
        />
      </div>
    </EntryForm>
  )
}
