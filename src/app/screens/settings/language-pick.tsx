import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { Choices } from '../../parts/choices.tsx'
import { chooseLanguage } from '../../text/i18n.ts'
import {
  asLanguage,
  LANGUAGES,
  type Language,
  languageChosen,
  languageOfSystem,
} from '../../text/language.ts'

const SYSTEM = 'system'

/** The language of this device: the system's, or one of those that there is a catalogue for, each by its own name. */
export function LanguagePick() {
  const { t, i18n } = useTranslation()
  const [chosen, setChosen] = useState(languageChosen)
  const [failed, setFailed] = useState(false)
  const choose = (id: Language | typeof SYSTEM) => {
    const language = asLanguage(id)
    void chooseLanguage(language).then(
      () => {
        setChosen(language)
        setFailed(false)
      },
      () => setFailed(true),
    )
  }
  return (
    <div id="language" className="setting">
      <span className="field-label">{t('settings.language.label')}</span>
      <Choices
        label={t('settings.language.label')}
        value={chosen ?? SYSTEM}
        options={[
          {
            id: SYSTEM,
            name: t('settings.language.system', {
              language: LANGUAGES[languageOfSystem(navigator.languages)],
            }),
          },
          ...Object.entries(LANGUAGES).map(([id, name]) => ({ id: id as Language, name })),
        ]}
        onPick={choose}
      />
      {i18n.language !== 'en' && <p className="soft small">{t('settings.language.says')}</p>}
      {failed && (
        <p className="warn" role="alert">
          {t('settings.language.notHere')}
        </p>
      )}
    </div>
  )
}
