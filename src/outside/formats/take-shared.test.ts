import { describe, expect, it } from 'vitest'
import { encodeRound } from '#golf/round/encode-round.ts'
import type { RoundFacts } from '#golf/round/kept-round.ts'
import { addStroke } from '#golf/round/log-steps.ts'
import { parseKeptRound } from '#golf/round/parse-kept-round.ts'
import { cardId, encodePrintedCard } from '#golf/round/printed-card.ts'
import { EMPTY_LOG, type RoundLog, withWords } from '#golf/round/round-log.ts'
import { strokesOn } from '#golf/round/round-of-log.ts'
import { encodeShared, parseShared } from './shared-file.ts'
import { takeAllShared } from './take-all-shared.ts'
import { type TakingStore, takeShared } from './take-shared.ts'

const FACTS: RoundFacts = {
  id: 'round-1',
  date: null,
  tee: null,
  format: null,
  course: null,
  courseId: null,
  player: null,
  playerId: null,
  purpose: 'practice',
  hasDevices: true,
  isTextOnly: false,
  clubs: [],
  card: [],
  planNumbers: null,
}
const stroke = { club: '7-iron', finish: null, penalty: null, isAsPlanned: false }
const add = (log: RoundLog, by: string): RoundLog => withWords(log, by, addStroke('1', stroke)(log, by))

function memory(): TakingStore<number> & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>()
  return {
    texts,
    async get(kind, id) {
      const text = texts.get(`${kind}/${id}`)
      return text === undefined ? null : { text, revision: 1 }
    },
    async put(kind, id, text) {
      texts.set(`${kind}/${id}`, text)
    },
  }
}

describe('documents from another machine', () => {
  it('come out of their file as they went in, whatever wrote it', () => {
    const documents = [{ kind: 'players', id: 'una', text: '{"name":"Una"}' }] as const
    expect(parseShared(encodeShared(documents), 'f')).toEqual(documents)
    const exported = {
      schema: 'player-export/1',
      player: { id: 'una', document: { name: 'Una' } },
      plans: [],
    }
    expect(parseShared(JSON.stringify(exported), 'f')).toEqual(documents)
    const round = encodeRound({ facts: FACTS, log: EMPTY_LOG })
    expect(parseShared(round, 'f')).toEqual([{ kind: 'rounds', id: 'round-1', text: round }])
    const player = '{"schema":"player/1","name":"Una Tarn"}'
    expect(parseShared(player, 'f')).toEqual([{ kind: 'players', id: 'una-tarn', text: player }])
    const course = '{"type":"FeatureCollection","marram":{"name":"Links"},"features":[]}'
    expect(parseShared(course, 'f')).toEqual([{ kind: 'courses', id: 'links', text: course }])
    for (const [text, code] of [
      ['{', 'MAR-SHARE-001'],
      ['{"schema":"plan/1"}', 'MAR-SHARE-001'],
      ['{"schema":"shared/1","documents":[{"kind":"pets","id":"a","document":{}}]}', 'MAR-SHARE-002'],
      ['{"schema":"shared/1","documents":[{"kind":"days","id":"A B","document":{}}]}', 'MAR-SHARE-002'],
    ] as const)
      expect(() => parseShared(text, 'f')).toThrow(expect.objectContaining({ code }))
  })

  it('are taken in once, beside what is there, however often', async () => {
    const store = memory()
    const mine = { kind: 'players', id: 'una', text: '{"name":"Una","hand":"left"}' } as const
    const theirs = { ...mine, text: '{"hand":"right","name":"Una"}' }
    expect(await takeShared(mine, store)).toMatchObject({ became: 'new', keptAs: 'una' })
    // Fields in another order are the same document.
    expect(await takeShared({ ...mine, text: '{"hand":"left","name":"Una"}' }, store)).toMatchObject({
      became: 'same',
    })
    expect(await takeShared(theirs, store)).toMatchObject({ became: 'beside', keptAs: 'una-2' })
    expect(await takeShared(theirs, store)).toMatchObject({ became: 'same', keptAs: 'una-2' })
    expect([...store.texts.keys()]).toEqual(['players/una', 'players/una-2'])
  })

  it('go with their player who is kept beside another of that id', async () => {
    const store = memory()
    const player = (hand: string) =>
      ({ kind: 'players', id: 'una', text: JSON.stringify({ name: 'Una', hand }) }) as const
    await takeShared(player('left'), store)
    const numbers = {
      from: 'card',
      date: '2026-05-02',
      player: { schema: 'player/1', name: 'Una', hand: 'right', handicapIndex: 9 },
    }
    const card = encodePrintedCard({
      ...{ course: 'Links', courseId: 'links', player: 'Una', playerId: 'una', date: '2026-05-02' },
      planNumbers: numbers,
    })
    const facts = { ...FACTS, id: 'round-9', playerId: 'una', planNumbers: numbers }
    const file = encodeShared([
      ...parseShared(card, 'card'),
      ...parseShared(encodeRound({ facts, log: EMPTY_LOG }), 'round'),
      player('right'),
    ])
    const first = await takeAllShared(parseShared(file, 'f'), store)
    expect(first.map(({ kind, became }) => `${kind} ${became}`)).toEqual([
      'players beside',
      'cards new',
      'rounds new',
    ])
    const again = await takeAllShared(parseShared(file, 'f'), store)
    expect(again.map(({ became }) => became)).toEqual(['same', 'same', 'same'])
    const id = cardId({ courseId: 'links', playerId: 'una-2', date: '2026-05-02' })
    expect([...store.texts.keys()]).toEqual(['players/una', 'players/una-2', `cards/${id}`, 'rounds/round-9'])
    for (const place of [`cards/${id}`, 'rounds/round-9'])
      expect(JSON.parse(store.texts.get(place) ?? '{}')).toMatchObject({
        player_id: 'una-2',
        plan_numbers: numbers,
      })
    // A copy of an older Marram lacks the numbers and does not take them away.
    const old = encodeRound({ facts: { ...facts, playerId: 'una-2', planNumbers: null }, log: EMPTY_LOG })
    for (const text of [old, store.texts.get('rounds/round-9') ?? ''])
      await takeShared({ kind: 'rounds', id: 'round-9', text }, store)
    expect(JSON.parse(store.texts.get('rounds/round-9') ?? '{}').plan_numbers).toEqual(numbers)
  })

  it('are laid together where they are copies of one round', async () => {
    const store = memory()
    const first = add(EMPTY_LOG, 'a')
    const shared = (log: RoundLog) =>
      ({ kind: 'rounds', id: 'round-1', text: encodeRound({ facts: FACTS, log }) }) as const
    await takeShared(shared(add(first, 'a')), store)
    const theirs = shared(add(add(first, 'b'), 'b'))
    expect(await takeShared(theirs, store)).toMatchObject({ became: 'merged' })
    expect(await takeShared(theirs, store)).toMatchObject({ became: 'same' })
    const kept = parseKeptRound(store.texts.get('rounds/round-1') ?? '', 'r')?.round.log ?? EMPTY_LOG
    expect(strokesOn(kept, '1').map(({ stroke: { order } }) => order)).toEqual([1, 2, 2, 3])
  })
})
