import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import './drill.css'

/** A number, in words, that can be asked for the entries behind it. */
export function Drill({ says, onAsk }: { readonly says: string; readonly onAsk: (says: string) => void }) {
  const { t } = useTranslation()
  return (
    <Button className="drill" aria-label={t('batch.behindAsk', { says })} onPress={() => onAsk(says)}>
      {says}
    </Button>
  )
}
