import { useTranslation } from 'react-i18next'
import type { ReadSheet, SheetField, SheetKind, SheetSaid } from '../../../api/index.ts'
import { Pick } from '../../parts/pick.tsx'
import { imports } from '../../text/en/import.ts'
import { useFormat } from '../../text/use-format.tsx'

const LEFT_OUT = '-'

const KINDS = Object.keys(imports.kinds) as readonly SheetKind[]

/** One sheet: what it is about, and which column is read as what. What is said here is remembered for sheets like it. */
export function SheetRead({
  sheet,
  fields,
  onSay,
}: {
  readonly sheet: ReadSheet
  readonly fields: readonly SheetField[]
  readonly onSay: (said: SheetSaid) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  return (
    <details className="sheet" open={sheet.kind === null || sheet.rows.bad > 0}>
      <summary>
        {sheet.id}: {sheet.kind === null ? t('imports.leaveOut') : t(`imports.kinds.${sheet.kind}`)}
      </summary>
      <div className="stack sheet-read">
        <p className="soft">
          {t('imports.sheetRows', {
            good: format.number(sheet.rows.good),
            all: format.number(sheet.rows.all),
            bad: format.number(sheet.rows.bad),
            written: sheet.written,
          })}
        </p>
        <Pick
          label={t('imports.kind')}
          value={sheet.kind ?? LEFT_OUT}
          options={[
            { id: LEFT_OUT, name: t('imports.leaveOut') },
            ...KINDS.map(id => ({ id: id as string, name: t(`imports.kinds.${id}`) })),
          ]}
          onPick={id => onSay({ kind: KINDS.find(kind => kind === id) ?? null })}
        />
        {sheet.kind !== null && (
          <ul className="columns">
            {sheet.columns.map(({ column, header, field, examples }) => (
              <li key={column}>
                <p>
                  <b>{header || column}</b> <span className="soft small">{examples.join(', ')}</span>
                </p>
                <Pick
                  label={`${t('imports.field')}: ${header || column}`}
                  isLabelHidden
                  value={field ?? LEFT_OUT}
                  options={[
                    { id: LEFT_OUT, name: t('imports.notRead') },
                    ...fields.map(({ id, name, needed }) => ({
                      id,
                      name: needed ? `${name} ${t('imports.needed')}` : name,
                    })),
                  ]}
                  onPick={id => onSay({ columns: { [header]: id === LEFT_OUT ? null : id } })}
                />
              </li>
            ))}
          </ul>
        )}
      </div>
    </details>
  )
}
