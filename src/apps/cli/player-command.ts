import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { Failure } from '#faults/failure.ts'
import { openStore } from '#outside/store/open-store.ts'
import type { Store } from '#outside/store/store.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { printJson, printLines } from './print-answer.ts'
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
  return withStore(options, machine, async (store) => {
    const { name, player, plans, namesakes } = await everythingOf(id, store)
    writeText(out, `${JSON.stringify({ schema: 'player-export/1', player, plans }, null, 2)}\n`)
    if (options.json)
      printJson(
        { schema: 'player-exported/1', id, name, plans: plans.map((plan) => plan.id), namesakes, out },
        machine,
      )
    else
      printLines(
        [`${name} and ${plansText(plans.length)} were written to ${out}.`, ...namesakesText(namesakes)],
        machine,
      )
    return 0
  })
}

/** `marram player delete`: removes a player and the player's plans from the store for good. Returns the exit code. */
export async function deletePlayer(id: string, options: PlayerOptions, machine: Machine): Promise<number> {
  return withStore(options, machine, async (store) => {
    const { name, plans, namesakes } = await everythingOf(id, store)
    if (options.yes !== true) {
      const message = `This removes ${name} and ${plansText(plans.length)} from the store for good. Add --yes to do it.`
      throw new Failure('MAR-USAGE-002', message, '--yes')
    }
    for (const plan of plans) await store.plans.remove(plan.id)
    await store.players.remove(id)
    const removed = { id, name, plans: plans.map((plan) => plan.id), namesakes }
    if (options.json) printJson({ schema: 'player-deleted/1', ...removed }, machine)
    else
      printLines(
        [
          `${name} and ${plansText(plans.length)} were removed for good.`,
          ...namesakesText(namesakes),
          'Files of your own, such as *.player.json and tables of shots, are yours to remove.',
        ],
        machine,
      )
    return 0
  })
}

async function withStore(
  options: PlayerOptions,
  machine: Machine,
  work: (store: Store) => Promise<number>,
): Promise<number> {
  const path = options.store ?? join(machine.home, '.marram/store.db')
  // Opening would make one.
  if (!existsSync(path)) throw new Failure('MAR-FILE-001', 'There is no store here.', path)
  const store = await openStore(path)
  try {
    return await work(store)
  } finally {
    await store.close()
  }
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
    if (plan !== null && playerOf(plan.document) === name) plans.push(plan)
  }
  return { name, player, plans, namesakes }
}

async function keptIn(shelf: Store['players'], id: string): Promise<Kept | null> {
  const kept = await shelf.get(id)
  if (kept === null) return null
  const document: unknown = JSON.parse(kept.document)
  return { id, revision: kept.revision, saved_at: kept.savedAt, document }
}

function playerOf(document: unknown): unknown {
  return typeof document === 'object' && document !== null && 'player' in document ? document.player : null
}

function namesakesText(namesakes: readonly string[]): string[] {
  if (namesakes.length === 0) return []
  return [`${namesakes.join(', ')} has the same name, so plans of that name were left where they are.`]
}

function plansText(count: number): string {
  return count === 0 ? 'no plans' : count === 1 ? '1 plan' : `${count} plans`
}
