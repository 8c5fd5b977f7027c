import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { saveCsv, savePng, saveSvg } from './save-picture.ts'

/** Saves a drawing as SVG or PNG, and its numbers where it has some. */
export function SaveMenu({
  title,
  drawing,
  scale,
  table,
  isTable = false,
}: {
  readonly title: string
  /** Null while it is not drawn. */
  readonly drawing: () => SVGSVGElement | null
  /** Of the image beside what is seen, where that is small. */
  readonly scale?: number
  /** It is shown as its table, and there is nothing drawn to save. */
  readonly isTable?: boolean
  readonly table?: () => readonly (readonly (string | number)[])[]
}) {
  const { t } = useTranslation()
  const name = title.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-')
  const save = (as: string | number): void => {
    const svg = drawing()
    if (as === 'csv') saveCsv(table?.() ?? [], name)
    else if (svg !== null && as === 'svg') saveSvg(svg, name)
    else if (svg !== null) void savePng(svg, name, scale)
  }
  return (
    <MenuTrigger>
      <Button className="quiet" aria-label={`${t('pictures.save')}: ${title}`}>
        {t('pictures.save')}
      </Button>
      <Popover className="pop">
        <Menu
          className="menu"
          onAction={save}
          aria-label={t('pictures.save')}
          disabledKeys={isTable ? ['svg', 'png'] : []}
        >
          <MenuItem id="svg">{t('pictures.svg')}</MenuItem>
          <MenuItem id="png">{t('pictures.png')}</MenuItem>
          {table !== undefined && <MenuItem id="csv">{t('pictures.csv')}</MenuItem>}
        </Menu>
      </Popover>
    </MenuTrigger>
  )
}
