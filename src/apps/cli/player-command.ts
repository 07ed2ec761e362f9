import { Failure } from '#faults/failure.ts'
import type { Store } from '#outside/store/store.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { printJson, printLines } from './print-answer.ts'
import { storeOfMachine } from './store-of-machine.ts'
import { writeText } from './write-file.ts'

/** The options of `marram player export` and `marram player delete`, as typed. */
export interface PlayerOptions extends GlobalOptions {
  readonly store?: string
  readonly out?: string
  readonly yes?: boolean
}

/** `marram player export`: everything the store keeps of a player as one file. Returns the exit code. */
export async function exportPlayer(id: string, options: PlayerOptions, machine: Machine): Promise<number> {
  const { out = '' } = options
  return storeOfMachine(options, machine, async (store) => {
    const { name, player, plans, rounds, cards, namesakes } = await everythingOf(id, store)
    writeText(
      out,
      `${JSON.stringify({ schema: 'player-export/1', player, plans, rounds, cards }, null, 2)}\n`,
    )
    if (options.json)
      printJson(
        {
          schema: 'player-exported/1',
          ...{ id, name, plans: idsOf(plans), rounds: idsOf(rounds), cards: idsOf(cards), namesakes, out },
        },
        machine,
      )
    else
      printLines(
        [`${name}, ${allText(plans, rounds, cards)} were written to ${out}.`, ...namesakesText(namesakes)],
        machine,
      )
    return 0
  })
}

/** `marram player delete`: removes a player with all plans, rounds and cards from the store for good. Returns the exit code. */
export async function deletePlayer(id: string, options: PlayerOptions, machine: Machine): Promise<number> {
  return storeOfMachine(options, machine, async (store) => {
    const { name, plans, rounds, cards, namesakes } = await everythingOf(id, store)
    if (options.yes !== true) {
      const message = `This removes ${name}, ${allText(plans, rounds, cards)} from the store for good. Add --yes to do it.`
      throw new Failure('MAR-USAGE-002', message, '--yes')
    }
    for (const plan of plans) await store.plans.remove(plan.id)
    for (const round of rounds) await store.rounds.remove(round.id)
    for (const card of cards) await store.cards.remove(card.id)
    await store.players.remove(id)
    const removed = { id, name, plans: idsOf(plans), rounds: idsOf(rounds), cards: idsOf(cards), namesakes }
    if (options.json) printJson({ schema: 'player-deleted/1', ...removed }, machine)
    else
      printLines(
        [
          `${name}, ${allText(plans, rounds, cards)} were removed for good.`,
          ...namesakesText(namesakes),
          'Files of your own, such as *.player.json and tables of shots, are yours to remove.',
        ],
        machine,
      )
    return 0
  })
}

interface Kept {
  readonly id: string
  readonly revision: number
  readonly saved_at: string
  readonly document: unknown
}

/** A plan names its player, no more: while another player has the name, no plan is known to be this one's. */
async function everythingOf(
  id: string,
  store: Store,
): Promise<{
  readonly name: string
  readonly player: Kept
  readonly plans: readonly Kept[]
  readonly rounds: readonly Kept[]
  /** What cards of the player were made by. */
  readonly cards: readonly Kept[]
  readonly namesakes: readonly string[]
}> {
  const all = await store.players.list()
  const player = await keptIn(store.players, id)
  if (player === null) {
    const known = all.map((one) => one.id).join(', ')
    throw new Failure('MAR-SERVER-008', `The store has no player ${id}. Players: ${known || 'none'}.`, id)
  }
  const name = all.find((one) => one.id === id)?.name ?? id
  const namesakes = all.filter((one) => one.name === name && one.id !== id).map((one) => one.id)
  const plans: Kept[] = []
  for (const entry of namesakes.length > 0 ? [] : await store.plans.list()) {
    const plan = await keptIn(store.plans, entry.id)
    if (plan !== null && fieldOf(plan.document, 'player') === name) plans.push(plan)
  }
  const rounds: Kept[] = []
  for (const entry of await store.rounds.list()) {
    const round = await keptIn(store.rounds, entry.id)
    if (round === null) continue
    const of = fieldOf(round.document, 'player_id')
    // A round by taps names its player's id; a typed one has the name alone.
    if (of === id || (of === null && namesakes.length === 0 && fieldOf(round.document, 'player') === name))
      rounds.push(round)
  }
  const cards: Kept[] = []
  for (const entry of await store.cards.list()) {
    const card = await keptIn(store.cards, entry.id)
    if (card !== null && fieldOf(card.document, 'player_id') === id) cards.push(card)
  }
  return { name, player, plans, rounds, cards, namesakes }
}

async function keptIn(shelf: Store['players'], id: string): Promise<Kept | null> {
  const kept = await shelf.get(id)
  if (kept === null) return null
  const document: unknown = JSON.parse(kept.document)
  return { id, revision: kept.revision, saved_at: kept.savedAt, document }
}

function fieldOf(document: unknown, name: 'player' | 'player_id'): unknown {
  const fields = typeof document === 'object' && document !== null ? document : {}
  return (fields as Readonly<Record<string, unknown>>)[name] ?? null
}

function namesakesText(namesakes: readonly string[]): string[] {
  if (namesakes.length === 0) return []
  return [
    `${namesakes.join(', ')} has the same name, so plans and typed rounds of that name were left where they are, with the numbers that such rounds carry.`,
  ]
}

function idsOf(kept: readonly Kept[]): string[] {
  return kept.map(({ id }) => id)
}

function allText(plans: readonly Kept[], rounds: readonly Kept[], cards: readonly Kept[]): string {
  return `${countText(plans.length, 'plan')}, ${countText(rounds.length, 'round')} and ${countText(cards.length, 'card')}`
}

function countText(count: number, what: string): string {
  return count === 0 ? `no ${what}s` : count === 1 ? `1 ${what}` : `${count} ${what}s`
}
