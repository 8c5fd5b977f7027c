import { foldName } from '../../trade/index.ts'

/** January to December, whole and shortened: English, German, French, Spanish, Italian, Portuguese, Dutch. */
const names: readonly (readonly string[])[] = [
  ['january jan januar jän jänner janvier janv enero ene gennaio gen janeiro januari'],
  ['february feb februar février févr fevr febrero febbraio fevereiro fev februari'],
  ['march mar märz mär mrz mars marzo março maart mrt'],
  ['april apr avril avr abril abr aprile'],
  ['may mai mayo maggio mag maio mei'],
  ['june jun juni juin junio giugno giu junho'],
  ['july jul juli juillet juil julio luglio lug julho'],
  ['august aug août aout agosto ago augustus'],
  ['september sep sept septembre septiembre settembre set setembro'],
  ['october oct oktober okt octobre octubre ottobre ott outubro out'],
  ['november nov novembre noviembre novembro'],
  ['december dec dezember dez décembre déc diciembre dic dicembre dezembro'],
]

const byName: ReadonlyMap<string, number> = new Map(
  names.flatMap(([line], index) => line!.split(' ').map(name => [foldName(name), index + 1] as const)),
)

/** 1 to 12, or undefined where it is no month. */
export const monthByName = (word: string): number | undefined => byName.get(foldName(word))
