import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'

/** A number that shows the entries behind it when it is asked. */
export interface Asking {
  /** Of the numbers of a batch, as `behind` names them. */
  readonly number: string
  readonly says: string
}

/** A number of a batch, in words, that can be asked for the entries behind it. */
export function Drill({
  number,
  says,
  onAsk,
}: Asking & {
  readonly onAsk: (asking: Asking) => void
}) {
  const { t } = useTranslation()
  return (
    <Button
      className="drill"
      aria-label={t('batch.behindAsk', { says })}
      onPress={() => onAsk({ number, says })}
    >
      {says}
    </Button>
  )
}
