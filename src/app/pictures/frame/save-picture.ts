/** What a drawing takes from the page's style sheet, written into the saved file so that it stands alone. */
const KEPT = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-opacity',
  'opacity',
  'font-family',
  'font-size',
  'font-weight',
  'font-style',
  'font-variant-numeric',
  'text-anchor',
  'dominant-baseline',
] as const

const PNG_SCALE = 2

const standalone = (drawing: SVGSVGElement): string => {
  const copy = drawing.cloneNode(true) as SVGSVGElement
  const [from, to] = [drawing, copy].map(root => [root, ...root.querySelectorAll<SVGElement>('*')])
  from!.forEach((element, index) => {
    const style = getComputedStyle(element)
    const target = to![index]!
    target.removeAttribute('class')
    for (const name of KEPT) {
      const value = style.getPropertyValue(name)
      if (value !== '') target.setAttribute(name, value)
    }
  })
  const { width, height } = drawing.getBoundingClientRect()
  const ground = document.createElementNS('http://www.w3.org/2000/svg', 'rect')
  ground.setAttribute('width', '100%')
  ground.setAttribute('height', '100%')
  ground.setAttribute('fill', getComputedStyle(document.documentElement).getPropertyValue('--sheet'))
  copy.prepend(ground)
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg')
  copy.setAttribute('width', String(width))
  copy.setAttribute('height', String(height))
  return new XMLSerializer().serializeToString(copy)
}

export const saveFile = (file: Blob, name: string): void => {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(file)
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}

export const saveSvg = (drawing: SVGSVGElement, name: string): void =>
  saveFile(new Blob([standalone(drawing)], { type: 'image/svg+xml' }), `${name}.svg`)

export const savePng = async (drawing: SVGSVGElement, name: string, scale = PNG_SCALE): Promise<void> => {
  const image = new Image()
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(standalone(drawing))}`
  await image.decode()
  const canvas = document.createElement('canvas')
  canvas.width = Math.round(image.width * scale)
  canvas.height = Math.round(image.height * scale)
  canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height)
  canvas.toBlob(file => file !== null && saveFile(file, `${name}.png`))
}

/** Commas, quotes and line breaks are quoted; a cell that a spreadsheet would take for a formula is not one. */
export const csvOf = (rows: readonly (readonly (string | number)[])[]): string =>
  rows
    .map(row =>
      row
        .map(cell => {
          const text = typeof cell === 'string' && /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : String(cell)
          return /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
        })
        .join(','),
    )
    .join('\r\n')

export const saveCsv = (rows: readonly (readonly (string | number)[])[], name: string): void =>
  saveFile(new Blob([`\uFEFF${csvOf(rows)}`], { type: 'text/csv;charset=utf-8' }), `${name}.csv`)
