import { Button } from 'react-aria-components'
import './number-pad.css'

const FIGURES = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const

/** One large pad for a wet thumb. It types into whichever field is chosen above it. */
export function NumberPad({
  onKey,
  onNext,
  next,
  erase,
}: {
  readonly onKey: (key: string) => void
  readonly onNext: () => void
  readonly next: string
  readonly erase: string
}) {
  return (
    <div className="number-pad" dir="ltr">
      {FIGURES.map(figure => (
        <Button key={figure} className="pad-key" onPress={() => onKey(figure)} excludeFromTabOrder>
          {figure}
        </Button>
      ))}
      <Button className="pad-key" onPress={() => onKey('erase')} aria-label={erase} excludeFromTabOrder>
        <svg viewBox="0 0 24 24" width={28} height={28} aria-hidden="true">
          <path d="M9 5h12v14H9l-6-7zM12 9.500l5 5M17 9.500l-5 5" />
        </svg>
      </Button>
      <Button className="pad-key" onPress={() => onKey('0')} excludeFromTabOrder>
        0
      </Button>
      <Button className="pad-key pad-next" onPress={onNext} excludeFromTabOrder>
        {next}
      </Button>
    </div>
  )
}
