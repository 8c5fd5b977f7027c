import type { KeyboardEvent } from 'react'

/** Makes a part of a drawing a button, for the mouse and for keys; one that stays pressed where it says whether it is. */
export const asButton = (onPress: () => void, isPressed?: boolean) => ({
  role: 'button',
  tabIndex: 0,
  'aria-pressed': isPressed,
  onClick: onPress,
  onKeyDown: (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return
    event.preventDefault()
    onPress()
  },
})
