import { useState } from 'react'
import { Button, FileTrigger } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { type ClimateSaid, climateOfDays } from '../../../advice/index.ts'
import { deviceDay } from '../../data/today.ts'
import { useFormat } from '../../text/use-format.tsx'

interface Told {
  readonly isGood: boolean
  readonly lines: readonly string[]
}

/** The climate out of a file of daily temperatures; it is read here and sent nowhere. */
export function WeatherFile({ onAsk }: { readonly onAsk: (climate: ClimateSaid) => void }) {
  const { t } = useTranslation()
  const format = useFormat()
  const [told, setTold] = useState<Told | null>(null)

  const read = async (file: File) => {
    const { readWeather } = await import('../../../exchange/weather/index.ts')
    const weather = readWeather(new Uint8Array(await file.arrayBuffer()), deviceDay())
    if (weather.kind === 'refused') return setTold({ isGood: false, lines: [weather.what, weather.mend] })
    const climate = climateOfDays(weather.days)
    if (climate.kind === 'too short') {
      const days = format.number(weather.days.length)
      return setTold({ isGood: false, lines: [t('whichTree.weather.short', { days })] })
    }
    const { winters, firstDay, lastDay, said } = climate
    onAsk(said)
    setTold({
      isGood: true,
      lines: [
        t('whichTree.weather.read', {
          count: winters,
          winters: format.number(winters),
          from: format.fullDay(firstDay),
          to: format.fullDay(lastDay),
        }),
        ...weather.noted.map(note => t('whichTree.weather.noted', { note })),
      ],
    })
  }
  return (
    <div className="weather-file">
      <FileTrigger
        acceptedFileTypes={['.csv', '.txt', '.tsv']}
        onSelect={list => {
          const file = list?.[0]
          if (file !== undefined) void read(file)
        }}
      >
        <Button className="plain">{t('whichTree.weather.choose')}</Button>
      </FileTrigger>
      {told === null ? (
        <p className="soft small">{t('whichTree.weather.says')}</p>
      ) : (
        <p className={told.isGood ? 'small' : 'small warn'} role="status">
          {told.lines.join(' ')}
        </p>
      )}
    </div>
  )
}
