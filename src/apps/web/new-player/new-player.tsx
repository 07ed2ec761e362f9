import { type ReactElement, useState } from 'react'
import '../style/new-player.css'
import { completePlayer } from '#golf/player/complete-player.ts'
import type { Player } from '#golf/player/player.ts'
import { playerFromAnswers } from '#golf/player/player-from-answers.ts'
import type { Answers, FieldId } from '#golf/player/player-questions.ts'
import type { Reader } from '../desk/desk.ts'
import { tabStorage } from '../documents/own-storage.ts'
import { PageHead } from '../page/page-head.tsx'
import { forgetAnswers, keepAnswers, keptAnswers } from './kept-answers.ts'
import { MadeProfile } from './made-profile.tsx'
import { QuestionList } from './question-list.tsx'

/** The ten questions on one page, then what was made of them; kept in the store when the person says so. */
export function NewPlayer(props: {
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
  readonly onKept: (id: string) => void
}): ReactElement {
  const { reader, onReader, onKept } = props
  const [answers, setAnswers] = useState<Answers>(() => keptAnswers(tabStorage))
  const [player, setPlayer] = useState<Player | null>(null)
  const answer = (id: FieldId, text: string): void => {
    const next = { ...answers, [id]: text }
    keepAnswers(next, tabStorage)
    setAnswers(next)
  }
  return (
    <>
      <PageHead what="a new player" reader={reader} onReader={onReader} />
      <main className="questions">
        {player === null ? (
          <QuestionList
            answers={answers}
            units={reader.units}
            onAnswer={answer}
            onDone={() => {
              const { file } = playerFromAnswers(answers, reader.units)
              if (file !== null) setPlayer(completePlayer(file))
            }}
          />
        ) : (
          <MadeProfile
            player={player}
            reader={reader}
            onBack={() => setPlayer(null)}
            onKept={(id) => {
              forgetAnswers(tabStorage)
              onKept(id)
            }}
          />
        )}
      </main>
    </>
  )
}
