/** As many letters as fit, the last of them a sign that there are more. */
export const fitted = (text: string, letters: number): string =>
  text.length > letters ? `${text.slice(0, Math.max(0, letters - 1))}…` : text

/** Text of a drawing in lines of at most so many letters, broken between words; a longer word has a line of its own. */
export function wrapped(text: string, letters: number): string[] {
  const lines: string[] = []
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const line = lines.at(-1)
    if (line !== undefined && line.length + 1 + word.length <= letters)
      lines[lines.length - 1] = `${line} ${word}`
    else lines.push(word)
  }
  return lines
}

/** Text in so many lines at most; what is beyond the last is cut, as is a word longer than a line. */
export function wrappedIn(text: string, letters: number, most: number): string[] {
  const lines = wrapped(text, letters)
  const last = lines.slice(most - 1).join(' ')
  return [...lines.slice(0, most - 1), ...(last === '' ? [] : [last])].map(line => fitted(line, letters))
}
