import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { encodePrintedCard } from '#golf/round/printed-card.ts'
import { openStore } from '#outside/store/open-store.ts'
import { runMarram } from './run-marram.ts'

const folder = mkdtempSync(join(tmpdir(), 'marram-player-'))
const store = join(folder, 'store.db')
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const player = (name: string): string =>
  JSON.stringify({ schema: 'player/1', name, hand: 'left', handicapIndex: 18 })
const plan = (name: string): string =>
  JSON.stringify({
    schema: 'plan/1',
    course: 'Links',
    hole: { ref: '1', par: 4, length_m: 300 },
    player: name,
    value: { strokes: 4 },
    verdict: 'clear',
    options: [{ club: 'driver', strokes: 4, cost: 0 }],
    sentence: 'Driver.',
  })

const round = (id: string, name: string): string =>
  JSON.stringify({ schema: 'round/1', player: name, player_id: id, holes: [{ ref: '1', putts: 2 }] })

const card = (id: string, name: string): string =>
  encodePrintedCard({
    ...{ course: 'Links', courseId: 'links', player: name, playerId: id, date: '2026-05-02' },
    planNumbers: { from: 'card', date: '2026-05-02', player: JSON.parse(player(name)) as unknown },
  })

beforeAll(async () => {
  const kept = await openStore(store)
  await kept.players.put('una', 'Una Tarn', player('Una Tarn'))
  await kept.players.put('odd', 'Odd Brae', player('Odd Brae'))
  await kept.players.put('odd-2', 'Odd Brae', player('Odd Brae'))
  await kept.plans.put('one', 'Hole 1, Una Tarn', plan('Una Tarn'))
  await kept.plans.put('two', 'Hole 2, Una Tarn', plan('Una Tarn'))
  await kept.rounds.put('sunday', 'Sunday', round('una', 'Una Tarn'))
  await kept.rounds.put('monday', 'Monday', round('odd-2', 'Odd Brae'))
  await kept.cards.put('card-una-2026-05-02', 'A card', card('una', 'Una Tarn'))
  await kept.plans.put('three', 'Hole 1, Odd Brae', plan('Odd Brae'))
  await kept.close()
})

async function marram(...words: readonly string[]): Promise<{ code: number; out: string; err: string }> {
  const said = { out: '', err: '' }
  const place = words.includes('--store') ? [] : ['--store', store]
  const code = await runMarram([...words, ...place], {
    version: '0',
    home: folder,
    out: (text) => {
      said.out += text
    },
    err: (text) => {
      said.err += text
    },
    isWatched: false,
    hasColour: false,
    canAsk: false,
  })
  return { code, ...said }
}

/** Ids on a shelf now. */
async function idsOf(shelf: 'players' | 'plans' | 'rounds' | 'cards'): Promise<string[]> {
  const kept = await openStore(store)
  const ids = (await kept[shelf].list()).map(({ id }) => id)
  await kept.close()
  return ids.sort()
}

describe('marram player', () => {
  it('takes everything of a player out as one file, and removes it only when told twice', async () => {
    const out = join(folder, 'una.json')
    expect(await marram('player', 'export', 'una', '--out', out)).toMatchObject({ code: 0, err: '' })
    expect(JSON.parse(readFileSync(out, 'utf8'))).toMatchObject({
      schema: 'player-export/1',
      player: { id: 'una', revision: 1, document: JSON.parse(player('Una Tarn')) },
      plans: [
        { id: 'one', document: { player: 'Una Tarn' } },
        { id: 'two', document: { player: 'Una Tarn' } },
      ],
    })
    const asked = await marram('player', 'delete', 'una')
    expect(asked).toMatchObject({ code: 2, out: '' })
    expect(asked.err).toContain('Una Tarn, 2 plans, 1 round and 1 card')
    expect(await idsOf('plans')).toEqual(['one', 'three', 'two'])

    const { code, out: said } = await marram('player', 'delete', 'una', '--yes', '--json')
    expect(code).toBe(0)
    expect(JSON.parse(said)).toMatchObject({
      schema: 'player-deleted/1',
      id: 'una',
      plans: ['one', 'two'],
      rounds: ['sunday'],
      cards: ['card-una-2026-05-02'],
    })
    expect(await idsOf('rounds')).toEqual(['monday'])
    expect(await idsOf('cards')).toEqual([])
    expect(await idsOf('players')).toEqual(['odd', 'odd-2'])
    expect(await idsOf('plans')).toEqual(['three'])
    expect(readFileSync(store, 'latin1')).not.toContain('Una Tarn')
  })

  it('goes to another store as one file, where nothing is lost and nothing stands twice', async () => {
    const [file, there] = [join(folder, 'shared.json'), join(folder, 'there.db')]
    expect(await marram('share', 'players/odd-2', 'rounds/monday', '--out', file)).toMatchObject({
      code: 0,
      err: '',
    })
    expect(await marram('share', 'players/nobody', '--out', file)).toMatchObject({ code: 2 })
    const other = await openStore(there)
    await other.players.put('odd-2', 'Odd Brae', player('Another Odd'))
    await other.close()
    const became = async (path: string): Promise<unknown> => {
      const { out } = await marram('take', path, '--store', there, '--json')
      return (JSON.parse(out) as { documents: { became: string; keptAs: string }[] }).documents.map(
        (one) => `${one.keptAs} ${one.became}`,
      )
    }
    expect(await became(file)).toEqual(['odd-2-2 beside', 'monday new'])
    expect(await became(file)).toEqual(['odd-2-2 same', 'monday same'])
    // What was taken out of the first store before its deletion comes whole.
    expect(await became(join(folder, 'una.json'))).toEqual([
      'una new',
      'one new',
      'two new',
      'sunday new',
      'card-una-2026-05-02 new',
    ])
  })

  it('leaves plans that may be those of a namesake, and says so', async () => {
    const exported = await marram('player', 'export', 'odd', '--out', join(folder, 'odd.json'))
    expect(exported.out).toContain('odd-2 has the same name')
    const { out } = await marram('player', 'delete', 'odd', '--yes')
    expect(out).toContain('odd-2 has the same name')
    expect(await idsOf('players')).toEqual(['odd-2'])
    expect(await idsOf('plans')).toEqual(['three'])
  })

  it('names the players there are, and makes no store where there is none', async () => {
    const { code, err } = await marram('player', 'delete', 'nobody', '--yes')
    expect(code).toBe(2)
    expect(err).toMatch(/^MAR-SERVER-008 .*Players: odd-2/)
    const nowhere = join(folder, 'no.db')
    const none = await marram('player', 'export', 'una', '--out', join(folder, 'x'), '--store', nowhere)
    expect(none.err).toMatch(/^MAR-FILE-001 /)
    expect(existsSync(nowhere)).toBe(false)
  })
})
