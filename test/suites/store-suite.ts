import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Shelf, Store } from '#outside/store/store.ts'

/**
 * What every store must do, whatever database is under it. `openEmptyStore` gives a fresh one each time; it is
 * closed after each test.
 */
export function storeSuite(title: string, openEmptyStore: () => Promise<Store>): void {
  describe(title, () => {
    let store: Store
    beforeEach(async () => {
      store = await openEmptyStore()
    })
    afterEach(() => store.close())

    it('is empty at first', async () => {
      expect(await store.courses.list()).toEqual([])
      expect(await store.courses.get('links')).toBeNull()
    })

    it('gives a document back letter for letter', async () => {
      const document =
        '{ "name": "Åse ⛳ \\u0000 \'; drop table courses; --",\n\t"n": 1e400, "a": [1.10, -0] }'
      expect(await store.courses.put('links', 'Åse’s "links"', document)).toBe(1)
      const kept = await store.courses.get('links')
      expect(kept).toMatchObject({ id: 'links', name: 'Åse’s "links"', revision: 1, document })
      expect(Math.abs(Date.now() - Date.parse(kept?.savedAt ?? ''))).toBeLessThan(600_000)
    })

    it('keeps a document of several megabytes', async () => {
      const document = JSON.stringify(Array.from({ length: 300_000 }, (_, index) => index * 1.25))
      await store.plans.put('large', 'Large', document)
      expect((await store.plans.get('large'))?.document === document).toBe(true)
    })

    it('counts the revisions of each id', async () => {
      expect(await store.players.put('anna', 'Anna', '1')).toBe(1)
      expect(await store.players.put('anna', 'Anna', '2')).toBe(2)
      expect(await store.players.put('bert', 'Bert', '1')).toBe(1)
      expect(await store.players.put('anna', 'Anna B', '3')).toBe(3)
      expect(await store.players.get('anna')).toMatchObject({ name: 'Anna B', revision: 3, document: '3' })
    })

    it('keeps the kinds apart', async () => {
      const shelves: Shelf[] = [
        store.courses,
        store.players,
        store.days,
        store.plans,
        store.rounds,
        store.notes,
      ]
      for (const [index, shelf] of shelves.entries()) await shelf.put('same', `Name ${index}`, `${index}`)
      for (const [index, shelf] of shelves.entries())
        expect(await shelf.get('same')).toMatchObject({
          name: `Name ${index}`,
          revision: 1,
          document: `${index}`,
        })
      await store.days.remove('same')
      expect((await store.days.list()).length).toBe(0)
      expect((await store.plans.list()).length).toBe(1)
    })

    it('lists by name, then id, by code unit on every database', async () => {
      for (const [id, name] of [
        ['c', 'Zoe'],
        ['b', 'anna'],
        ['a', 'Anna'],
        ['e', 'Élodie'],
        ['a2', 'Anna'],
      ] as const)
        await store.players.put(id, name, '{}')
      const entries = await store.players.list()
      expect(entries.map((entry) => entry.id)).toEqual(['a', 'a2', 'c', 'b', 'e'])
      expect(Object.keys(entries[0] ?? {}).sort()).toEqual(['id', 'name', 'revision', 'savedAt'])
    })

    it('refuses a change prepared for another revision and loses nothing', async () => {
      await store.courses.put('links', 'Links', '"first"')
      await store.courses.put('links', 'Links', '"second"')
      const failure = { code: 'MAR-STORE-004', where: 'courses/links' }
      for (const expectedRevision of [0, 1, 3])
        await expect(
          store.courses.put('links', 'Links', '"late"', { expectedRevision }),
        ).rejects.toMatchObject(failure)
      await expect(store.courses.remove('links', { expectedRevision: 1 })).rejects.toMatchObject(failure)
      expect(await store.courses.get('links')).toMatchObject({ revision: 2, document: '"second"' })
      expect(await store.courses.put('links', 'Links', '"third"', { expectedRevision: 2 })).toBe(3)
    })

    it('refuses a change of a document that is not there', async () => {
      const failure = { code: 'MAR-STORE-004' }
      await expect(store.days.put('may', 'May', '{}', { expectedRevision: 4 })).rejects.toMatchObject(failure)
      await expect(store.days.remove('may', { expectedRevision: 4 })).rejects.toMatchObject(failure)
      expect(await store.days.list()).toEqual([])
      expect(await store.days.put('may', 'May', '{}', { expectedRevision: 0 })).toBe(1)
    })

    it('lets only one of many writers win a revision', async () => {
      await store.courses.put('links', 'Links', '"start"')
      const outcomes = await Promise.allSettled(
        Array.from({ length: 20 }, (_, writer) =>
          store.courses.put('links', 'Links', `${writer}`, { expectedRevision: 1 }),
        ),
      )
      const winners = outcomes.flatMap((outcome, writer) => (outcome.status === 'fulfilled' ? [writer] : []))
      expect(winners.length).toBe(1)
      expect(await store.courses.get('links')).toMatchObject({ revision: 2, document: `${winners[0]}` })
    })

    it('gives every unconditional writer a revision of its own', async () => {
      const revisions = await Promise.all(
        Array.from({ length: 20 }, (_, writer) => store.courses.put('links', 'Links', `${writer}`)),
      )
      expect(revisions.sort((one, other) => one - other)).toEqual(
        Array.from({ length: 20 }, (_, index) => index + 1),
      )
    })

    it('removes once', async () => {
      await store.players.put('anna', 'Anna', '{}')
      expect(await store.players.remove('anna', { expectedRevision: 1 })).toBe(true)
      expect(await store.players.get('anna')).toBeNull()
      expect(await store.players.remove('anna')).toBe(false)
    })
  })
}
