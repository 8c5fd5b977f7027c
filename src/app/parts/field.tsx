import type { ReactNode } from 'react'
import { FieldError, Input, Label, TextField, type TextFieldProps } from 'react-aria-components'

/** One line of text, with its name above and what is wrong below. */
export function Field({
  label,
  type = 'text',
  placeholder,
  wrong,
  ...rest
}: TextFieldProps & {
  readonly label: ReactNode
  readonly placeholder?: string
  readonly wrong?: string | undefined
}) {
  return (
    <TextField {...rest} type={type} className="field" isInvalid={wrong !== undefined}>
      <Label>{label}</Label>
      <Input {...(placeholder === undefined ? {} : { placeholder })} />
      <FieldError>{wrong}</FieldError>
    </TextField>
  )
}
