import { Link } from '@tanstack/react-router'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { plansAfterCount, setPlansAfterCount } from '../../data/aftermath.ts'
import { client } from '../../data/client.ts'
import { say } from '../../data/say.ts'
import { useNames } from '../../data/use-names.tsx'
import { Fetching } from '../../parts/asked.tsx'
import { Choices } from '../../parts/choices.tsx'
import { useDone } from '../../parts/done.tsx'
import { FileLink } from '../../parts/file-link.tsx'
import { ThemePick } from '../../shell/theme-pick.tsx'
import { WhoPick } from '../../shell/who-pick.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './settings.css'
import { KeptHere } from './kept-here.tsx'
import { LanguagePick } from './language-pick.tsx'
import { NurseryLists } from './nursery-lists.tsx'
import { KeptNurseries, PutBackup } from './put-back.tsx'
import { TablesOut } from './tables-out.tsx'

/** What is set for this device, and what is set for the nursery. */
export function SettingsScreen() {
  const { t } = useTranslation()
  const format = useFormat()
  const done = useDone()
  const { nursery } = useNames()
  const [replans, setReplans] = useState(plansAfterCount)
  if (nursery === undefined) return <Fetching what={t('settings.title')} />
  const { site, settings } = nursery
  const setUnits = async (units: 'metric' | 'us') => {
    if (units === settings.units) return
    const said = await say([{ kind: 'settings-set/1', settings: { ...settings, units } }])
    done.tell(t('settings.unitsKept', { units: t(`settings.units.${units}`) }), said)
  }
  return (
    <div className="stack settings">
      <h1>{t('settings.title')}</h1>
      <section className="sheet stack">
        <div>
          <h2>{t('settings.device')}</h2>
          <p className="soft small">{t('settings.deviceSays')}</p>
        </div>
        <div className="setting">
          <span className="field-label">{t('shell.theme')}</span>
          <ThemePick />
        </div>
        <LanguagePick />
        <WhoPick />
        <div className="setting">
          <span className="field-label">{t('settings.replan.label')}</span>
          <Choices
            label={t('settings.replan.label')}
            value={replans ? 'yes' : 'no'}
            options={(['yes', 'no'] as const).map(id => ({ id, name: t(`settings.replan.${id}`) }))}
            onPick={id => {
              setPlansAfterCount(id === 'yes')
              setReplans(id === 'yes')
            }}
          />
        </div>
        <KeptHere />
      </section>
      <section className="sheet stack">
        <h2>{t('settings.nursery')}</h2>
        <p>
          {site === null
            ? t('settings.noSite')
            : t('settings.site', {
                name: site.name,
                latitude: format.amount(site.latitudeDegrees),
                longitude: format.amount(site.longitudeDegrees),
                height: format.length(site.heightMetres),
              })}
        </p>
        <div className="setting">
          <span className="field-label">{t('settings.units.label')}</span>
          <Choices
            label={t('settings.units.label')}
            value={settings.units}
            options={(['metric', 'us'] as const).map(id => ({ id, name: t(`settings.units.${id}`) }))}
            onPick={id => void setUnits(id)}
          />
        </div>
      </section>
      <section className="sheet stack">
        <h2>{t('settings.files')}</h2>
        <div className="row">
          <Link to="/import" className="plain">
            {t('settings.import')}
          </Link>
          <FileLink href={client.downloads.backup} of="backup" className="plain">
            {t('settings.backup')}
          </FileLink>
          <FileLink href={client.downloads.entries} className="plain">
            {t('settings.entries')}
          </FileLink>
          <PutBackup />
        </div>
        <p className="soft small">{t('settings.filesSay')}</p>
        <TablesOut />
        <KeptNurseries />
      </section>
      <NurseryLists nursery={nursery} />
      <p>
        <a href="/api/openapi.json">{t('settings.api')}</a>
      </p>
    </div>
  )
}
