/** This device's date as text. */
export const deviceDay = (now = new Date()): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(part => String(part).padStart(2, '0')).join('-')

/** This device's time of day, `07:40`. */
export const deviceTime = (now = new Date()): string =>
  [now.getHours(), now.getMinutes()].map(part => String(part).padStart(2, '0')).join(':')
