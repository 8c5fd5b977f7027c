import { useTranslation } from 'react-i18next'
import { Choices } from '../parts/choices.tsx'
import { setTheme, THEMES, useTheme } from '../theme/theme.ts'

export function ThemePick() {
  const { t } = useTranslation()
  return (
    <Choices
      label={t('shell.theme')}
      value={useTheme()}
      options={THEMES.map(id => ({ id, name: t(`shell.themes.${id}`) }))}
      onPick={setTheme}
    />
  )
}
