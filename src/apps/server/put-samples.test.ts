import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeEach, describe, expect, it } from 'vitest'
import { openStore } from '#outside/store/open-store.ts'
import type { Store } from '#outside/store/store.ts'
import { putSamples } from './put-samples.ts'

const root = mkdtempSync(join(tmpdir(), 'marram-samples-'))
afterAll(() => rmSync(root, { recursive: true, force: true }))
const examples = join(root, 'examples')
mkdirSync(examples)
const player = '{"schema":"player/1","name":"Pim","hand":"left","handicapIndex":17.6}\n'
writeFileSync(join(examples, 'pim-left.player.json'), player)
writeFileSync(join(examples, 'breezy.day.json'), '{"schema":"day/1","date":"2026-05-02"}')
writeFileSync(join(examples, 'README.md'), 'not a sample')
writeFileSync(join(examples, 'round.json'), 'not a sample either')

let store: Store
let count = 0
beforeEach(async () => {
  count += 1
  store = await openStore(join(root, `store-${count}.db`))
  return () => store.close()
})

describe('putSamples', () => {
  it('puts what its ending says, under its file’s name, letter for letter', async () => {
    expect(await putSamples(store, examples)).toBe(2)
    expect(await store.players.get('pim-left')).toMatchObject({ name: 'Pim', revision: 1, document: player })
    expect(await store.days.list()).toMatchObject([{ id: 'breezy', name: '2026-05-02' }])
  })

  it('leaves a store alone that holds anything of its owner’s', async () => {
    await store.players.put('my-own', 'Mine', player)
    expect(await putSamples(store, examples)).toBe(0)
    expect(await store.days.list()).toEqual([])
  })

  it('leaves a sample alone that its owner changed', async () => {
    await putSamples(store, examples)
    await store.players.put('pim-left', 'Pim', player)
    await store.days.remove('breezy')
    expect(await putSamples(store, examples)).toBe(0)
  })

  it('goes on where an interrupted start left off', async () => {
    await putSamples(store, examples)
    await store.days.remove('breezy')
    expect(await putSamples(store, examples)).toBe(1)
    expect(await store.days.list()).toMatchObject([{ id: 'breezy' }])
  })

  it('does nothing without the folder', async () => {
    expect(await putSamples(store, join(root, 'nowhere'))).toBe(0)
  })

  it('says which sample is broken', async () => {
    const broken = join(root, 'broken')
    mkdirSync(broken)
    writeFileSync(join(broken, 'one.player.json'), '{"schema":"player/1"')
    await expect(putSamples(store, broken)).rejects.toMatchObject({
      where: expect.stringContaining('one.player.json'),
    })
  })
})
