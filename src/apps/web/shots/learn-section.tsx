import { type ReactElement, useEffect, useMemo, useRef, useState } from 'react'
import { encodePlayer } from '#golf/player/encode-player.ts'
import { beforeShots } from '#golf/player/learn-from-shots.ts'
import { changeLines, learnedRows, usedLines } from '#golf/player/learned-words.ts'
import type { Player } from '#golf/player/player.ts'
import { readRoundsWords } from '#golf/round/read-rounds-words.ts'
import { documentId } from '#outside/formats/document-id.ts'
import type { Reader } from '../desk/desk.ts'
import { keepChanged, keepNewDocument } from '../documents/fetch-document.ts'
import { troubleOf } from '../documents/use-library.ts'
import { Section } from '../ledger/section.tsx'
import { FigureTable } from '../page/figure-table.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import { PlanProgress } from '../planning/plan-progress.tsx'
import type { Trouble } from '../planning/questions.ts'
import { LearnedTable } from './learned-table.tsx'
import type { RoundToLearn } from './rounds-to-learn.ts'
import type { EnteredShot } from './shot-sheet.ts'
import type { KeptPlayer } from './use-kept-player.ts'
import { type Learnable, type Lesson, useLearning } from './use-learning.ts'
import { useRoundShots } from './use-round-shots.ts'

const NO_ROUNDS: readonly RoundToLearn[] = []

/** What shots and rounds say of the player, and whether to keep it. */
export function LearnSection(props: {
  readonly kept: KeptPlayer
  readonly shots: readonly EnteredShot[]
  /** Those that are chosen. */
  readonly rounds: readonly RoundToLearn[]
  readonly reader: Reader
  /** The player of this id was kept with what was learned. */
  readonly onKept: (id: string, lesson: Lesson) => void
  /** The store has another revision: what was learned stands on the older one. */
  readonly onReload: () => void
}): ReactElement {
  const { kept, shots, rounds, reader, onKept, onReload } = props
  const { lesson, isLearning, trouble, learn, forget } = useLearning()
  const [asked, setAsked] = useState<(Learnable & { readonly before: Player }) | null>(null)
  const found = useRoundShots(asked?.rounds ?? NO_ROUNDS, asked?.before ?? kept.player)
  const { read, left, work } = found
  // biome-ignore lint/correctness/useExhaustiveDependencies: once the rounds are read there is nothing more to wait for.
  useEffect(() => {
    if (asked === null || read === null) return
    setAsked(null)
    learn({ ...asked, read, left })
  }, [asked, read])
  const [refusal, setRefusal] = useState<Trouble | null>(null)
  const [isKeeping, setIsKeeping] = useState(false)
  const isCurrent =
    lesson !== null && lesson.shots === shots && lesson.rounds === rounds && lesson.kept === kept
  const keep = (store: (lesson: Lesson, text: string) => Promise<string>): void => {
    if (lesson === null) return
    setIsKeeping(true)
    setRefusal(null)
    store(lesson, encodePlayer(lesson.result.learned.player))
      .then((id) => {
        forget()
        onKept(id, lesson)
      })
      .catch((error: unknown) => setRefusal(troubleOf(error)))
      .finally(() => setIsKeeping(false))
  }
  const isBusy = isLearning || work.isRunning
  const shown = trouble ?? found.trouble ?? refusal
  return (
    <Section title="What these say">
      <button
        type="button"
        className="question-done"
        disabled={shots.length + rounds.length === 0 || isBusy}
        onClick={() => {
          setRefusal(null)
          setAsked({ kept, shots, rounds, before: beforeShots(kept.file, shots).before })
        }}
      >
        {isBusy ? 'Learning' : `Learn from ${fromWords(shots.length, rounds.length)}`}
      </button>
      <PlanProgress work={work} />
      {shown !== null && <TroubleNote trouble={shown} />}
      {refusal?.code === 'MAR-STORE-004' && (
        <button
          type="button"
          onClick={() => {
            setRefusal(null)
            onReload()
          }}
        >
          Look at {kept.player.name} again
        </button>
      )}
      {lesson !== null && !isCurrent && (
        <p className="silent">
          The shots, the rounds or the player have changed since: learn again to see what they say now.
        </p>
      )}
      {lesson !== null && isCurrent && (
        <>
          <LearnedWords lesson={lesson} reader={reader} />
          <div className="made-buttons">
            <button
              type="button"
              className="question-done"
              disabled={isKeeping}
              onClick={() =>
                keep(async ({ kept: { id, revision } }, text) => {
                  await keepChanged('players', id, text, revision)
                  return id
                })
              }
            >
              Keep this as {kept.player.name}
            </button>
            <button
              type="button"
              disabled={isKeeping}
              onClick={() =>
                keep((_, text) => keepNewDocument('players', documentId(kept.player.name, 'player'), text))
              }
            >
              Keep beside, as another player
            </button>
          </div>
        </>
      )}
    </Section>
  )
}

function LearnedWords({
  lesson,
  reader,
}: {
  readonly lesson: Lesson
  readonly reader: Reader
}): ReactElement {
  const { result, read, left } = lesson
  const rows = useMemo(() => learnedRows(result, reader.units), [result, reader.units])
  const title = useRef<HTMLHeadingElement>(null)
  // Whoever reads by ear is led to what came of the shots.
  useEffect(() => title.current?.focus(), [])
  const { unused } = result.learned
  return (
    <div className="learned">
      <h3 ref={title} tabIndex={-1}>
        {result.before.name}, learned from {result.bag.shots.length - unused.length} shots
      </h3>
      {[...(read.rounds === 0 ? [] : readRoundsWords(read)), ...left, ...usedLines(result)].map((line) => (
        <p key={line}>{line}</p>
      ))}
      {unused.length > 0 && (
        <p>
          {unused.length === 1 ? 'One shot was' : `${unused.length} shots were`} hit with a club that is not
          in the bag, and nothing was learned from {unused.length === 1 ? 'it' : 'them'}.
        </p>
      )}
      <LearnedTable rows={rows} reader={reader} />
      {result.nearGreen !== null && (
        <>
          <h3>Putting and short game</h3>
          <FigureTable caption="Putting and short game" table={result.nearGreen} />
        </>
      )}
      <h3>Really changed</h3>
      <ul className="changes">
        {changeLines(result, reader.units).map((line) => (
          <li key={line}>{line.charAt(0).toUpperCase() + line.slice(1)}</li>
        ))}
      </ul>
    </div>
  )
}

/** `these 20 shots and 1 round`. */
function fromWords(shots: number, rounds: number): string {
  if (shots + rounds === 1) return shots === 1 ? 'this shot' : 'this round'
  const parts = [counted(shots, 'shot'), counted(rounds, 'round')].filter((part) => part !== '')
  return `these ${parts.length === 0 ? 'shots' : parts.join(' and ')}`
}

function counted(count: number, what: string): string {
  return count === 0 ? '' : `${count} ${count === 1 ? what : `${what}s`}`
}
