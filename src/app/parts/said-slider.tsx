import { Label, Slider, SliderOutput, SliderThumb, SliderTrack } from 'react-aria-components'
import './said-slider.css'

/** A slider with its name and, in words, where it stands. */
export function SaidSlider({
  label,
  said,
  from = 0,
  to,
  step = 1,
  value,
  marks = [],
  onChange,
}: {
  readonly label: string
  readonly said: string
  readonly from?: number
  readonly to: number
  readonly step?: number
  readonly value: number
  /** Values marked on the ruler; what they mean is said beside it. */
  readonly marks?: readonly number[]
  readonly onChange: (value: number) => void
}) {
  return (
    <Slider
      className="said-slider"
      minValue={from}
      maxValue={to}
      step={step}
      value={value}
      onChange={moved => onChange(moved as number)}
    >
      <div className="row">
        <Label>{label}</Label>
        <SliderOutput>{said}</SliderOutput>
      </div>
      <SliderTrack className="slider-track">
        {marks.map(mark => (
          <span
            key={mark}
            className="slider-mark"
            style={{ insetInlineStart: `${(100 * (mark - from)) / (to - from)}%` }}
            aria-hidden="true"
          />
        ))}
        <SliderThumb className="slider-thumb" />
      </SliderTrack>
    </Slider>
  )
}
