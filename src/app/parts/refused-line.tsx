import { useTranslation } from 'react-i18next'
import { type Refusal, Refused } from '../../api/index.ts'
import { useRefusal } from '../text/use-refusal.ts'

/** Why something was not done: what the server refused and how to mend it, or that none answers. */
export function RefusedLine({ problem }: { readonly problem: Error }) {
  const { t } = useTranslation()
  return (
    <p className="warn" role="alert">
      {problem instanceof Refused ? <RefusedSaid refusal={problem.refusal} /> : t('shell.outbox.away')}
    </p>
  )
}

/** A refusal in one line; what there is in English alone is marked as such. */
export function RefusedSaid({ refusal }: { readonly refusal: Refusal }) {
  const { t } = useTranslation()
  const { what, mend, detail, isEnglish } = useRefusal()(refusal)
  return (
    <>
      <span {...(isEnglish && { lang: 'en' })}>{t('common.refused', { what, mend })}</span>
      {detail !== null && <span lang="en"> {detail}</span>}
    </>
  )
}
