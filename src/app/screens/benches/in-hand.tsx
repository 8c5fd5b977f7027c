import { useTranslation } from 'react-i18next'
import type { BenchView } from '../../../api/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './in-hand.css'

/** What is being moved, and the bench on which it stands. */
export interface Held {
  readonly stand: BenchView['stands'][number]
  readonly bench: string
}

/** Less than this is no room and no lack of it. */
const NO_AREA = 0.05

/** What is in hand, and whether it fits on the bench that it is over. */
export function InHand({
  held,
  aimed,
  canMove,
}: {
  readonly held: Held | null
  readonly aimed: BenchView | undefined
  readonly canMove: boolean
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  if (held === null)
    return canMove ? <p className="in-hand nothing soft small">{t('benches.move.hint')}</p> : null
  const { stand, bench } = held
  const free =
    aimed === undefined || aimed.bench === bench
      ? null
      : aimed.areaSquareMetres -
        aimed.stands.reduce((sum, { squareMetres }) => sum + squareMetres, 0) -
        stand.squareMetres
  return (
    <div className="in-hand" role="status">
      <p>
        {t('benches.move.held', {
          number: format.number(stand.number),
          batch: stand.name,
          area: format.area(stand.squareMetres),
        })}
      </p>
      {free !== null && (
        <p className={free < -NO_AREA ? 'warn' : 'strong'}>
          {t(free < -NO_AREA ? 'benches.move.over' : 'benches.move.fits', {
            bench: names.bench(aimed!.bench),
            area: format.area(Math.abs(free)),
          })}
        </p>
      )}
    </div>
  )
}
