// Cards of a field as `marram book` prints them, on two threads: wall time, peak memory, and how both grow from a field to one
// of twice as many. Two fields are timed: with plans worked out (`--players N` and 2 N of the example course's 18 holes), and
// of caddies' cards, which need none, so that laying out and printing 40 cards is measured by itself.
// `npm run bench-cards -- [--players 2] [--hole REF] [--full|--quick]`: without `--full` plans are made without draws, with
// `--quick` by quick settings; for fewer players than 40 it says what 40 would take by what each further player took, and calls
// that extrapolated.
import { parseArgs } from 'node:util'
import { MANY_PLAYERS, type PrintsField, withField } from './field-of-cards.ts'

const { values } = parseArgs({
  options: {
    players: { type: 'string' },
    hole: { type: 'string' },
    full: { type: 'boolean' },
    quick: { type: 'boolean' },
  },
})
const players = Number(values.players ?? 1)
const pace = [
  '--hole',
  values.hole ?? 'all',
  ...(values.quick ? ['--quick'] : values.full ? [] : ['--draws', '0']),
  '--workers',
  '2',
]
await withField(async (prints) => {
  const each = await grow(prints, 'cards with their plans', players, pace)
  if (2 * players < MANY_PLAYERS)
    say(
      `${MANY_PLAYERS} players, extrapolated`,
      `${seconds(each.last + (MANY_PLAYERS - 2 * players) * each.more)} s`,
    )
  await grow(prints, 'caddies’ cards, no plans', MANY_PLAYERS / 2, [...pace, '--kind', 'caddie'])
})

/** A field and one of twice as many; returns the time of the second and of each further player, milliseconds. */
async function grow(
  prints: PrintsField,
  what: string,
  count: number,
  words: readonly string[],
): Promise<{ readonly last: number; readonly more: number }> {
  const [few, many] = [await prints(count, words), await prints(2 * count, words)]
  say(`${what}, ${count} players`, `${seconds(few.milliseconds)} s`, `${few.megabytes.toFixed(0)} MB`)
  say(`${what}, ${2 * count} players`, `${seconds(many.milliseconds)} s`, `${many.megabytes.toFixed(0)} MB`)
  const more = (many.milliseconds - few.milliseconds) / count
  say('each further player', `${seconds(more)} s`)
  say(
    'twice the players',
    `${(many.milliseconds / few.milliseconds).toFixed(2)} × the time`,
    `${(many.megabytes / few.megabytes).toFixed(2)} × the memory`,
  )
  return { last: many.milliseconds, more }
}

function seconds(milliseconds: number): string {
  return (milliseconds / 1000).toFixed(1)
}

function say(name: string, ...figures: readonly string[]): void {
  console.log(`${name.padEnd(44)} ${figures.map((figure) => figure.padStart(18)).join('')}`)
}
