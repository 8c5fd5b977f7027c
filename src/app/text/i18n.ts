import i18next from 'i18next'
import { initReactI18next } from 'react-i18next'
import { en } from './en.ts'

declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'text'
    resources: { text: typeof en }
  }
}

const RIGHT_TO_LEFT = new Set(['ar', 'fa', 'he', 'ur'])

export const startText = async (language = 'en'): Promise<void> => {
  await i18next.use(initReactI18next).init({
    lng: language,
    fallbackLng: 'en',
    defaultNS: 'text',
    ns: ['text'],
    resources: { en: { text: en } },
    interpolation: { escapeValue: false },
  })
  document.documentElement.lang = language
  document.documentElement.dir = RIGHT_TO_LEFT.has(language.slice(0, 2)) ? 'rtl' : 'ltr'
}
