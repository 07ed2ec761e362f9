import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import { encodeRound } from '#golf/round/encode-round.ts'
import { type KeptRound, mergeRounds, nameOfRound } from '#golf/round/kept-round.ts'
import type { LogStep } from '#golf/round/log-steps.ts'
import { wordsBefore } from '#golf/round/log-steps.ts'
import { parseKeptRound } from '#golf/round/parse-kept-round.ts'
import type { LogWord } from '#golf/round/round-log.ts'
import { withWords } from '#golf/round/round-log.ts'
import { isClosed } from '#golf/round/round-of-log.ts'
import type { HolePicture } from './hole-picture.ts'
import { phoneId } from './phone-id.ts'

/** A round as it lies on this phone. */
interface RoundHere {
  readonly id: string
  readonly name: string
  /** A `round/1` file. */
  readonly text: string
  /** What takes each step of this phone back, the last one last. */
  readonly back: readonly (readonly LogWord[])[]
  /** True once a change waits to be sent to the desk. */
  readonly isToSend: boolean
}

/** A round of this phone, read. */
export interface OpenRound {
  readonly round: KeptRound
  readonly canUndo: boolean
  readonly isToSend: boolean
}

interface Shelves extends DBSchema {
  rounds: { key: string; value: RoundHere }
  pictures: { key: string; value: readonly HolePicture[] }
}

let opened: Promise<IDBPDatabase<Shelves>> | null = null

function shelves(): Promise<IDBPDatabase<Shelves>> {
  opened ??= openDB<Shelves>('marram-rounds', 1, {
    upgrade(database) {
      database.createObjectStore('rounds', { keyPath: 'id' })
      database.createObjectStore('pictures')
    },
  })
  return opened
}

/** Tells the other tabs of this phone. */
const news = new BroadcastChannel('marram-rounds')

/** Calls back when another tab of this phone has written a round down; returns how to end that. */
export function onOtherTab(changed: (id: string) => void): () => void {
  const listen = ({ data }: MessageEvent): void => changed(String(data))
  news.addEventListener('message', listen)
  return () => news.removeEventListener('message', listen)
}

/** A round of this phone in a list. */
export interface ListedRound {
  readonly id: string
  readonly name: string
  /** A round that counts, begun and not closed: the Rules hold. */
  readonly isHeld: boolean
}

/** Every round on this phone, the last date first. */
export async function roundsHere(): Promise<readonly ListedRound[]> {
  const rounds = await (await shelves()).getAll('rounds')
  return rounds
    .map(({ id, name, text }) => {
      const round = parseKeptRound(text, id)?.round
      const isBegun = round?.facts.purpose === 'counting' && round.log.size > 0
      return { id, name, isHeld: isBegun && !isClosed(round.log) }
    })
    .sort((one, other) => (one.name < other.name ? 1 : -1))
}

/** A round of this phone; `null` when there is none. */
export async function readRound(id: string): Promise<OpenRound | null> {
  const here = await (await shelves()).get('rounds', id)
  return here === undefined ? null : openRound(here)
}

/** The text of a round as a file; `null` when there is none. */
export async function roundText(id: string): Promise<string | null> {
  return (await (await shelves()).get('rounds', id))?.text ?? null
}

/** What waits to be sent to the desk. */
export async function roundsToSend(): Promise<readonly string[]> {
  return (await (await shelves()).getAll('rounds')).flatMap(({ id, isToSend }) => (isToSend ? [id] : []))
}

/** Says a step on what this phone holds at that moment. Done once the phone has it on its disk. */
export async function takeStep(id: string, step: LogStep): Promise<OpenRound | null> {
  return change(id, (here, { facts, log }) => {
    const words = step(log, phoneId())
    if (words.length === 0) return here
    const text = encodeRound({ facts, log: withWords(log, phoneId(), words) })
    return { ...here, text, back: [...here.back, wordsBefore(log, words)].slice(-MOST_BACK) }
  })
}

/** Takes the last step of this phone back. */
export async function takeBack(id: string): Promise<OpenRound | null> {
  return change(id, (here, { facts, log }) => {
    const words = here.back.at(-1)
    if (words === undefined) return here
    return {
      ...here,
      text: encodeRound({ facts, log: withWords(log, phoneId(), words) }),
      back: here.back.slice(0, -1),
    }
  })
}

/** Marks a round as one that waits to be sent, or as sent as it was then: what was written since still waits. */
export async function markToSend(
  id: string,
  isToSend: boolean,
  sentText: string | null = null,
): Promise<void> {
  await change(id, (here) => (sentText !== null && here.text !== sentText ? here : { ...here, isToSend }))
}

/** Puts a round down, or lays it together with the copy that is here. */
export async function putRound(round: KeptRound): Promise<void> {
  const database = await shelves()
  const write = database.transaction('rounds', 'readwrite', { durability: 'strict' })
  const here = await write.store.get(round.facts.id)
  const known = here === undefined ? null : (parseKeptRound(here.text, here.id)?.round ?? null)
  const merged = known === null ? round : mergeRounds(known, round)
  await write.store.put({
    id: round.facts.id,
    name: nameOfRound(merged.facts),
    text: encodeRound(merged),
    back: here?.back ?? [],
    isToSend: here?.isToSend ?? false,
  })
  await write.done
  news.postMessage(round.facts.id)
}

/** Takes a round off this phone for good. */
export async function removeRound(id: string): Promise<void> {
  const database = await shelves()
  await database.delete('rounds', id)
  await database.delete('pictures', id)
}

export async function putPictures(id: string, pictures: readonly HolePicture[]): Promise<void> {
  await (await shelves()).put('pictures', pictures, id)
}

export async function picturesOf(id: string): Promise<readonly HolePicture[]> {
  return (await (await shelves()).get('pictures', id)) ?? []
}

/** Reads, changes and writes in one breath, so that two tabs never write over each other. */
async function change(
  id: string,
  changed: (here: RoundHere, round: KeptRound) => RoundHere,
): Promise<OpenRound | null> {
  const write = (await shelves()).transaction('rounds', 'readwrite', { durability: 'strict' })
  const here = await write.store.get(id)
  const round = here === undefined ? null : (parseKeptRound(here.text, id)?.round ?? null)
  if (here === undefined || round === null) return null
  const next = changed(here, round)
  if (next !== here) await write.store.put(next)
  await write.done
  if (next !== here) news.postMessage(id)
  return openRound(next)
}

function openRound({ id, text, back, isToSend }: RoundHere): OpenRound | null {
  const read = parseKeptRound(text, id)
  return read === null ? null : { round: read.round, canUndo: back.length > 0, isToSend }
}

/** Steps that can be taken back: more than a round has. */
const MOST_BACK = 400
