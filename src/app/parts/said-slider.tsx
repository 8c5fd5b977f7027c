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
  onChange,
}: {
  readonly label: string
  readonly said: string
  readonly from?: number
  readonly to: number
  readonly step?: number
  readonly value: number
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
        <SliderThumb className="slider-thumb" />
      </SliderTrack>
    </Slider>
  )
}
