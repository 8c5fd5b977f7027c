/**
 * Measures one thing: `npm run bench -- NAME`, with `--json` for programs; without a name, the list of what there is.
 * Each measurement is a file `bench/NAME.ts` whose default export gives its figures and those of its rivals, measured in
 * the same run on the same machine.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { cpus, totalmem } from 'node:os'
import { parseArgs } from 'node:util'
import type { Measured } from './measure.ts'

const { values, positionals } = parseArgs({
  options: { json: { type: 'boolean', default: false } },
  allowPositionals: true,
})
const names = readdirSync(import.meta.dirname)
  .filter(file => file.endsWith('.ts') && isMeasurement(`${import.meta.dirname}/${file}`))
  .map(file => file.slice(0, -3))
  .sort()
const name = positionals[0]

if (name === undefined) {
  console.log(`npm run bench -- NAME [--json]\n\n${names.map(each => `  ${each}`).join('\n')}`)
} else if (!names.includes(name)) {
  console.error(`There is no measurement "${name}". There are: ${names.join(', ')}.`)
  process.exitCode = 2
} else {
  const { default: measure }: { default: () => Measured | Promise<Measured> } = await import(`./${name}.ts`)
  const measured = await measure()
  const result = { name, at: new Date().toISOString(), machine: machine(), ...measured }
  console.log(values.json ? JSON.stringify(result, null, 1) : table(result))
}

function isMeasurement(file: string): boolean {
  return /^export default /m.test(readFileSync(file, 'utf8'))
}

function machine(): string {
  const [first] = cpus()
  const gigabytes = Math.round(totalmem() / 2 ** 30)
  return `${first?.model.trim() ?? 'unknown processor'}, ${cpus().length} cores, ${gigabytes} GB, Node ${process.versions.node}`
}

function table(result: Measured & { name: string; at: string; machine: string }): string {
  const rows: (readonly [string, string])[] = [
    ...Object.entries(result.figures).map(([key, value]) => [key, figure(value)] as const),
    ...Object.entries(result.rivals).flatMap(([rival, figures]) =>
      Object.entries(figures).map(([key, value]) => [`${rival}: ${key}`, figure(value)] as const),
    ),
  ]
  const width = Math.max(...rows.map(([key]) => key.length))
  return [
    `${result.name}, ${result.at}`,
    result.machine,
    '',
    ...rows.map(([key, value]) => `${key.padEnd(width)}  ${value}`),
    ...(result.notes.length > 0 ? ['', ...result.notes] : []),
  ].join('\n')
}

function figure(value: number | string): string {
  return typeof value === 'number' ? String(Number(value.toPrecision(4))) : value
}
